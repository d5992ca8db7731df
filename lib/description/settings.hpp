// Keys of a description changed from outside it, as on a command line: adapter.tube.length=40 mm.
#pragma once
#include "description/build.hpp"
#include <string>
#include <vector>

namespace lumwright::description {
/// One key path and its value as it would stand behind the colon in a file; an empty value makes the key unknown again.
struct Setting {
  std::string key, value;
};
/// "adapter.tube.length=40 mm" taken apart at its first `=`; without one the value is empty and `complete` false.
struct ReadSetting {
  Setting setting;
  bool complete;
};
ReadSetting read_setting(std::string_view text);
/// The build with these keys as set. Throws InputError that holds every fault as of a file called `name`, a line for
/// each setting: unknown keys, a key set twice, faulty values, and what then contradicts itself.
Build with_settings(Build build, const std::vector<Setting>& settings, const std::string& name = "--set");
}  // namespace lumwright::description
