#include "asked.hpp"
#include "choose/choose.hpp"
#include "described.hpp"
#include "report/files.hpp"
#include "report/tuned.hpp"
#include "tune/tune.hpp"

namespace lumwright::page {
Json tuned(const Json& question) {
  const Described told(question);
  const description::Season season =
      description::season_of(description::read_log(source_of(question, "log", "log.yaml")));
  const tune::TuneResult result = tune::tune(told.build, season);
  return {{"told", report::tuned_report(result, season, "this page", style_of(told))},
          {"tuned", description::write_tuned(tune::file_of(result, season))}};
}
Json choice(const Json& question) {
  const description::Bin bin = description::read_bin(source_of(question, "text", question.value("name", "bin.yaml")));
  const std::vector<report::NamedText> files =
      report::choice_files(choose::choose(bin, {.samples = question.value("samples", std::size_t{0})}),
                           {.front = description::FrontEnd::page});
  Json all = Json::array();
  for (const report::NamedText& file : files) all.push_back({{"name", file.name}, {"what", file.what}, {"text", file.text}});
  return {{"html", files.front().text}, {"files", std::move(all)}};
}
}  // namespace lumwright::page
