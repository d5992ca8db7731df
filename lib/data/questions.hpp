// What `new --ask` asks, in the order in which it asks.
#pragma once
#include "data/basis.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct QuestionRow {
  std::string key;    // of the description
  std::string ask;    // in words of the workshop
  std::string how;    // where, and with what
  std::string usual;  // what people have
  Basis basis{};
};
const std::vector<QuestionRow>& questions();
}  // namespace lumwright::data
