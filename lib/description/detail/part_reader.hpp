// From the map of one part of a file to its fields, whatever file it is: a description, a log, what was tuned.
#pragma once
#include "data/renamed.hpp"
#include "description/detail/shop_forms.hpp"
#include "description/given.hpp"
#include "description/keys.hpp"
#include "description/values.hpp"
#include "description/written.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::description {
inline constexpr std::size_t most_items = 200;

/// A fault of a value of a part that was read, where it is not above zero.
template <class Q>
void must_be_above_zero(const Field& field, const Given<Q>& given, std::vector<input::Fault>& faults) {
  if (given && !(QuantityTraits<Q>::to_si(*given) > 0.0))
    faults.push_back(
        {given.at, std::string(field.key), fmt::format("expected more than 0, got '{}'", written(given)), ""});
}

// Walks the keys of one part beside the map that holds them.
class PartReader {
 public:
  /// `known` are all keys of the file's root, for the help on those that are not.
  PartReader(const input::Node& map, std::string path, const std::vector<Key>& known, std::vector<input::Fault>& faults,
             std::vector<Renamed>& renamed)
      : map_(map), path_(std::move(path)), known_(known), faults_(faults), renamed_(renamed) {}

  template <class Q>
  void operator()(Field field, Given<Q>& given, Limits limits) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    using T = QuantityTraits<Q>;
    given.at = node->at;  // of a faulty value as well: it was not forgotten
    if (const auto band = read_quantity(*node, T::kind, limits, Spread::allowed, complaints(field)))
      given = {Band<Q>{T::from_si(band->value), T::from_si(band->low), T::from_si(band->high)}, band->unit,
               band->has_spread, node->at};
    if constexpr (std::is_same_v<Q, Volume>)
      if (given && is_weighed_water(node->text, full(field.key)))
        renamed_.push_back({full(field.key), node->text, written(given), Renamed::Why::weighed_water});
  }
  void operator()(Field field, Count& count, int least, int most) {
    if (const input::Node* node = take(field)) count = {read_count(*node, least, most, complaints(field)), node->at};
  }
  void operator()(Field field, Text& text, Allowed allowed) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    if (const data::RenamedWord* word = allowed != nullptr ? renamed_word(full(field.key), node->text) : nullptr) {
      renamed_.push_back({full(field.key), word->old, word->now});
      text = {word->now, node->at};
      return;
    }
    text = {read_words(*node, allowed, complaints(field)), node->at};
  }
  template <class X, class Y>
  void operator()(Field field, Points<X, Y>& points, Limits x_limits, Limits y_limits) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    points.at = node->at;
    Complaints at_point = complaints(field);
    std::optional<double> before;
    for (const input::Node* item : read_items(*node, 2, field.example, at_point)) {
      at_point.item = item_ + fmt::format("point {}: ", item - node->children.data() + 1);
      const input::Node &first = item->children[0], &second = item->children[1];
      const auto x = read_quantity(first, kind_of<X>, x_limits, Spread::refused, at_point);
      const auto y = read_quantity(second, kind_of<Y>, y_limits, Spread::refused, at_point);
      if (!std::is_same_v<X, Y> && x && before && x->value <= *before)  // places on a plate come in any order
        at_point.add(first.at, fmt::format("expected more than {} of the point before, got '{}'",
                                           written(AnyQuantity(*before, kind_of<X>), x->unit), first.text));
      if (x) before = x->value;
      if (!x || !y) continue;
      if (points.points.empty()) points.x_unit = x->unit, points.y_unit = y->unit;
      points.points.push_back({QuantityTraits<X>::from_si(x->value), QuantityTraits<Y>::from_si(y->value)});
    }
  }
  void operator()(Field field, EfficiencyTable& table) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    table.at = node->at;
    if (node->kind == input::Node::Kind::list) return read_efficiencies(field, *node, table);
    if (const auto share = read_quantity(*node, kind_of<double>, efficiency_share, Spread::refused, complaints(field)))
      table.share = share->value;
  }
  template <class Part>
  void section(Field field, Part& part) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    if (node->kind == input::Node::Kind::scalar && input::colon_without_blank(node->text))
      return faults_.push_back(input::blank_missing(node->at, full(field.key), node->text));
    if (node->kind != input::Node::Kind::map)
      return complaints(field).add(node->at, fmt::format("expected a section of keys and values, got {}", found(*node)),
                                   fmt::format("known here: {}", known_keys(known_, full(field.key))));
    PartReader inner(*node, full(field.key), known_, faults_, renamed_);
    Part::fields(part, inner);
    inner.refuse_the_rest();
  }
  /// A list of maps that all have the keys of `Part`.
  template <class Part>
  void list(Field field, std::vector<Part>& parts) {
    const input::Node* node = take(field);
    if (node == nullptr) return;
    if (node->kind != input::Node::Kind::list)
      return complaints(field).add(node->at, fmt::format("expected a list, got {}", found(*node)),
                                   fmt::format("as in {}", field.example));
    if (node->children.empty() || node->children.size() > most_items)
      complaints(field).add(node->at,
                            fmt::format("expected 1 to {} of them, got {}", most_items, node->children.size()));
    for (std::size_t i = 0; i < node->children.size() && i < most_items; ++i)
      read_item(field, node->children[i], fmt::format("{}{}. of the list: ", item_, i + 1), parts);
  }
  // Every key is read or refused; a repeated one has its fault already.
  void refuse_the_rest() const {
    for (const input::Node& node : map_.children)
      if (std::find(taken_.begin(), taken_.end(), node.key) == taken_.end() && input::child(map_, node.key) == &node)
        faults_.push_back(input::colon_without_blank(node.key)
                              ? input::blank_missing(node.key_at, path_, node.key)
                              : input::Fault{node.key_at, full(node.key), item_ + "this key is not known",
                                             key_help(known_, path_, node.key)});
  }

 private:
  const input::Node* take(Field field) {
    taken_.push_back(field.key);
    if (const input::Node* node = input::child(map_, field.key)) return known_of(node);
    for (const data::RenamedKey& key : data::renamed_keys()) {
      if (!data::is_key(full(field.key), key.now)) continue;
      const std::string_view old = std::string_view(key.old).substr(key.old.rfind('.') + 1);
      const input::Node* node = input::child(map_, old);
      if (node == nullptr) continue;
      taken_.push_back(old);  // the table outlives this
      if (known_of(node) == nullptr) return nullptr;
      renamed_.push_back({full(old), full(old), full(field.key)});
      return node;
    }
    return nullptr;
  }
  // Nothing behind the colon means that it is not known, or that all of a section is behind a `#`.
  static const input::Node* known_of(const input::Node* node) {
    return node->kind == input::Node::Kind::empty ? nullptr : node;
  }
  static const data::RenamedWord* renamed_word(const std::string& path, const std::string& text) {
    for (const data::RenamedWord& word : data::renamed_words())
      if (data::is_key(path, word.key) && text == word.old) return &word;
    return nullptr;
  }
  std::string full(std::string_view key) const { return (path_.empty() ? "" : path_ + ".") + std::string(key); }
  Complaints complaints(Field field) const { return {&faults_, full(field.key), item_}; }

  template <class Part>
  void read_item(Field field, const input::Node& node, std::string name, std::vector<Part>& parts) {
    if (node.kind == input::Node::Kind::scalar && input::colon_without_blank(node.text))
      return faults_.push_back(input::blank_missing(node.at, full(field.key), node.text));
    if (node.kind != input::Node::Kind::map)
      return Complaints{&faults_, full(field.key), name}.add(
          node.at, fmt::format("expected keys and values, got {}", found(node)),
          fmt::format("as in {}", field.example));
    PartReader inner(node, full(field.key), known_, faults_, renamed_);
    inner.item_ = std::move(name);
    parts.emplace_back().at = node.at;
    Part::fields(parts.back(), inner);
    inner.refuse_the_rest();
  }

  void read_efficiencies(Field field, const input::Node& node, EfficiencyTable& table) {
    Complaints at_point = complaints(field);
    for (const input::Node* item : read_items(node, 3, "[ [6 V, 1 W, 88 %], [6 V, 2 W, 85 %] ]", at_point)) {
      at_point.item = item_ + fmt::format("point {}: ", item - node.children.data() + 1);
      const auto input =
          read_quantity(item->children[0], kind_of<Voltage>, efficiency_input, Spread::refused, at_point);
      const auto output =
          read_quantity(item->children[1], kind_of<Power>, efficiency_output, Spread::refused, at_point);
      const auto share = read_quantity(item->children[2], kind_of<double>, efficiency_share, Spread::refused, at_point);
      if (!input || !output || !share) continue;
      const EfficiencyTable::Point point{input->value * V, output->value * W, share->value};
      for (const auto& earlier : table.points)
        if (earlier.input == point.input && earlier.output == point.output)
          at_point.add(item->at, "this input and output are given twice");
      table.points.push_back(point);
    }
  }

  const input::Node& map_;
  std::string path_, item_;
  const std::vector<Key>& known_;
  std::vector<input::Fault>& faults_;
  std::vector<Renamed>& renamed_;
  std::vector<std::string_view> taken_;
};

