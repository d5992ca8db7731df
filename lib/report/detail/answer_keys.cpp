#include "report/detail/answer_keys.hpp"
#include "report/answers.hpp"

namespace lumwright::report {
namespace {
constexpr auto maybe = AnswerKey::When::maybe;
constexpr std::string_view verdict_choices = "pass|watch|fail|unknown";

void add(std::vector<AnswerKey>& all, std::vector<AnswerKey> more) { all.insert(all.end(), more.begin(), more.end()); }
void add_results(std::vector<AnswerKey>& all) {
  add(all, {{"results", "object", "the numbers by their keys; one that cannot be worked out is left out"},
            {"results/*/value", "number|text", "in SI; of power.stop_reason a word"},
            {"results/*/unit", "text", "of value, low and high; 1 for a share or a count", maybe},
            {"results/*/low", "number", "eight of ten samples lie between low and high", maybe},
            {"results/*/high", "number", "left out where some samples never come there", maybe},
            {"results/*/share", "number", "of the samples that come there at all", maybe}});
}
void add_checks(std::vector<AnswerKey>& all) {
  add(all, {{"checks", "list", "what was looked into, in the order of the report"},
            {"checks/[]/id", "text", "as `explain` takes it"},
            {"checks/[]/title", "text", "what it is called"},
            {"checks/[]/verdict", verdict_choices, "the answer"},
            {"checks/[]/value", "measure?", "what was found"},
            {"checks/[]/limit", "measure?", "the one of its two limits that decided"},
            {"checks/[]/bound", "at most|at least?", "on which side of the limit the value should lie"},
            {"checks/[]/limit_name", "to pass|or it fails?", "what lies beyond the limit"},
            {"checks/[]/why", "text", "the reason in words, in the units of the page"},
            {"checks/[]/do", "text", "what to do about it; empty where it passes"},
            {"checks/[]/source", "text", "where the rule comes from"},
            {"checks/[]/standing", "text",
             "how sure that is: standard, secondary, derived, measured, memory, practice, estimate"},
            {"checks/[]/missing", "texts", "keys that would settle one that is unknown"},
            {"checks/[]/holds", "number", "share of the samples in which it does not fail", maybe},
            {"checks/[]/move", "object", "the least change that was tried and clears it", maybe},
            {"checks/[]/move/words", "text", "the change in words"},
            {"checks/[]/move/set", "texts", "the same as --set takes it"},
            {"checks/[]/move/value", "measure", "what the check then finds", maybe},
            {"checks/[]/move/steam", "measure", "time to the engine's own blower then", maybe}});
}
void add_assumed(std::vector<AnswerKey>& all) {
  add(all, {{"assumed", "list", "what stands in for what the description does not say"},
            {"assumed/[]/key", "text", "of the description"},
            {"assumed/[]/value", "text", "with its unit"},
            {"assumed/[]/band", "text", "between what it usually lies; empty where it was not drawn"},
            {"assumed/[]/why", "text", "why this value"},
            {"assumed/[]/source", "text", "where it comes from"},
            {"assumed/[]/standing", "text", "how sure that is"}});
}
void add_cautions(std::vector<AnswerKey>& all) {
  add(all, {{"cautions", "list", "that apply, in full"},
            {"cautions/[]/id", "text", "its name"},
            {"cautions/[]/title", "text", "its heading"},
            {"cautions/[]/text", "text", "the caution"},
            {"cautions/[]/authority", "text", "who says so"},
            {"safety", "texts", "the two lines that stand before every answer"}});
}
void add_bands(std::vector<AnswerKey>& all) {
  add(all, {{"bands", "object", "what the samples show; left out with --samples 0", maybe},
            {"bands/samples", "whole", "how many"},
            {"bands/seed", "whole", "the same seed gives the same answer"},
            {"bands/inputs", "whole", "inputs that were drawn"},
            {"bands/share_error", "number", "standard error of a share of one half"},
            {"bands/edge_error", "number", "standard error of the first band's ends, over its width", maybe},
            {"bands/answers", "list", "what each chief answer hangs on"},
            {"bands/answers/[]/answer", "text", "key of a result"},
            {"bands/answers/[]/widest", "list", "the inputs that widen it most"},
            {"bands/answers/[]/widest/[]/key", "text", "of the description, or of what is tuned"},
            {"bands/answers/[]/widest/[]/meaning", "text", "in words"},
            {"bands/answers/[]/widest/[]/share", "number", "of the answer's variance"},
            {"bands/answers/[]/widest/[]/value", "number", "what was taken"},
            {"bands/answers/[]/widest/[]/low", "number", "between what it may lie"},
            {"bands/answers/[]/widest/[]/high", "number", "and what"},
            {"bands/answers/[]/widest/[]/unit", "text", "of the three"},
            {"bands/answers/[]/measure", "list", "measurements that would narrow it, the best first"},
            {"bands/answers/[]/measure/[]/id", "text", "its name"},
            {"bands/answers/[]/measure/[]/of", "text", "what is measured: a key or a result"},
            {"bands/answers/[]/measure/[]/within", "text", "how well"},
            {"bands/answers/[]/measure/[]/left", "number", "width of the band afterwards, over what it is now"},
            {"bands/answers/[]/measure/[]/needs", "text", "what must be there first"},
            {"bands/answers/[]/measure/[]/tool", "text", "with what"},
            {"bands/answers/[]/measure/[]/how", "text", "how"},
            {"bands/answers/[]/measure/[]/write", "text", "where the reading goes"},
            {"bands/answers/[]/measure/[]/source", "text", "where that comes from"},
            {"bands/answers/[]/measure/[]/standing", "text", "how sure it is"}});
}
/// Columns of numbers, all of one length; one whose source is not described is empty.
std::vector<AnswerKey> series_of(bool of_trace) {
  std::vector<AnswerKey> all{
      {"series", "object", of_trace ? "what was asked for" : "courses through time; those that can be worked out"},
      {"series/raise", "object", "from lighting up to working pressure", maybe},
      {"series/raise/t", "numbers", "s"},
      {"series/raise/water_temperature", "numbers", "K"},
      {"series/raise/gauge_pressure", "numbers", "Pa above the air"},
      {"series/raise/air_flow", "numbers", "kg/s through the engine"},
      {"series/raise/fan_gas_temperature", "numbers", "K"},
      {"series/raise/pack_voltage", "numbers", "V"},
      {"series/raise/pack_current", "numbers", "A"},
      {"series/discharge", "object", "the pack from full until it stops", maybe},
      {"series/discharge/t", "numbers", "s"},
      {"series/discharge/pack_voltage", "numbers", "V"},
      {"series/discharge/pack_current", "numbers", "A"}};
  return all;
}
}  // namespace

std::vector<AnswerKey> keys_of_check() {
  std::vector<AnswerKey> all{{"format", "lumwright/1", "of this answer"},
                             {"build", "text", "its name"},
                             {"verdict", verdict_choices, "of the whole: the gravest of the checks"}};
  add_results(all);
  add_checks(all);
  add_assumed(all);
  add_cautions(all);
  add(all, series_of(false));
  add(all, {{"remarks", "list", "what looks like a slip of the pen", maybe},
            {"remarks/[]/key", "text", "of the description"},
            {"remarks/[]/text", "text", "what is odd about it"}});
  add_bands(all);
  all.push_back({"tuned", "text", "the file of tuned values that was used", maybe});
  return all;
}
std::vector<AnswerKey> keys_of_trace() {
  std::vector<AnswerKey> all{{"format", "lumwright-trace/1", "of this answer"}, {"build", "text", "its name"}};
  add(all, series_of(true));
  add(all, {{"units", "object", "of every column, under the same names"},
            {"units/*/*", "text", "its unit"},
            {"events", "list", "what happens while steam is raised"},
            {"events/[]/kind", "text", "boils, own_blower, working, pack_stops and others"},
            {"events/[]/t", "number", "s"},
            {"safety", "texts", "the two lines that stand before every answer"}});
  return all;
}
const std::vector<AnswerKind>& answer_kinds() {
  static const std::vector<AnswerKind> all{{"check", "check --format json", keys_of_check()},
                                           {"trace", "trace --json", keys_of_trace()},
                                           {"choose", "choose --format json", keys_of_choose()},
                                           {"bench", "bench --format json", keys_of_bench()},
                                           {"prove", "prove --format json", keys_of_prove()}};
  return all;
}
}  // namespace lumwright::report
