// Writes what the targets start from: the templates that `new` writes, and a dictionary of keys, words and units.
// usage: fuzz_seeds DIRECTORY
#include "description/bin.hpp"
#include "description/keys.hpp"
#include "description/readings.hpp"
#include "description/season.hpp"
#include "description/taken_up.hpp"
#include "description/template.hpp"
#include "description/tuned_file.hpp"
#include "description/words.hpp"
#include "quantity/units.hpp"
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <set>
#include <string>
using namespace lumwright;
using namespace lumwright::description;

namespace {
std::string quoted(const std::string& text) {
  std::string out = "\"";
  for (const char c : text) {
    char hex[5];
    const bool plain = c >= 0x20 && c < 0x7F && c != '"' && c != '\\';
    std::snprintf(hex, sizeof hex, "\\x%02X", static_cast<unsigned>(static_cast<unsigned char>(c)));
    out += plain ? std::string(1, c) : hex;
  }
  return out + "\"\n";
}
template <class Root>
void add_keys(std::set<std::string>& words) {
  for (const Key& key : list_keys<Root>()) {
    words.insert(std::string(key.field.key) + ": ");
    if (!key.field.example.empty()) words.emplace(key.field.example);
  }
}
void put(const std::filesystem::path& file, const std::string& text) {
  std::filesystem::create_directories(file.parent_path());
  std::ofstream(file, std::ios::binary) << text;
}
}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  const std::filesystem::path folder = argv[1];
  std::set<std::string> words = {
      "+-",    "±",   "..",     "[",   "]",    "{",   "}",  ": ",  "\n  ",   "\r\n", "\xEF\xBB\xBF",
      "1e400", "-0",  "1e-310", "nan", ".inf", "½",   "−",  "1/0", "22 swg", "null", "none",
      "stock", "yes", "&a ",    "*a",  "<<: ", "!t ", "\"", "'",   "# ",     "| ",   "- "};
  add_keys<Build>(words);
  add_keys<Bin>(words);
  add_keys<Log>(words);
  add_keys<Season>(words);
  add_keys<FanReadings>(words);
  add_keys<TunedFile>(words);
  for (const UnitRow& row : unit_table()) words.insert(" " + std::string(row.symbol));
  for (const auto& list : {metal_words(), fuel_words(), cell_words(), module_words(), joint_words(), control_words()})
    words.insert(list.begin(), list.end());
  std::string dictionary;
  for (const std::string& word : words) dictionary += quoted(word);
  put(folder / "fuzz.dict", dictionary);
  put(folder / "texts" / "new.yaml", taken_up(new_description()));
  put(folder / "texts" / "new-readings.yaml", taken_up(new_fan_readings()));
  return 0;
}
