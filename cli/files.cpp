#include "files.hpp"
#include "input/utf8.hpp"
#include "passing_files.hpp"
#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <fmt/format.h>
#include <memory>
#include <system_error>
#include <utility>
#include <vector>

namespace lumwright::cli {
namespace {
constexpr std::size_t enough_to_refuse = 1280 * 1024;  // the reader of bins stops at 1 MB, others sooner

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
  if (std::ferror(file) != 0) throw FileError(fmt::format("cannot read {}: {}", input::printable(name), reason(errno)));
  text.resize(size);
  return text;
}
/// True when all of it, and what was buffered before, has left the program.
bool write_all(std::FILE* file, const std::string& text) {
  errno = 0;
  return std::fwrite(text.data(), 1, text.size(), file) == text.size() && std::fflush(file) == 0;
}
}  // namespace

input::Source read_file(const std::string& name) {
  if (name == "-") return {"standard input", read_stream(stdin, "standard input")};
  std::error_code ignored;
  if (std::filesystem::is_directory(name, ignored))
    throw FileError(fmt::format("cannot read {}: it is a directory, not a description", input::printable(name)));
  const std::unique_ptr<std::FILE, Close> file(std::fopen(name.c_str(), "rb"));
  if (!file) throw FileError(fmt::format("cannot read {}: {}", input::printable(name), reason(errno)));
  return {name, read_stream(file.get(), name)};
}

void write_output(const std::string& text) {
  if (write_all(stdout, text)) return;
#ifdef EPIPE
  if (errno == EPIPE) throw ReaderGone();
#endif
  throw WriteError(fmt::format("cannot write the answer: {}", reason(errno)));
}

namespace {
[[noreturn]] void refuse_existing(const std::string& name) {
  throw FileError(fmt::format("{} is there already, and lumwright never overwrites a file", input::printable(name)));
}
/// Under `torso`, a name that nobody looks for; complaints speak of `name`.
void fill_new(const std::string& torso, const std::string& name, const std::string& text) {
  std::FILE* file = std::fopen(torso.c_str(), "wbx");  // x: fails where there is one (C11 7.21.5.3)
  if (file == nullptr && errno == EEXIST) refuse_existing(name);
  if (file == nullptr) throw FileError(fmt::format("cannot create {}: {}", input::printable(name), reason(errno)));
  const bool written = write_all(file, text);
  int why = errno;
  const bool closed = std::fclose(file) == 0;  // a full disk over a network may be told only now
  if (written && !closed) why = errno;
  if (written && closed) return;
  std::remove(torso.c_str());
  throw WriteError(fmt::format("cannot write {}: {}", input::printable(name), reason(why)));
}
/// A passing file; removed unless it was given its own name.
class Torso {
 public:
  explicit Torso(const std::filesystem::path& folder) : name_(passing_name(folder)) {}
  ~Torso() {
    if (name_.empty()) return;
    std::remove(name_.c_str());
    forget_passing(name_);
  }
  Torso(Torso&& other) noexcept : name_(std::exchange(other.name_, {})) {}
  Torso(const Torso&) = delete;
  Torso& operator=(const Torso&) = delete;
  Torso& operator=(Torso&&) = delete;
  const std::string& name() const { return name_; }
  void take_place_of(const std::string& name) {
    std::error_code why;
    std::filesystem::rename(name_, name, why);
    if (why) throw FileError(fmt::format("cannot replace {}: {}", input::printable(name), why.message()));
    forget_passing(name_);
    name_.clear();
  }

 private:
  std::string name_;
};
std::filesystem::path folder_of(const std::string& name) { return std::filesystem::path(name).parent_path(); }
}  // namespace

void create_file(const std::string& name, const std::string& text) {
  std::error_code why;
  if (std::filesystem::symlink_status(name, why).type() != std::filesystem::file_type::not_found) {
    if (why) throw FileError(fmt::format("cannot create {}: {}", input::printable(name), why.message()));
    refuse_existing(name);
  }
  clear_left_behind(folder_of(name));
  const Torso torso(folder_of(name));
  fill_new(torso.name(), name, text);
  // A link is made whole or not at all, and never over another file, so that a killed process leaves no half file.
  std::filesystem::create_hard_link(torso.name(), name, why);
  if (why == std::errc::file_exists) refuse_existing(name);
  if (why) fill_new(name, name, text);  // a file system without links
}

bool file_exists(const std::string& name) {
  std::error_code ignored;
  return std::filesystem::exists(name, ignored);
}

bool same_file(const std::string& one, const std::string& other) {
  std::error_code ignored;
  return std::filesystem::equivalent(one, other, ignored);
}

std::string printable_name(const std::string& name) { return input::printable(name); }

void write_folder(const std::string& folder, const std::vector<report::NamedText>& files) {
  std::error_code why;
  const bool made = std::filesystem::create_directories(folder, why);
  if (why || !std::filesystem::is_directory(folder))
    throw FileError(fmt::format("cannot make the folder {}: {}", input::printable(folder),
                                why ? why.message() : "there is a file of that name"));
  try {
    clear_left_behind(folder);
    std::vector<Torso> torsos;
    const auto own_name = [&](const report::NamedText& file) {
      return (std::filesystem::path(folder) / file.name).string();
    };
    for (const report::NamedText& file : files) fill_new(torsos.emplace_back(folder).name(), own_name(file), file.text);
    for (std::size_t i = files.size(); i-- > 0;) torsos[i].take_place_of(own_name(files[i]));
  } catch (...) {
    std::error_code ignored;
    if (made) std::filesystem::remove(folder, ignored);  // if it is empty
    throw;
  }
}

void replace_file(const std::string& name, const std::string& text) {
  clear_left_behind(folder_of(name));
  Torso torso(folder_of(name));
  fill_new(torso.name(), name, text);
  torso.take_place_of(name);
}
}  // namespace lumwright::cli
