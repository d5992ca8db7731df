#include "commands.hpp"
#include "description/readings.hpp"
#include "file_kind.hpp"
#include "paper.hpp"
#include "quantity/errors.hpp"
#include "report/fan_test.hpp"
#include "report/picture/fan_test.hpp"
#include "report/templates/orifice_plates.hpp"
#include "shelf.hpp"
#include "style.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct BenchOptions {
  std::string readings, folder, paper;
  bool test_box;  // how to make it
  Format format;
  report::TextStyle style;
  drawing::PrintOptions print;
  Shelf* shelf;
};
BenchOptions bench_options(const Words& words) {
  return {words.needed("READINGS"), words.text("-o"),  words.text("--paper"), words.has("--box"),
          format_of(words),         style_of(words), print_options(words),  words.around.shelf};
}
/// Of the plates that the sheet of the test box tells; nothing where no usual fan comes near this one.
std::optional<fan_test::NextPlate> worth_reading(const description::FanReadings& readings,
                                                 const fan_test::FanTest& test) {
  try {
    return fan_test::next_plate(test, draught::test_box_for(fan_test::expected_fan(readings)));
  } catch (const ModelError&) {
    return std::nullopt;
  }
}
Answer into_folder(const BenchOptions& options, const description::FanReadings& readings,
                   const fan_test::FanTest& test) {
  const draught::ExpectedFan expected = fan_test::expected_fan(readings);
  const auto next = worth_reading(readings, test);
  std::vector<report::NamedText> files = {
      {"curve.yaml", "the lines for a description", fan_test::curve_lines(test)},
      {"fan-test.csv", "the curve with its band, and the readings", report::fan_test_csv(test, options.style.units)},
      {"fan-test.json", "everything as JSON", report::fan_test_json(test)},
      {"fan-test.txt", "the page that `bench` prints",
       report::fan_test_report(test, report::TextStyle{options.style.units}, next)},
      {"fan-test.svg", "the curve in its band, the readings, and what to read next",
       report::fan_test_picture(test, next, report::TextStyle{options.style.units})},
      {"test-box.txt", "how to make the test box",
       report::test_box_sheet(expected, report::TextStyle{options.style.units})}};
  for (report::NamedText& file :
       report::plate_files(draught::test_box_for(expected), expected, options.paper, options.print))
    files.push_back(std::move(file));
  write_folder(options.shelf, options.folder, files);
  return {list_of(options.folder, files)};
}
Answer answer(const BenchOptions& options, const description::FanReadings& readings) {
  if (options.test_box) return {report::test_box_sheet(fan_test::expected_fan(readings), options.style)};
  const fan_test::FanTest test = fan_test::fan_test(readings);
  if (!options.folder.empty()) return into_folder(options, readings, test);
  if (options.format == Format::json) return {report::fan_test_json(test)};
  if (options.format == Format::csv) return {report::fan_test_csv(test, options.style.units)};
  return {report::fan_test_report(test, options.style, worth_reading(readings, test))};
}
Answer run_bench(const Words& words) {
  const BenchOptions options = bench_options(words);
  const input::Source source = read_file(options.shelf, options.readings);
  const description::FanReadings readings = read_as(FileKind::readings, source, [&](const input::Source& file) {
    return description::read_fan_readings(
        file, options.test_box ? description::ReadingsAre::to_come : description::ReadingsAre::there);
  });
  try {
    Answer told = answer(options, readings);
    told.head = head_of(options.format);
    return told;
  } catch (const fan_test::ReadingFault& e) {
    throw input::InputError(source, {e.fault});
  } catch (const ModelError& e) {
    throw report::NoAnswer(fmt::format("no curve follows from these readings: {}", e.what()));
  }
}
}  // namespace

const CommandRow bench_command{
    .word = "bench",
    .arguments = "READINGS",
    .usage = "bench READINGS",
    .brief = "the curve of an unmarked fan from a shop-made test",
    .headline = "bench READINGS: the curve of an unmarked fan",
    .about = R"(  Works out a fan's curve from a test made with a box, plates with sharp holes
  and a U-tube: corrected to air of 1.2 kg/m3 and to the rated voltage, with its
  band, and with warnings of a box too small, a leak, readings out of range. The
  last lines it prints go into a description as they are.
  `lumwright new --readings FILE` writes a file of readings to fill in.
)",
    .first = "--box -o",
    .below = R"(Examples
  lumwright new --readings fan.yaml
  lumwright bench --box fan.yaml
  lumwright bench fan.yaml -o fan-test

Exit status: 0, 1 when no curve follows from the readings, 2 when they
cannot be used.
)",
    .run = run_bench};
}  // namespace lumwright::cli
