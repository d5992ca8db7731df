// What a report shows, as comma-separated tables for spreadsheets.
#pragma once
#include "plan/report_data.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
// Numbers are SI, or in the units of a system that is asked for, with the unit in the heading unless it says otherwise,
// in six figures; text cells are fit for a spreadsheet (csv.hpp). All throw std::logic_error for a number that is not
// finite.

/// id,title,verdict,value,value_unit,bound,limit,limit_unit,limit_name,holds,why,do,source,standing,missing: the
/// gravest first.
std::string checks_csv(const plan::Assessment& assessment, UnitSystem units = UnitSystem::as_written);
/// key,value,band,why,source,standing: as the page shows them.
std::string assumed_csv(const plan::Assessment& assessment);
/// light_up,from_s,to_s,voltage_from_V,voltage_to_V,current_from_A,current_to_A,charge_left: the whole ones.
std::string light_ups_csv(const plan::RepeatedLightUps& all, UnitSystem units = UnitSystem::as_written);
/// curve,state,flow_m3_per_s,pressure_Pa: fan and path, hot and cold, with the points where they meet.
std::string draught_csv(const plan::DraughtCurves& curves, UnitSystem units = UnitSystem::as_written);
}  // namespace lumwright::report
