// Files in memory that stand in for the disk, for commands that the guide runs.
#pragma once
#include "input/source.hpp"
#include "plan/assessment.hpp"
#include "report/named_text.hpp"
#include <map>
#include <string>
#include <vector>

namespace lumwright::cli {
struct Shelf {
  std::map<std::string, std::string> files{};  // by name, as a command calls them
  std::map<std::string, plan::Assessment> judged{};  // by what was asked: several commands judge one and the same build
};

// As in files.hpp, on the shelf where there is one, else on the disk.
input::Source read_file(const Shelf* shelf, const std::string& name);
bool file_exists(const Shelf* shelf, const std::string& name);
void replace_file(Shelf* shelf, const std::string& name, const std::string& text);
void create_file(Shelf* shelf, const std::string& name, const std::string& text);
void write_folder(Shelf* shelf, const std::string& folder, const std::vector<report::NamedText>& files);
}  // namespace lumwright::cli
