// Stock tube sizes that would fit a given chimney.
#pragma once
#include "data/tubes.hpp"
#include "workshop/fit.hpp"
#include <cstddef>
#include <vector>

namespace lumwright::workshop {
struct StockTube {
  data::TubeRow tube;    // `documented` false: ask the stockist
  Band<Length> outside;  // nominal, with the spread of drawn tube
  Fit fit;               // skim.on_diameter is zero when it fits as it is, or once a seam ridge is gone
};

/// Beyond this share of the tube's own bore the gap round it leaks too much to be built. Common practice, no source.
double most_leak_share();

/// Tubes of tubes.yaml that leak no more than that and fit this chimney cold and hot, as it is or after a skim that
/// leaves enough wall and is not heavy; the one whose clearance is nearest to the needed one first, at most `most`. Of the tube in `input` only
/// metal, temperatures, soot and engaged length count: a stock tube may be anywhere in its spread until it is measured.
/// A chimney whose wall or wall limit is not known is offered no skim. Throws ModelError as `fit`.
std::vector<StockTube> stock_tubes(const FitInput& input, std::size_t most);

/// How far drawn tube of this nominal size may lie from it, either way. Throws ModelError beyond the table (30 mm).
Length stock_spread(Length outside);
}  // namespace lumwright::workshop
