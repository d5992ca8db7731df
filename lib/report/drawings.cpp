#include "report/drawings.hpp"
#include "model/shop_steps.hpp"
#include "report/build_sheet.hpp"
#include "report/templates/templates.hpp"
#include "report/templates/wiring.hpp"
#include <fmt/format.h>

namespace lumwright::report {
namespace {
/// Whatever is written in the description, a whole table is in one unit, and its heads name it.
std::string places_csv(const model::FanUnit& unit, bool inches) {
  std::string text = "part,hole";
  for (const char* column : {"diameter", "x_from_middle", "y_from_middle", "x_from_edge", "y_from_edge"})
    text += fmt::format(",{}_{}", column, inches ? "in" : "mm");
  const auto number = [inches](Length size) {
    return inches ? fixed_number(in(size, inch), 4) : fixed_number(in(size, mm), 3);
  };
  for (const HolePlace& hole : hole_places(unit)) {
    text += fmt::format("\n{},{}", hole.part, hole.what);
    const workshop::PlanePoint edges = hole.from_edges(inches ? 0.1 * thou : 0.001 * mm);
    for (const Length& size : {hole.diameter, hole.centre.x, hole.centre.y, edges.x, edges.y})
      text += "," + number(size);
  }
  return text + "\n";
}
std::string without_folders(const std::string& path) {
  const std::size_t slash = path.find_last_of("/\\");
  return slash == std::string::npos ? path : path.substr(slash + 1);
}
/// What holds where no limits are written, by the work that makes it.
std::string usual_limits(const description::Build& build, drawing::Figures figures) {
  const model::ShopSteps steps = model::shop_steps(build);
  const bool inches = figures == drawing::Figures::inches || figures == drawing::Figures::inches_mm;
  const auto within = [&](Length step) {
    return inches ? fmt::format("\u00B1{:.0f}", in(step, thou)) : fmt::format("\u00B1{:g}", in(step, mm));
  };
  return fmt::format("turned {}, filed {}, snipped {} {}, ISO 2768-m", within(steps.turned), within(steps.filed),
                     within(steps.snipped), inches ? "thou" : "mm");
}
drawing::TitleBlock title_of(const plan::Assessment& assessment, std::string tolerance, bool draft) {
  return {.name = assessment.build.empty() ? assessment.file : assessment.build,
          .number = without_folders(assessment.file),
          .tolerance = std::move(tolerance),
          .draft = draft};
}
}  // namespace

std::vector<NamedText> drawing_files(const plan::Assessment& assessment, const model::Solved& solved,
                                     const DrawingWish& wish) {
  if (!solved.unit.impossible.empty()) throw NothingToMake(solved.unit.impossible);
  if (!solved.unit)
    throw NothingToMake("the description says nothing of the unit to make: " +
                        description::way("describe", wish.front));
  const auto failed = failed_geometry(assessment);
  if (!failed.empty() && !wish.draft) {
    throw NoAnswer(fmt::format("not drawn, because {}: {}; change the description, or {}",
                               failed.size() == 1 ? "this fails" : "these fail", fmt::join(failed, ", "),
                               description::way("draft", wish.front)));
  }
  const std::vector<Template> parts = templates(*solved.unit, solved.build, wish.units);
  if (parts.empty())
    throw NothingToMake("too little is described to draw any part: " + description::way("describe", wish.front));
  const drawing::TitleBlock title =
      title_of(assessment, usual_limits(solved.build, parts.front().view.figures), !failed.empty());
  std::vector<drawing::View> views;
  views.reserve(parts.size());
  for (const Template& part : parts) views.push_back(part.view);
  drawing::Drawing sheets = drawing::lay_out(title, drawing::paper(wish.paper), views, drawing::Oversize::say);
  if (auto whole = general_arrangement(*solved.unit, solved.build, wish.units, sheets.paper))
    sheets.sheets.insert(sheets.sheets.begin(), std::move(*whole));
  if (auto circuit = wiring_diagram(assessment, solved, TextStyle{wish.units}, sheets.paper))
    sheets.sheets.push_back(std::move(*circuit));
  std::vector<NamedText> files = {
      {"templates.pdf", "the whole, then each part at true size to stick on", pdf(sheets, wish.print)}};
  int number = 0;
  for (std::string& text : svg(sheets, wish.print))
    files.push_back({fmt::format("templates-{}.svg", ++number), "the same, one sheet each", std::move(text)});
  for (const Template& part : parts)
    files.push_back({part.id + "_mm.dxf", "DXF R12 in millimetres, for a machine", dxf(part.view, title)});
  files.push_back(
      {"holes.csv", "co-ordinates of every hole", places_csv(*solved.unit, marks_out_in_inches(solved, wish.units))});
  files.push_back({"sheet.txt", "cut list, drill list, order of work",
                   build_sheet(assessment, solved, TextStyle{.units = wish.units, .front = wish.front})});
  return files;
}
}  // namespace lumwright::report
