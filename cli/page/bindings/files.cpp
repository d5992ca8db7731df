#include "report/files.hpp"
#include "asked.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "plan/report_data.hpp"
#include "quantity/errors.hpp"
#include "report/build_sheet.hpp"
#include "report/drawings.hpp"
#include <boost/archive/iterators/base64_from_binary.hpp>
#include <boost/archive/iterators/transform_width.hpp>

namespace lumwright::page {
namespace {
std::string base64(const std::string& bytes) {
  namespace it = boost::archive::iterators;
  using Digits = it::base64_from_binary<it::transform_width<std::string::const_iterator, 6, 8>>;
  std::string text(Digits(bytes.begin()), Digits(bytes.end()));
  return text.append((3 - bytes.size() % 3) % 3, '=');
}
Json file(const report::NamedText& one) {
  const bool binary = one.name.ends_with(".pdf");
  return {{"name", one.name}, {"what", one.what}, {"base64", binary}, {"text", binary ? base64(one.text) : one.text}};
}
}  // namespace

Json files(const Json& question) {
  const Described told(question);
  const model::Solved solved = plan::solved_to_judge(told.build, told.units, told.used(), told.samples);
  plan::ReportData data = plan::report_data(solved, told.used(), told.samples);
  data.program = "lumwright " LUMWRIGHT_VERSION;
  plan::try_moves(data.assessment, told.build, told.units, told.used(), told.samples);
  std::vector<report::NamedText> drawn;
  std::string not_drawn;
  try {
    drawn = report::drawing_files(data.assessment, solved,
                          {.paper = question.value("paper", "A4"),
                           .print = {},
                           .draft = question.value("draft", false),
                           .units = told.units});
  } catch (const report::NoAnswer& why) {  // the rest is worth having without them
    not_drawn = why.what();
  } catch (const ModelError& why) {
    not_drawn = why.what();
  }
  std::vector<report::Beside> beside;
  for (const report::NamedText& one : drawn) beside.push_back({one.name, one.what});
  Json all = Json::array();
  for (const report::NamedText& one : report::report_files(data, {.units = told.units}, beside)) all.push_back(file(one));
  for (const report::NamedText& one : drawn) all.push_back(file(one));
  return {{"files", std::move(all)}, {"not_drawn", not_drawn}};
}
}  // namespace lumwright::page
