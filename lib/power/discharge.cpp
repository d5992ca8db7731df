#include "power/discharge.hpp"
#include "numeric/root.hpp"
#include "power/constant_power.hpp"
#include "power/load_curve.hpp"
#include "power/output_draw.hpp"
#include "quantity/format.hpp"
#include "quantity/require.hpp"
#include "quantity/sound.hpp"
#include <algorithm>

namespace lumwright::power {
namespace {
struct Piece {  // of the open-circuit curve: straight, within one regime of the load
  Charge from, to;
  Voltage emf_from, emf_to;
  Voltage emf(double share) const { return emf_from + share * (emf_to - emf_from); }
  Charge drawn(double share) const { return from + share * (to - from); }
};

struct Floor {
  Voltage voltage;
  StopReason reason;
};
Floor floor_of(const Load& load, std::optional<Voltage> stop_at) {
  if (stop_at) require_above_zero("stop voltage", *stop_at, "V");
  Floor floor{.voltage = stop_at.value_or(Voltage()), .reason = StopReason::stop_at};
  const auto* supply = std::get_if<FanSupply>(&load);
  if (supply == nullptr || !supply->step_up) return floor;
  require_not_negative("least input of the step-up", supply->step_up->input_min, "V");
  if (supply->step_up->input_min > floor.voltage)
    floor = {.voltage = supply->step_up->input_min, .reason = StopReason::step_up_minimum};
  return floor;
}

class Rundown {
 public:
  Rundown(const Pack& pack, const Load& load, std::optional<Voltage> stop_at)
      : pack_(pack),
        floor_(floor_of(load, stop_at)),
        start_emf_(pack.curve.at(pack.drawn)),
        curve_(load, pack.resistance(), floor_.voltage, start_emf_) {
    if (curve_.answers() && start_emf_ > curve_.end_emf()) cut();
  }
  bool starts() const { return !pieces_.empty(); }
  const std::vector<Piece>& pieces() const { return pieces_; }
  StopReason reason() const {
    if (empties_) return StopReason::empty;
    return curve_.collapses() ? StopReason::collapse : floor_.reason;
  }

  /// From the start of a piece to `share` of it.
  Duration time(const Piece& piece, double share) const {
    const StraightPiece part{.charge = share * (piece.to - piece.from), .from = piece.emf_from, .to = piece.emf(share)};
    const std::optional<Power> power = curve_.constant_power();
    if (power && pack_.rate_exponent == 1.0) return time_to_draw(part, pack_.resistance(), *power);
    return curve_.time_to_draw(part, {.rated = pack_.rated_current, .exponent = pack_.rate_exponent});
  }

  Sample sample(const Piece& piece, double share, Duration time) const {
    const Voltage emf = piece.emf(share);
    const bool last = &piece == &pieces_.back() && share == 1.0 && !empties_;
    const WorkingPoint point = last ? curve_.end() : curve_.at(emf);
    return {.time = time,
            .open_circuit = emf,
            .voltage = point.voltage,
            .current = point.current,
            .charge_share = 1.0 - in(piece.drawn(share), pack_.full)};
  }

  Voltage weak_voltage(const Piece& piece, double share) const {
    const Charge drawn =
        std::clamp(piece.drawn(share), pack_.weak->curve.drawn.front(), pack_.weak->curve.drawn.back());
    return pack_.weak->curve.at(drawn) - curve_.at(piece.emf(share)).current * pack_.weak->resistance;
  }

