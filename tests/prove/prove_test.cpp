#include "prove/prove.hpp"
#include "description/random_build.hpp"
#include "draught/orifice.hpp"
#include "model/solved_supply.hpp"
#include "near.hpp"
#include "numeric/quasi_random.hpp"
#include "numeric/statistics.hpp"
#include "plan/describe.hpp"
#include "prove/detail/judge.hpp"
#include "prove/detail/readings.hpp"
#include "prove/detail/sheet.hpp"
#include <algorithm>
#include <cmath>
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::prove;

namespace {
const plan::SamplesAsked few{.count = 200, .seed = 1};
description::Proof readings(const std::string& text) { return description::read_proof({"proof.yaml", text}); }
const Expected& row_of(const Sheet& sheet, const std::string& id) {
  for (const Expected& one : sheet.readings)
    if (one.row->id == id) return one;
  throw std::runtime_error("no reading " + id);
}
const data::CauseRow& cause(const std::string& id) {
  for (const data::CauseRow& one : data::causes())
    if (one.id == id) return one;
  throw std::runtime_error("no cause " + id);
}
/// Even steps through a normal law: samples without chance.
std::vector<double> normal_steps(std::size_t n, double mean, double sigma) {
  std::vector<double> all;
  for (std::size_t i = 0; i < n; ++i)
    all.push_back(mean + sigma * numeric::normal_score((static_cast<double>(i) + 0.5) / static_cast<double>(n)));
  return all;
}
/// A cloud of one reading, the pack at rest.
Cloud made_up(const data::CauseRow* of, const std::vector<double>& values) {
  Cloud cloud{of, {}, {}};
  for (const double value : values) {
    std::vector<double> seen(data::proofs().size(), not_predicted);
    seen[1] = value;
    cloud.u.push_back(numeric::stray_coordinate(cloud.u.size(), "place", 1));
    cloud.seen.push_back(seen);
  }
  return cloud;
}
}  // namespace

