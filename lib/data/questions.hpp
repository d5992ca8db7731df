// What `new --ask` and `log` ask, in the order in which they ask.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct QuestionRow {
  std::string key;    // of the description, or of a log
  std::string ask;    // in words of the workshop
  std::string how;    // where, and with what
  std::string usual;  // what people have
  Basis basis{};
};
const std::vector<QuestionRow>& questions();
const std::vector<QuestionRow>& log_questions();
}  // namespace lumwright::data
