#include "ask.hpp"
#include "data/first_words.hpp"
#include "data/questions.hpp"
#include "description/interview.hpp"
#include "description/reader.hpp"
#include "description/schema.hpp"
#include "files.hpp"
#include "input/utf8.hpp"
#include "plan/assess.hpp"
#include "quantity/words.hpp"
#include "report/interview.hpp"
#include "report/page.hpp"
#include <cstdio>
#include <fmt/format.h>
#include <optional>

namespace lumwright::cli {
std::optional<std::string> read_answer() {
  constexpr std::size_t longest_line = 4096;
  std::string line;
  int c = std::getc(stdin);
  if (c == EOF) return std::nullopt;
  for (; c != EOF && c != '\n'; c = std::getc(stdin)) {
    if (line.size() == longest_line)
      throw UsageError(fmt::format("an answer is longer than {} bytes, so nothing is written", longest_line));
    line += static_cast<char>(c);
  }
  return line;
}
std::string indented(const std::string& text) {
  std::string out;
  for (const std::string_view line : words(text, '\n')) out += "      " + std::string(line) + "\n";
  return out;
}

namespace {
constexpr std::size_t usual_tries = 1000;  // as many as `check` tries
class Asking {
 public:
  explicit Asking(std::size_t count) : count_(count) {}
  /// Asks until the answer can be read, or is blank.
  void ask(std::string_view key, const std::string& question) {
    ++number_;
    write_output("\n" + question);
    for (;;) {
      write_output(fmt::format("  {}: ", key));
      const auto answer = read_answer();
      if (!answer)
        throw UsageError(fmt::format("the answers ended at question {} of {}, so nothing is written", number_, count_));
      const std::string wrong = interview_.take(key, *answer);
      if (wrong.empty()) return;
      write_output("\n" + indented(wrong));  // behind the prompt, where nobody pressed return
    }
  }
  const description::Interview& answers() const { return interview_; }

 private:
  description::Interview interview_;
  std::size_t number_ = 0, count_;
};
std::string introduction(std::size_t count) {
  return data::first_lines() +
         fmt::format(
             "\n{} questions. Answer with any unit, as in 17.6 mm or 5/8 in; leave a line blank for\n"
             "what you do not know. Nothing is written before the last one.\n",
             count);
}
description::Interview asked() {
  const auto& questions = data::questions();
  const std::size_t count = questions.size() + 1;
  write_output(introduction(count));
  Asking asking(count);
  asking.ask("name", fmt::format("1 of {}: What do you call this engine and its fan?\n", count));
  for (std::size_t i = 0; i < questions.size(); ++i) {
    const data::QuestionRow& row = questions[i];
    asking.ask(row.key,
               fmt::format("{} of {}: {}\n  how: {}\n  usual: {}\n", i + 2, count, row.ask, row.how, row.usual));
  }
  return asking.answers();
}
}  // namespace

Answer ask(const std::string& file, bool colour) {
  if (file == "-") throw UsageError("`--ask` asks on standard output, so FILE must be a file and not `-`");
  if (file_exists(file))
    throw FileError(fmt::format("{} is there already, and lumwright never overwrites a file", input::printable(file)));
  const description::Interview answers = asked();
  if (answers.knows_nothing()) throw UsageError("no question was answered, so nothing is written");
  const std::string text = data::first_lines("# ") + "#\n" + description::editor_line("description") +
                           "#\n# Written by `lumwright new --ask`. All other keys: `lumwright new FILE`.\n" +
                           answers.description();
  const description::Build build = description::read_build({file, text});
  const plan::Assessment assessment =
      plan::assess(build, UnitSystem::as_written, nullptr, plan::SamplesAsked{.count = usual_tries});
  create_file(file, text);
  return {fmt::format("\n{0} is written.\n\n{1}\nThe whole page, with the cautions: lumwright check {0}\n",
                      input::printable(file), report::first_answers(assessment, report::TextStyle{.colour = colour}))};
}
}  // namespace lumwright::cli
