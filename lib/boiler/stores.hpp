// What holds the heat of a boiler: its water and its metal; and what loses it: the outside.
#pragma once
#include "data/metals.hpp"
#include "quantity/quantity.hpp"
#include <optional>
#include <span>
#include <variant>

namespace lumwright::boiler {
using HeatCapacity = decltype(J / K);

/// A metal by its row; the row must have a specific heat.
struct MetalMass {
  const data::MetalRow* metal;
  Mass mass;
};
/// Sum of mass times specific heat. Masses not below zero, else ModelError; also for a metal without specific heat.
HeatCapacity heat_capacity(std::span<const MetalMass> metals);

/// Internal energy of saturated water and its slope along the saturation line: `saturation` once over 1 to 300 degC,
/// every 2 K, with a cubic spline through it; within 1 J/kg and 1e-5 of the slope, and a fifth of the time. Throws
/// ModelError outside.
SpecificEnergy water_energy(Temperature t);
SpecificHeat water_capacity(Temperature t);
/// Heat that a kilogram of water of `cold` takes up to `hot` in a closed boiler whose steam weighs nothing beside it;
/// 0.25 % less than with it.
SpecificEnergy heat_to(Temperature cold, Temperature hot);

/// A bare horizontal barrel in still air: Churchill and Chu, and radiation.
struct Barrel {
  Length diameter;
  Area surface;  // all of the outside that is as hot as the water
  double emissivity;
  double bare_share;  // lagging lets this share of a bare barrel's loss through: 1 bare, about 0.5 lagged
};
/// Plates as they were measured, bare or under felt: 1/U = 1/h + 1/lagging, and h = bare (rise / at)^power.
struct Plates {
  Area surface;  // all of the outside that is as hot as the water
  HeatTransfer bare;
  TemperatureRise at;
  double power;
  std::optional<HeatTransfer> lagging;  // of the felt alone; nothing: bare
};
/// What felt of this thickness lets through: straight in thickness between the measured ones, and on. Nothing for no
/// thickness. Throws ModelError for one below zero.
std::optional<HeatTransfer> lagging_lets_through(Length thickness);
/// Plates that lose `coefficient` for each degree and area at the rise of the bare row. Throws ModelError unless both
/// are above zero.
Plates plates_that_lose(Area surface, HeatTransfer coefficient);

using OutsideLoss = std::variant<ThermalConductance, Barrel, Plates>;
/// Below zero when the room is warmer than the water. Conductance not below zero, barrel's numbers in range, else
/// ModelError.
Power outside_loss(const OutsideLoss& loss, Temperature water, Temperature room);
/// Coefficient of a bare barrel, convection and radiation.
HeatTransfer barrel_coefficient(const Barrel& barrel, Temperature surface, Temperature room);
}  // namespace lumwright::boiler
