#include "description/template.hpp"
#include "data/how_measured.hpp"
#include "description/build.hpp"
#include "description/values.hpp"
#include "description/ways.hpp"
#include "quantity/format.hpp"
#include "quantity/units.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::description {
namespace {
constexpr std::size_t page_width = 80;
constexpr char hard_blank = '\x01';  // a blank that no line breaks at: between a number and its unit
std::string unbroken(std::string_view text) {
  std::string out(text);
  std::replace(out.begin(), out.end(), ' ', hard_blank);
  return out;
}
// Lines that all start with `prefix`, the first with `first`.
std::string filled(std::string_view text, const std::string& first, const std::string& prefix) {
  std::string out, line = first;
  bool empty = true;
  for (std::string_view word : words(text)) {
    if (!empty && characters(line) + 1 + characters(word) > page_width) {
      out += line + '\n';
      line = prefix;
      empty = true;
    }
    line += (empty ? "" : " ") + std::string(word);
    empty = false;
  }
  out += line + '\n';
  std::replace(out.begin(), out.end(), hard_blank, ' ');
  return out;
}
std::string span(Limits limits) { return unbroken(limits.low) + " to " + unbroken(limits.high); }
std::string shown_words(std::vector<std::string> words) {
  constexpr std::size_t most = 24, fewer = 12;
  const bool cut = words.size() > most;
  if (cut) words.resize(fewer);
  for (std::string& word : words) word = unbroken(word);
  return listed(words) + (cut ? " and others, see `lumwright schema`" : "");
}

/// Every key with its example behind a `#`, under sections that are there: what is not taken up says nothing.
class TemplateWriter {
 public:
  explicit TemplateWriter(std::string path) : path_(std::move(path)) {
    margin_.assign(path_.empty() ? 0 : 2 * words(path_, '.').size(), ' ');
  }
  std::string out{};

  template <class Q>
  void operator()(Field field, const Given<Q>&, Limits limits) {
    key(field, span(limits));
  }
  void operator()(Field field, const Count&, int least, int most) { key(field, fmt::format("{} to {}", least, most)); }
  void operator()(Field field, const Text&, Allowed allowed) {
    key(field, allowed != nullptr ? "one of: " + shown_words(allowed()) : "");
  }
  template <class X, class Y>
  void operator()(Field field, const Points<X, Y>&, Limits x, Limits y) {
    key(field, span(x) + "; " + span(y));
  }
  void operator()(Field field, const EfficiencyTable&) { key(field, span(efficiency_share)); }
  template <class Part>
  void section(Field field, const Part& part) {
    if (margin_.empty()) out += '\n';
    out += filled(field.meaning, margin_ + "# ", margin_ + "# ");
    out += margin_ + std::string(field.key) + ":\n";
    TemplateWriter inner(full(field.key));
    Part::fields(part, inner);
    out += inner.out;
  }

