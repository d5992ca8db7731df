#include "report/detail/markdown.hpp"
#include "data/first_words.hpp"
#include "description/writer.hpp"
#include "report/answers.hpp"
#include "report/detail/bands.hpp"
#include "report/detail/first_things.hpp"
#include "report/detail/moves.hpp"
#include "report/detail/standing.hpp"
#include "report/detail/wrap.hpp"
#include "report/held.hpp"
#include "report/judged.hpp"
#include "report/picture/picture.hpp"
#include "report/six_answers.hpp"
#include <fmt/format.h>
#include <sstream>

namespace lumwright::report {
namespace {
class Notes {
 public:
  Notes(const plan::ReportData& data, const TextStyle& style) : data_(data), a_(data.assessment), style_(style) {}
  std::string whole();

 private:
  void heading(int level, std::string_view text) {
    out_ += fmt::format("\n{} {}\n\n", std::string(static_cast<std::size_t>(level), '#'),
                        markdown_text(text, Stands::behind_words));
  }
  void paragraph(std::string_view text) { out_ += markdown_text(text) + "\n\n"; }
  void item(std::string_view name, std::string_view text) {
    if (text.empty()) return;
    out_ += fmt::format("- {}: {}\n", markdown_text(name), markdown_text(text, Stands::behind_words));
  }
  void row(const std::vector<std::string>& cells) {
    out_ += "|";
    for (const std::string& cell : cells) out_ += " " + markdown_text(cell, Stands::behind_words) + " |";
    out_ += "\n";
  }
  void table_head(const std::vector<std::string>& cells) {
    row(cells);
    out_ += "|";
    for (std::size_t i = 0; i < cells.size(); ++i) out_ += " --- |";
    out_ += "\n";
  }
  void six();
  void do_first();
  void settle_first();
  void numbers();
  void pictures();
  void next_measurements();
  void checks();
  void assumed();
  void held();
  void cautions();
  void description();