 private:
  void cut() {
    const std::vector<Charge>& q = pack_.curve.drawn;
    const std::vector<Voltage>& e = pack_.curve.voltage;
    for (std::size_t i = 1; i < q.size(); ++i) {
      if (q[i] <= pack_.drawn) continue;
      Piece piece{.from = q[i - 1], .to = q[i], .emf_from = e[i - 1], .emf_to = e[i]};
      if (piece.from < pack_.drawn) {
        piece.emf_from = start_emf_;
        piece.from = pack_.drawn;
      }
      if (piece.emf_to <= curve_.end_emf()) {
        shorten(piece, curve_.end_emf());
        add(piece);
        return;
      }
      add(piece);
    }
    empties_ = true;
  }
  static double share_at(const Piece& piece, Voltage emf) {
    return in(piece.emf_from - emf, piece.emf_from - piece.emf_to);
  }
  static void shorten(Piece& piece, Voltage emf) {
    piece.to = piece.drawn(share_at(piece, emf));
    piece.emf_to = emf;
  }
  /// Cuts at the bends of the load, and finely enough for a chart: some 40 pieces a run.
  void add(Piece piece) {
    if (!(piece.to > piece.from)) return;
    for (const Voltage& bend : curve_.bends()) {
      if (!(bend < piece.emf_from && bend > piece.emf_to)) continue;
      Piece upper = piece;
      shorten(upper, bend);
      if (!(upper.to > upper.from && upper.to < piece.to)) continue;
      piece.from = upper.to;
      piece.emf_from = bend;
      split(upper);
    }
    split(piece);
  }
  void split(const Piece& piece) {
    const std::size_t parts = 1 + 39 / (pack_.curve.drawn.size() - 1);
    for (std::size_t i = 0; i < parts; ++i) {
      const double a = static_cast<double>(i) / static_cast<double>(parts);
      const double b = static_cast<double>(i + 1) / static_cast<double>(parts);
      const bool end = i + 1 == parts;
      pieces_.push_back({.from = piece.drawn(a),
                         .to = end ? piece.to : piece.drawn(b),
                         .emf_from = piece.emf(a),
                         .emf_to = end ? piece.emf_to : piece.emf(b)});
    }
  }

