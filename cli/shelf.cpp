#include "shelf.hpp"
#include "files.hpp"
#include "tuned_beside.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
Source read_file(const Options& options, const std::string& name) {
  if (options.shelf == nullptr) return read_file(name);
  const auto found = options.shelf->files.find(name);
  if (found == options.shelf->files.end())
    throw FileError(fmt::format("cannot read {}: No such file or directory", printable_name(name)));
  return {name, found->second};
}
bool file_exists(const Options& options, const std::string& name) {
  return options.shelf == nullptr ? file_exists(name) : options.shelf->files.contains(name);
}
void replace_file(const Options& options, const std::string& name, const std::string& text) {
  if (options.shelf == nullptr) return replace_file(name, text);
  options.shelf->files[name] = text;
}
void create_file(const Options& options, const std::string& name, const std::string& text) {
  if (options.shelf == nullptr) return create_file(name, text);
  if (!options.shelf->files.emplace(name, text).second)
    throw FileError(fmt::format("{} is there already, and lumwright never overwrites a file", printable_name(name)));
}
void write_folder(const Options& options, const std::vector<NamedText>& files) {
  if (options.shelf == nullptr) return write_folder(options.folder, files);
  for (const NamedText& file : files) options.shelf->files[options.folder + "/" + file.name] = file.text;
}

Assessment judged_once(const Options& options, const std::function<Assessment()>& judge) {
  if (options.shelf == nullptr) return judge();
  std::string asked = fmt::format("{} {} {} {} {}", options.file, options.samples, options.seed, options.untuned,
                                  static_cast<int>(options.units));
  for (const Setting& one : options.set) asked += fmt::format(" {}={}", one.key, one.value);
  for (const std::string& name : {options.file, tuned_name(options.file)})  // either may have been written anew
    if (file_exists(options, name)) asked += "\n" + read_file(options, name).text;
  const auto known = options.shelf->judged.find(asked);
  if (known != options.shelf->judged.end()) return known->second;
  return options.shelf->judged.emplace(asked, judge()).first->second;
}
}  // namespace lumwright::cli
