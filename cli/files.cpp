#include "files.hpp"
#include "input/utf8.hpp"
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <fmt/format.h>
#include <memory>
#include <random>
#include <system_error>

namespace lumwright::cli {
namespace {
constexpr std::size_t enough_to_refuse = 256 * 1024;  // the reader stops at 64 kB

std::string reason(int number) { return std::generic_category().message(number); }
struct Close {
  void operator()(std::FILE* file) const { std::fclose(file); }
};
std::string read_stream(std::FILE* file, const std::string& name) {
  std::string text(enough_to_refuse, '\0');
  std::size_t size = 0;
  errno = 0;
  while (size < text.size()) {
    const std::size_t got = std::fread(text.data() + size, 1, text.size() - size, file);
    if (got == 0) break;
    size += got;
  }
  if (std::ferror(file) != 0) throw FileError(fmt::format("cannot read {}: {}", printable(name), reason(errno)));
  text.resize(size);
  return text;
}
/// True when all of it, and what was buffered before, has left the program.
bool write_all(std::FILE* file, const std::string& text) {
  errno = 0;
  return std::fwrite(text.data(), 1, text.size(), file) == text.size() && std::fflush(file) == 0;
}
}  // namespace

Source read_file(const std::string& name) {
  if (name == "-") return {"standard input", read_stream(stdin, "standard input")};
  std::error_code ignored;
  if (std::filesystem::is_directory(name, ignored))
    throw FileError(fmt::format("cannot read {}: it is a directory, not a description", printable(name)));
  const std::unique_ptr<std::FILE, Close> file(std::fopen(name.c_str(), "rb"));
  if (!file) throw FileError(fmt::format("cannot read {}: {}", printable(name), reason(errno)));
  return {name, read_stream(file.get(), name)};
}

void write_output(const std::string& text) {
  if (!write_all(stdout, text)) throw WriteError(fmt::format("cannot write the answer: {}", reason(errno)));
}

void create_file(const std::string& name, const std::string& text) {
  std::FILE* file = std::fopen(name.c_str(), "wbx");  // x: fails where there is one (C11 7.21.5.3)
  if (file == nullptr && errno == EEXIST)
    throw FileError(fmt::format("{} is there already, and lumwright never overwrites a file", printable(name)));
  if (file == nullptr) throw FileError(fmt::format("cannot create {}: {}", printable(name), reason(errno)));
  const bool written = write_all(file, text);
  const int why = errno;
  if (std::fclose(file) == 0 && written) return;
  std::remove(name.c_str());
  throw WriteError(fmt::format("cannot write {}: {}", printable(name), reason(why)));
}

bool file_exists(const std::string& name) {
  std::error_code ignored;
  return std::filesystem::exists(name, ignored);
}

bool same_file(const std::string& one, const std::string& other) {
  std::error_code ignored;
  return std::filesystem::equivalent(one, other, ignored);
}

void replace_file(const std::string& name, const std::string& text) {
  const std::string torso = fmt::format("{}.{:08x}.part", name, std::random_device()());
  create_file(torso, text);
  std::error_code why;
  std::filesystem::rename(torso, name, why);
  if (!why) return;
  std::remove(torso.c_str());
  throw FileError(fmt::format("cannot replace {}: {}", printable(name), why.message()));
}
}  // namespace lumwright::cli
