#include "shelf.hpp"
#include "files.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
input::Source read_file(const Shelf* shelf, const std::string& name) {
  if (shelf == nullptr) return read_file(name);
  const auto found = shelf->files.find(name);
  if (found == shelf->files.end())
    throw FileError(fmt::format("cannot read {}: No such file or directory", printable_name(name)));
  return {name, found->second};
}
bool file_exists(const Shelf* shelf, const std::string& name) {
  return shelf == nullptr ? file_exists(name) : shelf->files.contains(name);
}
void replace_file(Shelf* shelf, const std::string& name, const std::string& text) {
  if (shelf == nullptr) return replace_file(name, text);
  shelf->files[name] = text;
}
void create_file(Shelf* shelf, const std::string& name, const std::string& text) {
  if (shelf == nullptr) return create_file(name, text);
  if (!shelf->files.emplace(name, text).second)
    throw FileError(fmt::format("{} is there already, and lumwright never overwrites a file", printable_name(name)));
}
void write_folder(Shelf* shelf, const std::string& folder, const std::vector<report::NamedText>& files) {
  if (shelf == nullptr) return write_folder(folder, files);
  for (const report::NamedText& file : files) shelf->files[folder + "/" + file.name] = file.text;
}
}  // namespace lumwright::cli
