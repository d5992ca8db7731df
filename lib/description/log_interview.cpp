#include "description/detail/answers_text.hpp"
#include "description/interview.hpp"
#include "description/part_writer.hpp"
#include "description/season.hpp"
#include "quantity/words.hpp"
#include <fmt/format.h>
#include <optional>

namespace lumwright::description {
namespace {
const std::vector<Key>& keys_of_log() {
  static const std::vector<Key> all = list_keys<Log>();
  return all;
}
/// The keys of a reading as somebody would say them: "fan current" as well.
std::string spoken(std::string_view key) {
  std::string out(key);
  for (char& c : out)
    if (c == '_') c = ' ';
  return out;
}
struct Found {
  std::size_t at, size;
  std::string_view key;
};
/// The first key of a reading from `from` on, with its words standing alone.
std::optional<Found> key_in(std::string_view text, std::size_t from) {
  std::optional<Found> first;
  const auto letter = [&](std::size_t i) {
    return i < text.size() && ((text[i] >= 'a' && text[i] <= 'z') || text[i] == '_');
  };
  for (const Key& key : keys_of_log()) {
    if (key.section != "readings" || key.field.key == "time") continue;
    for (const std::string& word : {std::string(key.field.key), spoken(key.field.key)}) {
      const std::size_t at = text.find(word, from);
      if (at == std::string_view::npos || (at > 0 && letter(at - 1)) || letter(at + word.size())) continue;
      if (!first || at < first->at) first = Found{at, word.size(), key.field.key};
    }
  }
  return first;
}
std::string_view without_marks(std::string_view text) {
  text = stripped(text);
  while (!text.empty() && (text.front() == ':' || text.front() == ',' || text.front() == ';'))
    text = stripped(text.substr(1));
  while (!text.empty() && (text.back() == ',' || text.back() == ';' || text.back() == ':'))
    text = stripped(text.substr(0, text.size() - 1));
  return text;
}
/// "8:10 gauge 1.2 bar" as an item of the list; empty where it names nothing that was read.
std::string item_of(std::string_view text) {
  std::optional<Found> key = key_in(text, 0);
  if (!key) return "";
  std::string out = fmt::format("  - time: {}\n", yaml_text(std::string(without_marks(text.substr(0, key->at)))));
  while (key) {
    const std::size_t from = key->at + key->size;
    const std::optional<Found> next = key_in(text, from);
    const std::string value(without_marks(text.substr(from, next ? next->at - from : std::string_view::npos)));
    out += fmt::format("    {}: {}\n", key->key, yaml_text(value));
    key = next;
  }
  return out;
}
}  // namespace

std::string LogInterview::text() const {
  std::string out = text_of(answers_, keys_of_log());
  if (!readings_.empty()) out += "readings:\n";
  for (const std::string& item : readings_) out += item;
  return out;
}
Log LogInterview::log() const { return read_lighting_up({"the answers", text()}); }

std::string LogInterview::take(std::string_view key, std::string_view answer) {
  const std::string_view text = stripped(answer);
  if (text.empty()) return "";
  LogInterview with = *this;
  if (key == "readings") {
    const std::string item = item_of(text);
    if (item.empty())
      return "write the time and what was read then, as in `8:10 gauge 1.2 bar` or `4:00 water 58 degC`;\n"
             "it may be water, gauge, smokebox, fan current, pack voltage, fuel";
    with.readings_.push_back(item);
  } else {
    with.answers_.insert_or_assign(std::string(key), std::string(text));
  }
  LogInterview enough = with;  // a day alone is no lighting-up yet
  enough.answers_.emplace("remarks", "-");
  enough.answers_.emplace("pack.put_back", "1 Ah");
  try {
    enough.log();
  } catch (const input::InputError& e) {
    return said_of(e);
  }
  *this = std::move(with);
  return "";
}
}  // namespace lumwright::description
