#include "data/questions.hpp"
#include "data/table.hpp"

namespace lumwright::data {
const std::vector<QuestionRow>& questions() {
  static const std::vector<QuestionRow> all = read_all("questions", "questions", [](const Row& row) {
    return QuestionRow{row.text("key"),   row.text("ask"), row.text("how"),
                       row.text("usual"), row.basis()};
  });
  return all;
}
}  // namespace lumwright::data
