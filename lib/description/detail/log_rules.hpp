// What must hold of the readings of one lighting-up, in a log and in a season.
#pragma once
#include "description/log.hpp"

namespace lumwright::description {
/// Readings out of order, without a time or without a value. `where` is the path of the log, "lighting_ups." or empty;
/// `before` stands before each message.
std::vector<input::Fault> faults_of_readings(const Log& log, const std::string& where, const std::string& before);
}  // namespace lumwright::description
