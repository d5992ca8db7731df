// Everything a solve takes in: what the user wrote, and what is assumed where the description is silent.
#pragma once
#include "data/basis.hpp"
#include "description/given.hpp"
#include "description/page_units.hpp"
#include "model/assumed.hpp"
#include "model/origin.hpp"
#include "model/tuning.hpp"
#include "quantity/format.hpp"
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::model {
struct Input {
  AnyQuantity value;
  double low, high;  // SI
  std::string unit;
  Origin origin;
  bool tails = false;  // ten of a hundred lie below `low` and ten above `high`, in a normal law of the logarithm
};

/// A note on an assumed value whose key, value and band are filled in by Inputs.
Assumed because(std::string why, data::Basis basis);

/// Chooses the value that a solve uses from its spread; the centre unless a sampler is at work.
using Draw = std::function<double(std::string_view key, const Input& input)>;

/// Hands out the values of a description by key and remembers every one that was asked for, so that `assumed`,
/// `explain` and a sampler all see exactly what was used.
class Inputs {
 public:
  /// A tuned value stands before what is written or usual. Keeps a reference to the tuning.
  explicit Inputs(Draw draw = {}, const Tuning* tuning = nullptr) : draw_(std::move(draw)), tuning_(tuning) {}

  /// What the user wrote, or nothing.
  template <class Q>
  std::optional<Q> known(const description::Given<Q>& given) {
    if (!given) return std::nullopt;
    return from_si<Q>(written(given));
  }
  /// What the user wrote, or the typical value of this key (data/typical.yaml), listed as assumed.
  template <class Q>
  Q usual(const description::Given<Q>& given) {
    return given ? from_si<Q>(written(given)) : from_si<Q>(typical(given.key.text(), kind_of<Q>));
  }
  /// A constant of the model that no description sets.
  template <class Q>
  Q constant(std::string_view key) {
    return from_si<Q>(typical(key, kind_of<Q>));
  }
  /// What the user wrote, or a value that another table gives for this build, listed as assumed.
  template <class Q>
  Q otherwise(const description::Given<Q>& given, const Band<Q>& band, Assumed note) {
    return given ? from_si<Q>(written(given)) : taken(given.key.text(), band, std::move(note));
  }
  /// A value that no description sets, as another table gives it for this build, listed as assumed.
  template <class Q>
  Q taken(std::string_view key, const Band<Q>& band, Assumed note) {
    using T = QuantityTraits<Q>;
    return from_si<Q>(
        assume(key, {Q(band.value), T::to_si(band.low), T::to_si(band.high), "", Origin::assumed}, std::move(note)));
  }
  /// The same for a factor or a value above zero whose band leaves out ten of a hundred at each end.
  template <class Q>
  Q scattered(const description::Given<Q>& given, const Band<Q>& band, Assumed note) {
    return given ? from_si<Q>(written(given)) : scattered(given.key.text(), band, std::move(note));
  }
  template <class Q>
  Q scattered(std::string_view key, const Band<Q>& band, Assumed note) {
    using T = QuantityTraits<Q>;
    return from_si<Q>(assume(key, {Q(band.value), T::to_si(band.low), T::to_si(band.high), "", Origin::assumed, true},
                             std::move(note)));
  }
  /// What no description tells: what is wrong with a unit as it was made. None of it, unless a draw supposes it
  /// (prove/): it is neither listed nor drawn with the spreads.
  template <class Q>
  Q hidden(std::string_view key) {
    if (!draw_) return Q(0.0 * from_si<Q>(1.0));
    return from_si<Q>(draw_(key, {AnyQuantity(0.0, kind_of<Q>), 0.0, 0.0, "", Origin::assumed}));
  }
  std::string usual(const description::Text& given);
  int count(const description::Count& given, int otherwise, std::string_view why);
  /// Lists what stands in for a part of which nothing is said (data/typical.yaml).
  void stands_in(std::string_view part) {
    if (!one_of_many()) usual_word(part);
  }
  template <class Q>
  void stands_in(const description::Given<Q>& given) {
    stands_in(given.key.text());
  }
  /// Lists something as assumed that is not one number.
  void note(Assumed assumed);

  const std::vector<Assumed>& assumed() const { return assumed_; }
  /// The same in the units of a page.
  std::vector<Assumed> assumed(UnitSystem units, const description::PageUnits& page) const;
  const std::map<std::string, Input, std::less<>>& all() const { return all_; }
  const Input* find(std::string_view key) const;
  /// A sampler draws the values: nothing is noted, and a written spread is a value that was drawn from it.
  bool one_of_many() const { return static_cast<bool>(draw_); }

 private:
  template <class Q>
  Q from_si(double si) const {
    return QuantityTraits<Q>::from_si(si);
  }
  template <class Q>
  double written(const description::Given<Q>& given) {
    using T = QuantityTraits<Q>;
    return record(given.key.text(), {Q(given.band->value), T::to_si(given.band->low), T::to_si(given.band->high),
                                     given.unit, Origin::written});
  }
  double typical(std::string_view key, Kind kind);
  std::string usual_word(std::string_view key);
  double assume(std::string_view key, Input input, Assumed note);
  double record(std::string_view key, Input input);

  Draw draw_;
  const Tuning* tuning_;
  std::map<std::string, Input, std::less<>> all_;
  std::vector<Assumed> assumed_;
};
}  // namespace lumwright::model
