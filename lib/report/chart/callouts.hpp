// Short words beside marks that stand too close together to be labelled one by one.
#pragma once
#include "report/chart/figure.hpp"
#include <functional>
#include <string>
#include <vector>

namespace lumwright::report::chart {
struct Called {
  Spot mark;
  std::string words;
};
struct Callout {
  Pane words;  // what they cover
  bool apart;  // far enough from the mark to want a line to it
};
/// Words beside each mark, in its order. Marks that touch each other get theirs in one column at the right or the left
/// of all of them, in the order in which they lie one over the other, none over another; the column goes where `cover`
/// (cost of words that cover an area) is least.
std::vector<Callout> beside_marks(const std::vector<Called>& marks, const Pane& room,
                                  const std::function<double(const Pane&)>& cover);
}  // namespace lumwright::report::chart