 private:
  std::string full(std::string_view key) const { return (path_.empty() ? "" : path_ + ".") + std::string(key); }
  void key(Field field, const std::string& limits) {
    std::string meaning(field.meaning);
    if (const std::string how = with_ways(data::how_measured(full(field.key)), FrontEnd::terminal); !how.empty())
      meaning += fmt::format("; {}", how);
    if (!limits.empty()) meaning += " (" + limits + ")";
    out += filled(meaning, margin_ + "# ", margin_ + "# ");
    const bool is_name = path_.empty() && field.key == "name";
    out += is_name ? "name: my build\n" : fmt::format("{}#{}: {}\n", margin_, field.key, field.example);
  }
  std::string path_, margin_;
};

struct KindLister {
  std::vector<Kind> kinds;
  std::vector<Kind> in_order_of_units() {
    const auto place = [](Kind kind) {
      const auto table = unit_table();
      return std::find_if(table.begin(), table.end(), [&](const UnitRow& row) { return fits(row, kind); }) -
             table.begin();
    };
    std::stable_sort(kinds.begin(), kinds.end(), [&](Kind a, Kind b) { return place(a) < place(b); });
    return kinds;
  }
  void add(Kind kind) {
    if (std::find(kinds.begin(), kinds.end(), kind) == kinds.end()) kinds.push_back(kind);
  }
  template <class Q>
  void operator()(Field, const Given<Q>&, Limits) {
    add(kind_of<Q>);
  }
  template <class X, class Y>
  void operator()(Field, const Points<X, Y>&, Limits, Limits) {
    add(kind_of<X>);
    add(kind_of<Y>);
  }
  template <class Value, class... Rest>
  void operator()(Field, const Value&, Rest&&...) {}
  template <class Part>
  void section(Field, const Part& part) {
    Part::fields(part, *this);
  }
};
std::string units_with_spellings(Kind kind) {
  std::vector<std::string> units;
  for (const UnitRow& row : unit_table()) {
    if (!fits(row, kind)) continue;
    auto others = words(row.spellings, '|');
    std::erase_if(others, [](std::string_view one) {  // the second of two characters that look alike
      return one.find("\u2126") != std::string_view::npos || one.find("\u03BC") != std::string_view::npos;
    });
    units.push_back(std::string(row.symbol) + (others.empty() ? "" : fmt::format(" ({})", fmt::join(others, ", "))));
  }
  return listed(units);
}
}  // namespace

std::string new_description() {
  const Build empty;
  TemplateWriter writer("");
  Build::fields(empty, writer);
  return R"(# A description of one build: the engine, the fan that raises its steam, and
# what drives the fan. Every key waits behind a `#`, with an example: take the
# `#` away from what you know, and write your own value over the example. What
# you do not know stays behind its `#`, or has nothing behind its colon: a
# typical value is taken and named as assumed, or the check says what it lacks.
#
# Every quantity has its unit, as in 17.2 mm or 9/16 in, and may have a spread,
# as in 17.20 mm +- 0.03 mm or 7..9 mm. `lumwright units` lists the units.

)" + writer.out;
}

std::string units_listing() {
  const Build empty;
  KindLister lister;
  Build::fields(empty, lister);
  std::string out = "Units of a description; other spellings in brackets.\n\n";
  constexpr int indent = 28;
  for (Kind kind : lister.in_order_of_units()) {
    std::string name = kind_name(kind);
    if (name.starts_with("a ")) name.erase(0, 2);
    if (name.starts_with("an ")) name.erase(0, 3);
    if (kind == kind_of<double>) name = "pure number";
    const std::string units =
        kind == kind_of<double> ? "none, or " + units_with_spellings(kind) : units_with_spellings(kind);
    out += filled(units, fmt::format("  {:<{}}", name, indent - 2), std::string(indent, ' '));
  }
  return out + R"(
Ways to write a quantity
  decimal                   17.2 mm, 17,2 mm, .5 in, 1e3 Pa
  fraction                  9/16 in, 1 1/2 in
  value and spread          17.20 mm +- 0.03 mm, 17.20 ± 0.03 mm, 60 Pa +- 10 %
  range                     7..9 mm, 7 mm..0.4 in
  share                     0.35, 35 %, 35 % +- 5 %
  temperature               15 degC, 59 degF, 15 degC +- 2 K
  time                      6 min 30 s, 6:30 (minutes and seconds)
  sheet, wall of a tube     22 swg (British sheet and tube)
  wire                      0.22 mm2, 22 swg, 24 AWG, 7/0.2 (strands and mm)
  water                     420 ml, or weighed: 420 g
  pressure in a boiler      3 bar, 45 psi: above the barometer, as a gauge shows

A spread in per cent is a share of the value; behind a percentage, in points.
Columns of water and mercury are the conventional ones, 1 kg/l and 13.5951 kg/l.
Inside braces a comma parts two keys: write 17.2 mm there, or "17,2 mm".
Not taken: a gauge number without its series, as in 22 gauge (it means different
thicknesses to different trades), AWG for sheet, commas or points between
thousands, a quantity without its unit.
)";
}
}  // namespace lumwright::description
