#include "prove/detail/weigh.hpp"
#include "data/causes.hpp"
#include "numeric/statistics.hpp"
#include "prove/detail/readings.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>

namespace lumwright::prove {
namespace {
using numeric::Matrix;

Matrix cholesky(Matrix a) {
  for (std::size_t j = 0; j < a.size(); ++j)
    for (std::size_t i = j; i < a.size(); ++i) {
      for (std::size_t k = 0; k < j; ++k) a[i][j] -= a[i][k] * a[j][k];
      a[i][j] = i == j ? std::sqrt(std::max(a[i][j], 1e-300)) : a[i][j] / a[j][j];
    }
  return a;
}
/// The solution of L x = b, in place.
void forward(const Matrix& root, std::vector<double>& b) {
  for (std::size_t i = 0; i < b.size(); ++i) {
    for (std::size_t k = 0; k < i; ++k) b[i] -= root[i][k] * b[k];
    b[i] /= root[i][i];
  }
}
/// A straight line in u through the members, by reading.
struct Line {
  double u, mean, slope;
  double at(double x) const { return mean + slope * (x - u); }
};
Line line_of(const Cloud& cloud, const std::vector<std::size_t>& members, std::size_t reading) {
  Line line{0.0, 0.0, 0.0};
  const double n = static_cast<double>(members.size());
  for (const std::size_t i : members) {
    line.u += cloud.u[i] / n;
    line.mean += cloud.seen[i][reading] / n;
  }
  double along = 0.0, together = 0.0;
  for (const std::size_t i : members) {
    along += (cloud.u[i] - line.u) * (cloud.u[i] - line.u);
    together += (cloud.u[i] - line.u) * (cloud.seen[i][reading] - line.mean);
  }
  if (along > 0.0) line.slope = together / along;
  return line;
}
struct Scattered {
  std::vector<Line> lines;
  std::vector<double> deviation;  // single, about the lines
};
Scattered scattered(const Cloud& cloud, const std::vector<std::size_t>& members, std::size_t readings) {
  Scattered out{{}, std::vector<double>(readings, 0.0)};
  for (std::size_t r = 0; r < readings; ++r) {
    out.lines.push_back(line_of(cloud, members, r));
    if (std::isnan(out.lines[r].mean)) out.lines[r] = {0.0, 0.0, 0.0};  // not foretold: never asked
    double squares = 0.0;
    for (const std::size_t i : members) {
      const double off = cloud.seen[i][r] - out.lines[r].at(cloud.u[i]);
      squares += off * off;
    }
    if (std::isnan(squares)) squares = 0.0;
    out.deviation[r] = std::sqrt(squares / std::max(1.0, static_cast<double>(members.size()) - 2.0));
  }
  return out;
}
std::vector<std::vector<std::size_t>> parted(const Cloud& cloud) {
  std::vector<std::size_t> order(cloud.seen.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return cloud.u[a] < cloud.u[b]; });
  const std::size_t least = 24;  // below that a region says nothing of its scatter
  const std::size_t parts =
      cloud.cause == nullptr ? 1 : std::clamp<std::size_t>(order.size() / least, 1, data::judging().regions);
  std::vector<std::vector<std::size_t>> all(parts);
  for (std::size_t k = 0; k < order.size(); ++k) all[k * parts / order.size()].push_back(order[k]);
  return all;
}
/// How the readings scatter together, over all regions: from -1 to 1.
Matrix correlation(const Cloud& cloud, const std::vector<std::vector<std::size_t>>& parts, std::size_t readings) {
  Matrix sum(readings, std::vector<double>(readings, 0.0));
  double n = 0.0;
  for (const auto& members : parts) {
    const Scattered part = scattered(cloud, members, readings);
    n += std::max(1.0, static_cast<double>(members.size()) - 2.0);
    for (const std::size_t i : members) {
      std::vector<double> off(readings, 0.0);
      for (std::size_t r = 0; r < readings; ++r)
        if (part.deviation[r] > 0.0) off[r] = (cloud.seen[i][r] - part.lines[r].at(cloud.u[i])) / part.deviation[r];
      for (std::size_t a = 0; a < readings; ++a)
        for (std::size_t b = 0; b < readings; ++b) sum[a][b] += off[a] * off[b];
    }
  }
  for (auto& row : sum)
    for (double& x : row) x /= n;
  return sum;
}
/// Width of the normal densities over that of the cloud (Silverman 1986, eq. 4.14).
double narrowing(std::size_t samples, std::size_t readings) {
  const double d = static_cast<double>(readings);
  return std::min(1.0, std::pow(4.0 / ((d + 2.0) * static_cast<double>(samples)), 1.0 / (d + 4.0)));
}
}  // namespace

