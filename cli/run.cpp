#include "run.hpp"
#include "files.hpp"
#include "input/source.hpp"
#include "report/explain.hpp"

namespace lumwright::cli {
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
    case Command::guide:
      return guide(options);
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
Complaint complaint_of(const std::exception& e) {
  const auto is = [&]<class... Kinds>() { return (... || (dynamic_cast<const Kinds*>(&e) != nullptr)); };
  if (is.operator()<InputError>()) return {e.what(), bad_input};
  const std::string text = std::string("lumwright: ") + e.what();
  if (is.operator()<UsageError, FileError, UnknownCheck>()) return {text, bad_input};
  if (is.operator()<NoAnswer>()) return {text, fails};
  if (is.operator()<WriteError>()) return {text, internal};
  return {std::string("lumwright: internal error: ") + e.what(), internal};
}
}  // namespace lumwright::cli
