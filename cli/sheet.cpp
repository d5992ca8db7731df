#include "commands.hpp"
#include "described.hpp"
#include "report/build_sheet.hpp"
#include "style.hpp"

namespace lumwright::cli {
Answer sheet(const Options& options) {
  const Described told = described(options);
  const Solved solved = solved_to_judge(told.build, options.units, told.used());
  return {build_sheet(judged(solved, told.used()), solved, style_of(options))};
}
}  // namespace lumwright::cli
