#include "data/charging.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"

namespace lumwright::data {
namespace {
ChargingRow read(const Row& row) {
  ChargingRow out{.chemistry = row.text("chemistry"),
                  .never = row.text("never", ""),
                  .by_timer = row.optional<double>("by_timer"),
                  .most = 0.0,
                  .put_back = 1.0,
                  .tail = {},
                  .coldest = {},
                  .hottest = {},
                  .how = row.text("how", ""),
                  .basis = row.basis()};
  if (!out.never.empty()) return out;
  out.most = row.number("most");
  out.put_back = row.number("put_back");
  out.tail = row.quantity<Duration>("tail");
  out.coldest = row.quantity<Temperature>("coldest");
  out.hottest = row.quantity<Temperature>("hottest");
  return out;
}
}  // namespace

const ChargingRow& charging(std::string_view chemistry) {
  static const std::vector<ChargingRow> all = read_all("charging", "charging", read);
  for (const ChargingRow& row : all)
    if (row.chemistry == chemistry) return row;
  throw ModelError("how " + std::string(chemistry) + " cells are charged is not known");
}
}  // namespace lumwright::data
