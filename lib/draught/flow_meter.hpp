// Flow meters for the fan test: orifice plate in a pipe (ISO 5167-2) and test nozzle (AMCA 210).
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright {
enum class Taps { corner, flange, d_and_half };

struct OrificeMeter {
  Length pipe;  // bore; the standard covers 50 mm to 1 m, smaller is extrapolation
  Length hole;  // diameter; at least 12.5 mm, 0.1 to 0.75 of the pipe
  Taps taps;
};

struct MeteredGas {
  Pressure upstream;  // absolute
  Pressure drop;
  Density density;  // upstream
  Viscosity viscosity;
  double isentropic_exponent;  // 1.4 for air
};

/// 1 / sqrt(1 - beta^4), beta = hole / pipe.
double velocity_of_approach(const OrificeMeter& meter);

/// ISO 5167-2:2003, equation 5. Downstream over upstream pressure not below 0.75, else ModelError.
double orifice_expansibility(const OrificeMeter& meter, const MeteredGas& gas);

/// Reader-Harris and Gallagher's equation (ISO 5167-2:2003, equation 4) at a pipe Reynolds number. +-0.5 to 0.7 %
/// within the standard's range. Throws ModelError for a hole outside 0.1 to 0.75 of the pipe; warns of nothing else.
double reader_harris_gallagher(const OrificeMeter& meter, double pipe_reynolds);

/// Mass flow by the standard's iteration (it needs the flow for its Reynolds number), solved to rounding.
MassFlow orifice_meter_flow(const OrificeMeter& meter, const MeteredGas& gas);

/// Loss factor of the plate on the pipe's velocity head, ISO 5167-2:2003, equation 7.
double orifice_meter_loss(const OrificeMeter& meter, double cd);

/// Test nozzle of AMCA 210: throat length 0.6 or 0.5 diameters; Reynolds number 12 000 or more, else ModelError.
enum class NozzleThroat { point_six, point_five };
double nozzle_coefficient(NozzleThroat throat, double reynolds);
}  // namespace lumwright
