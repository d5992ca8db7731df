#include "report/files.hpp"
#include "report/choice.hpp"
#include "report/detail/markdown.hpp"
#include "report/detail/tables.hpp"
#include "report/html/choice.hpp"
#include "report/json.hpp"
#include "report/trace.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
bool has(const plan::Assessment& a, std::string_view series) {
  return std::any_of(a.series.begin(), a.series.end(), [&](const plan::Series& one) { return one.name == series; });
}
/// Every file but the first, which is the page that names them.
std::vector<Beside> beside_the_page(const std::vector<NamedText>& files, std::vector<Beside> more = {}) {
  for (auto file = files.begin() + 1; file != files.end(); ++file) more.push_back({file->name, file->what});
  return more;
}
}  // namespace

std::vector<NamedText> report_files(const plan::ReportData& data, const TextStyle& style,
                                    const std::vector<Beside>& drawings) {
  const plan::Assessment& a = data.assessment;
  std::vector<NamedText> files{{"report.html", "the report, to read", ""},
                               {"report.md", "the same words, for a notebook", markdown_report(data, style)},
                               {"report.json", "everything, for other programs", json_report(a)},
                               {"checks.csv", "every check, for a spreadsheet", checks_csv(a, style.units)},
                               {"assumed.csv", "every assumed value", assumed_csv(a)}};
  if (has(a, "raise"))
    files.push_back({"raise.csv", "the way to steam through time", trace_csv(a, "raise", style.units)});
  if (has(a, "discharge"))
    files.push_back({"discharge.csv", "the pack over one charge", trace_csv(a, "discharge", style.units)});
  if (data.supply)
    files.push_back({"light-ups.csv", "the pack, light-up after light-up", light_ups_csv(*data.supply, style.units)});
  if (data.draught)
    files.push_back({"draught.csv", "fan and gas path, curves", draught_csv(*data.draught, style.units)});
  files.front().text = html_report(data, style, beside_the_page(files, drawings));
  return files;
}

namespace {
/// "tarn-beck-no-2": a name that every file system takes.
std::string file_word(std::string_view name) {
  constexpr std::size_t most = 40;
  std::string out;
  for (const char c : name) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (plain || (c >= 'A' && c <= 'Z'))
      out += plain ? c : static_cast<char>(c - 'A' + 'a');
    else if (!out.empty() && out.back() != '-')
      out += '-';
  }
  if (out.size() > most) out.resize(most);
  while (out.ends_with('-')) out.pop_back();
  return out.empty() ? "engine" : out;
}
void add_description(std::vector<NamedText>& files, const std::string& name, const std::string& what,
                     const std::string& text) {
  const auto taken = [&](const std::string& full) {
    return std::any_of(files.begin(), files.end(), [&](const NamedText& f) { return f.name == full; });
  };
  std::string full = name + ".yaml";
  for (int number = 2; taken(full); ++number) full = fmt::format("{}-{}.yaml", name, number);
  files.push_back({full, what, text});
}
// What is advised, as descriptions; what fails a wish is none.
void add_descriptions(std::vector<NamedText>& files, const choose::Choice& choice, description::FrontEnd front) {
  const std::string& use = description::way("to-check", front);
  for (const choose::EngineChoice& engine : choice.engines)
    if (!engine.places.empty() && engine.places.front().fails.empty())
      add_description(files, "first-" + file_word(engine.engine), "the first place of " + engine.engine + ", " + use,
                      engine.places.front().description);
  if (choice.for_all.empty()) return;
  for (const choose::Serving& s : choice.for_all.front().engines)
    if (s.with && s.with->in_time && s.with->enough)
      add_description(files, "for-all-" + file_word(s.engine), "the unit for all on " + s.engine + ", " + use,
                      s.description);
}
}  // namespace

std::vector<NamedText> choice_files(const choose::Choice& choice, const TextStyle& style) {
  std::vector<NamedText> files{
      {"choice.html", "what to take, to read, with a picture for each engine", ""},
      {"choice.txt", description::way("choice-page", style.front), choice_report(choice, {style.units})},
      {"choice.json", "everything, for other programs", choice_json(choice)},
      {"choice.csv", "every combination, for a spreadsheet", choice_csv(choice, style.units)}};
  add_descriptions(files, choice, style.front);
  files.front().text = html_choice(choice, style, beside_the_page(files));
  return files;
}
}  // namespace lumwright::report