  const plan::ReportData& data_;
  const plan::Assessment& a_;
  const TextStyle& style_;
  std::string out_;
};

void Notes::six() {
  table_head({"what", "answer", "eight samples of ten", "verdict"});
  for (const ChiefAnswer& one : six_answers(a_, style_))
    row({std::string(one.title), one.figure, one.band, plan::verdict_word(one.verdict)});
}
void Notes::do_first() {
  constexpr std::size_t most = 5;
  const OpenChecks open = open_checks(a_);
  if (open.work.empty() && open.habits.empty()) return;
  heading(2, "Do first");
  std::vector<const plan::Finding*> fails, watches;
  const auto groups = by_change(open.work);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    if (i < most)
      item(plan::verdict_word(groups[i].front()->verdict), titles_of(groups[i]) + ": " + what_to_do(groups[i], style_));
    else
      for (const plan::Finding* one : groups[i]) (one->verdict == plan::Verdict::fail ? fails : watches).push_back(one);
  }
  item("fail too", titles_of(fails));
  item("watch too", titles_of(watches));
  item("mind", titles_of(open.habits));
}
void Notes::settle_first() {
  constexpr std::size_t most = 2;
  const ToSettle settle = to_settle(a_);
  if (settle.empty()) return;
  heading(2, "Settle first");
  for (const std::string& line : questions_to_write(settle, most)) item("write", line);
  if (settle.measure != nullptr) item("measure", measure_words(settle, a_, style_, true));
}
void Notes::pictures() {
  heading(2, "What the pictures of the page say");
  for (Picture (*of)(const plan::ReportData&, const TextStyle&) :
       {picture_of_unit, picture_of_draught, picture_of_losses, picture_of_raise, picture_of_heat, picture_of_supply,
        picture_of_fit, picture_of_sensitivities}) {
    const Picture picture = of(data_, style_);
    item(picture.title, picture.draw ? picture.says : "not drawn: " + picture.not_drawn);
  }
}
void Notes::next_measurements() {
  if (const std::string left_out = without_spreads(a_, style_.front); !left_out.empty()) paragraph(left_out);
  if (!a_.bands || a_.bands->sensitivities.empty()) return;
  heading(2, "Measure this next");
  for (const plan::Sensitivity& sensitivity : a_.bands->sensitivities)
    for (const plan::Narrowing* one : worth_telling(sensitivity))
      item(words_for(sensitivity.answer),
           fmt::format("{} to {} {}. {} Write {}", one->what, one->within,
                       what_it_leaves(*one, plan::find_result(a_, sensitivity.answer), style_),
                       description::with_ways(one->how, style_.front),
                       description::with_ways(one->write, style_.front)));
  out_ += "\n";
  paragraph(sureness(*a_.bands));
}
void Notes::checks() {
  heading(2, "Every check, the gravest first");
  const auto tell = [&](const plan::Finding& f) {
    heading(3, fmt::format("{}: {} [{}]", plan::verdict_word(f.verdict), f.title, f.id));
    item("found", f.value || f.limit ? against_limit(f, a_, style_) : "");
    item("sure", holds_in(f, a_));
    item("why", f.why);
    item("do", f.move ? fmt::format("{} ({})", move_text(f, style_), move_settings(f, style_.front))
                      : action_of(f, style_.front));
    item("write", fmt::format("{}", fmt::join(f.missing, ", ")));
    item("source", f.basis.source.empty() ? "" : source_in_words(f.basis));
  };
  for (const plan::Finding* f : gravest_first(a_)) tell(*f);
  for (const auto& alike : open_questions(a_))
    for (const plan::Finding* f : alike) tell(*f);
}
void Notes::numbers() {
  for (const NumberGroup& group : number_groups(a_, style_)) {
    heading(2, group.heading.empty() ? "All numbers" : group.heading);
    table_head({"what", "value"});
    for (const Page::Row& line : group.rows) row(line.cells);
  }
}
void Notes::assumed() {
  if (a_.assumed.empty()) return;
  heading(2, "What was assumed or tuned");
  table_head({"key", "value", "may lie between", "why", "source"});
  for (const model::Assumed& one : a_.assumed) row({one.key, one.value, one.band, one.why, source_in_words(one.basis)});
}
void Notes::held() {
  heading(2, "How far it was held against measurement");
  out_ += held_markdown(3, style_.front);
}
void Notes::cautions() {
  if (a_.cautions.empty()) return;
  heading(2, "Cautions that apply here");
  for (const plan::Caution& one : a_.cautions) {
    heading(3, one.title);
    paragraph(one.text);
    if (!one.authority.empty()) paragraph("Authority: " + one.authority);
  }
}
/// In a fence longer than any that the text holds (CommonMark 0.31, 4.5), so that it can be copied out as it is.
void Notes::description() {
  if (!data_.build) return;
  heading(2, "The description as it was read");
  std::string lines;
  std::istringstream in(description::write_build(*data_.build));
  for (std::string line; std::getline(in, line);) lines += legible(line) + "\n";
  std::string fence = "```";
  while (lines.find(fence) != std::string::npos) fence += '`';
  out_ += fence + "yaml\n" + lines + fence + "\n";
}
std::string Notes::whole() {
  out_ = "# " + markdown_text(a_.build.empty() ? a_.file : a_.build, Stands::behind_words) + "\n\n";
  for (const std::string& words : data::first_words()) out_ += "**" + markdown_text(words) + "**\n\n";
  out_ += "**" + std::string(plan::verdict_word(a_.verdict)) +
          "**: " + markdown_text(verdict_sentence(a_), Stands::behind_words) + "\n\n";
  if (!a_.remarks.empty()) heading(2, "Look at these first");
  for (const plan::Remark& remark : a_.remarks) item(remark.key, remark.text);
  if (!a_.remarks.empty()) out_ += "\n";
  six();
  do_first();
  settle_first();
  pictures();
  cautions();
  next_measurements();
  checks();
  numbers();
  assumed();
  held();
  description();
  if (!data_.program.empty()) out_ += "\nRead and reckoned by " + markdown_text(data_.program) + ".\n";
  return out_;
}
}  // namespace

namespace {
bool letter_or_digit(char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
/// The character at `i` begins a list or a heading (CommonMark 0.31, 4.2, 4.3 and 5.2), where `first` begins the line.
bool begins_block(std::string_view text, std::size_t first, std::size_t i) {
  const char c = text[i];
  if (i == first && std::string_view("+-=#").find(c) != std::string_view::npos) return true;
  if ((c != '.' && c != ')') || i == first || text.find_first_not_of("0123456789", first) != i) return false;
  return i + 1 == text.size() || text[i + 1] == ' ';
}
/// Has a meaning wherever it stands; an underscore within a word has none (6.2).
bool is_mark(std::string_view text, std::size_t i) {
  if (std::string_view("\\`*[]|~#").find(text[i]) != std::string_view::npos) return true;
  const bool within = i > 0 && i + 1 < text.size() && letter_or_digit(text[i - 1]) && letter_or_digit(text[i + 1]);
  return text[i] == '_' && !within;
}
}  // namespace

std::string markdown_text(std::string_view text, Stands where) {
  std::string out;
  const std::string clean = legible(text);
  const auto first = clean.find_first_not_of(' ');
  for (std::size_t i = first == std::string::npos ? clean.size() : first; i < clean.size(); ++i) {
    const char c = clean[i];
    if (c == '<' || c == '>' || c == '&')
      out += c == '<' ? "&lt;" : c == '>' ? "&gt;" : "&amp;";
    else if (is_mark(clean, i) || (where == Stands::at_line_start && begins_block(clean, first, i)))
      out += std::string("\\") + c;
    else if (c == ':' && clean.compare(i, 3, "://") == 0)
      out += "&#58;";  // else an address becomes a link by itself
    else
      out += c;
  }
  return out;
}

std::string markdown_report(const plan::ReportData& data, const TextStyle& style) { return Notes(data, style).whole(); }
}  // namespace lumwright::report
