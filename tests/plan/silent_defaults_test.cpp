// No default is taken in silence: every key and part of a description is struck out by itself, and where that moves an answer, the
// list of what is assumed must say by what.
#include "describe.hpp"
#include "description/random_build.hpp"
#include "description/writer.hpp"
#include <cmath>
#include <doctest/doctest.h>
#include <map>
#include <optional>
#include <set>
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;

namespace {
/// Strikes the n-th value or part that is given, counted from 0, and knows its key path.
class Striker {
 public:
  explicit Striker(std::size_t target, std::string under = "") : target_(target), under_(std::move(under)) {}
  std::string struck;
  std::size_t seen = 0;

  template <class T, class... Rest>
  void operator()(Field field, T& given, Rest&&...) {
    if (!given || seen++ != target_ || !struck.empty()) return;
    struck = under_ + std::string(field.key);
    given = T{};
  }
  template <class Part>
  void section(Field field, Part& part) {
    const std::string path = under_ + std::string(field.key);
    Striker counting(static_cast<std::size_t>(-1), "");
    Part::fields(part, counting);
    if (counting.seen == 0) return;
    if (seen++ == target_) {
      struck = path;
      part = Part{};
      return;
    }
    Striker inner(target_ - seen, path + ".");  // past the end where the target came before
    Part::fields(part, inner);
    seen += inner.seen;
    if (!inner.struck.empty()) struck = inner.struck;
  }

 private:
  std::size_t target_;
  std::string under_;
};

std::map<std::string, double> numbers(const Assessment& a) {
  std::map<std::string, double> out;
  for (const Result& r : a.results)
    if (const auto* m = std::get_if<Measure>(&r.value)) out[r.key] = m->quantity.si;
  return out;
}
std::set<std::string> assumptions(const Assessment& a) {
  std::set<std::string> out;
  for (const Assumed& one : a.assumed) out.insert(one.key + "=" + one.value);
  return out;
}
/// The first answer that is there with and without the key and differs.
std::string moved(const Assessment& with, const Assessment& without) {
  const auto before = numbers(with), after = numbers(without);
  for (const auto& [key, value] : before) {
    const auto other = after.find(key);
    if (other == after.end()) continue;
    if (std::abs(value - other->second) > 1e-9 * std::max(std::abs(value), std::abs(other->second))) return key;
  }
  return "";
}
/// Nothing where it may not be left out.
std::optional<Build> read_again(const Build& build) {
  try {
    return read_build({"struck.yaml", write_build(build)});
  } catch (const InputError&) {
    return std::nullopt;
  }
}
/// What is not there when nothing is said of it, or is said beside it: a fuse or a
/// step-up; the measuring uncertainty of a size that has
/// its own spread.
bool stands_for_a_part(const std::string& key) {
  for (const char* one : {"supply.fuse", "supply.step_up", "engine.chimney.measured_within", "adapter.tube.measured_within"})
    if (key == one) return true;
  return false;
}
std::size_t strike_all(const std::string& name, const Build& whole) {
  const Assessment before = assess(whole);
  const std::set<std::string> assumed = assumptions(before);
  std::size_t struck = 0;
  for (std::size_t i = 0;; ++i) {
    Build less = whole;
    Striker striker(i);
    Build::fields(less, striker);
    if (striker.struck.empty()) return struck;
    ++struck;
    CAPTURE(striker.struck);
    const std::optional<Build> legal = read_again(less);
    if (!legal) continue;
    const Assessment after = assess(*legal);
    const std::string answer = moved(before, after);
    if (answer.empty() || stands_for_a_part(striker.struck)) continue;
    std::set<std::string> now = assumptions(after);
    for (const std::string& one : assumed) now.erase(one);
    INFO(name << ": " << answer << " moves, and nothing is listed as assumed");
    CHECK(!now.empty());
  }
}
}  // namespace

TEST_CASE("no default is taken in silence: every key of the examples and of random builds is struck out") {
  std::size_t struck = 0;
  for (const char* name : {"tarn-beck", "great-fell-5in", "high-tarn-32mm"}) struck += strike_all(name, example(name));
  for (unsigned seed = 1; seed <= 6; ++seed)
    struck += strike_all("random " + std::to_string(seed),
                         read_build({"random.yaml", RandomBuild(900 + seed, 0.95, false).text()}));
  CHECK(struck > 400);
}
