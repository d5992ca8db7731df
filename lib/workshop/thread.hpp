// Screw threads by the names that people write, with the drills they need.
#pragma once
#include "data/drills.hpp"
#include "data/threads.hpp"
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::workshop {
/// The thread of that name: "8BA", "8 B.A.", "no 8 BA", "M3", "m3 x 0.5", "4-40 UNC", "#4-40", "1/4 x 40 ME",
/// "1/4in-40". Capitals, blanks, dots, `x`, `-` and "by" count nothing; the series may be left out where size and pitch
/// name one thread only. Throws ModelError that names the nearest thread, or those that the words fit.
const data::ThreadRow& thread(std::string_view spelling);

/// Sizes that follow from the form of the thread.
struct ThreadSizes {
  Length pitch_diameter;
  Length nut_minor;  // bore of a nut with the whole thread
  Length root;       // core of the screw
  Area stress_area;  // circle of the mean of pitch diameter and root, ISO 898-1
  Length depth;      // per side, that 100 % of thread means
};
/// BS 93 (tabled depth), ISO 68-1, ASME B1.1, BS 84 form. ISO 898-1 gives the stress area for 60 degree threads; for BA
/// and ME it is used by analogy. Exact but for the rounding of the tables, 0.01 mm.
ThreadSizes thread_sizes(const data::ThreadRow& thread);

/// How much of the thread a drilled hole leaves.
struct ThreadShare {
  double of_form;                     // of the depth that the form gives a nut
  std::optional<double> of_handbook;  // of the deeper basis of American tables (60 degree threads): the same hole
};
/// (major - hole) / (2 depth). Above 1 the hole is smaller than the core. Throws ModelError for a hole not above zero
/// or not below the major diameter.
ThreadShare thread_share(const data::ThreadRow& thread, Length hole);

enum class ClearanceFit { fine, medium, coarse };
/// Clearance hole: ISO 273 for metric threads, drill charts for unified, common practice for BA and ME. Where the table
/// has none of that fit the medium one is given.
Length clearance_hole(const data::ThreadRow& thread, ClearanceFit fit);

/// The stock drill nearest in diameter; of two alike the metric one. `series` empty: any; "inch": numbers and
/// fractions. Throws ModelError for a diameter beyond the table (0.50 to 13 mm), or an unknown series.
const data::DrillRow& nearest_drill(Length diameter, std::string_view series = "");
/// The same, but any drill where none of the series is as good ("drill as good" of data/shop_rules.yaml).
const data::DrillRow& drill_for(Length diameter, std::string_view series);
}  // namespace lumwright::workshop
