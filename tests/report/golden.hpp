// Compares a whole text with a file beside the test. LUMWRIGHT_UPDATE=1 writes the files anew, to be read before they
// are kept.
#pragma once
#include <cstdlib>
#include <doctest/doctest.h>
#include <fstream>
#include <sstream>
#include <string>

namespace lumwright {
/// `name` is a path below the project's folder.
inline void check_kept(const std::string& name, const std::string& text) {
  const std::string path = std::string(SOURCE_DIR) + "/" + name;
  if (std::getenv("LUMWRIGHT_UPDATE") != nullptr) std::ofstream(path, std::ios::binary) << text;
  std::ifstream file(path, std::ios::binary);
  REQUIRE_MESSAGE(file.good(), path);
  std::ostringstream wanted;
  wanted << file.rdbuf();
  CHECK_MESSAGE(text == wanted.str(), name, " differs; this is what came out:\n", text);
}
inline void check_golden(const std::string& name, const std::string& text) {
  check_kept("tests/report/golden/" + name, text);
}
}  // namespace lumwright
