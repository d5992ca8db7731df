#include "ask.hpp"
#include "commands.hpp"
#include "file_kind.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "season_beside.hpp"
#include "shelf.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
struct LogOptions {
  std::string file, log, season;
  Shelf* shelf;
};
LogOptions log_options(const Words& words) {
  LogOptions options{words.needed("FILE"), words.text("LOG"), "", words.around.shelf};
  if (options.file == "-")
    throw UsageError("`log` keeps the season beside the description, so FILE must be a file and not `-`");
  options.season = season_name(options.file);
  if (options.log.empty() && options.shelf != nullptr) throw UsageError("LOG is missing: lumwright log FILE LOG");
  if (same_file(options.log, options.season))
    throw UsageError("`log` writes to " + input::printable(options.season) + ", so LOG cannot be that file");
  return options;
}
std::optional<input::Source> written_so_far(const LogOptions& options) {
  if (!file_exists(options.shelf, options.season)) return std::nullopt;
  return read_file(options.shelf, options.season);
}
/// Of the file, or what its owner answers.
description::Log lighting_up(const LogOptions& options, const std::optional<description::Season>& season) {
  if (options.log.empty()) return ask_log(season, options.season);
  const input::Source source = read_file(options.shelf, options.log);
  const description::Log log = read_as(FileKind::log, source, description::read_lighting_up);
  const description::Log* there = season ? description::same_lighting_up(*season, log) : nullptr;
  if (there != nullptr)
    throw input::InputError(
        source, {{log.day.at, "day",
                  fmt::format("{} is in {} already, on line {}", description::day_text(*log.date()),
                              input::printable(options.season), there->day.at.line),
                  fmt::format("nothing there is overwritten; of another lighting-up of that day say `number: {}`",
                              log.which() + 1)}});
  return log;
}
Answer run_log(const Words& words) {
  const LogOptions options = log_options(words);
  read_file(options.shelf, options.file);  // a season stands beside a description that is there
  const std::optional<input::Source> before = written_so_far(options);
  std::optional<description::Season> season;
  if (before) season = read_as(FileKind::season, *before, description::read_season);
  const description::Log log = lighting_up(options, season);
  const std::string text = description::with_lighting_up(before, log);
  const std::optional<input::Source> now = written_so_far(options);
  if (now.has_value() != before.has_value() || (now && now->text != before->text))
    throw FileError(
        fmt::format("{} was changed meanwhile, so nothing is written: try again", input::printable(options.season)));
  if (before)
    replace_file(options.shelf, options.season, text);
  else
    create_file(options.shelf, options.season, text);
  const std::size_t count = season ? season->lighting_ups.size() + 1 : 1;
  return {fmt::format("{}{} is written to {}, as the {} of {} there.\nWhat it teaches: lumwright tune {}\n",
                      options.log.empty() ? "\n" : "", description::day_text(*log.date()),
                      input::printable(options.season), count == 1 ? "first" : "last",
                      count == 1 ? "one lighting-up" : fmt::format("{} lighting-ups", count),
                      input::printable(options.file))};
}
}  // namespace

const CommandRow log_command{
    .word = "log",
    .arguments = "FILE LOG",
    .usage = "log FILE [LOG]",
    .brief = "write a lighting-up down in the season's log",
    .about = R"(  Puts a lighting-up behind all others in mine.season.yaml beside mine.yaml, and
  begins that file with the first one. Nothing that stands there is changed: a
  day that is in it already is refused, and a second lighting-up of that day
  says `number: 2`. The file is written whole or not at all.
  Without LOG it asks on the terminal, question by question; a blank line means
  that you do not know. With LOG it takes the file, which holds what help on
  `tune` tells, and its day is a date.

  Beyond that a log may hold
  number                      which lighting-up of the day, after the first
  probe_lag                   time by which the thermometer is behind the water
  fuel                        kind, started_on, lump, bed, bed_mass of that day
  pack                        charged (how full), put_back (charge), ran_flat
  done                        since the time before: swept, reseated, new_cells
  remarks                     anything worth knowing later
  Times may be written as 8:10, minutes and seconds.
)",
    .below = R"(Examples
  lumwright log mine.yaml log.yaml

Exit status: 0, 2 when FILE or LOG cannot be used, the day is in the season
already, or nothing can be written; then the season is as it was.
)",
    .run = run_log};
}  // namespace lumwright::cli
