#include "words.hpp"
#include "command.hpp"
#include "input/utf8.hpp"
#include "option_table.hpp"
#include "quantity/words.hpp"
#include <charconv>
#include <fmt/format.h>

namespace lumwright::cli {
void refuse(std::string_view what, const std::string& word, const std::vector<std::string_view>& known) {
  const std::string_view near = nearest(word, known);
  throw UsageError(near.empty()
                       ? fmt::format("{} `{}`; it may be {}", what, input::printable(word), fmt::join(known, ", "))
                       : fmt::format("{} `{}`; did you mean `{}`?", what, input::printable(word), near));
}
const Written& Words::written(std::string_view name) const {
  const auto found = written_.find(name);
  if (found == written_.end()) throw std::logic_error(fmt::format("`{}` has no {}", command_->word, name));
  return found->second;
}
const std::string& Words::needed(std::string_view name) const {
  const std::string& found = text(name);
  if (!found.empty()) return found;
  std::string_view called = name;
  for (const OptionRow* row : options_of(command_->word))
    if (row->first_name() == name) called = row->value;
  throw UsageError(fmt::format("{} is missing: lumwright {}", called, command_->usage));
}
std::uint64_t Words::whole(std::string_view option, std::uint64_t most) const {
  const std::string& from = text(option);
  std::uint64_t number = 0;
  const auto [end, fault] = std::from_chars(from.data(), from.data() + from.size(), number);
  if (fault != std::errc() || end != from.data() + from.size() || number > most)
    throw UsageError(
        fmt::format("{} takes a whole number from 0 to {}, not `{}`", option, most, input::printable(from)));
  return number;
}
}  // namespace lumwright::cli
