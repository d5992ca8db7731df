// The order of candidates: what is wanted first, groups of times that cannot be told apart, the front. Only the files
// of choosing include it.
#pragma once
#include "choose/choose.hpp"
#include <vector>

namespace lumwright::choose {
/// 0: in time and enough light-ups; 1: in time; 2: enough; 3: neither.
int grade(bool in_time, bool enough);

/// What is known of a combination before it is followed, each at its best.
struct Hope {
  Duration least;
  int most_light_ups;
  std::optional<Mass> mass;
  bool in_time, enough;
  double time_spread = 0.0;  // of its fan
};

/// Candidates of one engine as they come in.
class Ranking {
 public:
  /// `widest_spread`: of the time of any fan there is.
  Ranking(std::size_t places, double widest_spread) : places_(places), widest_spread_(widest_spread) {}

  /// True when it can neither come to one of the places nor to the front, whatever it turns out to be.
  ///
  /// Proof for the places: let x be a candidate here with a better grade than the hope's, or with the same and a time
  /// that lies below the hope's least by more than what its fan and any other leave open. The grade of what is hoped
  /// for can only turn out worse than the hope's and its time longer, so x comes before it: in one group with x it
  /// would have to lie within that share of the group's first, which is no later than x. With as many such x as there
  /// are places it gets none; nor does it move anything before the last x, since it opens no group there. Proof for the
  /// front: x is no slower than its least time, has no fewer light-ups than its most, is no heavier, and better in one
  /// of them; then x is better than whatever it turns out to be, and takes its place in every comparison.
  bool hopeless(const Hope& hope) const;
  void add(Candidate candidate);

  /// The first places, `fails` left empty.
  std::vector<Place> places() const;
  std::vector<Candidate> front() const;

 private:
  bool never_placed(const Hope& hope) const;
  bool never_on_front(const Hope& hope) const;

  std::size_t places_;
  double widest_spread_;
  std::vector<Candidate> kept_;
  std::vector<Duration> times_[4];  // rising, by grade: no more than `places`
  std::size_t counts_[4] = {};
  std::vector<Candidate> front_;
};

/// All candidates in their order, with their groups: the fastest that is left opens one, and those that follow join it
/// until the first that can be told from it.
std::vector<Place> ranked(std::vector<Candidate> candidates);
/// Share by which the time of the slower must exceed the other's for the two to be told apart: the root of the sum of
/// the squares of what their fans leave open, for the fans err each by itself; with one fan in both, the least.
double told_apart(const Candidate& a, const Candidate& b);
double told_apart_by(double one_spread, double other_spread);  // of two fans
/// Better in minutes, light-ups or mass, and worse in none.
bool dominates(const Candidate& a, const Candidate& b);
/// Names in order, so that nothing depends on where things stand in a file.
bool named_before(const Candidate& a, const Candidate& b);
}  // namespace lumwright::choose
