// Seasons of an engine whose factors, drifts and scatters are known, since they were made up: what somebody would have
// read, with the errors of instruments, and one reading in ten wrong.
#pragma once
#include "data/tuning.hpp"
#include "description/season.hpp"
#include "numeric/root.hpp"
#include "tune/detail/parts.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <random>

namespace lumwright::tune {
inline description::Season season_read(const std::string& text) {
  return description::read_season({"mine.season.yaml", text});
}

inline TuneFit fit_season(const description::Build& build, const description::Season& season) {
  return tune(build, season).fit;
}

class MadeUpSeason {
 public:
  struct Ways {
    double wrong = 0.1;      // share of the readings
    double probe_lag = 0.0;  // seconds
    bool lag_is_told = true;
    int least_days = 3, most_days = 20;
    std::optional<double> soot{};  // what each lighting-up adds to the heat, in place of one that is drawn
    double flat = 0.3;             // share of the days on which the pack ran flat before
  };
  MadeUpSeason(const description::Build& build, unsigned seed, Ways ways) : build_(build), ways_(ways), random_(seed) {
    factors_ = factors_of(LightingUp(build, {}));
    do {
      draw_engine();
    } while (!drawn_days());
    write_text();
  }
  const std::string& text() const { return text_; }
  int days() const { return days_; }
  /// Of the engine at the next lighting-up, SI.
  double engine(std::size_t k) const { return factors_[k].at(engine_u(k, counts_.back())); }
  double drift(std::size_t k) const { return drift_[k] * factors_[k].log_sigma(); }
  double scatter(std::size_t k) const { return scatter_[k] * factors_[k].log_sigma(); }
  const std::vector<Factor>& factors() const { return factors_; }
  double pack_now() const { return std::exp(pack_level_ + pack_slope_ * months(days_ - 1)); }  // A s
  double pack_slope() const { return pack_slope_; }
  /// On one of its days, from 0.
  std::optional<Duration> minutes_of(int day, GaugePressure gauge) const {
    return model(day).time_to(gauge, tuning_at(factors_, u_[static_cast<std::size_t>(day)]));
  }
  /// At the lighting-up behind the last, as described.
  std::optional<Duration> next_minutes(GaugePressure gauge) const {
    return LightingUp(build_, {}).time_to(gauge, tuning_at(factors_, u_.back()));
  }
  int wrong_readings() const { return wrong_; }

