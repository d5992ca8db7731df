// Files in memory that stand in for the disk, for commands that the guide runs.
#pragma once
#include "input/source.hpp"
#include "options.hpp"
#include "plan/assessment.hpp"
#include "report/named_text.hpp"
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace lumwright::cli {
struct Shelf {
  std::map<std::string, std::string> files{};  // by name, as a command calls them
  std::map<std::string, Assessment> judged{};  // by what was asked: several commands judge one and the same build
};

// As in files.hpp, on the shelf of these options where they have one, else on the disk.
Source read_file(const Options& options, const std::string& name);
bool file_exists(const Options& options, const std::string& name);
void replace_file(const Options& options, const std::string& name, const std::string& text);
void create_file(const Options& options, const std::string& name, const std::string& text);
/// Into the folder of these options.
void write_folder(const Options& options, const std::vector<NamedText>& files);

/// What `judge` gives; on a shelf, what it gave before where the same was asked.
Assessment judged_once(const Options& options, const std::function<Assessment()>& judge);
}  // namespace lumwright::cli
