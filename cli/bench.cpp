#include "commands.hpp"
#include "description/readings.hpp"
#include "file_kind.hpp"
#include "shelf.hpp"
#include "paper.hpp"
#include "quantity/errors.hpp"
#include "report/fan_test.hpp"
#include "report/templates/orifice_plates.hpp"
#include "style.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
Answer into_folder(const Options& options, const FanReadings& readings, const FanTest& test) {
  const ExpectedFan expected = expected_fan(readings);
  std::vector<NamedText> files = {
      {"curve.yaml", "the lines for a description", curve_lines(test)},
      {"fan-test.csv", "the curve with its band, and the readings", fan_test_csv(test, options.units)},
      {"fan-test.json", "everything as JSON", fan_test_json(test)},
      {"fan-test.txt", "the page that `bench` prints", fan_test_report(test, TextStyle{options.units})},
      {"test-box.txt", "how to make the test box", test_box_sheet(expected, TextStyle{options.units})}};
  for (NamedText& file : plate_files(test_box_for(expected), options.paper, print_options(options)))
    files.push_back(std::move(file));
  write_folder(options, files);
  return {list_of(options.folder, files)};
}
Answer answer(const Options& options, const FanReadings& readings) {
  if (options.test_box) return {test_box_sheet(expected_fan(readings), style_of(options))};
  const FanTest test = fan_test(readings);
  if (!options.folder.empty()) return into_folder(options, readings, test);
  if (options.format == Format::json) return {fan_test_json(test)};
  if (options.format == Format::csv) return {fan_test_csv(test, options.units)};
  return {fan_test_report(test, style_of(options))};
}
}  // namespace

Answer bench(const Options& options) {
  const Source source = read_file(options, options.file);
  const FanReadings readings = read_as(FileKind::readings, source, [&](const Source& file) {
    return read_fan_readings(file, options.test_box ? ReadingsAre::to_come : ReadingsAre::there);
  });
  try {
    return answer(options, readings);
  } catch (const ReadingFault& e) {
    throw InputError(source, {e.fault});
  } catch (const ModelError& e) {
    throw NoAnswer(fmt::format("no curve follows from these readings: {}", e.what()));
  }
}
}  // namespace lumwright::cli
