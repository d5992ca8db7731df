// What a workshop can change about a build, and which checks that may clear.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
struct MoveRow {
  struct Along {
    std::string key;
    double times;  // of the step
  };
  struct Fixed {
    std::string key, value, inch;  // the last where the owner writes inches; empty: the same
  };
  std::string id, key;
  std::string says;                 // "a box {} wide": {} is the new value, [] the first of `with`
  int toward;                       // +1 for more, -1 for less; 0 where the values have no order
  std::string step, inch;           // one step, as text with its unit; in inches where there is one of its own
  int most;                         // steps
  std::vector<std::string> to;      // values to try in place of steps
  std::string at;                   // where the key is not written; empty: there is nothing to change then
  std::vector<Along> along;         // keys that go with it
  std::vector<Fixed> with;          // keys that are written besides
  std::string table;                // of which each row is tried; empty: none
  std::vector<std::string> clears;  // checks
  std::string source, standing;
};
/// In the order in which they are tried.
const std::vector<MoveRow>& moves();
/// The remedy of this check is a habit, not a change of the build.
bool is_habit(std::string_view check);
/// No change may bring this check nearer to failing while it does not pass.
bool never_worse(std::string_view check);
}  // namespace lumwright::data
