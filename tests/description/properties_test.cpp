// Ten thousand builds that nobody wrote: what is within its limits is read, and written back to the same Build.
#include "description/random_build.hpp"
#include "description/writer.hpp"
#include <doctest/doctest.h>
using namespace lumwright;
using namespace lumwright::description;

namespace {
// Two builds key by key: the first, which is const, is listed, and the second held against the list.
class Same {
 public:
  template <class T, class... Rest>
  void operator()(const Field& field, const T& value, Rest&&...) {
    std::string text = std::string(field.key) + ":" + told(value);
    if (first_)
      seen_.push_back(std::move(text));
    else if (next_ >= seen_.size() || seen_[next_++] != text)
      difference += text + "\n";
  }
  template <class Part>
  void section(const Field&, const Part& part) {
    std::remove_const_t<Part>::fields(part, *this);
  }
  void second() { first_ = false; }
  std::string difference;

 private:
  template <class Q>
  static std::string told(const Given<Q>& g) {
    using T = QuantityTraits<Q>;
    if (!g) return "";
    return fmt::format("{} {} {} {} {}", T::to_si(g.band->value), T::to_si(g.band->low), T::to_si(g.band->high), g.unit,
                       g.has_spread);
  }
  static std::string told(const Count& count) { return count ? std::to_string(*count) : ""; }
  static std::string told(const Text& text) { return text ? "'" + *text + "'" : ""; }
  template <class X, class Y>
  static std::string told(const Points<X, Y>& points) {
    std::string out;
    for (const auto& p : points.points)
      out += fmt::format("{} {} ", QuantityTraits<X>::to_si(p.x), QuantityTraits<Y>::to_si(p.y));
    return out;
  }
  static std::string told(const EfficiencyTable& table) {
    std::string out = table.share ? fmt::format("{}", *table.share) : "";
    for (const auto& p : table.points) out += fmt::format(" {} {} {}", in(p.input, V), in(p.output, W), p.share);
    return out;
  }
  bool first_ = true;
  std::vector<std::string> seen_;
  std::size_t next_ = 0;
};
}  // namespace

TEST_CASE("ten thousand builds are read, written back and read again to the same") {
  std::size_t keys = 0;
  for (unsigned seed = 0; seed < 10000; ++seed) {
    const std::string text = RandomBuild(seed, 0.1 + 0.2 * (seed % 5), seed % 2 == 0).text();
    const Build build = read_build({"random.yaml", text});
    const std::string written = write_build(build);
    Same same;
    Build::fields(build, same);
    same.second();
    const Build again = read_build({"again.yaml", written});
    Build::fields(again, same);
    if (!same.difference.empty()) {
      CAPTURE(text);
      CAPTURE(written);
      CHECK(same.difference.empty());
    }
    keys += static_cast<std::size_t>(std::count(written.begin(), written.end(), '\n'));
  }
  CHECK(keys > 200'000);  // the generator generates
}
