#include "description/season.hpp"
#include "data/first_words.hpp"
#include "description/detail/log_rules.hpp"
#include "description/detail/part_reader.hpp"
#include "description/part_writer.hpp"
#include "description/schema.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright::description {
namespace {
const std::string list_of_season = "lighting_ups.";

/// What a season asks of a log beyond what a log alone must hold to.
std::vector<input::Fault> faults_of_lighting_up(const Log& log, const std::string& where, const std::string& before) {
  std::vector<input::Fault> faults = faults_of_readings(log, where, before);
  if (!log.day)
    faults.push_back({log.at, where + "day", before + "`day` is missing", "as in `day: 2026-05-03`"});
  else if (!log.date())
    faults.push_back({log.day.at, where + "day", fmt::format("{}expected a date, got '{}'", before, *log.day),
                      "as in `2026-05-03` or `3 May 2026`, with any words behind it"});
  if (log.readings.empty() && !log.pack.put_back && !log.remarks)
    faults.push_back({log.at, where + "readings", before + "nothing is told of this lighting-up",
                      "it may hold readings, pack.put_back, remarks"});
  if (part::says_yes(log.pack.ran_flat) && !log.pack.put_back)
    faults.push_back({log.pack.ran_flat.at, where + "pack.ran_flat",
                      before + "a pack that ran flat tells its capacity by `put_back`, which is missing",
                      "as in `pack: { ran_flat: yes, put_back: 1640 mAh }`"});
  return faults;
}
bool same(const Log& one, const Log& other) {
  return one.date() && one.date() == other.date() && one.which() == other.which();
}
std::vector<input::Fault> faults_of_season(const Season& season) {
  std::vector<input::Fault> faults;
  for (std::size_t i = 0; i < season.lighting_ups.size(); ++i) {
    const Log& log = season.lighting_ups[i];
    const std::string before = fmt::format("{}. of the list: ", i + 1);
    for (input::Fault& fault : faults_of_lighting_up(log, list_of_season, before)) faults.push_back(std::move(fault));
    for (std::size_t k = 0; k < i; ++k)
      if (same(season.lighting_ups[k], log))
        faults.push_back(
            {log.day.at, list_of_season + "day",
             fmt::format("{}this day stands on line {} already", before, season.lighting_ups[k].day.at.line),
             "where there were two lighting-ups, the second one says `number: 2`"});
  }
  if (season.lighting_ups.empty())
    faults.push_back({{}, "lighting_ups", "a season needs lighting-ups", "`lumwright log` writes the first one"});
  return faults;
}

std::string head() {
  return data::first_lines("# ") + "#\n" + editor_line("season") +
         "#\n# Every lighting-up of one engine. `lumwright log` writes each new one behind the others and changes no "
         "line "
         "above\n# it; `lumwright tune` and `lumwright season` learn from them.\nlighting_ups:\n";
}
/// One item of the list, `indent` blanks in.
std::string item(const Log& log, std::size_t indent) {
  PartWriter writer(0);
  Log::fields(log, writer);
  std::string out, lead = "- ";
  for (const std::string_view line : words(writer.out, '\n')) {
    out += std::string(indent, ' ') + lead + std::string(line) + "\n";
    lead = "  ";
  }
  return out;
}
/// Where the `-` of the last item stands; two where that cannot be seen.
std::size_t indent_of(const input::Source& source, const Season& season) {
  int last = 0;
  for (const Log& log : season.lighting_ups) last = std::max(last, log.at.line);
  std::string_view text = source.text;
  for (int line = 1; line < last; ++line) text.remove_prefix(text.find('\n') + 1);
  const std::size_t dash = text.find_first_not_of(' ');
  return dash != std::string_view::npos && text[dash] == '-' ? dash : 2;
}
}  // namespace

Season read_season(const input::Source& source) {
  Season season = read_parts<Season>(source, "a season", "lighting_ups:", faults_of_season, most_season_bytes);
  season.file = source.name;
  std::stable_sort(season.lighting_ups.begin(), season.lighting_ups.end(), [](const Log& one, const Log& other) {
    return *one.date() != *other.date() ? *one.date() < *other.date() : one.which() < other.which();
  });
  return season;
}
Log read_lighting_up(const input::Source& source) {
  Log log = read_parts<Log>(source, "a log", "day: 2026-05-03",
                            [](const Log& one) { return faults_of_lighting_up(one, "", ""); });
  log.file = source.name;
  return log;
}
Season season_of(const Log& log) { return {log.file, log.name, {}, {log}}; }

const Log* same_lighting_up(const Season& season, const Log& log) {
  const auto found = std::find_if(season.lighting_ups.begin(), season.lighting_ups.end(),
                                  [&](const Log& one) { return same(one, log); });
  return found == season.lighting_ups.end() ? nullptr : &*found;
}
std::string with_lighting_up(const std::optional<input::Source>& season, const Log& log) {
  if (!season) return head() + item(log, 2);
  const Season before = read_season(*season);
  if (same_lighting_up(before, log) != nullptr) throw std::logic_error("a lighting-up that is in the season already");
  std::string text = season->text;
  if (!text.ends_with('\n')) text += '\n';
  text += item(log, indent_of(*season, before));
  const auto refuse = [&] {
    throw input::InputError(
        *season, {{before.lighting_ups.back().at, "lighting_ups", "nothing can be written behind the last lighting-up",
                   "let `lighting_ups:` stand last in the file, with a `-` before each of them"}});
  };
  try {
    const Season after = read_season({season->name, text});
    const Log* written_now = same_lighting_up(after, log);
    if (after.lighting_ups.size() != before.lighting_ups.size() + 1 || written_now == nullptr ||
        item(*written_now, 0) != item(log, 0))
      refuse();
  } catch (const input::InputError&) {
    refuse();
  }
  return text;
}
}  // namespace lumwright::description
