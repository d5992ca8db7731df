// The examples, solved: by their gas path at flows other than their own, and in samples.
#pragma once
#include "boiler/boiler.hpp"
#include "draught/duty.hpp"
#include "model/solved_draught.hpp"
#include "model/solved_raise.hpp"
#include "model/solved_supply.hpp"
#include "numeric/statistics.hpp"
#include "plan/assess.hpp"
#include "plan/describe.hpp"
#include "plan/draws.hpp"

namespace lumwright::held {
/// An example with its fire alight, at any times its own flow of air.
class HotPath {
 public:
  explicit HotPath(const std::string& name)
      : build_(example(name)),
        solved_(model::solve(build_)),
        d_(*solved_.draught),
        network_(d_.path, d_.ambient),
        source_(*d_.fire, *d_.boiler, {.lit = 1.0, .wanted_by_bed = 0.0 * W, .water = d_.water}) {}
  draught::PathFlow at(double times) const {
    return draught::at_engine_flow(network_, source_, times * d_.hot_flow.engine);
  }
  boiler::BoilerHeat heat(double times) const {
    const draught::PathFlow flow = at(times);
    return source_.heat(flow.bed, flow.past_bed);
  }
  /// Share of the fuel's heat that the water gets.
  double efficiency(double times) const {
    const draught::PathFlow flow = at(times);
    return in(source_.heat(flow.bed, flow.past_bed).absorbed, source_.burning(flow.bed, flow.past_bed).chemical);
  }
  const model::Solved& solved() const { return solved_; }

 private:
  description::Build build_;
  model::Solved solved_;
  const model::SolvedDraught& d_;
  draught::GasNetwork network_;
  boiler::FiredBoiler source_;
};

/// A number of an example as it stands, and where eight samples of ten lie.
template <class F>
Band<double> sampled(const std::string& name, F number) {
  const description::Build build = example(name);
  const model::Solved central = model::solve(build);
  constexpr std::size_t count = 128;
  const plan::Draws draws(central.inputs, count, 1);
  std::vector<double> all;
  for (std::size_t i = 0; i < count; ++i) all.push_back(number(model::solve(build, draws.of_sample(i))));
  return {number(central), numeric::quantile(all, plan::low_end), numeric::quantile(all, plan::high_end)};
}
}  // namespace lumwright::held