/// Reads a whole file of such parts. `what` it should be: "a description"; `hint` is shown when it is no map at all.
/// `contradictions` gets the root and adds the faults that only several keys together show.
template <class Root, class F>
Root read_parts(const input::Source& source, std::string_view what, std::string_view hint, F&& contradictions,
                std::size_t most_bytes = 64 * 1024) {
  static const std::vector<Key> known = list_keys<Root>();
  std::vector<input::Fault> faults;
  std::vector<Renamed> renamed;
  const input::Node node = input::read_yaml(source, faults, most_bytes);
  Root root;
  if (node.kind == input::Node::Kind::map) {
    PartReader reader(node, "", known, faults, renamed);
    Root::fields(root, reader);
    reader.refuse_the_rest();
  } else if (node.kind == input::Node::Kind::scalar && input::colon_without_blank(node.text)) {
    faults.push_back(input::blank_missing(node.at, "", node.text));
  } else {
    faults.push_back({node.at, "", fmt::format("expected {} of keys and values, got {}", what, found(node)),
                      fmt::format("a key ends with a colon and a blank, as in `{}`", hint)});
  }
  for (input::Fault& fault : contradictions(root)) faults.push_back(std::move(fault));
  if (!faults.empty()) throw input::InputError(source, std::move(faults));
  if constexpr (requires { root.renamed; }) root.renamed = std::move(renamed);
  return root;
}
}  // namespace lumwright::description
