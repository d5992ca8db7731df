#include "description/values.hpp"
#include "data/gauges.hpp"
#include "description/detail/shop_forms.hpp"
#include "description/written.hpp"
#include "input/utf8.hpp"
#include "quantity/format.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <charconv>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <utility>

namespace lumwright::description {
namespace {
input::Position part_of(const input::Node& node, std::size_t at, std::size_t width) {
  if (!node.verbatim) return node.at;
  const int offset = static_cast<int>(at) + (node.quoted ? 1 : 0);
  return {node.at.line, node.at.column + offset, static_cast<int>(width)};
}
std::string gauge_help(int number, Kind kind, const std::string& forms) {
  std::string out;
  for (const data::GaugeMeaning& meaning : data::gauge_candidates(number)) {
    const std::string size = kind == kind_of<Area> ? format(circle(meaning.thickness), "mm2")
                                                   : fmt::format("{} ({})", format(meaning.thickness, "mm"),
                                                                 format(meaning.thickness, "in"));
    out += fmt::format("{}{} in {}", out.empty() ? "" : ", ", size, meaning.series);
  }
  const std::string units = (kind == kind_of<Area> ? "mm2" : "mm or thou") + (forms.empty() ? "" : ", or " + forms);
  return out.empty() ? "measure it, and write " + units
                     : fmt::format("number {} is {}: measure it, and write {}", number, out, units);
}
bool expects_scalar(const input::Node& node, const std::string& wanted, const Complaints& complaints) {
  if (node.kind == input::Node::Kind::scalar && node.one_line) return true;
  complaints.add(node.at, fmt::format("expected {}, got {}", wanted, found(node)),
                 node.kind == input::Node::Kind::scalar ? "write it on one line" : "");
  return false;
}
bool within(const WrittenBand& band, const input::Node& node, Kind kind, Limits limits, const Complaints& complaints) {
  const double low = parse_band(limits.low, kind).value, high = parse_band(limits.high, kind).value;
  if (band.low >= low && band.high <= high) return true;
  std::string help;
  if (band.value >= low && band.value <= high) {
    const double end = band.low < low ? band.low : band.high;
    help = fmt::format("its spread reaches {}", format(AnyQuantity(end, kind), band.unit, 4));
  }
  complaints.add(
      node.at, fmt::format("expected {} from {} to {}, got '{}'", kind_name(kind), limits.low, limits.high, node.text),
      help);
  return false;
}
}  // namespace

void Complaints::add(input::Position at, std::string message, std::string help) const {
  faults->push_back({at, key, item + message, std::move(help)});
}

std::string found(const input::Node& node) {
  switch (node.kind) {
    case input::Node::Kind::empty:
      return "nothing";
    case input::Node::Kind::list:
      return "a list";
    case input::Node::Kind::map:
      return "a section";
    case input::Node::Kind::scalar:
      break;
  }
  if (!node.one_line) return "text over several lines";
  return characters(node.text) > longest_text ? fmt::format("{} characters of text", characters(node.text))
                                              : fmt::format("'{}'", node.text);
}
std::string listed(const std::vector<std::string>& words) { return fmt::format("{}", fmt::join(words, ", ")); }

std::optional<WrittenBand> read_quantity(const input::Node& node, Kind kind, Limits limits, Spread spread,
                                         const Complaints& complaints) {
  if (!expects_scalar(node, kind_name(kind), complaints)) return std::nullopt;
  try {
    const auto form = shop_form(node.text, kind, complaints.key);
    const WrittenBand band = form ? *form : parse_band(node.text, kind);
    if (spread == Spread::refused && band.has_spread)
      complaints.add(node.at, fmt::format("expected {} without a spread, got '{}'", kind_name(kind), node.text));
    else if (within(band, node, kind, limits, complaints))
      return band;
  } catch (const QuantityError& e) {
    complaints.add(part_of(node, e.at, e.width), e.what(), e.gauge ? gauge_help(*e.gauge, kind, shop_forms_of(complaints.key)) : e.help);
  }
  return std::nullopt;
}

std::optional<int> read_count(const input::Node& node, int least, int most, const Complaints& complaints) {
  const std::string wanted = fmt::format("a whole number from {} to {}", least, most);
  if (!expects_scalar(node, wanted, complaints)) return std::nullopt;
  int count = 0;
  const char* const end = node.text.data() + node.text.size();
  const auto [rest, error] = std::from_chars(node.text.data(), end, count);
  if (error == std::errc{} && rest == end && count >= least && count <= most) return count;
  complaints.add(node.at, fmt::format("expected {}, got {}", wanted, found(node)));
  return std::nullopt;
}

namespace {
/// Editors and converters write yes and no as YAML 1.1 has them, as truth values (YAML 1.2.2, 10.3.2).
std::string truth(const input::Node& node) {
  if (node.quoted) return {};
  for (const char* spelt : {"true", "True", "TRUE"})
    if (node.text == spelt) return "yes";
  for (const char* spelt : {"false", "False", "FALSE"})
    if (node.text == spelt) return "no";
  return {};
}
}  // namespace

std::optional<std::string> read_words(const input::Node& node, Allowed allowed, const Complaints& complaints) {
  if (!expects_scalar(node, allowed != nullptr ? "a word" : "a short text", complaints)) return std::nullopt;
  if (allowed == nullptr) {
    if (node.text.empty() || characters(node.text) > longest_text)
      complaints.add(node.at, fmt::format("expected a short text, got {}", node.text.empty() ? "nothing" : found(node)),
                     fmt::format("1 to {} characters", longest_text));
    else if (input::printable(node.text) != node.text)
      complaints.add(node.at, fmt::format("expected a short text, got {}", found(node)),
                     "it holds a control character");
    else
      return node.text;
    return std::nullopt;
  }
  const std::vector<std::string> words = allowed();
  const std::string_view usual = usual_word(node.text, complaints.key);
  for (const std::string& word : words)
    if (word == usual) return word;
  if (const auto word = truth(node); !word.empty() && std::find(words.begin(), words.end(), word) != words.end())
    return word;
  const std::string_view near = nearest(node.text, std::vector<std::string_view>(words.begin(), words.end()));
  complaints.add(node.at, fmt::format("expected one of the words known here, got {}", found(node)),
                 (near.empty() ? "" : fmt::format("did you mean `{}`? ", near)) + "known: " + listed(words));
  return std::nullopt;
}

std::vector<const input::Node*> read_items(const input::Node& node, std::size_t members, std::string_view example,
                                           const Complaints& complaints) {
  const std::string wanted = members == 2 ? "pairs" : "threes", one = members == 2 ? "a pair" : "three values";
  const std::string help = fmt::format("as in {}", example);
  if (node.kind != input::Node::Kind::list) {
    complaints.add(node.at, fmt::format("expected a list of {}, got {}", wanted, found(node)), help);
    return {};
  }
  const std::size_t fewest = members == 2 ? fewest_points : 1;
  if (node.children.size() < fewest || node.children.size() > most_points)
    complaints.add(node.at, fmt::format("expected {} to {} points, got {}", fewest, most_points, node.children.size()),
                   help);
  std::vector<const input::Node*> items;
  for (std::size_t i = 0; i < node.children.size() && i < most_points; ++i) {
    const input::Node& item = node.children[i];
    if (item.kind == input::Node::Kind::list && item.children.size() == members) {
      items.push_back(&item);
      continue;
    }
    const std::string got = item.kind == input::Node::Kind::list
                                ? fmt::format("{} value{}", item.children.size(), item.children.size() == 1 ? "" : "s")
                                : found(item);
    complaints.add(item.at, fmt::format("point {}: expected {}, got {}", i + 1, one, got), help);
  }
  return items;
}
}  // namespace lumwright::description