double Instrument::variance(double si) const {
  const double hand = written ? *written * *written : relative * relative * si * si + absolute * absolute;
  return hand + label * label * si * si;
}
double paper_share(double answer, double suction) {
  const data::ProofRow& row = data::proofs()[paper];
  const double bends = in(data::paper_bends_at(), Pa);
  const double sigma = 0.5 * parse_band(row.within_at_least, kind_of<Pressure>).value;
  const double in_share = numeric::normal_share((suction - bends) / sigma),
               out_share = numeric::normal_share((-suction - bends) / sigma);
  constexpr double slip = 0.01;  // of the pen: no answer is impossible
  const double share = answer > 0.5 ? in_share : answer < -0.5 ? out_share : 1.0 - in_share - out_share;
  return slip + (1.0 - 3.0 * slip) * std::clamp(share, 0.0, 1.0);
}

Weigher::Weigher(const std::vector<Cloud>& clouds, std::vector<bool> taken, const std::vector<Instrument>& instruments)
    : instruments_(instruments), taken_(std::move(taken)), log_range_(taken_.size(), 0.0) {
  for (std::size_t r = 0; r < taken_.size(); ++r) {
    double low = INFINITY, high = -INFINITY;
    for (const Cloud& cloud : clouds)
      for (const auto& one : cloud.seen)
        if (!std::isnan(one[r])) low = std::min(low, one[r]), high = std::max(high, one[r]);
    if (low < high) log_range_[r] = std::log(high - low);
  }
  for (const Cloud& cloud : clouds) models_.push_back(model_of(cloud));
}
Weigher::Model Weigher::model_of(const Cloud& cloud) const {
  Model model{&cloud, {}, 0.0, {}};
  for (std::size_t r = 0; r < taken_.size(); ++r) {
    if (!taken_[r] || r == paper) continue;
    if (cloud.predicts(r))
      model.taken.push_back(r);
    else
      model.elsewhere -= log_range_[r];
  }
  const auto parts = parted(cloud);
  const Matrix alike = correlation(cloud, parts, taken_.size());
  for (const auto& members : parts) model.regions.push_back(region_of(cloud, members, alike, model));
  return model;
}
Weigher::Region Weigher::region_of(const Cloud& cloud, const std::vector<std::size_t>& members, const Matrix& alike,
                                   const Model& model) const {
  const std::size_t readings = taken_.size(), n = model.taken.size();
  const Scattered part = scattered(cloud, members, readings);
  const double narrow = narrowing(members.size(), std::max<std::size_t>(n, 1)),
               drawn_in = std::sqrt(1.0 - narrow * narrow);
  Region region{members, {}, alike, {}, Matrix(n, std::vector<double>(n)), 0.0, 0.0};
  for (std::size_t a = 0; a < readings; ++a) {
    region.instrument.push_back(instruments_[a].variance(part.lines[a].mean));
    for (std::size_t b = 0; b < readings; ++b)
      region.scatter[a][b] *= narrow * narrow * part.deviation[a] * part.deviation[b];
  }
  for (const std::size_t i : members) {
    std::vector<double> at;
    for (std::size_t r = 0; r < readings; ++r) {
      const double on_line = part.lines[r].at(cloud.u[i]);
      at.push_back(on_line + drawn_in * (cloud.seen[i][r] - on_line));
    }
    region.at.push_back(std::move(at));
  }
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b = 0; b < n; ++b)
      region.root[a][b] =
          region.scatter[model.taken[a]][model.taken[b]] + (a == b ? region.instrument[model.taken[a]] : 0.0);
  Matrix whole = region.root;  // as wide as the units of one size scatter
  for (std::size_t a = 0; a < n; ++a)
    for (std::size_t b = 0; b < n; ++b)
      whole[a][b] += (1.0 / (narrow * narrow) - 1.0) * region.scatter[model.taken[a]][model.taken[b]];
  std::vector<double> slopes;
  for (const std::size_t r : model.taken) slopes.push_back(part.lines[r].slope);
  forward(cholesky(whole), slopes);
  const double known = std::inner_product(slopes.begin(), slopes.end(), slopes.begin(), 0.0);
  region.place_within = 1.0 / std::sqrt(std::max(known, 1.0));
  region.root = cholesky(region.root);
  region.log_norm = -0.5 * static_cast<double>(n) * std::log(2.0 * std::numbers::pi);
  for (std::size_t a = 0; a < n; ++a) region.log_norm -= std::log(region.root[a][a]);
  return region;
}

