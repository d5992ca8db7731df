// Decimal points that slip: the examples as they are, and each with one number ten times too great or too small.
#include "plan/slips.hpp"
#include "description/reader.hpp"
#include <cctype>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <fstream>
#include <sstream>

using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using namespace lumwright::plan;
namespace {
std::string text_of_example(const char* name) {
  std::ifstream file(std::string(SOURCE_DIR "/examples/") + name);
  std::stringstream all;
  all << file.rdbuf();
  return all.str();
}
bool in_comment(const std::string& text, std::size_t at) {
  const std::size_t line = text.rfind('\n', at) + 1;
  return text.substr(line, at - line).find('#') != std::string::npos;
}
/// The text with each number above zero that stands behind a blank or a bracket, shifted by ten either way.
std::vector<std::string> slipped_texts(const std::string& text) {
  std::vector<std::string> all;
  for (std::size_t i = 1; i < text.size(); ++i) {
    const char before = text[i - 1];
    if (!std::isdigit(static_cast<unsigned char>(text[i])) || (before != ' ' && before != '[') || in_comment(text, i))
      continue;
    std::size_t used = 0;
    const double number = std::stod(text.substr(i), &used);
    if (number == 0.0) continue;
    for (const double factor : {10.0, 0.1})
      all.push_back(text.substr(0, i) + fmt::format("{:.6g}", number * factor) + text.substr(i + used));
  }
  return all;
}
}  // namespace

TEST_CASE("the examples get no remark") {
  for (const char* name : {"tarn-beck.yaml", "great-fell-5in.yaml", "high-tarn-32mm.yaml"}) {
    CAPTURE(name);
    for (const Remark& remark : likely_slips(read_build({name, text_of_example(name)}))) FAIL_CHECK(remark.text);
  }
}
TEST_CASE("of the decimal slips of an example at least 110 in 128 are refused or remarked on") {
  const std::vector<std::string> slips = slipped_texts(text_of_example("tarn-beck.yaml"));
  REQUIRE(slips.size() >= 128);
  std::size_t told = 0;
  for (const std::string& text : slips) {
    try {
      const bool remarked = !likely_slips(read_build({"slip.yaml", text})).empty();
      told += remarked ? 1 : 0;
    } catch (const InputError&) {
      ++told;
    }
  }
  CAPTURE(told);
  CHECK(told * 128 >= slips.size() * 110);
}
TEST_CASE("a slip is named with its key, its number and its line") {
  const Source source{"slip.yaml", "supply: { pack: { cell: Li-ion 18650, series: 2, capacity: 24000 mAh } }\n"};
  const std::vector<Remark> remarks = likely_slips(read_build(source));
  REQUIRE(remarks.size() == 1);
  CHECK(remarks[0].key == "supply.pack.capacity");
  CHECK(remarks[0].text.find("24000 mAh on line 1") != std::string::npos);
}
