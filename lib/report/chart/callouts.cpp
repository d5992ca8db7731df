#include "report/chart/callouts.hpp"
#include "report/chart/labels.hpp"
#include <algorithm>
#include <cmath>
#include <numeric>

namespace lumwright::report::chart {
namespace {
constexpr double line_height = 1.15 * letter, touching = 26.0, close = 11.0;

using Group = std::vector<std::size_t>;
/// Marks linked by being close to each other.
std::vector<Group> groups_of(const std::vector<Called>& marks) {
  std::vector<std::size_t> leader(marks.size());
  std::iota(leader.begin(), leader.end(), std::size_t{0});
  for (std::size_t i = 0; i < marks.size(); ++i)
    for (std::size_t k = 0; k < i; ++k)
      if (std::abs(marks[i].mark.x - marks[k].mark.x) <= touching &&
          std::abs(marks[i].mark.y - marks[k].mark.y) <= line_height)
        std::replace(leader.begin(), leader.end(), leader[i], leader[k]);
  std::vector<Group> groups;
  for (std::size_t l = 0; l < marks.size(); ++l) {
    Group group;
    for (std::size_t i = 0; i < marks.size(); ++i)
      if (leader[i] == l) group.push_back(i);
    std::stable_sort(group.begin(), group.end(),
                     [&](std::size_t a, std::size_t b) { return marks[a].mark.y < marks[b].mark.y; });
    if (!group.empty()) groups.push_back(group);
  }
  std::stable_sort(groups.begin(), groups.end(), [](const Group& a, const Group& b) { return a.size() > b.size(); });
  return groups;
}
/// The words of a group in a column, `off` from its outermost mark, moved down by `shift`.
struct Tried {
  bool right;
  double off, shift;
};
std::vector<Pane> column_of(const std::vector<Called>& marks, const Group& group, const Pane& room, const Tried& t) {
  std::vector<double> wanted;
  double edge = marks[group.front()].mark.x;
  for (const std::size_t i : group) {
    wanted.push_back(marks[i].mark.y + t.shift);
    edge = t.right ? std::max(edge, marks[i].mark.x) : std::min(edge, marks[i].mark.x);
  }
  const std::vector<double> at =
      nudged(wanted, line_height, {room.top + 0.5 * line_height, room.bottom - 0.5 * line_height});
  std::vector<Pane> column;
  for (std::size_t k = 0; k < group.size(); ++k) {
    const double width = text_width(marks[group[k]].words, letter);
    const double left = t.right ? edge + t.off : edge - t.off - width;
    column.push_back({left, at[k] - 0.5 * line_height, left + width, at[k] + 0.5 * line_height});
  }
  return column;
}
bool meet(const Pane& a, const Pane& b) {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
}  // namespace

std::vector<Callout> beside_marks(const std::vector<Called>& marks, const Pane& room,
                                  const std::function<double(const Pane&)>& cover) {
  std::vector<Callout> out(marks.size());
  std::vector<Pane> settled;
  for (const Group& group : groups_of(marks)) {
    std::vector<Pane> best;
    double least = 1e9;
    for (const double shift : {0.0, -14.0, 14.0, -28.0, 28.0, -48.0, 48.0})
      for (const double off : {close, 24.0, 40.0, 64.0})
        for (const bool right : {true, false}) {
          const std::vector<Pane> column = column_of(marks, group, room, {right, off, shift});
          double cost = 0.3 * off + 0.4 * std::abs(shift);
          for (const Pane& words : column) {
            cost += cover(words);
            for (const Pane& other : settled) cost += meet(words, other) ? 200.0 : 0.0;
          }
          if (cost < least) {
            least = cost;
            best = column;
          }
        }
    settled.insert(settled.end(), best.begin(), best.end());
    for (std::size_t k = 0; k < group.size(); ++k) {
      const Spot mark = marks[group[k]].mark;
      const double across = std::max(best[k].left - mark.x, mark.x - best[k].right),
                   down = 0.5 * (best[k].top + best[k].bottom) - mark.y;
      out[group[k]] = {best[k], std::hypot(across, down) > close + 3.0};
    }
  }
  return out;
}
}  // namespace lumwright::report::chart
