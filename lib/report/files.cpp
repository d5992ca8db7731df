#include "report/files.hpp"
#include "report/choice.hpp"
#include "report/html/choice.hpp"
#include "report/json.hpp"
#include "report/markdown.hpp"
#include "report/tables.hpp"
#include "report/trace.hpp"
#include <algorithm>

namespace lumwright {
namespace {
bool has(const Assessment& a, std::string_view series) {
  return std::any_of(a.series.begin(), a.series.end(), [&](const Series& one) { return one.name == series; });
}
/// Every file but the first, which is the page that names them.
std::vector<Beside> beside_the_page(const std::vector<NamedText>& files, std::vector<Beside> more = {}) {
  for (auto file = files.begin() + 1; file != files.end(); ++file) more.push_back({file->name, file->what});
  return more;
}
}  // namespace

std::vector<NamedText> report_files(const ReportData& data, const TextStyle& style,
                                    const std::vector<Beside>& drawings) {
  const Assessment& a = data.assessment;
  std::vector<NamedText> files{{"report.html", "the report, to read", ""},
                               {"report.md", "the same words, for a notebook", markdown_report(data, style)},
                               {"report.json", "everything, for other programs", json_report(a)},
                               {"checks.csv", "every check, for a spreadsheet", checks_csv(a)},
                               {"assumed.csv", "every assumed value", assumed_csv(a)}};
  if (has(a, "raise")) files.push_back({"raise.csv", "the way to steam through time", trace_csv(a, "raise")});
  if (has(a, "discharge")) files.push_back({"discharge.csv", "the pack over one charge", trace_csv(a, "discharge")});
  if (data.supply) files.push_back({"light-ups.csv", "the pack, light-up after light-up", light_ups_csv(*data.supply)});
  if (data.draught) files.push_back({"draught.csv", "fan and gas path, curves", draught_csv(*data.draught)});
  files.front().text = html_report(data, style, beside_the_page(files, drawings));
  return files;
}

std::vector<NamedText> choice_files(const Choice& choice, const TextStyle& style) {
  std::vector<NamedText> files{{"choice.html", "what to take, to read, with a picture for each engine", ""},
                               {"choice.txt", "the page that `choose` prints", choice_report(choice, {style.units})},
                               {"choice.json", "everything, for other programs", choice_json(choice)},
                               {"choice.csv", "every combination, for a spreadsheet", choice_csv(choice)}};
  files.front().text = html_choice(choice, style, beside_the_page(files));
  return files;
}
}  // namespace lumwright
