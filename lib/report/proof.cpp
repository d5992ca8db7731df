#include "report/proof.hpp"
#include "data/causes.hpp"
#include "report/detail/standing.hpp"
#include "report/text.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::report {
namespace {
constexpr const char* nothing_wrong = "nothing is wrong";
const std::string& name_of(const data::CauseRow* cause) {
  static const std::string sound = nothing_wrong;
  return cause == nullptr ? sound : cause->name;
}
std::string titled(const std::string& name) { return name.empty() ? "The finished unit" : name; }
std::string span_of(const prove::Expected& one, const TextStyle& style) {
  if (!one.low || !one.high) return "";
  return "(" + show_span(*one.low, *one.high, *one.value, style) + ")";
}
std::string limits_of(const prove::Expected& one, const TextStyle& style) {
  if (!one.least || !one.most) return "";
  // a lag is never below nothing
  const bool one_sided = one.least->quantity.si <= 0.0 && one.value->quantity.kind != kind_of<Pressure>;
  return one_sided ? "up to " + show(*one.most, style) : show_span(*one.least, *one.most, *one.value, style);
}
std::string value_of(const prove::Expected& one, const TextStyle& style) {
  return one.value ? show(*one.value, style) : one.word;
}
std::string good_for(const data::ProofRow& row) {
  if (row.within == 0.0) return row.within_at_least;
  return fmt::format("{} and {} of the reading", row.within_at_least, percent(row.within));
}
/// Readings that the same keeps from being told, together.
void write_unpredicted(Page& page, const prove::Sheet& sheet) {
  std::vector<std::pair<std::string, std::string>> by_reason;
  for (const prove::Expected& one : sheet.readings) {
    if (one.why_not.empty()) continue;
    const auto same =
        std::find_if(by_reason.begin(), by_reason.end(), [&](const auto& r) { return r.first == one.why_not; });
    if (same == by_reason.end())
      by_reason.emplace_back(one.why_not, one.row->name);
    else
      same->second += ", " + one.row->name;
  }
  if (!by_reason.empty()) page.gap();
  for (const auto& [why, names] : by_reason) page.hung("open", fmt::format("{}: {}", names, why));
}
void write_hazards(Page& page, const prove::Sheet& sheet, bool full, std::string_view file) {
  if (full) return write_cautions(page, sheet.cautions);
  page.gap();
  for (const plan::Caution& one : sheet.cautions)
    if (!one.brief.empty()) page.paragraph(one.brief, 0, Ink::care);
  page.paragraph(fmt::format("How each is read, and what else can hurt: lumwright prove --full {}", file), 0,
                 Ink::faint);
}
void write_sheet(Page& page, const prove::Sheet& sheet, bool full) {
  std::vector<Page::Row> rows;
  rows.push_back(
      {{"", "should be", sheet.samples > 0 ? "(eight of ten)" : "", sheet.samples > 0 ? "planned if within" : ""},
       "",
       Ink::faint});
  for (const prove::Expected& one : sheet.readings) {
    if (!one.why_not.empty()) continue;
    std::string remark = fmt::format("{}, {}", one.row->tool, one.row->where);
    if (full)
      remark += fmt::format("; {}; good to {} ({})", one.row->how, good_for(*one.row), source_in_words(one.row->basis));
    rows.push_back(
        {{one.row->name, value_of(one, page.style()), span_of(one, page.style()), limits_of(one, page.style())},
         remark});
  }
  page.table(rows);
}
const char* side_words(const prove::JudgedReading& one) {
  if (!one.used) return "not used";
  if (!one.word.empty()) return one.side == prove::Side::fits ? "fits" : "odd";
  return one.side == prove::Side::low ? "low" : one.side == prove::Side::high ? "high" : "fits";
}
/// How much is told where the screen is full: less from line to line.
struct ProofShare {
  bool fitting, other_looks, other_thens;
};
constexpr ProofShare proof_shares[] = {
    {true, true, true}, {true, true, false}, {true, false, false}, {false, true, false}, {false, false, false}};
constexpr std::ptrdiff_t most_proof_lines = 40;

void write_readings(Page& page, const prove::Proved& proved, const ProofShare& share) {
  std::vector<Page::Row> rows{{{"", "read", "should be", "(eight of ten)", ""}, "", Ink::faint}};
  std::string fitting;
  for (const prove::JudgedReading& one : proved.readings) {
    const prove::Expected& expected = proved.sheet.readings[one.expected];
    const bool misses = one.used && one.side != prove::Side::fits;
    if (one.used && !misses && !share.fitting) {
      fitting += (fitting.empty() ? "" : ", ") + expected.row->name;
      continue;
    }
    const model::Measure read{one.read.quantity, expected.value ? expected.value->unit : one.read.unit};
    rows.push_back({{expected.row->name, one.word.empty() ? show(read, page.style()) : one.word,
                     value_of(expected, page.style()), span_of(expected, page.style()), side_words(one)},
                    one.used ? "" : expected.why_not,
                    misses ? Ink::care : Ink::plain});
  }
  if (rows.size() > 1) page.table(rows);
  if (!fitting.empty()) page.hung("fit", fitting);
}
std::string of_hundred(double share) {
  const double rounded = std::round(100.0 * share);
  return rounded < 1.0 ? "under 1 of 100" : rounded > 99.0 ? "over 99 of 100" : fmt::format("{:.0f} of 100", rounded);
}
std::string sized(const prove::JudgedCause& one, const TextStyle& style) {
  if (one.cause == nullptr || !one.size) return "";
  const std::string about = show(*one.size, style, 2),
                    span = show_span(*one.size_low, *one.size_high, *one.size, style, 2);
  return fmt::format(fmt::runtime(one.cause->size), fmt::format("{} ({})", about, span));
}
std::string verdict_of(const prove::Proved& proved) {
  const std::string name = titled(proved.sheet.name);
  if (proved.unexplained) return name + ": no single cause that is known here explains these readings.";
  const auto tied = std::count_if(proved.causes.begin(), proved.causes.end(), [](const auto& one) { return one.tied; });
  const bool misses = std::any_of(proved.readings.begin(), proved.readings.end(),
                                  [](const auto& one) { return one.used && one.side != prove::Side::fits; });
  if (proved.sound() && misses) return name + ": as planned, but for what does not fit below: read that once more.";
  if (proved.sound()) return name + (tied > 1 ? ": as planned, so far as these readings tell." : ": as planned.");
  return fmt::format("{}: {}{}.", name, name_of(proved.causes.front().cause),
                     tied > 1 ? ", or what these readings cannot tell from it" : "");
}
void write_causes(Page& page, const prove::Proved& proved, bool full) {
  page.heading("Of 100 units that read so");
  for (const prove::JudgedCause& one : proved.causes) {
    if (!one.tied && !full) continue;
    constexpr double worth_a_size = 0.02;
    const std::string size = one.share < worth_a_size ? "" : sized(one, page.style());
    page.hung(one.share < 0.005 ? "under 1" : fmt::format("{:.0f}", 100.0 * one.share),
              name_of(one.cause) + (size.empty() ? "" : "; " + size), one.tied ? Ink::strong : Ink::faint);
  }
  const auto rest =
      std::count_if(proved.causes.begin(), proved.causes.end(), [](const auto& one) { return !one.tied; });
  if (!full && rest > 0)
    page.paragraph(fmt::format("The other {} stand at worse than 1 to {:.0f} against the first.", rest,
                               data::judging().told_apart),
                   2, Ink::faint);
  if (!full) return;
  for (const prove::NotAsked& one : proved.not_asked)
    page.hung("-", fmt::format("{}: not asked, {}", one.cause->name, one.why));
}
void write_parting(Page& page, const prove::Proved& proved) {
  if (!proved.parting) return;
  const prove::Parting& p = *proved.parting;
  page.heading("Read this next");
  std::string text = fmt::format("{} ({} {}; {}): ", p.row->name, p.row->tool, p.row->where, p.row->how);
  if (p.of_first)
    text += fmt::format("some {} if {}, {} if {}", show(*p.of_first, page.style(), 2), name_of(p.first),
                        show(*p.of_second, page.style(), 2), name_of(p.second));
  else
    text += fmt::format("it parts \"{}\" from \"{}\"", name_of(p.first), name_of(p.second));
  page.paragraph(fmt::format("{}. It decides in {}.", text, of_hundred(p.decides)), 2);
}
void write_what_to_do(Page& page, const prove::Proved& proved, const ProofShare& share) {
  if (proved.unexplained) {
    page.heading("Do first");
    page.paragraph(proved.suspect
                       ? fmt::format("read once more: {}. It fits the others least.",
                                     proved.sheet.readings[proved.readings[*proved.suspect].expected].row->name)
                       : std::string("take each reading once more."),
                   2);
    return;
  }
  bool headed = false;
  for (const prove::JudgedCause& one : proved.causes) {
    if (!one.tied || one.cause == nullptr) continue;
    if (headed && !share.other_looks) break;
    if (!headed) page.heading(proved.sound() ? "If it does not satisfy you" : "Do first");
    page.hung("look", fmt::format("{}: {}", one.cause->name, one.cause->sure));
    if (!headed || share.other_thens) page.hung("then", one.cause->action);
    headed = true;
  }
}
}  // namespace

