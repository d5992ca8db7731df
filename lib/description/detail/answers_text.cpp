#include "description/detail/answers_text.hpp"
#include "description/part_writer.hpp"
#include "quantity/words.hpp"
#include <fmt/format.h>

namespace lumwright::description {
namespace {
// The lines that open the sections of `path` that are not those of `before`, and the margin behind them.
std::string opened(const std::vector<std::string_view>& path, const std::vector<std::string_view>& before) {
  std::size_t same = 0;
  while (same + 1 < path.size() && same + 1 < before.size() && path[same] == before[same]) ++same;
  std::string out;
  for (std::size_t i = same; i + 1 < path.size(); ++i) out += std::string(2 * i, ' ') + std::string(path[i]) + ":\n";
  return out + std::string(2 * (path.size() - 1), ' ');
}
}  // namespace

std::string_view stripped(std::string_view text) {
  const auto from = text.find_first_not_of(" \t\r");
  return from == std::string_view::npos ? "" : text.substr(from, text.find_last_not_of(" \t\r") - from + 1);
}
std::string said_of(const input::InputError& e) {
  std::string out;
  for (const input::Fault& fault : e.faults()) {
    out += (out.empty() ? "" : "\n") + fault.message;
    if (!fault.help.empty()) out += "\n" + fault.help;
  }
  return out;
}

std::string text_of(const Answers& answers, const std::vector<Key>& known) {
  std::string out;
  std::vector<std::string_view> before;
  for (const Key& key : known) {
    if (key.is_section) continue;
    const auto answer = answers.find(key.path);
    if (answer == answers.end()) continue;
    const std::vector<std::string_view> parts = words(key.path, '.');
    out += fmt::format("{}{}: {}\n", opened(parts, before), parts.back(), yaml_text(answer->second));
    before = parts;
  }
  return out;
}
}  // namespace lumwright::description
