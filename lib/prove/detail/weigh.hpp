// How well the samples of each cause explain what was read: a density about every sample, as wide as the instruments
// and as what lies between the samples.
#pragma once
#include "numeric/least_squares.hpp"
#include "prove/detail/clouds.hpp"
#include <optional>
#include <vector>

namespace lumwright::prove {
constexpr std::size_t paper = 0;  // of data::proofs(): the reading in words

/// Of one reading: standard deviation of the instrument at a true value, or as the reader wrote it.
struct Instrument {
  double relative, absolute;      // single standard deviations
  double label;                   // of what stands on the label, over the reading
  std::optional<double> written;  // SI
  double variance(double si) const;
};
/// In the order of data::proofs().
std::vector<Instrument> usual_instruments(const model::Solved& planned);

/// What was read, by reading: SI, not_predicted where nothing was; of the paper -1 blown out, 0 still, 1 drawn in.
using Read = std::vector<double>;

/// The share of strips that answer so, at a suction of the firebox.
double paper_share(double answer, double suction);

struct Weighed {
  const data::CauseRow* cause;
  double log_density;           // of what was read, under this cause
  double share;                 // of all causes, by their odds
  std::vector<double> samples;  // of its samples, adding up to one
  double place_within;          // standard deviation of its place in its range, as the readings leave it
  double misfit;                // squares of the nearest sample, in standard deviations
};
struct Foretold {
  double mean, variance;  // of the paper: share of strips drawn in
};

/// Ready for any numbers of the readings that are taken. Samples of a cause are parted by its size into regions; in
/// each the readings are straight lines in the size plus scatter, and the density is a sum of normal ones about the
/// samples, drawn in towards the lines so that it scatters no wider than they do (Silverman 1986, sec. 4.3; West 1993).
/// A reading that a cause does not foretell may be anything that some cause foretells.
class Weigher {
 public:
  Weigher(const std::vector<Cloud>& clouds, std::vector<bool> taken, const std::vector<Instrument>& instruments);
  /// In the order of the clouds.
  std::vector<Weighed> weigh(const Read& read) const;
  /// What a reading that was not taken would show under a cause, after those that were; nothing where the cause does
  /// not tell. `weighed` is that of the cloud.
  std::optional<Foretold> foretell(std::size_t cloud, const Weighed& weighed, const Read& read,
                                   std::size_t reading) const;

 private:
  struct Region {
    std::vector<std::size_t> members;     // of the cloud's samples
    std::vector<std::vector<double>> at;  // of each member, where its normal density stands, by reading
    numeric::Matrix scatter;              // between the samples, all readings
    std::vector<double> instrument;       // variances, by reading
    numeric::Matrix root;                 // Cholesky's, of what was taken
    double log_norm;
    double place_within;  // of the size, 0 to 1, by the slopes of the lines: as in a straight regression
  };
  struct Model {
    const Cloud* cloud;
    std::vector<std::size_t> taken;  // numbers that were taken and that it foretells
    double elsewhere;                // log density of what it does not
    std::vector<Region> regions;
  };
  Model model_of(const Cloud& cloud) const;
  Region region_of(const Cloud& cloud, const std::vector<std::size_t>& members, const numeric::Matrix& alike,
                   const Model& model) const;
  const std::vector<Instrument>& instruments_;
  std::vector<bool> taken_;
  std::vector<double> log_range_;  // of a reading over all clouds
  std::vector<Model> models_;
};
}  // namespace lumwright::prove
