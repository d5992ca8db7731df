// lumwright: reads the command line, calls the library, prints, leaves. No physics here.
#include "commands.hpp"
#include "data/first_words.hpp"
#include "files.hpp"
#include "run.hpp"
#include "terminal.hpp"
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string>

namespace {
using namespace lumwright;
using namespace lumwright::cli;

/// The two lines that head every output. Text that has them already keeps its form; tables and scripts for other programs
/// get them where they do no harm.
void print_headed(std::string text, const Options& options) {
  const auto& words = data::first_words();
  const bool has_them = std::all_of(words.begin(), words.end(),
                                    [&](const std::string& w) { return text.find(w) != std::string::npos; });
  const bool table = options.format == Format::csv ||
                     (options.command == Command::trace && options.format != Format::json);
  if (has_them) return write_output(text);
  if (table) {
    const std::string lines = data::first_lines();
    std::fwrite(lines.data(), 1, lines.size(), stderr);
    return write_output(text);
  }
  if (options.command == Command::completion) return write_output(text + data::first_lines("# "));
  if (options.command == Command::version) return write_output(text + data::first_lines());
  write_output(data::first_lines() + "\n" + text);
}
}  // namespace

int main(int argc, char** argv) {
  survive_closed_pipes();
  try {
    const Options options = parse_options(argc, argv);
    const Answer answer = run(options);
    print_headed(answer.text, options);
    return answer.status;
  } catch (const ReaderGone&) {
    return end_by_closed_pipe();
  } catch (const std::exception& e) {
    const Complaint complaint = complaint_of(e);
    const std::string line = complaint.text + "\n";
    std::fwrite(line.data(), 1, line.size(), stderr);
    return complaint.status;
  }
}
