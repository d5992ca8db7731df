// The keys of the JSON answers, each with what stands there: the schema and the table of `lumwright schema answer` are
// made of them, and a test holds real answers to both.
#pragma once
#include <string_view>
#include <vector>

namespace lumwright::report {
struct AnswerKey {
  enum class When { always, maybe };
  /// Steps with a stroke between: "checks/[]/limit"; [] is every member of a list, * every key of an object.
  std::string_view path;
  /// text, number, whole, yes/no, texts, numbers, object, list; measure, band, combination, which have keys of their
  /// own; else the words that may stand there, with bars between. With `?` behind it may be null.
  std::string_view type;
  std::string_view meaning;
  When when = When::always;
};
struct AnswerKind {
  std::string_view name;     // "check"
  std::string_view command;  // "check --format json"
  std::vector<AnswerKey> keys;
};
/// Of every command that answers in JSON.
const std::vector<AnswerKind>& answer_kinds();

// One for each command.
std::vector<AnswerKey> keys_of_check();
std::vector<AnswerKey> keys_of_combination();  // wherever one of `choose` is told
std::vector<AnswerKey> keys_of_choose();
std::vector<AnswerKey> keys_of_bench();
std::vector<AnswerKey> keys_of_prove();
std::vector<AnswerKey> keys_of_trace();
}  // namespace lumwright::report
