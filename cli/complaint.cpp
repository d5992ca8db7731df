#include "complaint.hpp"
#include "files.hpp"
#include "input/source.hpp"
#include "report/explain.hpp"
#include "report/no_answer.hpp"
#include "words.hpp"

namespace lumwright::cli {
Complaint complaint_of(const std::exception& e) {
  const auto is = [&]<class... Kinds>() { return (... || (dynamic_cast<const Kinds*>(&e) != nullptr)); };
  if (is.operator()<input::InputError>()) return {e.what(), bad_input};
  const std::string text = std::string("lumwright: ") + e.what();
  if (is.operator()<UsageError, FileError, report::UnknownCheck>()) return {text, bad_input};
  if (is.operator()<report::NoAnswer>()) return {text, fails};
  if (is.operator()<WriteError>()) return {text, internal};
  return {std::string("lumwright: internal error: ") + e.what(), internal};
}
}  // namespace lumwright::cli
