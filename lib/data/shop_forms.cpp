#include "data/shop_forms.hpp"
#include "data/table.hpp"
#include <algorithm>

namespace lumwright::data {
bool takes(std::string_view path, std::string_view form) {
  struct Takes {
    std::string key, form;
  };
  static const std::vector<Takes> all = read_all("shop_forms", "takes", [](const Row& row) {
    return Takes{row.text("key"), row.text("form")};
  });
  return std::any_of(all.begin(), all.end(),
                     [&](const Takes& row) { return row.form == form && is_key(path, row.key); });
}
Density weighed_water() {
  static const Density all = section("shop_forms", "water").quantity<Density>("density");
  return all;
}
int most_strands() {
  static const int all = static_cast<int>(section("shop_forms", "strands").number("most"));
  return all;
}
const std::vector<OtherWord>& other_words() {
  static const std::vector<OtherWord> all = read_all("shop_forms", "words", [](const Row& row) {
    return OtherWord{row.text("key"), row.text("also"), row.text("word")};
  });
  return all;
}
}  // namespace lumwright::data
