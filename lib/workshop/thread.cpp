#include "workshop/thread.hpp"
#include "quantity/require.hpp"
#include "data/shop_rules.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace lumwright::workshop {
namespace {
bool digit(char c) { return c >= '0' && c <= '9'; }

std::string swapped(const std::string& text, std::string_view word, std::string_view by) {
  std::string out;
  std::size_t from = 0;
  for (auto at = text.find(word); at != std::string::npos; at = text.find(word, from)) {
    out.append(text, from, at - from).append(by);
    from = at + word.size();
  }
  return out.append(text, from);
}
// a dot or comma stays only where a decimal follows; 0.50 and .5 become 0.5
std::string plain_numbers(const std::string& text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool point = text[i] == '.' || text[i] == ',';
    if (!point) {
      out += text[i];
      continue;
    }
    if (i + 1 == text.size() || !digit(text[i + 1])) continue;
    if (out.empty() || !digit(out.back())) out += '0';
    std::size_t end = i + 1;
    while (end < text.size() && digit(text[end])) ++end;
    std::string decimals = text.substr(i + 1, end - i - 1);
    decimals.erase(decimals.find_last_not_of('0') + 1);
    if (!decimals.empty()) out += '.' + decimals;
    i = end - 1;
  }
  return out;
}
// "1/4 in x 40 T.P.I. ME" and "1/4-40 me" become "1/4x40me"
std::string folded(std::string_view spelling) {
  std::string text;
  for (char c : spelling) text += c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
  text = plain_numbers(swapped(text, "no.", ""));
  for (const std::string_view word : {"×", "by", "*", "-", "–"}) text = swapped(text, word, "x");
  for (const std::string_view word : {" ", "\"", "″", "#", "tpi", "no", "inch", "in", "mm"})
    text = swapped(text, word, "");
  return text;
}
// every folded spelling that a row answers to, the full one first
std::vector<std::string> spellings(const data::ThreadRow& row) {
  std::vector<std::string> found{folded(row.name)};
  const std::string& full = found.front();
  if (row.form == "ba") {
    found.push_back(fmt::format("ba{}", full.substr(0, full.size() - 2)));
  } else if (row.form == "metric") {
    found.push_back(full + "x" + plain_numbers(fmt::format("{:.2f}", in(row.pitch, mm))));
  } else {
    const std::size_t tail = row.form.size();  // "me", "unc", "unf"
    const std::string bare = full.substr(0, full.size() - tail);
    found.push_back(bare);
    found.push_back(row.form + bare);
    const std::string size = bare.substr(0, bare.find('x'));
    found.push_back(size + row.form);
    found.push_back(row.form + size);
  }
  return found;
}
std::string listed(const std::vector<std::string>& names) {
  std::string text;
  for (const std::string& name : names) text += (text.empty() ? "`" : ", `") + name + "`";
  return text;
}
std::string nearest_name(const std::string& wanted) {
  std::vector<std::string> words, names;
  for (const data::ThreadRow& row : data::threads())
    for (std::string& word : spellings(row)) {
      words.push_back(std::move(word));
      names.push_back(row.name);
    }
  const std::vector<std::string_view> candidates(words.begin(), words.end());
  const std::string_view best = nearest(wanted, candidates);
  const auto found = std::find(words.begin(), words.end(), best);
  return best.empty() ? "" : names[static_cast<std::size_t>(found - words.begin())];
}
Length form_depth(const data::ThreadRow& thread) {
  return thread.depth.value_or(data::thread_form(thread.form).depth * thread.pitch);
}
}  // namespace

const data::ThreadRow& thread(std::string_view spelling) {
  const std::string wanted = folded(spelling);
  std::vector<const data::ThreadRow*> found;
  for (const data::ThreadRow& row : data::threads()) {
    const auto known = spellings(row);
    if (std::find(known.begin(), known.end(), wanted) != known.end()) found.push_back(&row);
  }
  if (found.size() == 1) return *found.front();
  if (found.size() > 1) {
    std::vector<std::string> names;
    names.reserve(found.size());
    for (const data::ThreadRow* row : found) names.push_back(row->name);
    throw ModelError(fmt::format("`{}` fits more than one thread: {}", spelling, listed(names)));
  }
  const std::string likely = nearest_name(wanted);
  throw ModelError(fmt::format("no thread is called `{}`; {}", spelling,
                               likely.empty() ? "known are 0BA to 14BA, M1.6 to M6, ME such as `1/4x40 ME`, UNC and UNF"
                                              : "did you mean `" + likely + "`"));
}

ThreadSizes thread_sizes(const data::ThreadRow& thread) {
  const data::ThreadForm& form = data::thread_form(thread.form);
  ThreadSizes sizes{.pitch_diameter = thread.major - form.pitch_line * thread.pitch,
                    .nut_minor = thread.major - form.nut_minor * thread.pitch,
                    .root = thread.major - form.root * thread.pitch,
                    .stress_area = {},
                    .depth = form_depth(thread)};
  if (thread.depth) {  // the standard's own rounding, not the rule
    sizes.pitch_diameter = thread.major - *thread.depth;
    sizes.nut_minor = sizes.root = thread.major - 2.0 * *thread.depth;
  }
  sizes.stress_area = circle(0.5 * (sizes.pitch_diameter + sizes.root));
  return sizes;
}

ThreadShare thread_share(const data::ThreadRow& thread, Length hole) {
  require_above_zero("tapping hole", hole, "mm");
  require_that("tapping hole", hole, hole < thread.major, "below the major diameter of the thread", "mm");
  const auto handbook = data::thread_form(thread.form).handbook_depth;
  return {.of_form = (thread.major - hole) / (2.0 * form_depth(thread)),
          .of_handbook =
              handbook ? std::optional<double>((thread.major - hole) / (*handbook * thread.pitch)) : std::nullopt};
}

Length clearance_hole(const data::ThreadRow& thread, ClearanceFit fit) {
  if (fit == ClearanceFit::fine) return thread.fine.value_or(thread.medium);
  return fit == ClearanceFit::coarse ? thread.coarse.value_or(thread.medium) : thread.medium;
}

const data::DrillRow& nearest_drill(Length diameter, std::string_view series) {
  const auto& all = data::drills();
  const bool listed = diameter >= all.front().diameter && diameter <= all.back().diameter;
  require_that("drill diameter", diameter, listed, "between 0.5 and 13 mm", "mm");
  const data::DrillRow* best = nullptr;
  const auto off = [&](const data::DrillRow& row) { return std::abs(in(row.diameter - diameter, mm)); };
  for (const data::DrillRow& row : all) {
    if (!series.empty() && row.series != series && (series != "inch" || row.series == "metric")) continue;
    const double more = best == nullptr ? 1.0 : off(*best) - off(row);
    if (more > 1e-9 || (more > -1e-9 && row.series == "metric")) best = &row;
  }
  if (best == nullptr) throw ModelError(fmt::format("no drills are called `{}`", series));
  return *best;
}
const data::DrillRow& drill_for(Length diameter, std::string_view series) {
  static const Length as_good = data::shop_length("drill as good").value.value;
  const data::DrillRow& of_series = nearest_drill(diameter, series);
  constexpr double last_bit = 1.0 + 1e-9;
  return std::abs(in(of_series.diameter - diameter, mm)) <= last_bit * in(as_good, mm) ? of_series
                                                                                       : nearest_drill(diameter);
}
}  // namespace lumwright::workshop
