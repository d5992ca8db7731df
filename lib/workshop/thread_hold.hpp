// Does a plate give a screw enough thread?
#pragma once
#include "data/basis.hpp"
#include "data/threads.hpp"
#include <string>

namespace lumwright::workshop {
struct TappedPlate {
  data::ThreadRow thread;
  Length plate;             // thickness that is tapped right through
  std::string metal;        // as in metals.yaml
  double screw_over_metal;  // strength of the screw over that of the plate; 1 when alike or not known
};
enum class Hold {
  never,     // this sheet is not tapped: screw and nut, a nut plate or a soldered bush
  too_thin,  // below the least length or fewer than three threads
  short_of_wish,
  enough,
};
struct ThreadHold {
  Hold hold;
  double full_threads;  // plate over pitch
  double over_major;    // plate over major diameter
  Length least;         // plate that would no longer be refused
  Length prefer;        // plate that the rule asks for
  Length strip_safe;    // thread length from which the screw breaks before the thread strips
  data::Basis basis{};
};
/// Length of engagement: diameters by metal (workmanship texts), never under three full threads. `strip_safe` is
/// 2 stress areas / (0.5 pi pitch diameter), FED-STD-H28 in its simplified handbook form, times the strength ratio
/// where above 1. The sources differ by half a diameter for brass. Plate and ratio above zero. Throws ModelError
/// otherwise or for a metal without a rule.
ThreadHold thread_hold(const TappedPlate& plate);
}  // namespace lumwright::workshop
