// What stands behind a command, as text that the table of options allows. What it means is each command's own affair.
#pragma once
#include <cstddef>
#include <cstdint>
#include <limits>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lumwright::cli {
struct CommandRow;
struct Shelf;

/// Arguments that mean nothing here; what() is the complaint.
struct UsageError : std::runtime_error {
  using std::runtime_error::runtime_error;
};
/// Throws UsageError: "WHAT `word`; did you mean `near`?", or "it may be" any of those known.
[[noreturn]] void refuse(std::string_view what, const std::string& word, const std::vector<std::string_view>& known);

/// One option or argument as it was written.
struct Written {
  std::string text{};              // at first what is usual
  std::vector<std::string> all{};  // of one that may stand several times
  bool on = false;                 // of one with nothing behind it
};
using AllWritten = std::map<std::string, Written, std::less<>>;  // by the first name of the row, or of the argument

/// What a command runs in, where that is no terminal and no disk: a page of the guide.
struct Around {
  Shelf* shelf = nullptr;  // files in place of the disk's
  std::size_t most_samples = std::numeric_limits<std::size_t>::max();
  bool plain = false;  // no colour, whatever was asked
};

class Words {
 public:
  Words(const CommandRow& command, AllWritten written) : command_(&command), written_(std::move(written)) {}

  const CommandRow& command() const { return *command_; }
  Around around{};

  // Arguments and options, by the first name of their row. One that the command has not is a mistake of ours:
  // std::logic_error.

  /// What was written, else what is usual; empty where there is neither.
  const std::string& text(std::string_view name) const { return written(name).text; }
  /// The same of an argument, or of an option by what stands behind it; throws UsageError that tells the usage.
  const std::string& needed(std::string_view name) const;
  bool has(std::string_view option) const { return written(option).on; }
  /// Of one that may be repeated.
  const std::vector<std::string>& all(std::string_view name) const { return written(name).all; }
  /// A whole number from 0 to `most`; throws UsageError.
  std::uint64_t whole(std::string_view option, std::uint64_t most) const;
  /// Which of the words that its row lists; the row and `values` must agree.
  template <class T>
  T choice(std::string_view option, const std::vector<std::pair<std::string_view, T>>& values) const {
    for (const auto& [known, value] : values)
      if (known == text(option)) return value;
    throw std::logic_error(std::string(option) + " has no meaning for " + text(option));
  }

 private:
  const Written& written(std::string_view name) const;

  const CommandRow* command_;
  AllWritten written_;
};
}  // namespace lumwright::cli
