#include "prove/prove.hpp"
#include "numeric/statistics.hpp"
#include "prove/detail/judge.hpp"
#include "prove/detail/readings.hpp"
#include "prove/detail/sheet.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace lumwright::prove {
namespace {
description::Build on_that_day(description::Build build, const description::Proof& proof) {
  if (proof.place.air) build.place.air = proof.place.air;
  if (proof.place.barometer) build.place.barometer = proof.place.barometer;
  return build;
}
JudgedReading judged(const WrittenReading& written, std::size_t row, const Expected& expected, const Cloud& sound,
                     const Instrument& instrument) {
  JudgedReading one{.expected = row,
                    .read = {written.value, written.unit},
                    .word = written.word,
                    .below = 0.5,
                    .side = Side::fits,
                    .used = expected.why_not.empty()};
  if (!one.used) return one;
  if (!written.word.empty()) {
    one.side = written.word == expected.word ? Side::fits : Side::low;
    return one;
  }
  one.below = share_below(sound, row, instrument, written.value.si);
  const double end = data::judging().outside;
  one.side = one.below < end ? Side::low : one.below > 1.0 - end ? Side::high : Side::fits;
  return one;
}
}  // namespace

Proved prove(const description::Build& described, const model::Tuning* tuning, const description::Proof& proof,
             const plan::SamplesAsked& asked) {
  if (asked.count < data::judging().least_samples)
    throw ModelError(fmt::format("causes are weighed in {} samples or more", data::judging().least_samples));
  const description::Build build = on_that_day(described, proof);
  const SampledUnit unit(build, tuning, asked, proof.outlet ? std::optional(*proof.outlet) : std::nullopt);
  const Cloud sound = unit.sound();
  if (that_run(sound, unit).seen.empty())
    throw ModelError("this unit does not run as it is described: `lumwright check` says why");
  Proved proved{.sheet = sheet_with(unit, sound, build),
                .readings = {},
                .causes = {},
                .parting = {},
                .unexplained = false,
                .suspect = {},
                .not_asked = {}};
  const std::vector<WrittenReading> written = written_readings(proof);
  std::vector<Instrument> instruments = usual_instruments(unit.planned());
  Taken taken{std::vector<bool>(written.size(), false), Read(written.size(), not_predicted)};
  for (std::size_t r = 0; r < written.size(); ++r) {
    if (!written[r].there) continue;
    instruments[r].written = written[r].sigma;
    const JudgedReading one = judged(written[r], r, proved.sheet.readings[r], sound, instruments[r]);
    if (one.used) taken.which[r] = true, taken.read[r] = written[r].value.si;
    proved.readings.push_back(one);
  }
  if (std::none_of(taken.which.begin(), taken.which.end(), [](bool one) { return one; }))
    throw ModelError("none of these readings can be compared with this description: " +
                     proved.sheet.readings[proved.readings.front().expected].why_not);
  for (const data::CauseRow& cause : data::causes())
    if (std::string why = not_asked(cause, unit.planned()); !why.empty()) proved.not_asked.push_back({&cause, why});
  judge_causes(unit, sound, taken, instruments, proved);
  return proved;
}
}  // namespace lumwright::prove