std::string proof_sheet(const prove::Sheet& sheet, const TextStyle& style, bool full, std::string_view file) {
  Page page(style);
  page.paragraph(titled(sheet.name) + ": what to read, the least trouble first.", 0, Ink::strong);
  page.gap();
  write_sheet(page, sheet, full);
  write_unpredicted(page, sheet);
  write_hazards(page, sheet, full, file);
  return page.finish();
}
static std::string proof_page(const prove::Proved& proved, const TextStyle& style, bool full, std::string_view file,
                              const ProofShare& share) {
  Page page(style);
  page.paragraph(verdict_of(proved), 0, proved.sound() ? Ink::good : Ink::bad);
  page.gap();
  write_readings(page, proved, share);
  if (!proved.unexplained || full) write_causes(page, proved, full);
  write_what_to_do(page, proved, share);
  write_parting(page, proved);
  if (full) write_unpredicted(page, proved.sheet);
  write_hazards(page, proved.sheet, full, file);
  return page.finish();
}
std::string proof_report(const prove::Proved& proved, const TextStyle& style, bool full, std::string_view file) {
  if (full) return proof_page(proved, style, full, file, proof_shares[0]);
  std::string text;
  for (const ProofShare& share : proof_shares) {
    text = proof_page(proved, style, full, file, share);
    if (std::count(text.begin(), text.end(), '\n') <= most_proof_lines) break;
  }
  return text;
}
}  // namespace lumwright::report
