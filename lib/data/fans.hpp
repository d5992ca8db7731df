// What is known of small d.c. fans in general: shapes of curves, tip-speed coefficients, voltage, limits, usual rows.
#pragma once
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::data {
enum class FanKind { axial, centrifugal };
std::string_view name(FanKind kind);

/// Depths of frame that a row speaks for: thinnest <= depth < thickest.
struct FanDepth {
  FanKind kind;
  Length thinnest;
  Length thickest;
};

/// Share of shut-off pressure against share of free-air flow.
struct FanShape {
  FanDepth depth;
  std::vector<double> flow;
  std::vector<double> pressure;
  std::string source;
  std::string standing;
};
/// Coefficients on the wheel's tip speed u = pi D n, with D = wheel_share * frame: psi = shut-off pressure / (1.2 kg/m3
/// u^2 / 2), phi = free-air flow / (pi/4 D^2 u).
struct FanCredibility {
  FanKind kind;
  Band<double> psi;  // usual range; its middle means nothing
  Band<double> phi;
  double psi_reject;
  double wheel_share;
  std::string source;
  std::string standing;
};
/// Shares of free-air flow between which the blades stall and recover.
struct FanStall {
  FanKind kind;
  double from;
  double to;
  std::string source;
  std::string standing;
};
/// Two-wire brushless motor; voltages as shares of the rated one.
struct FanVoltage {
  Band<double> zero_speed;         // where the line of speed against voltage meets zero; may be below zero
  Band<double> starts;             // least voltage at which it starts from rest
  Band<double> stops_over_starts;  // voltage at which it stops, over the one at which it starts
  double highest;
  std::string source;
  std::string standing;
};
struct FanGasLimit {
  Temperature watch;
  Temperature stop;
  std::string source;
  std::string standing;
};

/// The row for a kind and depth of frame. Throws ModelError for a depth that is not in the table (0 to 200 mm).
const FanShape& fan_shape(FanKind kind, Length thickness);
const FanCredibility& fan_credibility(FanKind kind);
double fan_wheel_share(FanKind kind);  // diameter of the wheel over the side of the frame
/// Null for a kind that does not stall.
const FanStall* fan_stall(FanKind kind);
const FanVoltage& fan_voltage();
const FanGasLimit& fan_gas_limit();
}  // namespace lumwright::data
