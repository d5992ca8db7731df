// Resistance of a bed of fuel lumps: Ergun's equation, and when the bed lifts.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::draught {
/// Gas that rises through a bed. The effective size is particle * sphericity.
struct BedFlow {
  Length particle;    // diameter of the sphere with a lump's volume; for broken fuel the middle of the sieve range
  double sphericity;  // above 0 to 1
  double voidage;     // open share of the bed's volume, between 0 and 1
  Length depth;
  Velocity superficial;  // as if the bed were empty
  Density density;
  Viscosity viscosity;
};

/// Ergun, Chem. Eng. Prog. 48 (1952) 89-94. +-30 % for broken lumps before the spread of the voidage, which weighs
/// most. Re/(1 - voidage) 1 to 2500. Throws ModelError for a voidage or sphericity out of range, sizes or gas
/// properties that are not above zero, or a velocity below zero.
Pressure ergun(const BedFlow& bed);

/// A bed on its grate.
struct Bed {
  Length particle;
  double sphericity;
  double voidage;
  Length depth;
  Area grate;
  double resistance = 1.0;  // factor on Ergun's drop: what his constants leave open
};
/// The flow in `bed` when `flow` passes it at one gas state.
BedFlow through(const Bed& bed, MassFlow flow, Density density, Viscosity viscosity);
/// Ergun's drop at a mass flow; rises with gas temperature because a hot gas is thin and viscous.
Pressure bed_drop(const Bed& bed, MassFlow flow, Density density, Viscosity viscosity);

/// Drop at which the gas carries the bed's own weight: (1 - voidage) rho g depth. Voidage between 0 and 1.
Pressure bed_lifting_pressure(const Bed& bed, Density piece);

/// Speed at which a round piece of this size hangs in the rising gas: drag of a sphere after Barati, Neyshabouri and
/// Ahmadi, Powder Technology 257 (2014). +-5 % for a sphere; flakes fly at less. Reynolds number up to 2e5, piece
/// denser than the gas, else ModelError.
struct LoosePiece {
  Length diameter;
  Density density;
};
Velocity terminal_velocity(const LoosePiece& piece, Density gas, Viscosity viscosity);

/// The part of a bed's voidage that the wall of its box brings, by the widths of lumps that go across: Benyahia and
/// O'Neill, Particulate Science and Technology 23 (2005) 169-177. Above zero, else ModelError.
double wall_voidage(double across);
}  // namespace lumwright::draught
