#include "asked.hpp"
#include "described.hpp"
#include "plan/moves.hpp"
#include "plan/report_data.hpp"
#include "report/folder.hpp"
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
  const report::Folder folder = report::report_folder(data, solved,
                                                      {.paper = question.value("paper", "A4"),
                                                       .print = {},
                                                       .draft = question.value("draft", false),
                                                       .units = told.units,
                                                       .front = description::FrontEnd::page});
  Json all = Json::array();
  for (const report::NamedText& one : folder.files) all.push_back(file(one));
  return {{"files", std::move(all)}, {"not_drawn", folder.not_drawn}};
}
}  // namespace lumwright::page
