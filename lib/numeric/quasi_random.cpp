#include "numeric/quasi_random.hpp"
#include "quantity/errors.hpp"
#include <boost/random/mersenne_twister.hpp>
#include <boost/random/sobol.hpp>
#include <boost/random/uniform_int_distribution.hpp>
#include <numeric>
#include <utility>

namespace lumwright::numeric {
namespace {
using Engine = boost::random::sobol_engine<std::uint32_t, 32, boost::random::default_sobol_table>;
constexpr std::size_t most_points = std::size_t{1} << 24, most_dimensions = 1000;

std::uint64_t mixed(std::uint64_t x) {  // splitmix64, Steele, Lea and Flood 2014
  x += 0x9E3779B97F4A7C15U;
  x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
  x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
  return x ^ (x >> 31U);
}
std::uint64_t hashed(std::string_view name) {  // FNV-1a
  std::uint64_t h = 0xCBF29CE484222325U;
  for (const char c : name) h = (h ^ static_cast<unsigned char>(c)) * 0x100000001B3U;
  return h;
}
std::uint32_t reversed(std::uint32_t x) {
  x = ((x >> 1U) & 0x55555555U) | ((x & 0x55555555U) << 1U);
  x = ((x >> 2U) & 0x33333333U) | ((x & 0x33333333U) << 2U);
  x = ((x >> 4U) & 0x0F0F0F0FU) | ((x & 0x0F0F0F0FU) << 4U);
  x = ((x >> 8U) & 0x00FF00FFU) | ((x & 0x00FF00FFU) << 8U);
  return (x >> 16U) | (x << 16U);
}
// Permutes the digits of x, the leading one first, each by a coin that hangs on the digits before it.
std::uint32_t scrambled(std::uint32_t x, std::uint32_t seed) {
  x = reversed(x);
  x += seed;
  x ^= x * 0x6C50B47CU;
  x ^= x * 0xB82F1E52U;
  x ^= x * 0xC7AFE638U;
  x ^= x * 0x8D22F6E6U;
  return reversed(x);
}
// Sobol's first two dimensions, the origin (which the engine leaves out) first.
std::vector<std::uint32_t> first_two(std::size_t count) {
  Engine engine(2);
  std::vector<std::uint32_t> points(2 * count);
  for (std::size_t i = 2; i < points.size(); ++i) points[i] = engine();
  return points;
}
// Fisher and Yates's shuffle with a generator and a distribution that are the same everywhere.
std::vector<std::uint32_t> shuffled(std::size_t count, std::uint64_t seed) {
  std::vector<std::uint32_t> order(count);
  std::iota(order.begin(), order.end(), 0U);
  boost::random::mt19937_64 random(seed);
  for (std::size_t i = count; i > 1; --i)
    std::swap(order[i - 1], order[boost::random::uniform_int_distribution<std::size_t>(0, i - 1)(random)]);
  return order;
}
double in_open_interval(std::uint32_t x) { return (static_cast<double>(x) + 0.5) / 4294967296.0; }
}  // namespace

QuasiRandom::QuasiRandom(Size size, std::uint64_t seed) : size_(size) {
  if (size.count > most_points || size.dimensions > most_dimensions)
    throw ModelError("at most 16 million points in 1000 dimensions can be drawn");
  points_.resize(size.count * size.dimensions);
  if (points_.empty()) return;
  const std::vector<std::uint32_t> base = first_two(size.count);
  std::vector<std::uint32_t> order;
  for (std::size_t d = 0; d < size.dimensions; ++d) {
    const auto digits = static_cast<std::uint32_t>(mixed(mixed(seed) + d) >> 32U);
    if (d % 2 == 0) order = shuffled(size.count, mixed(seed + 1) + d);
    for (std::size_t i = 0; i < size.count; ++i)
      points_[i * size.dimensions + d] = in_open_interval(scrambled(base[2 * order[i] + d % 2], digits));
  }
}

double stray_coordinate(std::size_t point, std::string_view name, std::uint64_t seed) {
  const std::uint64_t h = mixed(seed ^ hashed(name));
  const auto order = static_cast<std::uint32_t>(h), digits = static_cast<std::uint32_t>(h >> 32U);
  const std::uint32_t index = scrambled(static_cast<std::uint32_t>(point), order);
  return in_open_interval(scrambled(reversed(index), digits));
}
}  // namespace lumwright::numeric
