#include "file_kind.hpp"
#include "description/reader.hpp"
#include "files.hpp"
#include "input/yaml_tree.hpp"
#include "shelf.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <optional>

namespace lumwright::cli {
namespace {
constexpr std::size_t most_bytes = 1024 * 1024;  // what the readers of bins and seasons take

bool has_any(const input::Node& root, std::initializer_list<std::string_view> keys) {
  return std::any_of(keys.begin(), keys.end(),
                     [&](std::string_view key) { return input::child(root, key) != nullptr; });
}
bool readings_have(const input::Node& root, std::string_view key) {
  const input::Node* readings = input::child(root, "readings");
  return readings != nullptr && std::any_of(readings->children.begin(), readings->children.end(),
                                            [&](const input::Node& one) { return input::child(one, key) != nullptr; });
}
/// By the keys that only one kind has.
std::optional<FileKind> kind_of_file(const input::Source& source) {
  std::vector<input::Fault> ignored;
  input::Node root;
  try {
    root = input::read_yaml(source, ignored, most_bytes);
  } catch (const input::InputError&) {
    return std::nullopt;
  }
  if (has_any(root, {"fans", "packs", "engines", "drawers", "step_ups"})) return FileKind::bin;
  if (has_any(root, {"lighting_ups"})) return FileKind::season;
  const input::Node* readings = input::child(root, "readings");
  const bool one_set = readings != nullptr && readings->kind == input::Node::Kind::map;
  if (one_set || has_any(root, {"outlet"})) return FileKind::proof;
  if (has_any(root, {"meter", "box"}) || readings_have(root, "depression")) return FileKind::readings;
  if (has_any(root, {"started_at"}) || readings_have(root, "time")) return FileKind::log;
  if (has_any(root, {"engine", "fan"})) return FileKind::description;
  return std::nullopt;
}
struct KindWords {
  const char* name;
  const char* command;  // behind the file's name there may be more
};
KindWords words_of(FileKind kind) {
  switch (kind) {
    case FileKind::bin:
      return {"a bin", "choose {}"};
    case FileKind::readings:
      return {"readings of a fan test", "bench {}"};
    case FileKind::log:
      return {"a log", "tune FILE {}"};
    case FileKind::season:
      return {"a season", "season FILE {}"};
    case FileKind::proof:
      return {"readings of a finished unit", "prove FILE {}"};
    case FileKind::description:
      break;
  }
  return {"a description", "check {}"};
}
}  // namespace

bool is_of_kind(const input::Source& source, FileKind kind) { return kind_of_file(source) == kind; }
void refuse_other_kind(const input::Source& source, FileKind wanted) {
  const auto kind = kind_of_file(source);
  if (!kind || *kind == wanted) return;
  const std::string name = printable_name(source.name);
  throw UsageError(fmt::format("{} is {}, not {}: lumwright {}", name, words_of(*kind).name, words_of(wanted).name,
                               fmt::format(fmt::runtime(words_of(*kind).command), name)));
}
description::Build description_in(const Shelf* shelf, const std::string& file) {
  return read_as(FileKind::description, read_file(shelf, file), description::read_build);
}
}  // namespace lumwright::cli
