#include "ask.hpp"
#include "data/first_words.hpp"
#include "data/questions.hpp"
#include "description/interview.hpp"
#include "files.hpp"
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
class AskingLog {
 public:
  AskingLog(const std::optional<description::Season>& season, const std::string& file) : season_(season), file_(file) {}
  description::Log all() {
    const auto& questions = data::log_questions();
    write_output(data::first_lines() +
                 fmt::format("\n{} questions on the lighting-up. Answer with any unit; leave a line blank for what\n"
                             "you do not know. Nothing is written before the last one.\n",
                             questions.size()));
    for (const data::QuestionRow& row : questions) {
      write_output(fmt::format("\n{} of {}: {}\n", ++number_, questions.size(), row.ask) + wrapped("  how: ", row.how) +
                   fmt::format("  usual: {}\n", row.usual));
      ask(row);
    }
    return interview_.log();
  }

 private:
  /// Until the answer can be read or is blank; readings until a blank line ends them; a day that is not known is asked
  /// again.
  void ask(const data::QuestionRow& row) {
    for (;;) {
      write_output(fmt::format("  {}: ", row.key));
      const auto answer = read_answer();
      if (!answer)
        throw UsageError(fmt::format("the answers ended at question {} of {}, so nothing is written", number_,
                                     data::log_questions().size()));
      const bool blank = answer->find_first_not_of(" \t\r") == std::string::npos;
      std::string wrong = blank && row.key == "day" ? "a season needs the day\n" : interview_.take(row.key, *answer);
      if (wrong.empty() && row.key == "number") wrong = day_taken();
      if (!wrong.empty()) write_output("\n" + indented(wrong));
      if (wrong.empty() && (blank || row.key != "readings")) return;
    }
  }
  /// The day stands in the season already.
  std::string day_taken() const {
    if (!season_) return "";
    description::LogInterview enough = interview_;
    enough.take("remarks", "-");
    const description::Log log = enough.log();
    if (description::same_lighting_up(*season_, log) == nullptr) return "";
    return fmt::format("{} is in {} already, and nothing there is overwritten: answer {}",
                       description::day_text(*log.date()), printable_name(file_), log.which() + 1);
  }
  static std::string wrapped(const std::string& lead, const std::string& text) {
    std::string out, line = lead;
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = std::min(text.find(' ', at), text.size());
      if (line.size() + end - at > 79) out += line + "\n", line = std::string(lead.size(), ' ');
      line += text.substr(at, end - at) + " ";
      at = end + 1;
    }
    line.pop_back();
    return out + line + "\n";
  }

  const std::optional<description::Season>& season_;
  const std::string& file_;
  description::LogInterview interview_;
  std::size_t number_ = 0;
};
}  // namespace

description::Log ask_log(const std::optional<description::Season>& season, const std::string& season_file) {
  try {
    return AskingLog(season, season_file).all();
  } catch (const input::InputError& e) {
    throw UsageError("nothing was told of the lighting-up, so nothing is written");
  }
}
}  // namespace lumwright::cli
