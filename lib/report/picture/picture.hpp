// The pictures of a report: each says one thing, in words and in lines.
#pragma once
#include "plan/report_data.hpp"
#include "report/markup.hpp"
#include "report/page.hpp"
#include <functional>
#include <string>
#include <vector>

namespace lumwright::report {
struct Picture {
  std::string id, title;
  std::string says;         // what is to be seen in it, for everybody
  std::string description;  // what it looks like, for those who do not see it
  std::string not_drawn{};  // why it is not there; `draw` is then empty
  /// Puts the picture into a parent, `width` px wide: 700 on a desk or on paper, 340 on a phone. The id is unlike any
  /// other on the page.
  std::function<void(Tag parent, const std::string& id, double width)> draw{};
};

// They refer to the data, which must outlive them.
Picture picture_of_draught(const plan::ReportData& data, const TextStyle& style);  // fan and gas path, operating point
Picture picture_of_losses(const plan::ReportData& data, const TextStyle& style);   // where the suction goes
Picture picture_of_raise(const plan::ReportData& data, const TextStyle& style);    // the way to steam
Picture picture_of_heat(const plan::ReportData& data, const TextStyle& style);     // where the fuel's heat goes
Picture picture_of_supply(const plan::ReportData& data, const TextStyle& style);   // the pack over one charge
Picture picture_of_fit(const plan::ReportData& data, const TextStyle& style);      // tube in the chimney
Picture picture_of_unit(const plan::ReportData& data, const TextStyle& style);     // the unit, cut through
Picture picture_of_sensitivities(const plan::ReportData& data, const TextStyle& style);  // what widens the answers
}  // namespace lumwright::report
