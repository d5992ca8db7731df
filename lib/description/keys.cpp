#include "description/keys.hpp"
#include "description/build.hpp"
#include "quantity/words.hpp"
#include <fmt/format.h>

namespace lumwright::description {
namespace {
std::string either(const std::vector<std::string>& places) {
  std::string out;
  for (std::size_t i = 0; i < places.size(); ++i)
    out += (i == 0 ? "" : i + 1 == places.size() ? " or " : ", ") + places[i];
  return out;
}
}  // namespace

Build::Build() { give_keys(*this, keys()); }
const std::vector<Key>& keys() {
  static const std::vector<Key> all = list_keys(Build(WithoutKeys{}));
  return all;
}

std::string known_keys(const std::vector<Key>& known, std::string_view section) {
  std::string out;
  for (const Key& key : known)
    if (key.section == section) out += (out.empty() ? "" : ", ") + std::string(key.field.key);
  return out;
}
std::string key_help(const std::vector<Key>& known, std::string_view section, std::string_view unknown) {
  std::vector<std::string_view> here;
  std::vector<std::string> places;
  for (const Key& key : known) {
    if (key.section == section) here.push_back(key.field.key);
    if (key.field.key == unknown)
      places.push_back(key.section.empty() ? "at the top level" : (places.empty() ? "under " : "") + key.section);
  }
  if (const std::string_view near = nearest(unknown, here); !near.empty())
    return fmt::format("did you mean `{}`?", near);
  if (!places.empty()) return fmt::format("`{}` belongs {}", unknown, either(places));
  return fmt::format("known here: {}", known_keys(known, section));
}
}  // namespace lumwright::description
