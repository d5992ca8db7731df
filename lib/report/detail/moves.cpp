#include "report/detail/moves.hpp"
#include <fmt/format.h>

namespace lumwright::report {
std::string move_text(const plan::Finding& finding, const TextStyle& style, bool for_several) {
  if (!finding.move) return "";
  const plan::Move& move = *finding.move;
  std::string text = move.words;
  const bool time_itself = finding.id == "raise.time" && !for_several;
  if (move.value && !for_several) text += fmt::format(": then {}", show(*move.value, style, time_itself ? 2 : 3));
  if (move.value && move.limit && !for_several && !time_itself)
    text += fmt::format(" ({} {})", move.bound == plan::Bound::at_most ? "at most" : "at least",
                        show(*move.limit, style, 3));
  if (move.verdict == plan::Verdict::watch && !for_several)
    text += fmt::format("{}still to watch", move.value ? ", " : ": ");
  if (move.steam && !time_itself) text += fmt::format("; steam in {}", show(*move.steam, style, 2));
  return text;
}
std::string move_settings(const plan::Finding& finding, description::FrontEnd front) {
  std::string text;
  if (!finding.move) return text;
  for (const std::string& one : finding.move->settings)
    text += (text.empty() ? "" : " ") + fmt::format(fmt::runtime(description::way("setting", front)), one);
  return text;
}
}  // namespace lumwright::report
