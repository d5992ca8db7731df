#include "report/explain.hpp"
#include "commands.hpp"
#include "described.hpp"
#include "style.hpp"

namespace lumwright::cli {
namespace {
struct ExplainOptions : DescriptionOptions {
  std::string check_id;
  report::TextStyle style;
};
ExplainOptions explain_options(const Words& words) {
  const std::string& id = words.needed("CHECK");  // the first to be missed
  return {sampled_options(words, words.needed("FILE")), id, style_of(words)};
}
std::vector<std::string> ids_of_checks() {
  std::vector<std::string> ids;
  for (const plan::CheckName& check : plan::check_names()) ids.emplace_back(check.id);
  return ids;
}
Answer run_explain(const Words& words) {
  const ExplainOptions options = explain_options(words);
  const plan::Assessment assessment = assessed(options);
  return {report::explain_report(assessment, options.check_id, options.style)};
}
}  // namespace

const CommandRow explain_command{
    .word = "explain",
    .arguments = "CHECK FILE",
    .usage = "explain CHECK FILE",
    .brief = "show how one check came about",
    .about = R"(  Shows the question, the formula, every number in it with where it came from,
  the result against its limit, where the rule comes from, and how sure it is.
  The name of a check stands in brackets behind its title in the report.
)",
    .first = "--samples --seed --set --untuned",
    .below = R"(Example
  lumwright explain fit.hot mine.yaml

Exit status: 0, 2 when there is no such check.
)",
    .run = run_explain,
    .words = ids_of_checks};
}  // namespace lumwright::cli
