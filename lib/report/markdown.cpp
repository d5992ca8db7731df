#include "report/markdown.hpp"
#include "data/first_words.hpp"
#include "report/answers.hpp"
#include "report/bands.hpp"
#include "report/judged.hpp"
#include "report/picture/picture.hpp"
#include "report/standing.hpp"
#include "report/wrap.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
class Notes {
 public:
  Notes(const ReportData& data, const TextStyle& style) : data_(data), a_(data.assessment), style_(style) {}
  std::string whole();

 private:
  void heading(int level, std::string_view text) {
    out_ += fmt::format("\n{} {}\n\n", std::string(static_cast<std::size_t>(level), '#'), markdown_text(text));
  }
  void paragraph(std::string_view text) { out_ += markdown_text(text) + "\n\n"; }
  void item(std::string_view name, std::string_view text) {
    if (!text.empty()) out_ += fmt::format("- {}: {}\n", name, markdown_text(text));
  }
  void row(const std::vector<std::string>& cells) {
    out_ += "|";
    for (const std::string& cell : cells) out_ += " " + markdown_text(cell) + " |";
    out_ += "\n";
  }
  void table_head(const std::vector<std::string>& cells) {
    row(cells);
    out_ += "|";
    for (std::size_t i = 0; i < cells.size(); ++i) out_ += " --- |";
    out_ += "\n";
  }
  void numbers();
  void pictures();
  void next_measurements();
  void checks();
  void assumed();
  void cautions();

  const ReportData& data_;
  const Assessment& a_;
  const TextStyle& style_;
  std::string out_;
};

void Notes::pictures() {
  heading(2, "What the pictures of the page say");
  for (Picture (*of)(const ReportData&, const TextStyle&) :
       {picture_of_draught, picture_of_losses, picture_of_raise, picture_of_heat, picture_of_supply, picture_of_fit,
        picture_of_sensitivities}) {
    const Picture picture = of(data_, style_);
    item(picture.title, picture.draw ? picture.says : "not drawn: " + picture.not_drawn);
  }
}
void Notes::next_measurements() {
  if (const std::string left_out = without_spreads(a_); !left_out.empty()) paragraph(left_out);
  if (!a_.bands || a_.bands->sensitivities.empty()) return;
  heading(2, "Measure this next");
  for (const Sensitivity& sensitivity : a_.bands->sensitivities)
    for (const Narrowing* one : worth_telling(sensitivity))
      item(markdown_text(words_for(sensitivity.answer)),
           fmt::format("{} to {} {}. {} Write {}", named(one->of), one->within,
                       what_it_leaves(*one, find_result(a_, sensitivity.answer), style_), one->how, one->write));
  out_ += "\n";
  paragraph(sureness(*a_.bands));
}
void Notes::checks() {
  heading(2, "Every check, the gravest first");
  const auto tell = [&](const Finding& f) {
    heading(3, fmt::format("{}: {} [{}]", verdict_word(f.verdict), f.title, f.id));
    item("found", f.value || f.limit ? against_limit(f, a_, style_) : "");
    item("sure", holds_in(f, a_));
    item("why", f.why);
    item("do", f.action);
    item("write", fmt::format("{}", fmt::join(f.missing, ", ")));
    item("source", f.source.empty() ? "" : source_in_words(f.source, f.standing));
  };
  for (const Finding* f : gravest_first(a_)) tell(*f);
  for (const auto& alike : open_questions(a_))
    for (const Finding* f : alike) tell(*f);
}
void Notes::numbers() {
  for (const NumberGroup& group : number_groups(a_, style_)) {
    if (!group.heading.empty()) heading(2, group.heading);
    table_head({"what", "value"});
    for (const Page::Row& line : group.rows) row(line.cells);
    if (group.heading.empty()) pictures();
  }
}
void Notes::assumed() {
  if (a_.assumed.empty()) return;
  heading(2, "What was assumed or tuned");
  table_head({"key", "value", "may lie between", "why", "source"});
  for (const Assumed& one : a_.assumed)
    row({one.key, one.value, one.band, one.why, source_in_words(one.source, one.standing)});
}
void Notes::cautions() {
  if (a_.cautions.empty()) return;
  heading(2, "Cautions that apply here");
  for (const Caution& one : a_.cautions) {
    heading(3, one.title);
    paragraph(one.text);
    if (!one.authority.empty()) paragraph("Authority: " + one.authority);
  }
}
std::string Notes::whole() {
  out_ = "# " + markdown_text(a_.build.empty() ? a_.file : a_.build) + "\n\n";
  for (const std::string& words : data::first_words()) out_ += "**" + markdown_text(words) + "**\n\n";
  out_ += "**" + std::string(verdict_word(a_.verdict)) + "**: " + markdown_text(verdict_sentence(a_)) + "\n\n";
  if (!a_.remarks.empty()) heading(2, "Look at these first");
  for (const Remark& remark : a_.remarks) item(remark.key, remark.text);
  numbers();
  next_measurements();
  checks();
  assumed();
  cautions();
  return out_;
}
}  // namespace

std::string markdown_text(std::string_view text) {
  std::string out;
  const std::string clean = legible(text);
  const auto first = clean.find_first_not_of(' ');
  for (std::size_t i = first == std::string::npos ? clean.size() : first; i < clean.size(); ++i) {
    const char c = clean[i];
    const bool begins = i == first && (c == '+' || c == '-' || c == '=' || c == '#');
    const bool counts = (c == '.' || c == ')') && i > first && clean.find_first_not_of("0123456789", first) == i;
    if (c == '<' || c == '>' || c == '&')
      out += c == '<' ? "&lt;" : c == '>' ? "&gt;" : "&amp;";
    else if (std::string_view("\\`*_[]|~!#").find(c) != std::string_view::npos || begins || counts)
      out += std::string("\\") + c;
    else if (c == ':' && clean.compare(i, 3, "://") == 0)
      out += "&#58;";  // else an address becomes a link by itself
    else
      out += c;
  }
  return out;
}

std::string markdown_report(const ReportData& data, const TextStyle& style) { return Notes(data, style).whole(); }
}  // namespace lumwright
