// The values that one world draws.
#pragma once
#include "numeric/quasi_random.hpp"
#include "plan/inputs.hpp"
#include <map>

namespace lumwright {
/// Hands every key its co-ordinate in every world.
class Draws {
 public:
  /// `inputs`: of the build as it stands. Those with a spread get the even co-ordinates.
  Draws(const Inputs& inputs, std::size_t count, std::uint64_t seed);
  /// For one world; refers to this object.
  Draw of_world(std::size_t world) const;
  /// Keys with a spread, in order.
  const std::map<std::string, std::size_t, std::less<>>& keys() const { return dimension_; }

  /// What a key draws by itself, 0 to 1.
  double chance(std::size_t world, std::string_view key) const;

 private:
  /// The same once the values that it goes together with have pulled it along.
  double coordinate(std::size_t world, std::string_view key) const;
  std::map<std::string, std::size_t, std::less<>> dimension_;
  QuasiRandom points_;
  std::uint64_t seed_;
};
/// Something that a world draws: it has a spread, and is not a wish.
bool is_drawn(std::string_view key, const Input& input);
}  // namespace lumwright
