#include "description/settings.hpp"
#include "description/detail/contradictions.hpp"
#include "description/detail/part_reader.hpp"
#include "input/yaml_tree.hpp"
#include "quantity/words.hpp"
#include <algorithm>

namespace lumwright::description {
namespace {
/// Forgets what a build says under one key path; a section with all that is in it.
class Forgetting {
 public:
  explicit Forgetting(std::string_view path) {
    const auto dot = path.find('.');
    here_ = path.substr(0, dot);
    if (dot != std::string_view::npos) below_ = path.substr(dot + 1);
  }
  template <class T, class... Rest>
  void operator()(Field field, T& member, Rest&&...) const {
    if (below_.empty() && field.key == here_) member = T{};
  }
  template <class Part>
  void section(Field field, Part& part) const {
    if (field.key != here_) return;
    if (below_.empty()) {
      part = Part{};
      return;
    }
    Forgetting inner(below_);
    Part::fields(part, inner);
  }

 private:
  std::string_view here_, below_;
};
void move_to(input::Node& node, int line, int columns) {
  for (input::Position* at : {&node.at, &node.key_at}) {
    if (at->line == 1) at->column += columns;  // the value begins behind its key
    at->line += line - 1;
  }
  for (input::Node& inner : node.children) move_to(inner, line, columns);
}
/// The value as a node, its faults where they stand in the line "key=value".
input::Node node_of(const Setting& setting, int line, const std::string& name, std::vector<input::Fault>& faults) {
  const int columns = static_cast<int>(setting.key.size()) + 1;
  std::vector<input::Fault> found;
  input::Node node;
  if (!setting.value.empty()) try {
      node = input::read_yaml({name, setting.value}, found);
    } catch (const input::InputError& unreadable) {
      found = unreadable.faults();
    }
  for (input::Fault& fault : found) {
    fault.at.line = line;
    fault.at.column += columns;
    fault.key = setting.key;
    faults.push_back(std::move(fault));
  }
  move_to(node, line, columns);
  return node;
}
/// Hangs a value into the tree; false where something hangs there already.
bool hang(input::Node& root, std::string_view path, input::Node value, int line, int column = 1) {
  const auto dot = path.find('.');
  const std::string_view here = path.substr(0, dot);
  const auto known =
      std::find_if(root.children.begin(), root.children.end(), [&](const input::Node& n) { return n.key == here; });
  const input::Position at{line, column, static_cast<int>(here.size())};
  const int below = column + at.width + 1;
  if (dot == std::string_view::npos) {
    if (known != root.children.end()) return false;
    value.key = here;
    value.key_at = at;
    root.children.push_back(std::move(value));
    return true;
  }
  if (known != root.children.end())
    return known->kind == input::Node::Kind::map && hang(*known, path.substr(dot + 1), std::move(value), line, below);
  input::Node section{.kind = input::Node::Kind::map, .at = at};
  section.key = here;
  section.key_at = at;
  root.children.push_back(std::move(section));
  return hang(root.children.back(), path.substr(dot + 1), std::move(value), line, below);
}
/// Where to show what only several keys together contradict: at the setting of that key, else at the first.
input::Position place_of(const std::string& key, const std::vector<Setting>& settings) {
  const auto set = std::find_if(settings.begin(), settings.end(), [&](const Setting& one) { return one.key == key; });
  const bool found = set != settings.end();
  return {found ? static_cast<int>(set - settings.begin()) + 1 : 1, 1,
          static_cast<int>((found ? set->key : settings.front().key).size())};
}
bool is_known_key(std::string_view path) {
  return std::any_of(keys().begin(), keys().end(), [&](const Key& key) { return key.path == path; });
}
}  // namespace

ReadSetting read_setting(std::string_view text) {
  const auto equals = text.find('=');
  const auto trimmed = [](std::string_view part) {
    while (!part.empty() && part.front() == ' ') part.remove_prefix(1);
    while (!part.empty() && part.back() == ' ') part.remove_suffix(1);
    return std::string(part);
  };
  if (equals == std::string_view::npos) return {{trimmed(text), ""}, false};
  return {{trimmed(text.substr(0, equals)), trimmed(text.substr(equals + 1))}, true};
}

Build with_settings(Build build, const std::vector<Setting>& settings, const std::string& name) {
  input::Source source{name, ""};
  std::vector<input::Fault> faults;
  input::Node root{.kind = input::Node::Kind::map};
  int line = 0;
  for (const Setting& setting : settings) {
    source.text += setting.key + "=" + setting.value + "\n";
    input::Node value = node_of(setting, ++line, name, faults);
    const bool forget = value.kind == input::Node::Kind::empty && is_known_key(setting.key);
    if (is_known_key(setting.key)) {
      const Forgetting forgetting(setting.key);
      Build::fields(build, forgetting);
    }
    if (!forget && !hang(root, setting.key, std::move(value), line))
      faults.push_back({{line, 1, static_cast<int>(setting.key.size())}, setting.key, "this key is set twice", ""});
  }
  std::vector<Renamed> renamed;
  PartReader reader(root, "", keys(), faults, renamed);
  Build::fields(build, reader);
  reader.refuse_the_rest();
  if (faults.empty() && !settings.empty())
    for (input::Fault& fault : contradictions(build)) {
      fault.at = place_of(fault.key, settings);
      faults.push_back(std::move(fault));
    }
  if (!faults.empty()) throw input::InputError(source, std::move(faults));
  build.renamed.insert(build.renamed.end(), renamed.begin(), renamed.end());
  return build;
}
}  // namespace lumwright::description
