#include "commands.hpp"
#include "described.hpp"
#include "report/side_by_side.hpp"
#include "style.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct CompareOptions {
  std::vector<DescriptionOptions> descriptions;
  report::TextStyle style;
};
CompareOptions compare_options(const Words& words) {
  constexpr std::size_t most = 5;
  const std::vector<std::string>& files = words.all("FILE");
  if (files.size() < 2 || files.size() > most)
    throw UsageError(fmt::format("`compare` takes 2 to {} descriptions: lumwright compare FILE FILE", most));
  CompareOptions options{{}, style_of(words)};
  for (const std::string& file : files) options.descriptions.push_back(sampled_options(words, file));
  return options;
}
Answer run_compare(const Words& words) {
  const CompareOptions options = compare_options(words);
  std::vector<Described> told;
  for (const DescriptionOptions& one : options.descriptions) told.push_back(described(one));
  std::vector<report::Compared> all;
  for (std::size_t i = 0; i < told.size(); ++i)
    all.push_back({told[i].build, assessed(options.descriptions[i], told[i])});
  return {report::compare_report(all, options.style)};
}
}  // namespace

const CommandRow compare_command{
    .word = "compare",
    .arguments = "FILE ...",
    .usage = "compare FILE FILE",
    .brief = "builds side by side",
    .headline = "compare FILE FILE ...: builds side by side",
    .about = R"(  Tells which keys of two to five descriptions differ, which answers, and which
  verdicts. A difference of answers is clear where the bands of two of them do
  not meet, and within the spread where they do.
)",
    .first = "--samples --seed --set --untuned",
    .below = R"(Example
  lumwright compare mine.yaml other.yaml

Exit status: 0, 2 when a description cannot be used.
)",
    .run = run_compare};
}  // namespace lumwright::cli
