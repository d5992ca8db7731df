// lumwright: reads the command line, calls the library, prints, leaves. No physics here.
#include "commands.hpp"
#include "data/first_words.hpp"
#include "files.hpp"
#include "report/explain.hpp"
#include "terminal.hpp"
#include <algorithm>
#include <cstdio>
#include <exception>
#include <string>

namespace {
using namespace lumwright;
using namespace lumwright::cli;

Answer run(const Options& options) {
  switch (options.command) {
    case Command::help:
      return help(options);
    case Command::version:
      return version(options);
    case Command::check:
      return check(options);
    case Command::sweep:
      return sweep(options);
    case Command::compare:
      return compare(options);
    case Command::explain:
      return explain(options);
    case Command::trace:
      return trace(options);
    case Command::tune:
      return tune(options);
    case Command::report:
      return report(options);
    case Command::choose:
      return choose(options);
    case Command::bench:
      return bench(options);
    case Command::draw:
      return draw(options);
    case Command::sheet:
      return sheet(options);
    case Command::create:
      return create(options);
    case Command::units:
      return units(options);
    case Command::completion:
      return completion(options);
    case Command::schema:
      return schema(options);
  }
  throw std::logic_error("a command without a body");
}
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
int complain(const std::string& text, ExitStatus status) {
  const std::string line = text + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
  return status;
}
}  // namespace

int main(int argc, char** argv) {
  survive_closed_pipes();
  try {
    const Options options = parse_options(argc, argv);
    const Answer answer = run(options);
    print_headed(answer.text, options);
    return answer.status;
  } catch (const InputError& e) {
    return complain(e.what(), bad_input);
  } catch (const UsageError& e) {
    return complain(std::string("lumwright: ") + e.what(), bad_input);
  } catch (const FileError& e) {
    return complain(std::string("lumwright: ") + e.what(), bad_input);
  } catch (const UnknownCheck& e) {
    return complain(std::string("lumwright: ") + e.what(), bad_input);
  } catch (const NoAnswer& e) {
    return complain(std::string("lumwright: ") + e.what(), fails);
  } catch (const ReaderGone&) {
    return end_by_closed_pipe();
  } catch (const WriteError& e) {
    return complain(std::string("lumwright: ") + e.what(), internal);
  } catch (const std::exception& e) {
    return complain(std::string("lumwright: internal error: ") + e.what(), internal);
  }
}
