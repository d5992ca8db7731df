// The pages of the manual on the commands that make, choose and list.
#pragma once
#include <string_view>

namespace lumwright::cli {
extern const std::string_view report_page, choose_page, bench_page, draw_page, sheet_page, new_page, units_page,
    schema_page, completion_page, help_page, sweep_page, compare_page, guide_page;
}  // namespace lumwright::cli
