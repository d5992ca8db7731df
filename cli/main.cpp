// lumwright: reads the command line, calls the library, prints, leaves. No physics here.
#include "command.hpp"
#include "complaint.hpp"
#include "data/first_words.hpp"
#include "files.hpp"
#include "grammar.hpp"
#include "terminal.hpp"
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string>

namespace {
using namespace lumwright;
using namespace lumwright::cli;

/// The two lines that head every output. Text that has them already keeps its form.
void print_headed(const Answer& answer) {
  const auto& words = data::first_words();
  const std::string& text = answer.text;
  const std::string lines = data::first_lines();
  if (std::all_of(words.begin(), words.end(), [&](const std::string& w) { return text.find(w) != std::string::npos; }))
    return write_output(text);
  switch (answer.head) {
    case Head::before:
      return write_output(lines + "\n" + text);
    case Head::behind:
      return write_output(text + lines);
    case Head::comment:
      return write_output(text + data::first_lines("# "));
    case Head::apart:
      std::fwrite(lines.data(), 1, lines.size(), stderr);
      return write_output(text);
  }
}
}  // namespace

int main(int argc, char** argv) {
  survive_closed_pipes();
  try {
    const Words words = parse(argc, argv);
    const Answer answer = words.command().run(words);
    print_headed(answer);
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
