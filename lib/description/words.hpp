// The words that a description may use where it names a kind of thing. Most lists come from the data tables.
#pragma once
#include <string>
#include <vector>

namespace lumwright::description {
std::vector<std::string> metal_words();
std::vector<std::string> fuel_words();
std::vector<std::string> start_words();
std::vector<std::string> cell_words();
std::vector<std::string> condition_words();
std::vector<std::string> module_words();
std::vector<std::string> fan_words();
std::vector<std::string> curve_words();
std::vector<std::string> current_words();
std::vector<std::string> mount_words();
std::vector<std::string> shape_words();
std::vector<std::string> yes_words();
std::vector<std::string> inlet_words();
std::vector<std::string> joint_words();
std::vector<std::string> control_words();
std::vector<std::string> switch_words();
std::vector<std::string> polarity_words();
std::vector<std::string> guard_words();
}  // namespace lumwright::description
