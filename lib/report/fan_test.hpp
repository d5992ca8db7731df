// A shop-made fan test as a page to read, as JSON, as a table for spreadsheets; and the sheet that tells how to make
// one.
#pragma once
#include "fan_test/fan_test.hpp"
#include "report/page.hpp"
#include <string>

namespace lumwright::report {
/// What the test found, what to doubt, every reading, and at the end the lines for a description.
std::string fan_test_report(const fan_test::FanTest& test, const TextStyle& style,
                            const std::optional<fan_test::NextPlate>& next = {});
/// "73.1 Pa shut, 566 l/min in free air; within 18 % below half of free air."
std::string fan_test_summary(const fan_test::FanTest& test, const TextStyle& style);
/// "Read next: the plate of 28 mm, about 220 l/min: there the band is widest, 36 to 51 Pa."
std::string next_words(const fan_test::NextPlate& next, const TextStyle& style);
/// One object, "format": "lumwright/1" with "fan_test": SI numbers with their unit beside them. Throws std::logic_error
/// for a number that is not finite.
std::string fan_test_json(const fan_test::FanTest& test);
/// The curve with its band, then the readings: what,number,flow_m3_per_s,pressure_Pa,low_Pa,high_Pa,note.
std::string fan_test_csv(const fan_test::FanTest& test, UnitSystem units = UnitSystem::as_written);

/// How to make the test box of ordinary stuff for this fan, what to read, what each shortcut costs, and the cautions.
std::string test_box_sheet(const draught::ExpectedFan& fan, const TextStyle& style);
}  // namespace lumwright::report
