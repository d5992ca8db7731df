#include "data/fans.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include "quantity/format.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
FanKind read_kind(const Row& row) {
  const std::string kind = row.text("kind");
  for (const FanKind known : {FanKind::axial, FanKind::centrifugal})
    if (kind == name(known)) return known;
  throw std::logic_error("fans.yaml: unknown kind " + kind);
}
FanDepth read_depth(const Row& row) {
  return {.kind = read_kind(row),
          .thinnest = row.quantity<Length>("thinnest"),
          .thickest = row.quantity<Length>("thickest")};
}
Band<double> with_range(const Row& row, const std::string& key) {
  const Band<double> range = row.band<double>(key + "_range");
  return {.value = row.number(key), .low = range.low, .high = range.high};
}
FanShape read_shape(const Row& row) {
  FanShape shape{.depth = read_depth(row),
                 .flow = row.numbers("flow"),
                 .pressure = row.numbers("pressure"),
                 .source = row.source(),
                 .standing = row.standing()};
  if (shape.flow.size() != shape.pressure.size()) throw std::logic_error("fans.yaml: a shape with odd lists");
  return shape;
}
FanCredibility read_credibility(const Row& row) {
  return {.kind = read_kind(row),
          .psi = row.band<double>("psi"),
          .phi = row.band<double>("phi"),
          .psi_reject = row.number("psi_reject"),
          .wheel_share = row.number("wheel_share"),
          .source = row.source(),
          .standing = row.standing()};
}
FanStall read_stall(const Row& row) {
  return {.kind = read_kind(row),
          .from = row.number("from"),
          .to = row.number("to"),
          .source = row.source(),
          .standing = row.standing()};
}
FanVoltage read_voltage(const Row& row) {
  return {.zero_speed = with_range(row, "zero_speed"),
          .starts = with_range(row, "starts"),
          .stops_over_starts = with_range(row, "stops_over_starts"),
          .highest = row.number("highest"),
          .source = row.source(),
          .standing = row.standing()};
}
FanGasLimit read_gas_limit(const Row& row) {
  return {.watch = row.quantity<Temperature>("watch"),
          .stop = row.quantity<Temperature>("stop"),
          .source = row.source(),
          .standing = row.standing()};
}

template <class T>
const T& for_depth(const std::vector<T>& all, FanKind kind, Length thickness) {
  for (const T& row : all)
    if (row.depth.kind == kind && thickness >= row.depth.thinnest && thickness < row.depth.thickest) return row;
  throw ModelError("fan thickness " + format(thickness, "mm") + " is outside the table of " + std::string(name(kind)) +
                   " fans");
}
}  // namespace

std::string_view name(FanKind kind) { return kind == FanKind::axial ? "axial" : "centrifugal"; }

const FanShape& fan_shape(FanKind kind, Length thickness) {
  static const std::vector<FanShape> all = read_all("fans", "shapes", read_shape);
  return for_depth(all, kind, thickness);
}
const FanCredibility& fan_credibility(FanKind kind) {
  static const std::vector<FanCredibility> all = read_all("fans", "credible", read_credibility);
  for (const FanCredibility& row : all)
    if (row.kind == kind) return row;
  throw std::logic_error("fans.yaml: a kind without limits");
}
double fan_wheel_share(FanKind kind) { return fan_credibility(kind).wheel_share; }
const FanStall* fan_stall(FanKind kind) {
  static const std::vector<FanStall> all = read_all("fans", "stall", read_stall);
  for (const FanStall& row : all)
    if (row.kind == kind) return &row;
  return nullptr;
}
const FanVoltage& fan_voltage() {
  static const FanVoltage row = read_all("fans", "voltage", read_voltage).front();
  return row;
}
const FanGasLimit& fan_gas_limit() {
  static const FanGasLimit row = read_all("fans", "gas_limit", read_gas_limit).front();
  return row;
}
}  // namespace lumwright::data
