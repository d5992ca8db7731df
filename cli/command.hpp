// A command: how it is written, what help says of it, and what it does. Each stands as one row in a file of its own.
#pragma once
#include "exit_status.hpp"
#include "report/no_answer.hpp"
#include "words.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
/// Where the two lines go that head every output.
enum class Head {
  before,   // above the answer
  behind,   // below it
  comment,  // below it, behind a `#`
  apart     // beside it, as a complaint: tables for other programs have no room for them
};
struct Answer {
  std::string text;
  ExitStatus status = fine;
  Head head = Head::before;
};
struct CommandRow {
  std::string_view word;
  std::string_view arguments{};  // their names: "CHECK FILE"; "..." behind the last: any number of it
  std::string_view usage{};      // as the manual's first page and complaints tell it: "draw FILE -o DIR"
  std::string_view brief{};      // what it is for, in half a line
  std::string_view headline{};   // of its own page, where that is another than usage and brief
  std::string_view about{};      // its page, above the options
  std::string_view first{};      // the options that its page tells first; the others follow as in the table
  std::string_view below{};      // its page, below them: examples and exit status
  Answer (*run)(const Words& words) = nullptr;
  std::vector<std::string> (*words)() = nullptr;  // what the first argument may be, for completion
};
/// Every command, in the order of the manual.
const std::vector<const CommandRow*>& commands();
std::vector<std::string_view> command_words();
/// The command of that name; nothing where there is none.
const CommandRow* find_command(std::string_view word);
}  // namespace lumwright::cli
