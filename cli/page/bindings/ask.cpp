#include "asked.hpp"
#include "quantity/errors.hpp"
#include "report/no_answer.hpp"
#include <cstring>
#include <map>
#include <stdexcept>

namespace lumwright::page {
namespace {
Json faults_of(const input::InputError& e) {
  Json all = Json::array();
  for (const input::Fault& fault : e.faults())
    all.push_back({{"line", fault.at.line},
                   {"column", fault.at.column},
                   {"width", fault.at.width},
                   {"key", fault.key},
                   {"message", fault.message},
                   {"help", fault.help}});
  return {{"faults", std::move(all)}, {"told", e.what()}};
}
Json answered(const Json& question) {
  static const std::map<std::string, Json (*)(const Json&)> does{{"form", [](const Json&) { return form(); }},
                                                                 {"style", [](const Json&) { return style(); }},
                                                                 {"answer", answer},
                                                                 {"json", report_as_json},
                                                                 {"files", files},
                                                                 {"levers", levers},
                                                                 {"tune", tuned},
                                                                 {"choose", choice}};
  const auto found = does.find(question.at("do").get<std::string>());
  if (found == does.end()) throw std::logic_error("nothing is done for " + question.at("do").dump());
  return found->second(question);
}
}  // namespace

input::Source source_of(const Json& question, const char* key, const std::string& name) {
  return {name, question.at(key).get<std::string>()};
}
std::string ask(const std::string& question) {
  Json out;
  try {
    out = answered(Json::parse(question));
  } catch (const input::InputError& e) {
    out = faults_of(e);
  } catch (const report::NoAnswer& e) {
    out = {{"refused", e.what()}};
  } catch (const ModelError& e) {
    out = {{"refused", e.what()}};
  } catch (const std::exception& e) {
    out = {{"error", e.what()}};
  }
  return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}
}  // namespace lumwright::page

/// The question and the answer are UTF-8; whoever asks frees the answer.
extern "C" char* lumwright_ask(const char* question) { return strdup(lumwright::page::ask(question).c_str()); }
