#include "guide/blocks.hpp"
#include "data/questions.hpp"
#include "guide/table.hpp"
#include "plan/cautions.hpp"
#include "quantity/words.hpp"
#include "report/html/parts.hpp"
#include "report/picture/choice.hpp"
#include "report/picture/picture.hpp"
#include "report/places/places.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <stdexcept>

namespace lumwright::cli {
namespace {
/// The lines of a fence: the first says what, each further one "word: the rest".
struct Asked {
  std::string what;
  std::vector<std::pair<std::string, std::string>> more;
  std::string get(std::string_view word) const {
    for (const auto& [name, rest] : more)
      if (name == word) return rest;
    return "";
  }
};
Asked asked_of(const Piece& fence, const std::set<std::string>& known) {
  Asked out;
  for (const std::string_view line : words(fence.text, '\n')) {
    if (out.what.empty()) {
      out.what = line;
      continue;
    }
    const std::size_t colon = line.find(": ");
    const std::string word(line.substr(0, colon));
    if (colon == std::string_view::npos || !known.contains(word))
      throw std::logic_error(fmt::format("`{}` is nothing to ask of a block of {}", line, fence.info));
    out.more.emplace_back(word, line.substr(colon + 2));
  }
  return out;
}
std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    lines.push_back(text.substr(at, end - at));
    at = end + 1;
  }
  return lines;
}
/// The first line from `begin` that starts, behind its blanks, with `words`.
std::size_t line_with(const std::vector<std::string>& lines, std::size_t begin, const std::string& start) {
  for (std::size_t i = begin; i < lines.size(); ++i)
    if (std::string_view(lines[i])
            .substr(std::min(lines[i].find_first_not_of(' '), lines[i].size()))
            .starts_with(start))
      return i;
  throw std::logic_error(fmt::format("no line begins with `{}`", start));
}
/// Lines of a terminal, in a box that scrolls where the page is too narrow.
void write_screen(report::Tag parent, const std::string& name, const std::vector<std::string>& lines, Facts& facts) {
  const report::Tag box = parent.add("div").set("class", "screen").set("role", "region").set("tabindex", "0");
  box.set("aria-label", fmt::format("screen {}: {}", facts.next_screen(), name));  // no two are called alike
  for (const std::string& line : lines) box.add("code", line.empty() ? " " : line);
}
/// A command on lines that a page holds, as a shell takes it: parted at its options, each line but the last ends with a
/// backslash.
std::vector<std::string> shell_lines(const std::string& command) {
  constexpr std::size_t widest = 76;
  std::vector<std::string> lines = {"$"};
  std::string rest = command;
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(" --"), rest.size());
    if (lines.back().size() > 1 && lines.back().size() + end > widest) {
      lines.back() += " \\";
      lines.emplace_back("   ");
    }
    lines.back() += " " + rest.substr(0, end);
    rest.erase(0, std::min(end + 1, rest.size()));
  }
  return lines;
}
void write_run(report::Tag parent, const Piece& fence, Facts& facts) {
  const Asked asked = asked_of(fence, {"from", "to", "exits"});
  const std::string command = asked.what.substr(std::min(asked.what.find(' ') + 1, asked.what.size()));
  if (!asked.what.starts_with("lumwright ")) throw std::logic_error("a run begins with lumwright: " + asked.what);
  const Said said = facts.run(command);
  const std::string exits = asked.get("exits").empty() ? "0" : asked.get("exits");
  if (std::to_string(static_cast<int>(said.status)) != exits)
    throw std::logic_error(
        fmt::format("`{}` leaves with {}, not {}:\n{}", asked.what, static_cast<int>(said.status), exits, said.text));
  const std::vector<std::string> all = lines_of(said.text);
  const std::size_t begin = asked.get("from").empty() ? 0 : line_with(all, 0, asked.get("from"));
  std::size_t end = asked.get("to").empty() ? all.size() : line_with(all, begin + 1, asked.get("to"));
  const bool cut = end < all.size();
  while (end > begin && all[end - 1].empty()) --end;
  std::vector<std::string> lines = shell_lines(asked.what);
  if (begin > 0) lines.emplace_back("...");
  lines.insert(lines.end(), all.begin() + static_cast<std::ptrdiff_t>(begin),
               all.begin() + static_cast<std::ptrdiff_t>(end));
  if (cut) lines.emplace_back("...");
  write_screen(parent, asked.what, lines, facts);
}
void write_example_picture(report::Tag parent, const Piece& fence, Facts& facts) {
  using Draw = report::Picture (*)(const plan::ReportData&, const report::TextStyle&);
  static const std::vector<std::pair<std::string_view, Draw>> pictures = {
      {"draught", report::picture_of_draught}, {"losses", report::picture_of_losses},
      {"raise", report::picture_of_raise},     {"heat", report::picture_of_heat},
      {"supply", report::picture_of_supply},   {"fit", report::picture_of_fit},
      {"unit", report::picture_of_unit},       {"sensitivities", report::picture_of_sensitivities}};
  const std::vector<std::string> asked = shell_words(asked_of(fence, {}).what);
  if (asked.size() != 2) throw std::logic_error("a picture has an example and a name");
  const report::TextStyle style;
  const plan::ReportData& data = facts.example(asked[0]);
  report::Picture picture;
  for (const auto& [name, of] : pictures)
    if (name == asked[1]) picture = of(data, style);
  for (report::places::PartPicture& one : report::places::pictures(*data.build, data.assessment.assumed, style))
    if (one.picture.id == asked[1]) picture = std::move(one.picture);
  if (picture.id.empty()) throw std::logic_error("no picture is called `" + fence.text + "`");
  if (!picture.draw) throw std::logic_error("`" + fence.text + "` is not drawn: " + picture.not_drawn);
  picture.id += "-" + asked[0];
  picture.title += ": " + data.assessment.build;
  report::html::write_picture(parent, picture);
}
/// What each combination of a bin comes to on one of its engines.
void write_choice(report::Tag parent, const Piece& fence, Facts& facts) {
  const Asked asked = asked_of(fence, {"engine"});
  const choose::Choice& choice = facts.choice(asked.what);
  const auto engine = std::find_if(choice.engines.begin(), choice.engines.end(),
                                   [&](const choose::EngineChoice& one) { return one.engine == asked.get("engine"); });
  if (engine == choice.engines.end())
    throw std::logic_error("the bin has no engine called `" + asked.get("engine") + "`");
  report::html::write_picture(parent, report::picture_of_choice(*engine, "choice", {}));
}
std::string base64(const std::string& bytes) {  // RFC 4648, 4
  constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
  std::string out;
  for (std::size_t i = 0; i < bytes.size(); i += 3) {
    const auto byte = [&](std::size_t k) {
      return i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U;
    };
    const unsigned three = byte(0) << 16U | byte(1) << 8U | byte(2);
    for (std::size_t k = 0; k < 4; ++k)
      out += i + k > bytes.size() ? '=' : letters[three >> (18U - 6U * static_cast<unsigned>(k)) & 63U];
  }
  return out;
}
/// A sheet of paper that `draw` wrote.
void write_drawing(report::Tag parent, const Piece& fence, Facts& facts) {
  const Asked asked = asked_of(fence, {"shows"});
  const std::vector<std::string> named = shell_words(asked.what);
  if (named.size() != 2 || asked.get("shows").empty())
    throw std::logic_error("a drawing has a name, a sheet and `shows`");
  facts.run(fmt::format("draw examples/{}.yaml -o drawn-{}", named[0], named[0]));
  const report::Tag figure = parent.add("figure").set("class", "sheet");
  figure.add("img")
      .set("src", "data:image/svg+xml;base64," + base64(facts.file(fmt::format("drawn-{}/{}", named[0], named[1]))))
      .set("alt", asked.get("shows"));
  figure.add("figcaption", asked.get("shows"));
}
void write_named_cautions(report::Tag parent, const Piece& fence) {
  std::set<std::string> ids;
  for (const std::string& line : lines_of(fence.text))
    for (const std::string& id : shell_words(line)) ids.insert(id);
  const std::vector<plan::Caution> called = plan::cautions_called(ids);
  if (called.size() != ids.size() || ids.empty())
    throw std::logic_error("a caution of these is not known: " + fence.text);
  std::vector<const plan::Caution*> all;
  for (const plan::Caution& one : called) all.push_back(&one);
  report::html::write_cautions(parent, all, true);
}
void write_questions(report::Tag parent) {
  GuideTable table(parent, "what the interview asks", {"what", "how", "what people have"});
  for (const data::QuestionRow& row : data::questions()) {
    table.begin_row();
    table.cell().say(row.ask);
    table.cell().say(report::html::tied(row.how));
    table.cell().say(report::html::tied(row.usual));
  }
}
}  // namespace

void write_block(report::Tag parent, const Piece& fence, Facts& facts) {
  if (fence.info == "run") return write_run(parent, fence, facts);
  if (fence.info == "picture") return write_example_picture(parent, fence, facts);
  if (fence.info == "choice") return write_choice(parent, fence, facts);
  if (fence.info == "drawing") return write_drawing(parent, fence, facts);
  if (fence.info == "cautions") return write_named_cautions(parent, fence);
  if (fence.info == "questions") return write_questions(parent);
  if (fence.info == "file") {
    const std::string name = asked_of(fence, {}).what;
    return write_screen(parent, name, lines_of(facts.file(name)), facts);
  }
  if (fence.info == "lines") return write_screen(parent, "lines to write", lines_of(fence.text), facts);
  throw std::logic_error("no block is called `" + fence.info + "`");
}
}  // namespace lumwright::cli
