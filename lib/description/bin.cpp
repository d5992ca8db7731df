#include "description/bin.hpp"
#include "description/detail/bin_rules.hpp"
#include "description/detail/part_reader.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::description {
namespace {
constexpr std::size_t most_bytes = 1024 * 1024;
constexpr std::string_view direct_name = "none";

input::Node* child_of(input::Node& map, std::string_view key) {
  for (input::Node& node : map.children)
    if (node.key == key) return &node;
  return nullptr;
}
// `tubes: stock` is a word where a list is expected: it is taken out before the keys are read.
bool take_stock(input::Node& root) {
  const input::Node* tubes = child_of(root, "tubes");
  if (tubes == nullptr || tubes->kind != input::Node::Kind::scalar || tubes->text != "stock") return false;
  root.children.erase(root.children.begin() + (tubes - root.children.data()));
  return true;
}
// `none` among the step-ups becomes an item of that name. Returns where it stood.
std::vector<input::Position> open_direct(input::Node& root) {
  std::vector<input::Position> found;
  input::Node* step_ups = child_of(root, "step_ups");
  if (step_ups == nullptr || step_ups->kind != input::Node::Kind::list) return found;
  for (input::Node& item : step_ups->children) {
    if (item.kind != input::Node::Kind::scalar || item.text != direct_name) continue;
    found.push_back(item.at);
    input::Node name = item;
    name.key = "name";
    name.key_at = item.at;
    item.kind = input::Node::Kind::map;
    item.children = {std::move(name)};
  }
  return found;
}
bool same(input::Position a, input::Position b) { return a.line == b.line && a.column == b.column; }

void close_direct(Bin& bin, const std::vector<input::Position>& places) {
  for (part::BinStepUp& step_up : bin.step_ups)
    step_up.direct =
        std::any_of(places.begin(), places.end(), [&](input::Position at) { return same(at, step_up.at); });
  if (!bin.step_ups.empty()) return;
  part::BinStepUp none;
  none.name.value = direct_name;
  none.direct = true;
  bin.step_ups.push_back(std::move(none));
}

Bin read_keys(input::Node& root, std::vector<input::Fault>& faults) {
  static const std::vector<Key> known = list_keys<Bin>();
  Bin bin;
  const bool stock = take_stock(root);
  const std::vector<input::Position> direct = open_direct(root);
  std::vector<Renamed> renamed;
  PartReader reader(root, "", known, faults, renamed);
  Bin::fields(bin, reader);
  reader.refuse_the_rest();
  bin.renamed = std::move(renamed);
  bin.tubes_from_stock = stock;
  const input::Node* step_ups = input::child(root, "step_ups");
  const bool no_list = step_ups == nullptr || step_ups->kind == input::Node::Kind::empty;
  if (no_list || !bin.step_ups.empty()) close_direct(bin, direct);
  return bin;
}
}  // namespace

bool pairs_of(const Bin& bin, const part::BinFan& fan) {
  return bin.pairs && *bin.pairs == "yes" && fan.count && *fan.count >= 2;
}

namespace {
std::size_t fans_tried(const Bin& bin) {
  std::size_t fans = 0;
  for (const part::BinFan& fan : bin.fans) fans += pairs_of(bin, fan) ? 3 : 1;
  return fans;
}
std::size_t step_ups_tried(const Bin& bin) {
  std::size_t step_ups = 0;
  for (const part::BinStepUp& step_up : bin.step_ups) step_ups += step_up.lower_to ? 2 : 1;
  return step_ups;
}
std::size_t tubes_tried(const Bin& bin) { return bin.tubes_from_stock ? most_stock_tubes : bin.tubes.size(); }
}  // namespace

std::size_t combinations(const Bin& bin) {
  return fans_tried(bin) * bin.packs.size() * step_ups_tried(bin) * tubes_tried(bin) * bin.engines.size();
}
std::string counted_by_part(const Bin& bin) {
  return fmt::format("fans {} (with pairs), packs {}, step-ups {} (with those turned down), tubes {}, engines {}",
                     fans_tried(bin), bin.packs.size(), step_ups_tried(bin), tubes_tried(bin), bin.engines.size());
}

Bin read_bin(const input::Source& source) {
  std::vector<input::Fault> faults;
  input::Node root = input::read_yaml(source, faults, most_bytes);
  Bin bin;
  if (root.kind == input::Node::Kind::map)
    bin = read_keys(root, faults);
  else
    faults.push_back({root.at, "", fmt::format("expected a bin of keys and values, got {}", found(root)),
                      "a key ends with a colon and a blank, as in `name: my bin`"});
  bin.file = source.name;
  hand_down(bin, faults);
  const bool read = faults.empty();
  for (input::Fault& fault : bin_faults(bin, read)) faults.push_back(std::move(fault));
  if (!faults.empty()) throw input::InputError(source, std::move(faults));
  return bin;
}
}  // namespace lumwright::description
