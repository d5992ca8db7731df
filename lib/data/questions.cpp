#include "data/questions.hpp"
#include "data/table.hpp"

namespace lumwright::data {
namespace {
QuestionRow question(const Row& row) {
  return {row.text("key"), row.text("ask"), row.text("how"), row.text("usual"), row.basis()};
}
}  // namespace
const std::vector<QuestionRow>& questions() {
  static const std::vector<QuestionRow> all = read_all("questions", "questions", question);
  return all;
}
const std::vector<QuestionRow>& log_questions() {
  static const std::vector<QuestionRow> all = read_all("questions", "of_a_log", question);
  return all;
}
}  // namespace lumwright::data
