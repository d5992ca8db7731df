// The limits between which a tube, or a chimney that is bored out, passes the checks of the fit.
#pragma once
#include "workshop/fit.hpp"
#include <initializer_list>
#include <memory>
#include <optional>

namespace lumwright::workshop {
/// Least and most that a size may be.
struct Limits {
  Length least, most;
};
/// Of the two sizes that make the fit, the one that is still to be made; the other stays as it was measured. So no pair
/// of sizes within these limits fails.
struct FitLimits {
  std::optional<Limits> tube;  // outside, in the chimney as it stands
  std::optional<Limits> bore;  // to bore the chimney to, where that is the way to fit the tube as it is
};
/// Most of a tube and least of a bore leave `Fit::needed` with the uncertainty of measuring on top; least of a tube and
/// most of a bore leak the share of the shop's rule ("leak share"), or, where that leaves nothing, what is not yet too
/// much (`most_leak_share`). The chimney is bored only where its metal allows it and no more than the trade does
/// ("heavy skim"). Neither where nothing fits. `fit` is that of `input`. Throws as `fit` does.
FitLimits fit_limits(const FitInput& input, const Fit& fit);

/// The same, worked out when it is first asked for: only drawings and the sheet of work ask, and it takes as long as
/// three fits. Neither limit where there is no fit, or none could be worked out.
class LimitsWhenAsked {
 public:
  LimitsWhenAsked() = default;
  LimitsWhenAsked(const FitInput& input, const Fit& fit);
  const FitLimits& operator()() const;

 private:
  struct Asked;
  std::shared_ptr<Asked> asked_;
};

/// A hole for a screw in one of two plates that are screwed together.
struct ScrewHole {
  Length hole, screw;  // diameters
  bool into_thread;    // the other plate is tapped: both share the play
};
/// How far the middle of the hole may stray every way so that all screws of a pattern still enter, zero where the screw
/// fills its hole: half the play with nuts, a quarter with a thread. The floating and the fixed fastener of ASME Y14.5
/// appendix B, which speaks of the diameter of the zone: twice this.
Length may_stray(const ScrewHole& hole);

/// `size` in whole steps of the work that makes it, as coarse as the limits allow: the first of `steps` that leaves it
/// within them, else as it is.
Length told_in_steps(Length size, const Limits& limits, std::initializer_list<Length> steps);
}  // namespace lumwright::workshop
