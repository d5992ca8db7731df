// Air as a gas: density, viscosity, conductivity, heat capacity, and the standard atmosphere.
#pragma once
#include "quantity/quantity.hpp"
#include "quantity/require.hpp"

namespace lumwright::matter {
/// Temperatures for which the properties below hold, in K.
inline constexpr Range air_known = {200.0, 2500.0};

/// The density at which fan curves are stated (ISO 5801, AMCA 210).
inline constexpr Density standard_fan_air = 1.2 * kg_per_m3;

/// Density of dry air, p / (R T) with R = 287.05 J/kgK.
/// 200 to 2500 K; `absolute` above zero, here near one atmosphere. Flue gas of charcoal with twice the air it needs is
/// 4 % denser. Throws ModelError outside the range.
Density air_density(Temperature t, Pressure absolute);

/// Dynamic viscosity of air after Sutherland, with the constants in White, Viscous Fluid Flow: +-2 % up to 1900 K.
/// 200 to 2500 K, else ModelError.
Viscosity air_viscosity(Temperature t);

/// Thermal conductivity of air, Sutherland's form (White); within 1.6 % of the handbook table from 300 to 700 K.
/// 200 to 2500 K, else ModelError.
Conductivity air_conductivity(Temperature t);

/// Heat capacity of air at constant pressure: monotone curve through the rows of data/air.yaml. +-0.5 %; moist flue gas
/// is 2 to 4 % higher. 200 to 2500 K, else ModelError.
SpecificHeat air_heat_capacity(Temperature t);

/// Prandtl number of air from the three functions above.
double prandtl(Temperature t);
}  // namespace lumwright::matter
