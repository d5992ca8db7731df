#include "guide/facts.hpp"
#include "command.hpp"
#include "complaint.hpp"
#include "data/table.hpp"
#include "described.hpp"
#include "description/bin.hpp"
#include "description/reader.hpp"
#include "grammar.hpp"
#include "guide/pages.hpp"
#include "input/yaml_tree.hpp"
#include "plan/figures.hpp"
#include "quantity/words.hpp"
#include "report/answers.hpp"
#include "report/html/parts.hpp"
#include "report/judged.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::cli {
namespace {
[[noreturn]] void unknown(const std::string& what) { throw std::logic_error("nothing is known of `" + what + "`"); }

Words words_of_line(const std::string& line) {
  std::vector<std::string> words = shell_words(line);
  words.insert(words.begin(), "lumwright");
  std::vector<char*> arguments;
  for (std::string& word : words) arguments.push_back(word.data());
  return parse(static_cast<int>(arguments.size()), arguments.data());
}
std::string result_text(const plan::Assessment& assessment, const std::string& key, bool band) {
  const model::Result* result = plan::find_result(assessment, key);
  if (result == nullptr) unknown(key);
  const report::TextStyle style;
  const model::Measure* measure = std::get_if<model::Measure>(&result->value);
  if (!band)
    return measure == nullptr ? report::answer_text(*result, style) : report::number_of(assessment, key, style);
  if (measure == nullptr) unknown("band of " + key);
  if (!result->low || !result->high) return report::number_of(assessment, key, style);  // nothing was drawn
  return report::show_span(*result->low, *result->high, *measure, style, plan::figures_of(*result, style.units));
}
std::string check_text(const plan::Assessment& assessment, const std::string& id, const std::string& part) {
  const plan::Finding* finding = plan::find_check(assessment, id);
  if (finding == nullptr) unknown(id);
  const report::TextStyle style;
  if (part == "title") return finding->title;
  if (part == "verdict") return plan::verdict_word(finding->verdict);
  if (part == "why") return finding->why;
  if (part == "do") return report::action_of(*finding, description::FrontEnd::terminal);
  if (part == "value" && finding->value) return report::in_page_figures(assessment, *finding->value, style);
  if (part == "limit" && finding->limit) return report::in_page_figures(assessment, *finding->limit, style);
  unknown(id + " " + part);
}
std::string usual(const std::string& key) {
  for (const data::Row& row : data::rows("typical", "values"))
    if (row.text("key") == key) return row.has("value") ? row.text("value") : row.text("word");
  unknown(key);
}
}  // namespace

std::vector<std::string> shell_words(std::string_view line) {
  std::vector<std::string> out;
  bool within = false;
  char quote = 0;
  for (const char c : line) {
    if (quote == 0 && c == ' ') {
      within = false;
      continue;
    }
    if (!within) out.emplace_back();
    within = true;
    if (c == quote)
      quote = 0;
    else if (quote == 0 && (c == '"' || c == '\''))
      quote = c;
    else
      out.back() += c;
  }
  if (quote != 0) throw std::logic_error("a quotation mark is open in `" + std::string(line) + "`");
  return out;
}

Facts::Facts(std::size_t samples) : samples_(samples) {
  for (const data::EmbeddedFile& one : shipped_examples()) shelf_.files[one.name] = one.text;
}
Said Facts::run(const std::string& line) {
  if (!last_ || last_->first != line) last_.emplace(line, run_anew(line));
  return last_->second;
}
const choose::Choice& Facts::choice(const std::string& name) {
  const auto known = choices_.find(name);
  if (known != choices_.end()) return known->second;
  const std::string path = "examples/bins/" + name + ".yaml";
  return choices_.emplace(name, choose::choose(description::read_bin({path, file(path)}), {})).first->second;
}
Said Facts::run_anew(const std::string& line) {
  try {
    Words words = words_of_line(line);
    words.around = {.shelf = &shelf_, .most_samples = samples_, .plain = true};
    const Answer answer = words.command().run(words);
    return {answer.text, answer.status};
  } catch (const std::exception& e) {
    const Complaint complaint = complaint_of(e);
    if (complaint.status == internal) throw;
    return {complaint.text + "\n", complaint.status};
  }
}
const plan::ReportData& Facts::example(const std::string& name) {
  std::unique_ptr<Example>& known = examples_[name];
  if (known) return known->data;
  const std::string path = "examples/" + name + ".yaml";
  known = std::make_unique<Example>(Example{description::read_build({path, file(path)}), {}});
  plan::ReportAsked asked;
  asked.samples.count = samples_;
  known->data = plan::report_data(known->build, asked);
  DescriptionOptions as_check;  // whose command then finds it judged
  as_check.file = path;
  as_check.samples = samples_;
  as_check.shelf = &shelf_;
  judged_once(as_check, [&] { return known->data.assessment; });
  return known->data;
}
const std::string& Facts::file(const std::string& name) const {
  const auto found = shelf_.files.find(name);
  if (found == shelf_.files.end()) unknown(name);
  return found->second;
}
std::string Facts::written(const std::string& name, const std::string& key) const {
  const std::string path = "examples/" + name + ".yaml";
  std::vector<input::Fault> faults;
  const input::Node root = input::read_yaml({path, file(path)}, faults);
  const input::Node* at = &root;
  for (const std::string_view step : words(key, '.'))
    if (at != nullptr) at = input::child(*at, step);
  if (at == nullptr || at->kind != input::Node::Kind::scalar) unknown(path + " " + key);
  return at->text;
}
std::string Facts::fact(const std::vector<std::string>& words) {
  const auto is = [&](std::string_view kind, std::size_t count) { return words.size() == count && words[0] == kind; };
  if (is("usual", 2)) return usual(words[1]);
  if (is("value", 3)) return result_text(example(words[1]).assessment, words[2], false);
  if (is("band", 3)) return result_text(example(words[1]).assessment, words[2], true);
  if (is("written", 3)) return written(words[1], words[2]);
  if (is("check", 4)) return check_text(example(words[1]).assessment, words[2], words[3]);
  unknown(fmt::format("{}", fmt::join(words, " ")));
}
std::string Facts::filled(std::string_view text) {
  std::string out;
  for (;;) {
    const std::size_t from = text.find("{{"), to = text.find("}}", from);
    out += text.substr(0, from);
    if (from == std::string_view::npos) return out;
    if (to == std::string_view::npos) unknown(std::string(text.substr(from)));
    out += report::html::tied(fact(shell_words(text.substr(from + 2, to - from - 2))));
    text.remove_prefix(to + 2);
  }
}
}  // namespace lumwright::cli