std::vector<Weighed> Weigher::weigh(const Read& read) const {
  std::vector<Weighed> all;
  for (const Model& model : models_) {
    const Cloud& cloud = *model.cloud;
    Weighed one{cloud.cause, 0.0, 0.0, std::vector<double>(cloud.seen.size(), 0.0), 0.0, INFINITY};
    double most = -INFINITY;
    for (const Region& region : model.regions)
      for (std::size_t k = 0; k < region.members.size(); ++k) {
        std::vector<double> off;
        for (const std::size_t r : model.taken) off.push_back(read[r] - region.at[k][r]);
        forward(region.root, off);
        const double squares = std::inner_product(off.begin(), off.end(), off.begin(), 0.0);
        double log_weight = region.log_norm - 0.5 * squares + model.elsewhere;
        if (taken_[paper]) log_weight += std::log(paper_share(read[paper], region.at[k][paper]));
        one.samples[region.members[k]] = log_weight;
        one.misfit = std::min(one.misfit, squares);
        most = std::max(most, log_weight);
      }
    double sum = 0.0;
    for (double& weight : one.samples) sum += weight = std::exp(weight - most);
    for (double& weight : one.samples) weight /= sum;
    for (const Region& region : model.regions)
      for (const std::size_t i : region.members) one.place_within += one.samples[i] * region.place_within;
    one.log_density = most + std::log(sum / static_cast<double>(one.samples.size()));
    all.push_back(std::move(one));
  }
  double best = -INFINITY, sum = 0.0;
  const auto odds = [](const Weighed& one) {
    return one.cause == nullptr ? data::judging().sound_odds : one.cause->odds;
  };
  for (const Weighed& one : all) best = std::max(best, one.log_density);
  for (Weighed& one : all) sum += one.share = odds(one) * std::exp(one.log_density - best);
  for (Weighed& one : all) one.share /= sum;
  return all;
}

std::optional<Foretold> Weigher::foretell(std::size_t cloud, const Weighed& weighed, const Read& read,
                                          std::size_t reading) const {
  const Model& model = models_[cloud];
  if (!model.cloud->predicts(reading)) return std::nullopt;
  double mean = 0.0, square = 0.0;
  for (const Region& region : model.regions) {
    std::vector<double> with;  // scatter of this reading with those that were taken
    for (const std::size_t r : model.taken) with.push_back(region.scatter[r][reading]);
    forward(region.root, with);
    const double explained = std::inner_product(with.begin(), with.end(), with.begin(), 0.0);
    const double left = std::max(0.0, region.scatter[reading][reading] - explained) + region.instrument[reading];
    for (std::size_t k = 0; k < region.members.size(); ++k) {
      const double weight = weighed.samples[region.members[k]];
      if (weight < 1e-9) continue;
      if (reading == paper) {
        mean += weight * paper_share(1.0, region.at[k][paper]);
        continue;
      }
      std::vector<double> off;
      for (const std::size_t r : model.taken) off.push_back(read[r] - region.at[k][r]);
      forward(region.root, off);
      const double here = region.at[k][reading] + std::inner_product(with.begin(), with.end(), off.begin(), 0.0);
      mean += weight * here;
      square += weight * (here * here + left);
    }
  }
  return Foretold{mean, reading == paper ? mean * (1.0 - mean) : std::max(square - mean * mean, 0.0)};
}
}  // namespace lumwright::prove
