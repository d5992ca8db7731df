// The values that one sample draws.
#pragma once
#include "model/inputs.hpp"
#include "numeric/quasi_random.hpp"
#include <map>

namespace lumwright::plan {
/// Hands every key its co-ordinate in every sample.
class Draws {
 public:
  /// `inputs`: of the build as it stands. Those with a spread get the even co-ordinates.
  Draws(const model::Inputs& inputs, std::size_t count, std::uint64_t seed);
  /// For one sample; refers to this object.
  model::Draw of_sample(std::size_t sample) const;
  /// Keys with a spread, in order.
  const std::map<std::string, std::size_t, std::less<>>& keys() const { return dimension_; }

  /// What a key draws by itself, 0 to 1.
  double chance(std::size_t sample, std::string_view key) const;

 private:
  /// The same once the values that it goes together with have pulled it along.
  double coordinate(std::size_t sample, std::string_view key) const;
  std::map<std::string, std::size_t, std::less<>> dimension_;
  numeric::QuasiRandom points_;
  std::uint64_t seed_;
};
/// Something that a sample draws: it has a spread, and is not a wish.
bool is_drawn(std::string_view key, const model::Input& input);
}  // namespace lumwright::plan