  const Pack& pack_;
  Floor floor_;
  Voltage start_emf_;
  LoadCurve curve_;
  std::vector<Piece> pieces_;
  bool empties_ = false;
};

/// The pack stands at its most power, or below a floor that it starts under.
Run not_started(const Pack& pack, const Load& load, std::optional<Voltage> stop_at) {
  const Voltage emf = pack.curve.at(pack.drawn);
  const LoadCurve open(load, pack.resistance(), Voltage(), emf);
  const bool carries = open.answers() && emf > open.end_emf();
  if (!carries) require_above_zero("resistance of a pack that cannot carry its load", pack.resistance(), "ohm");
  const WorkingPoint point =
      carries ? open.at(emf) : WorkingPoint{.voltage = 0.5 * emf, .current = 0.5 * emf / pack.resistance()};
  const Sample only{.time = Duration(),
                    .open_circuit = emf,
                    .voltage = point.voltage,
                    .current = point.current,
                    .charge_share = 1.0 - in(pack.drawn, pack.full)};
  return {.runtime = Duration(),
          .reason = carries ? floor_of(load, stop_at).reason : StopReason::collapse,
          .starts = false,
          .start = only,
          .end = only,
          .most_current = only.current,
          .step_up_efficiency_start = {},
          .charge_left_share = only.charge_share,
          .series = {only},
          .weak = {}};
}

/// The weakest cell's voltage falls all through the run: it passes zero once or not at all.
WeakCellFate fate_of_weak_cell(const Rundown& rundown, const std::vector<Sample>& series) {
  const std::vector<Piece>& pieces = rundown.pieces();
  WeakCellFate fate{
      .reversed_from = {}, .in_reversal = Duration(), .voltage_end = rundown.weak_voltage(pieces.back(), 1.0)};
  for (std::size_t i = 0; i < pieces.size() && !fate.reversed_from; ++i) {
    const auto volts = [&](double share) { return in(rundown.weak_voltage(pieces[i], share), V); };
    if (volts(1.0) >= 0.0) continue;
    const double share =
        volts(0.0) <= 0.0 ? 0.0 : numeric::bracketed_root(volts, 0.0, 1.0, "reversal of the weakest cell");
    fate.reversed_from = series[i].time + (share > 0.0 ? rundown.time(pieces[i], share) : Duration());
    fate.in_reversal = series.back().time - *fate.reversed_from;
  }
  return fate;
}

const Sample& sound_sample(const Sample& at, const Pack& pack) {
  const std::initializer_list<Operand> inputs = {{"open-circuit voltage", at.open_circuit},
                                                 {"pack resistance", pack.resistance()},
                                                 {"capacity", pack.full},
                                                 {"charge left", at.charge_share}};
  sound(at.time, Sound::not_negative, "pack", "running time", inputs);
  sound(at.voltage, Sound::not_negative, "pack", "voltage", inputs);
  sound(at.current, Sound::not_negative, "pack", "current", inputs);
  return at;
}

void check(const Pack& pack) {
  check(pack.curve);
  require_not_negative("pack resistance", pack.inside, "ohm");
  require_not_negative("resistance of leads and fuse", pack.outside, "ohm");
  require_above_zero("capacity of the pack", pack.full, "Ah");
  require_above_zero("rated current", pack.rated_current, "A");
  if (!(pack.rate_exponent >= 1.0 && pack.rate_exponent < 2.0))
    throw ModelError("rate exponent " + format_number(pack.rate_exponent) + " is not between 1 and 2");
}
}  // namespace

const char* name(StopReason reason) {
  switch (reason) {
    case StopReason::stop_at:
      return "stop_at";
    case StopReason::collapse:
      return "collapse";
    case StopReason::step_up_minimum:
      return "step_up_minimum";
    case StopReason::empty:
      return "empty";
  }
  throw std::logic_error("a stop reason without a name");
}

Run discharge(const Pack& pack, const Load& load, std::optional<Voltage> stop_at) {
  check(pack);
  const Rundown rundown(pack, load, stop_at);
  if (!rundown.starts()) return not_started(pack, load, stop_at);
  std::vector<Sample> series{rundown.sample(rundown.pieces().front(), 0.0, Duration())};
  for (const Piece& piece : rundown.pieces())
    series.push_back(rundown.sample(piece, 1.0, series.back().time + rundown.time(piece, 1.0)));
  for (const Sample& at : series) sound_sample(at, pack);
  const auto by_current = [](const Sample& a, const Sample& b) { return a.current < b.current; };
  Run run{.runtime = series.back().time,
          .reason = rundown.reason(),
          .starts = true,
          .start = series.front(),
          .end = series.back(),
          .most_current = std::max_element(series.begin(), series.end(), by_current)->current,
          .step_up_efficiency_start = {},
          .charge_left_share = series.back().charge_share,
          .series = series,
          .weak = {}};
  if (const auto* supply = std::get_if<FanSupply>(&load); supply != nullptr && supply->step_up)
    run.step_up_efficiency_start = supply_state(*supply, run.start.voltage).step_up.value().efficiency;
  if (pack.weak) run.weak = fate_of_weak_cell(rundown, series);
  return run;
}

Sample state_after(const Pack& pack, const Load& load, std::optional<Voltage> stop_at, Duration time) {
  require_not_negative("time into the run", time, "s");
  check(pack);
  const Rundown rundown(pack, load, stop_at);
  Duration before;
  for (const Piece& piece : rundown.pieces()) {
    const Duration whole = rundown.time(piece, 1.0);
    if (before + whole >= time) {
      const auto early = [&](double share) {
        return in((share > 0.0 ? rundown.time(piece, share) : Duration()) + before - time, s);
      };
      return rundown.sample(piece, before >= time ? 0.0 : numeric::bracketed_root(early, 0.0, 1.0, "share of a piece"),
                            time);
    }
    before += whole;
  }
  throw ModelError("time " + format(time, "min") + " is longer than the run, " + format(before, "min"));
}
}  // namespace lumwright::power
