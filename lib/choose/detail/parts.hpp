// The parts of choosing. Only its files include this.
#pragma once
#include "choose/choose.hpp"
#include "model/solved.hpp"
#include <map>
#include <string>
#include <vector>

namespace lumwright::choose {
/// What is made for a combination where the engine names none: the least that passes.
struct Sized {
  std::optional<Length> box;
  std::optional<Current> fuse;
  std::optional<Area> wire;
};
/// One engine with the tubes that are tried on it.
struct Stall {
  std::size_t index;        // in the bin
  description::Build base;  // without fan, pack, step-up and tube
  std::vector<description::part::AdapterTube> tubes;
  std::vector<std::string> tube_names;
  Duration within;
  double wanted;
  bool own_box = false, own_fuse = false, own_wire = false;  // the engine's own: not to be changed
  std::vector<Sized> sized{};                                // by unit; empty: as written
};
/// The bin in an order that does not depend on the file's: by names.
struct Stock {
  const description::Bin& bin;
  const model::Tuning* tuning;
  std::vector<Unit> units;
  std::vector<description::part::FanPart> fans;  // single, in series, side by side; three for each of the bin

  std::vector<double> time_spread;  // of each of them

  static std::size_t index(std::size_t fan, draught::FanPairing pairing) {
    return 3 * fan + static_cast<std::size_t>(pairing);
  }
  const description::part::FanPart& fan(std::size_t fan, draught::FanPairing pairing) const {
    return fans[index(fan, pairing)];
  }
};
Stock stock_of(const description::Bin& bin, const model::Tuning* tuning);
/// Share by which minutes to steam grow with a fan that is weaker than nine of ten that fit its description, over those
/// with the middle one. 0 for a fan of which too little is known.
double time_spread(const description::part::FanPart& fan, const model::Tuning* tuning);
/// Shares by which times must differ to be told apart: with one fan in both, and with the two least known.
double least_told_apart();
double most_told_apart(const Stock& stock);
std::vector<Stall> stalls_of(const description::Bin& bin, const model::Tuning* tuning);

/// A unit on a stall, without a tube.
description::Build with_unit(const Stall& stall, const Stock& stock, std::size_t unit);
/// Box, fuse and wire for a unit on a stall whose `sized` has no say yet.
Sized size_for(const Stall& stall, const Stock& stock, std::size_t unit);
std::string words(const Sized& sized);  // "a fuse of 2 A"
/// Values as written or usual; nothing is noted, which is a third of the work.
model::Inputs quiet(const model::Tuning* tuning);

/// What drives the fan of one unit on one engine.
struct SupplyFact {
  Loss loss = Loss::none;
  bool held = false;           // the fan's voltage stays the same while the pack empties
  Voltage fan_voltage{};       // at the start
  Voltage most{};              // that can ever reach the fan
  Voltage lowered{};           // once turned down
  Duration runtime{};          // of one charge
  Duration runtime_lowered{};  // of the same charge at the lowered output
};
SupplyFact supply_fact(const Stall& stall, const Stock& stock, std::size_t unit);

/// What the fan is given, where that is all the raise needs to know: units of one fan that hold the same voltage share
/// their raises.
struct DriveKey {
  std::size_t fan;
  draught::FanPairing pairing;
  Voltage held, lowered;  // `held` below zero: the unit by itself
  std::size_t unit;       // of such a one, else the first that has this drive
  bool operator<(const DriveKey& o) const;
};

/// One raise: a drive with a tube.
struct Task {
  std::size_t drive, tube;
  Duration least{};  // no raise of it is faster
  Loss loss = Loss::none;
  bool hopeless = false;  // by its bound alone: `loss` is proved
  bool solved = false;
  Duration to_steam{};
  Duration turned_down{};  // of a lowered one: when
};
struct Drive {
  DriveKey key;
  Voltage most;
  std::vector<std::size_t> units;
};
struct Yard {  // everything known of one engine
  Stall stall;
  std::vector<std::string> lacking;
  std::vector<SupplyFact> supplies;  // by unit
  std::vector<Drive> drives;
  std::vector<std::size_t> drive_of;  // by unit; no_drive without one
  std::vector<Loss> tube_loss;        // by tube
  std::vector<Task> tasks;            // by drive, then tube
  Task& task(std::size_t drive, std::size_t tube) { return tasks[drive * stall.tubes.size() + tube]; }
};
inline constexpr std::size_t no_drive = static_cast<std::size_t>(-1);
/// Keys without which no raise of this engine can be solved.
std::vector<std::string> lacking_keys(const Stall& stall, const Stock& stock);
/// The tube by itself, cold: nothing hot can make it fit.
Loss cold_fit(const Stall& stall, const Stock& stock, std::size_t tube);
/// For tasks of one fan and tube: times that no raise of theirs can beat; sets `hopeless`, with the reason, where there
/// is none at all.
void bound(Yard& yard, const Stock& stock, const std::vector<std::size_t>& same);
void solve_task(const Yard& yard, const Stock& stock, Task& task);
/// The candidate of a unit with a solved task, or why there is none.
struct Tried {
  Loss loss;
  std::optional<Candidate> candidate;
};
Tried candidate_of(const Yard& yard, const Stock& stock, const Task& task, std::size_t unit);
/// The most light-ups there can be if no raise is faster than `least`.
int most_light_ups(const SupplyFact& supply, Duration least);
}  // namespace lumwright::choose
