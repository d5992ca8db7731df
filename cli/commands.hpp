// The list of commands, in the order of the manual.
#pragma once
#include "command.hpp"

namespace lumwright::cli {
extern const CommandRow check_command, sweep_command, compare_command, explain_command, trace_command, prove_command,
    log_command, tune_command, season_command, priors_command, report_command, draw_command, sheet_command, day_command,
    choose_command, bench_command, new_command, guide_command, units_command, schema_command, completion_command,
    help_command;

inline const CommandRow* const commands_in_order[] = {
    &check_command, &sweep_command,  &compare_command,    &explain_command, &trace_command,  &prove_command,
    &log_command,   &tune_command,   &season_command,     &priors_command,  &report_command, &draw_command,
    &sheet_command, &day_command,    &choose_command,     &bench_command,   &new_command,    &guide_command,
    &units_command, &schema_command, &completion_command, &help_command};
}  // namespace lumwright::cli
