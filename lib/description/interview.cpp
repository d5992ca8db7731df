#include "description/interview.hpp"
#include "description/detail/answers_text.hpp"
#include "description/reader.hpp"

namespace lumwright::description {
std::string Interview::description() const { return text_of(answers_, keys()); }

std::string Interview::take(std::string_view key, std::string_view answer) {
  const std::string_view text = stripped(answer);
  if (text.empty()) return "";
  Interview with = *this;
  with.answers_.insert_or_assign(std::string(key), std::string(text));
  try {
    read_build({"the answers", with.description()});
  } catch (const input::InputError& e) {
    return said_of(e);
  }
  *this = std::move(with);
  return "";
}
}  // namespace lumwright::description
