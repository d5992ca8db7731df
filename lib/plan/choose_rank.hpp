// The order of candidates: what is wanted first, groups of times that cannot be told apart, the front. Only the files
// of choosing include it.
#pragma once
#include "plan/choose.hpp"
#include <vector>

namespace lumwright {
/// 0: in time and enough light-ups; 1: in time; 2: enough; 3: neither.
int grade(bool in_time, bool enough);

/// What is known of a combination before it is followed, each at its best.
struct Hope {
  Duration least;
  int most_light_ups;
  std::optional<Mass> mass;
  bool in_time, enough;
};

/// Candidates of one engine as they come in.
class Ranking {
 public:
  /// `told_apart`: times that differ by less than this share belong together.
  Ranking(std::size_t places, double told_apart) : places_(places), told_apart_(told_apart) {}

  /// True when it can neither come to one of the places nor to the front, whatever it turns out to be.
  ///
  /// Proof for the places: let x be a candidate here with a better grade than the hope's, or with the same and a time
  /// that lies below the hope's least by more than what is told apart. The grade of what is hoped for can only turn out
  /// worse than the hope's and its time longer, so x comes before it: in one group with x it would have to lie within
  /// the told-apart share of the group's first, which is no later than x. With as many such x as there are places it
  /// gets none; nor does it move anything before the last x, since it opens no group there.
  /// Proof for the front: x is no slower than its least time, has no fewer light-ups than its most, is no heavier, and
  /// better in one of them; then x is better than whatever it turns out to be, and takes its place in every comparison.
  bool hopeless(const Hope& hope) const;
  void add(Candidate candidate);

  /// The first places, `fails` left empty.
  std::vector<Place> places() const;
  std::vector<Candidate> front() const;

 private:
  bool never_placed(const Hope& hope) const;
  bool never_on_front(const Hope& hope) const;

  std::size_t places_;
  double told_apart_;
  std::vector<Candidate> kept_;
  std::vector<Duration> times_[4];  // rising, by grade: no more than `places`
  std::size_t counts_[4] = {};
  std::vector<Candidate> front_;
};

/// All candidates in their order, with their groups.
std::vector<Place> ranked(std::vector<Candidate> candidates, double told_apart);
/// Better in minutes, light-ups or mass, and worse in none.
bool dominates(const Candidate& a, const Candidate& b);
/// Names in order, so that nothing depends on where things stand in a file.
bool named_before(const Candidate& a, const Candidate& b);
}  // namespace lumwright
