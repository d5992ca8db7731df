// Made-up units with one fault each, read with noisy instruments: is it found? The units are drawn from other samples
// than those that the causes are weighed in. The shares demanded are those of the issue that asked for `prove`.
#include "description/random_build.hpp"
#include "numeric/quasi_random.hpp"
#include "numeric/statistics.hpp"
#include "plan/describe.hpp"
#include "prove/detail/judge.hpp"
#include "prove/detail/readings.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <memory>
using namespace lumwright;
using namespace lumwright::prove;

namespace {
using Ids = std::vector<std::string>;
/// Multimeter, U-tube, anemometer, thermocouple and a strip of paper.
const Ids usual{"paper",   "pack_rest", "pack_loaded", "current", "fan_voltage",
                "suction", "shut_off",  "air_speed",   "gas"};
const Ids whole{"paper",          "pack_rest", "pack_loaded", "current",      "fan_voltage", "suction", "shut_off",
                "suction_packed", "air_speed", "cells",       "cells_loaded", "fan_speed",   "gas"};

std::vector<bool> which_of(const Ids& ids, const std::vector<double>& truth) {
  std::vector<bool> which;
  for (std::size_t r = 0; r < data::proofs().size(); ++r)
    which.push_back(std::find(ids.begin(), ids.end(), data::proofs()[r].id) != ids.end() && !std::isnan(truth[r]));
  return which;
}
/// What somebody reads off whose instruments are as good as the table says.
Read read_off(const std::vector<double>& truth, const std::vector<bool>& which,
              const std::vector<Instrument>& instruments, std::size_t unit, const std::string& cause) {
  Read read(truth.size(), not_predicted);
  for (std::size_t r = 0; r < truth.size(); ++r) {
    if (!which[r]) continue;
    const double chance = numeric::stray_coordinate(unit, fmt::format("noise of {} {}", r, cause), 77);
    if (r == paper) {
      const double in = paper_share(1.0, truth[r]), still = paper_share(0.0, truth[r]);
      read[r] = chance < in ? 1.0 : chance < in + still ? 0.0 : -1.0;
    } else {
      read[r] = truth[r] + std::sqrt(instruments[r].variance(truth[r])) * numeric::normal_score(chance);
    }
  }
  return read;
}
struct Tally {
  int made = 0, right = 0, first = 0;
  double tied = 0.0;
  double share(int count) const { return static_cast<double>(count) / made; }
};
class Trials {
 public:
  Trials(const description::Build& build, Ids ids)
      : unit_(build, nullptr, {.count = 1000, .seed = 1}, std::nullopt),
        others_(build, nullptr, {.count = 1000, .seed = 2}, std::nullopt),
        clouds_(clouds_of(unit_, unit_.sound(), model::SampleReach::fire)),
        ids_(std::move(ids)),
        instruments_(usual_instruments(unit_.planned())) {}
  /// With the null of nothing wrong.
  std::vector<const data::CauseRow*> causes() const {
    std::vector<const data::CauseRow*> all;
    for (const Cloud& cloud : clouds_) all.push_back(cloud.cause);
    return all;
  }
  Tally tally(const data::CauseRow* cause, int wanted) {
    Tally out;
    const std::string id = cause == nullptr ? "sound" : cause->id;
    for (std::size_t i = 0; out.made < wanted && i < 1000; ++i) {
      const double size = numeric::stray_coordinate(i, "true size of " + id, 2);
      const std::vector<double> truth = others_.one(cause, i, size, model::SampleReach::fire);
      if (!runs(cause, truth)) continue;
      const std::vector<bool> which = which_of(ids_, truth);
      const auto ranking = ranked(weigher(which).weigh(read_off(truth, which, instruments_, i, id)));
      ++out.made;
      out.first += ranking.front().cause == cause;
      for (const JudgedCause& one : ranking) {
        out.tied += one.tied;
        out.right += one.tied && one.cause == cause;
      }
    }
    return out;
  }

 private:
  /// It shows all that others of its cause show.
  bool runs(const data::CauseRow* cause, const std::vector<double>& truth) const {
    for (const Cloud& cloud : clouds_)
      for (std::size_t r = 0; cloud.cause == cause && r < data::proofs().size(); ++r)
        if (truth.empty() || (cloud.predicts(r) && std::isnan(truth[r]))) return false;
    return true;
  }
  const Weigher& weigher(const std::vector<bool>& which) {
    for (const auto& [known, made] : weighers_)
      if (known == which) return *made;
    weighers_.emplace_back(which, std::make_unique<Weigher>(clouds_, which, instruments_));
    return *weighers_.back().second;
  }
  SampledUnit unit_, others_;
  std::vector<Cloud> clouds_;
  Ids ids_;
  std::vector<Instrument> instruments_;
  std::vector<std::pair<std::vector<bool>, std::unique_ptr<Weigher>>> weighers_;
};

/// What the issue demands, less what chance may take away of so few: two standard deviations of a count.
double demanded(double share, int made) {
  return made >= 400 ? share : share - 2.0 * std::sqrt(share * (1.0 - share) / made);
}
using Changes = std::vector<std::pair<std::string, std::string>>;
/// The small axial fan, with a pack that drives it.
const Changes on_five_cells{{"cell: NiMH AAA, series: 3, capacity: 700 mAh, condition: tired",
                             "cell: NiMH AA, series: 5, capacity: 1900 mAh, condition: good"},
                            {"stop_at: 2.7 V", "stop_at: 5 V"}};

void find_faults(const std::string& name, const Ids& ids, const Changes& changes = {}) {
  Trials trials(example(name, changes), ids);
  REQUIRE(trials.causes().size() > 8);
  double ties = 0.0;
  for (const data::CauseRow* cause : trials.causes()) {
    const Tally t = trials.tally(cause, static_cast<int>(how_many_builds(30)));
    const std::string told =
        fmt::format("{} {} with {} readings: {} made, first {:.1f} %, first or tied {:.1f} %, {:.2f} tied", name,
                    cause == nullptr ? "sound" : cause->id, ids.size(), t.made, 100.0 * t.share(t.first),
                    100.0 * t.share(t.right), t.tied / t.made);
    if (how_many_builds(30) > 30) MESSAGE(told);
    CAPTURE(told);
    REQUIRE(t.made > 5);  // of some faults most units do not run at all
    if (cause == nullptr)
      CHECK(t.share(t.first) >= demanded(0.90, t.made));
    else
      CHECK(t.share(t.right) >= demanded(0.85, t.made));
    CHECK(t.tied / t.made < 2.2);  // a list that holds everything would always be right
    ties += t.tied / t.made;
  }
  CHECK(ties / static_cast<double>(trials.causes().size()) < 1.5);
}
}  // namespace

TEST_CASE("a fault of a finished unit is found, or told with what these readings cannot tell from it") {
  SUBCASE("a blower on lithium cells, the usual readings") { find_faults("tarn-beck", usual); }
  SUBCASE("the same, every reading of the sheet") { find_faults("tarn-beck", whole); }
  SUBCASE("an axial fan whose curve is estimated, on five nickel cells") {
    find_faults("high-tarn-32mm", usual, on_five_cells);
  }
}
TEST_CASE("so it is with a large engine, a chopped supply and a lead-acid block" *
          doctest::skip(how_many_builds(0) == 0)) {
  find_faults("great-fell-5in", usual);
  find_faults("great-fell-5in", whole);
  find_faults("high-tarn-32mm", whole, on_five_cells);
  find_faults("high-tarn-32mm", usual);  // a pack that is too small for it: most units do not run
}