 private:
  double normal() { return std::normal_distribution<double>()(random_); }
  double uniform(double from, double to) { return std::uniform_real_distribution<double>(from, to)(random_); }
  double engine_u(std::size_t k, const std::map<std::string, int>& counts) const {
    const Factor& f = factors_[k];
    return engine_[k] + (f.anew.empty() ? 0.0 : drift_[k] * counts.at(f.anew));
  }
  static double months(int day) { return 5.0 * day / (365.25 / 12.0); }  // a lighting-up every five days
  void draw_engine() {
    engine_.clear(), drift_.clear(), scatter_.clear();
    for (const Factor& f : factors_) {
      engine_.push_back(normal());
      drift_.push_back(normal() * f.drift / f.log_sigma());
      if (ways_.soot && f.key == "tuned.heat") drift_.back() = *ways_.soot / f.log_sigma();
      scatter_.push_back(f.day_to_day / f.log_sigma() * std::exp(data::season_constant("scatter_spread") * normal()));
    }
    days_ = std::uniform_int_distribution<int>(ways_.least_days, ways_.most_days)(random_);
    pack_level_ = std::log(QuantityTraits<Charge>::to_si(*build_.supply.pack.capacity)) +
                  data::season_constant("pack_level") * normal();
    pack_slope_ = data::season_constant("pack_drift") * normal();
  }
  /// False where an engine would take more heat than its fire gives, or nearly so.
  bool drawn_days() {
    u_.clear(), counts_.clear(), logs_.clear();
    std::map<std::string, int> counts{{"swept", 0}, {"reseated", 0}};
    for (int d = 0; d <= days_; ++d) {
      const bool next = d == days_;
      std::string done;
      for (auto& [key, count] : counts)
        if (!next && d > 0 && !ways_.soot && uniform(0.0, 1.0) < 0.1)
          count = 0, done += (done.empty() ? "" : ", ") + key + ": yes";
      counts_.push_back(counts);
      std::vector<double> u;
      for (std::size_t k = 0; k < factors_.size(); ++k) u.push_back(engine_u(k, counts) + scatter_[k] * normal());
      u_.push_back(u);
      const std::string head = next ? "remarks: next\n" : head_of(d, done);
      logs_.push_back(head);
      for (auto& [key, count] : counts) ++count;
      std::vector<double> more = u;
      for (std::size_t k = 0; k < factors_.size(); ++k)
        if (factors_[k].key == "tuned.heat") more[k] += 0.05 / factors_[k].log_sigma();
      try {
        model(d).predict(tuning_at(factors_, more));
      } catch (const ModelError&) {
        return false;
      }
    }
    return true;
  }
  std::string head_of(int d, const std::string& done) {
    std::string text = fmt::format("day: {}\nplace: {{ air: {:.1f} degC, barometer: {:.0f} mbar }}\nwater: {:.0f} ml\n",
                                   description::day_text(first_day + std::chrono::days(5 * d)), uniform(2.0, 25.0),
                                   uniform(985.0, 1025.0), 430.0 + 8.0 * normal());
    text += fmt::format("started_at: {:.1f} degC\n", uniform(8.0, 20.0));
    if (!done.empty()) text += "done: { " + done + " }\n";
    if (uniform(0.0, 1.0) < ways_.flat) {
      const double wrong = uniform(0.0, 1.0) < ways_.wrong ? uniform(-0.7, 0.7) : 0.0;
      const double told = pack_level_ + pack_slope_ * months(d) + std::log(data::season_constant("taken_by_charging")) +
                          data::season_constant("pack_reading") * normal() + wrong;
      text += fmt::format("pack: {{ ran_flat: yes, put_back: {:.4f} mAh }}\n", std::exp(told) / 3.6);
    }
    return text;
  }
  LightingUp model(int d) const {
    description::Log log;
    if (d < days_)
      log = description::read_lighting_up({"log.yaml", logs_[static_cast<std::size_t>(d)] + "remarks: x\n"});
    const std::string reading = "readings: [ {time: 40 min, water: 50 degC} ]\n";
    log.readings = description::read_log({"log.yaml", reading}).readings;
    return LightingUp(build_, log);
  }
  double noisy(Observable o, double value) {
    const double sigma = usual_sigma(o, value);
    if (uniform(0.0, 1.0) >= ways_.wrong) return value + sigma * normal();
    ++wrong_;
    return value + sigma * uniform(6.0, 30.0) * (uniform(0.0, 1.0) < 0.5 ? -1.0 : 1.0);
  }
  /// The thermometer, by Euler's small steps: another way than the library's.
  double probe(const Prediction& truth, double t) const {
    if (ways_.probe_lag <= 0.0) return truth.at(Observable::water, t * s);
    double shown = truth.at(Observable::water, 0.0 * s);
    const int steps = static_cast<int>(t / 0.1) + 1;
    for (int i = 0; i < steps; ++i)
      shown += (truth.at(Observable::water, t * (i + 0.5) / steps * s) - shown) * (t / steps) / ways_.probe_lag;
    return shown;
  }
  std::string readings_of_day(int d) {
    const Prediction truth = model(d).predict(tuning_at(factors_, u_[static_cast<std::size_t>(d)]));
    const auto reached = [&](double bars) {
      const auto over = [&](double t) { return truth.at(Observable::gauge, t * s) - 1e5 * bars; };
      const double end = in(truth.end(), s);
      return over(end) > 0.0 && over(0.0) < 0.0 ? numeric::bracketed_root(over, 0.0, end) : end;
    };
    const double boils = reached(0.05),
                 end = reached(0.9 * in(build_.engine.boiler.working.band->value.above_barometer, bar));
    const int count = std::uniform_int_distribution<int>(3, 9)(random_);
    std::string text = "readings:\n";
    for (int i = 1; i <= count; ++i) {
      const double t = std::round(end * i / (count + 0.5));
      text += fmt::format("  - {{ time: {} s", t);
      if (t < boils)
        text += fmt::format(", water: {:.3f} degC", std::max(1.0, noisy(Observable::water, probe(truth, t)) - 273.15));
      else
        text += fmt::format(", gauge: {:.4f} bar",
                            std::max(0.0, noisy(Observable::gauge, truth.at(Observable::gauge, t * s)) / 1e5));
      if (i % 3 == 1)
        text += fmt::format(", smokebox: {:.3f} Pa",
                            std::max(0.0, noisy(Observable::smokebox, truth.at(Observable::smokebox, t * s))));
      if (i % 4 == 2)
        text += fmt::format(", fan_current: {:.5f} A",
                            std::max(0.002, noisy(Observable::fan_current, truth.at(Observable::fan_current, t * s))));
      if (i == count && d % 2 == 0)
        text += fmt::format(", fuel: {:.3f} g",
                            std::max(0.2, 1e3 * noisy(Observable::fuel, truth.at(Observable::fuel, t * s))));
      text += " }\n";
    }
    return text;
  }
  void write_text() {
    if (ways_.probe_lag > 0.0 && ways_.lag_is_told) text_ += fmt::format("probe_lag: {} s\n", ways_.probe_lag);
    text_ += "lighting_ups:\n";
    for (int d = 0; d < days_; ++d) {
      std::string lead = "  - ";
      const std::string whole = logs_[static_cast<std::size_t>(d)] + readings_of_day(d);
      for (std::size_t at = 0; at < whole.size();) {
        const std::size_t end = whole.find('\n', at);
        text_ += lead + whole.substr(at, end - at) + "\n";
        lead = "    ";
        at = end + 1;
      }
    }
  }

  static constexpr std::chrono::sys_days first_day{std::chrono::year(2026) / std::chrono::April / 4};
  description::Build build_;
  Ways ways_;
  std::mt19937 random_;
  std::vector<Factor> factors_;
  std::vector<double> engine_, drift_, scatter_;
  std::vector<std::vector<double>> u_;
  std::vector<std::map<std::string, int>> counts_;
  std::vector<std::string> logs_;
  std::string text_;
  double pack_level_ = 0.0, pack_slope_ = 0.0;
  int days_ = 0, wrong_ = 0;
};
}  // namespace lumwright::tune
