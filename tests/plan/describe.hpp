// Descriptions for the tests of plan/: read from text, or an example with some keys changed.
#pragma once
#include "build/reader.hpp"
#include "plan/assess.hpp"
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace lumwright {
inline Build described(std::string text) { return read_build({"test.yaml", std::move(text)}); }

inline std::string example_text(const std::string& name) {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/" + name + ".yaml", std::ios::binary);
  if (!in) throw std::runtime_error("no example " + name);
  return {std::istreambuf_iterator<char>(in), {}};
}
/// The example with each `first` replaced by its `second`; throws if one does not stand in it exactly once.
inline Build example(const std::string& name, const std::vector<std::pair<std::string, std::string>>& changes = {}) {
  std::string text = example_text(name);
  for (const auto& [from, to] : changes) {
    const auto at = text.find(from);
    if (at == std::string::npos || text.find(from, at + 1) != std::string::npos)
      throw std::runtime_error("`" + from + "` does not stand once in " + name);
    text.replace(at, from.size(), to);
  }
  return described(std::move(text));
}
inline const std::vector<std::string>& example_names() {
  static const std::vector<std::string> names = {"tarn-beck", "high-tarn-32mm", "great-fell-5in"};
  return names;
}
/// The SI number of a result; throws if it is not there.
inline double number(const Assessment& assessment, const std::string& key) {
  const Result* result = find_result(assessment, key);
  if (result == nullptr) throw std::runtime_error("no result " + key);
  return std::get<Measure>(result->value).quantity.si;
}
inline Verdict verdict(const Assessment& assessment, const std::string& id) {
  const Finding* finding = find_check(assessment, id);
  if (finding == nullptr) throw std::runtime_error("no check " + id);
  return finding->verdict;
}
}  // namespace lumwright
