#include "commands.hpp"
#include "described.hpp"
#include "shelf.hpp"
#include "paper.hpp"
#include "report/drawings.hpp"

namespace lumwright::cli {
namespace {
struct DrawOptions : DescriptionOptions {
  std::string folder{};
  report::DrawingWish wish{};
};
DrawOptions draw_options(const Words& words) {
  const DescriptionOptions options = description_options(words, words.needed("FILE"));
  return {options, words.needed("-o"),
          {.paper = words.text("--paper"),
           .print = print_options(words),
           .draft = words.has("--draft"),
           .units = options.units}};
}
Answer run_draw(const Words& words) {
  const DrawOptions options = draw_options(words);
  const Described told = described(options);
  Progress progress("samples");
  const plan::SamplesAsked samples = samples_asked(options, progress);  // those of `check`, for the same verdicts
  const model::Solved solved = plan::solved_to_judge(told.build, options.units, told.used(), samples);
  const auto files = report::drawing_files(
      judged_once(options, [&] { return plan::judged(solved, told.used(), samples); }), solved, options.wish);
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files)};
}
}  // namespace

const CommandRow draw_command{
    .word = "draw",
    .arguments = "FILE",
    .usage = "draw FILE -o DIR",
    .brief = "1:1 templates for tin and brass, to print and cut",
    .headline = "draw FILE -o DIR: 1:1 templates for tin and brass",
    .about = R"(  Writes into the folder DIR, which is made if it is not there:
    templates.pdf             sheet 1: the whole, with its parts list; then every
                              part at true size, to print at 100 %, check with
                              the two bars, and stick on the metal
    templates-1.svg ...       the same, one sheet each
    flange_mm.dxf ...         each part for a machine (DXF R12, millimetres)
    holes.csv                 co-ordinates of every hole, about the middle of
                              the part and from the edges that touch it
    sheet.txt                 the build sheet, as `lumwright sheet` prints it
  Files of these names are replaced, others are left alone. A build that fails
  a check of fit or making (fit.*, make.*) is not drawn, unless as a draft. The
  screw holes of a fan whose sizes no table fixes are drawn only when the
  description says `measured: yes` under fan.holes.
)",
    .below = R"(Examples
  lumwright draw mine.yaml -o bench
  lumwright draw mine.yaml -o bench --paper Letter --scale-x "99.5 mm"

Exit status: 0, 1 when the build is not to be drawn, and says why; with 2
when the description or an option cannot be used.
)",
    .run = run_draw};
}  // namespace lumwright::cli