TEST_CASE("what the sheet and `check` both tell is one number and one band") {
  for (const char* name : {"tarn-beck", "high-tarn-32mm"}) {
    const auto build = example(name);
    const Sheet sheet = sheet_of(build, nullptr, few);
    const plan::Assessment assessed = plan::assess(build, UnitSystem::as_written, nullptr, few);
    int compared = 0;
    for (const Expected& one : sheet.readings)
      for (const model::Result& result : assessed.results)
        if (result.key == one.row->of) {
          CAPTURE(result.key);
          CHECK(one.value->quantity.si == near(std::get<model::Measure>(result.value).quantity.si, 1e-12));
          CHECK(one.low->quantity.si == near(result.low->quantity.si, 1e-12));
          CHECK(one.high->quantity.si == near(result.high->quantity.si, 1e-12));
          ++compared;
        }
    CHECK(compared == 5);
  }
}
TEST_CASE("a capped tube shows the whole pressure of the fan, less what a leak lets in") {
  // hand: a straight curve p0 (1 - Q/Q0) against the hole's p = rho/2 (Q/(Cd A))^2; a Q^2 + b Q - p0 = 0
  const draught::FanCurve curve(data::FanKind::centrifugal, 6000.0 * rpm,
                                {{0.0 * litre_per_min, 120.0 * Pa}, {120.0 * litre_per_min, 0.0 * Pa}},
                                {.origin = draught::CurveOrigin::bench,
                                 .sentence = "",
                                 .standing = data::Standing::measured,
                                 .pressure = exactly(1.0),
                                 .flow = exactly(1.0)});
  const auto fan = draught::running(curve, 6000.0 * rpm);
  const Density rho = 1.2 * kg_per_m3;
  CHECK(in(capped_suction(fan, 0.0 * m2, rho), Pa) == doctest::Approx(120.0));
  const double cd_a = draught::discharge_coefficient("sharp hole").value * 50e-6, p0 = 120.0, q0 = 0.002;
  const double a = 0.6 / (cd_a * cd_a), b = p0 / q0;
  const double q = (-b + std::sqrt(b * b + 4.0 * a * p0)) / (2.0 * a);
  CHECK(in(capped_suction(fan, 50.0 * mm2, rho), Pa) == doctest::Approx(p0 * (1.0 - q / q0)).epsilon(1e-6));
}
TEST_CASE("every move of every cause moves a reading of some example") {
  std::vector<std::string> moved;
  for (const char* name : {"tarn-beck", "high-tarn-32mm", "great-fell-5in"}) {
    const SampledUnit unit(example(name), nullptr, {.count = 16, .seed = 1}, std::nullopt);
    for (const data::CauseRow& row : data::causes()) {
      if (!not_asked(row, unit.planned()).empty()) continue;
      for (std::size_t i = 0; i < 16; ++i) {
        const auto mild = unit.one(&row, i, 0.0, model::SampleReach::cold),
                   grave = unit.one(&row, i, 0.5, model::SampleReach::cold);
        for (std::size_t r = 0; r < mild.size() && r < grave.size(); ++r)
          if (std::abs(mild[r] - grave[r]) > 1e-3 * std::abs(mild[r])) moved.push_back(row.id);
      }
    }
  }
  for (const data::CauseRow& row : data::causes()) {
    CAPTURE(row.id);
    CHECK(std::count(moved.begin(), moved.end(), row.id) > 0);
  }
}
TEST_CASE("beyond the limits of the sheet one sound unit of a hundred is read, the instrument allowed for") {
  const SampledUnit unit(example("tarn-beck"), nullptr, few, std::nullopt);
  const Cloud sound = unit.sound();
  const auto instruments = usual_instruments(unit.planned());
  for (const Expected& one : expected(unit, sound)) {
    if (!one.least) continue;
    const auto r = static_cast<std::size_t>(one.row - data::proofs().data());
    CHECK(share_below(sound, r, instruments[r], one.least->quantity.si) == doctest::Approx(0.01).epsilon(1e-4));
    CHECK(share_below(sound, r, instruments[r], one.most->quantity.si) == doctest::Approx(0.99).epsilon(1e-4));
  }
}
TEST_CASE("the density of a normal cloud is that of the normal law, its instrument added") {
  // identity: N(mean, sigma) seen through an instrument of s is N(mean, sqrt(sigma^2 + s^2))
  std::vector<Instrument> instruments(data::proofs().size(), Instrument{0.0, 0.1, 0.0, std::nullopt});
  std::vector<bool> taken(data::proofs().size(), false);
  taken[1] = true;
  const std::vector<Cloud> clouds{made_up(nullptr, normal_steps(1000, 8.0, 0.1)),
                                  made_up(&cause("pack-tired"), normal_steps(400, 7.6, 0.2))};
  const Weigher weigher(clouds, taken, instruments);
  for (const double at : {7.8, 7.9, 8.0, 8.1}) {
    Read read(data::proofs().size(), not_predicted);
    read[1] = at;
    const auto weighed = weigher.weigh(read);
    const auto density = [&](double mean, double sigma) {
      const double whole = std::hypot(sigma, 0.1);
      return -0.5 * std::pow((at - mean) / whole, 2) - std::log(whole * std::sqrt(2.0 * 3.14159265358979));
    };
    CHECK(weighed[0].log_density == doctest::Approx(density(8.0, 0.1)).epsilon(0.1).scale(1.0));
    CHECK(weighed[1].log_density == doctest::Approx(density(7.6, 0.2)).epsilon(0.1).scale(1.0));
    const double odds = cause("pack-tired").odds / data::judging().sound_odds;
    CHECK(weighed[1].share / weighed[0].share ==
          doctest::Approx(odds * std::exp(weighed[1].log_density - weighed[0].log_density)));
  }
}
TEST_CASE("answers of the paper share out all strips, and follow the suction") {
  for (const double suction : {-2.0, -0.1, 0.0, 0.1, 2.0})
    CHECK(paper_share(1.0, suction) + paper_share(0.0, suction) + paper_share(-1.0, suction) == doctest::Approx(1.0));
  CHECK(paper_share(1.0, 2.0) > 0.97);
  CHECK(paper_share(0.0, 0.0) > 0.8);
  CHECK(paper_share(-1.0, -2.0) > 0.97);
}
TEST_CASE("what cannot be told apart is said, with the reading that parts it best") {
  const auto proof =
      readings("readings: { pack_rest: 8.30 V, current: 0.31 A, suction: 0.45 mmH2O, shut_off: 12.1 mmH2O }");
  const Proved proved = prove::prove(example("tarn-beck"), nullptr, proof, few);
  CHECK_FALSE(proved.sound());
  REQUIRE(proved.causes.size() > 2);
  std::vector<std::string> tied;
  for (const JudgedCause& one : proved.causes)
    if (one.tied && one.cause != nullptr) tied.push_back(one.cause->id);
  CHECK(std::count(tied.begin(), tied.end(), "wide-gap") == 1);
  CHECK(std::count(tied.begin(), tied.end(), "tube-blocked") == 1);
  REQUIRE(proved.parting);
  CHECK(proved.parting->row->id == "suction_packed");
}
TEST_CASE("readings that no cause gives are not explained, and the one that is off is named") {
  const auto proof = readings(
      "readings: { pack_rest: 8.30 V, pack_loaded: 8.14 V, current: 0.31 A, fan_voltage: 3.0 V, suction: 0.92 mmH2O, "
      "shut_off: 12.1 mmH2O }");
  const Proved proved = prove::prove(example("tarn-beck"), nullptr, proof, few);
  CHECK(proved.unexplained);
  REQUIRE(proved.suspect);
  CHECK(proved.sheet.readings[proved.readings[*proved.suspect].expected].row->id == "fan_voltage");
}
TEST_CASE("a reading that cannot be foretold says why and names the key") {
  const Sheet sheet = sheet_of(example("great-fell-5in"), nullptr, {.count = 0});
  CHECK(row_of(sheet, "air_speed").why_not.find("`outlet`") != std::string::npos);
  CHECK(row_of(sheet, "fan_voltage").why_not.find("supply.control") != std::string::npos);
  const Sheet bare = sheet_of(described("fan: { kind: axial }\n"), nullptr, {.count = 0});
  CHECK(row_of(bare, "pack_rest").why_not.find("supply.pack.cell") != std::string::npos);
  CHECK(row_of(bare, "suction").why_not.find("engine.grate.length") != std::string::npos);
}
TEST_CASE("a spread behind a reading stands for the instrument, and the place of that day for the one described") {
  const auto low = [](const char* text) {
    return prove::prove(example("tarn-beck"), nullptr, readings(text), few).readings.front();
  };
  CHECK(low("readings: { suction: 0.50 mmH2O }").side == Side::low);
  CHECK(low("readings: { suction: 0.50 mmH2O +- 0.8 mmH2O }").side == Side::fits);
  const Proved cold = prove::prove(example("tarn-beck"), nullptr,
                                   readings("place: { air: -5 degC }\nreadings: { suction: 0.9 mmH2O }"), few);
  const Sheet planned = sheet_of(example("tarn-beck"), nullptr, few);
  CHECK(row_of(cold.sheet, "shut_off").value->quantity.si > 1.04 * row_of(planned, "shut_off").value->quantity.si);
}
TEST_CASE("whatever the description, the sheet and the verdict hold numbers, and shares add up to one") {
  const plan::SamplesAsked asked{.count = 100, .seed = 3};
  int judged = 0;
  for (unsigned seed = 0; seed < how_many_builds(24); ++seed) {
    CAPTURE(seed);
    const auto build = described(RandomBuild(8800 + seed, seed % 3 == 0 ? 0.7 : 1.0, false).text());
    const Sheet sheet = sheet_of(build, nullptr, asked);
    for (const Expected& one : sheet.readings) {
      CHECK(one.why_not.empty() == (one.value.has_value() || !one.word.empty()));
      if (one.least) CHECK(one.least->quantity.si < one.most->quantity.si);
      if (one.low && one.high) CHECK(one.low->quantity.si <= one.high->quantity.si);
    }
    try {
      const Proved proved = prove::prove(
          build, nullptr, readings("readings: { pack_rest: 6 V, current: 0.4 A, suction: 2 mmH2O }"), asked);
      double sum = 0.0;
      for (const JudgedCause& one : proved.causes) sum += one.share;
      CHECK(sum == doctest::Approx(1.0));
      ++judged;
    } catch (const ModelError& e) {
      CHECK(std::string(e.what()).size() > 20);
    }
  }
  if (enough_builds(24)) CHECK(judged > 3);
}
