// What the engines of a club have taught, as usual values for the next one of their class.
#pragma once
#include "description/prior_record.hpp"
#include "tune/tune.hpp"

namespace lumwright::tune {
/// The record of an engine, by its season and the usual values of the tables alone. Throws ModelError as `tune` does,
/// and where the season tells nothing that a club could pool.
description::PriorRecord record_of(const description::Build& build, const description::Season& season);

struct PooledPriors {
  description::TunedFile file;          // usual values, with spreads of two standard deviations
  std::size_t taken;                    // records of the same class
  std::vector<std::string> left_out{};  // files of records of another class
};
/// The usual values that records of the same fuel and kind of fan give to this build. Engines of a class lie about a
/// common value that is known as well as they tell it: half of the usual variance is taken as common to a class, half
/// as that from engine to engine, to within a factor of 1.6 of its root (estimate). What a record owes to the table is
/// taken out of it first. Throws ModelError where no record is of this class.
PooledPriors pooled_priors(const description::Build& build, const std::vector<description::PriorRecord>& records);

/// A logarithm of a factor over its usual value, in usual sigmas: told as so much, with so much variance.
struct ToldFactor {
  double value, variance;
};
/// Of the next engine of the class, in the same measure.
Span next_engine(const std::vector<ToldFactor>& told);
}  // namespace lumwright::tune
