// Heat transfer coefficients: free convection in room air, radiation, and forced flow inside a tube.
#pragma once
#include "quantity/quantity.hpp"

namespace lumwright::matter {
/// Rayleigh and Prandtl number of a free boundary layer.
struct FreeConvection {
  double rayleigh;  // 0 to 1e12
  double prandtl;
};

/// Mean Nusselt number of a vertical plate, all Rayleigh numbers: Churchill and Chu, Int. J. Heat Mass Transfer 18
/// (1975) 1323-1329. About +-10 %. Throws ModelError for negative numbers or above 1e12.
double plate_nusselt(const FreeConvection& at);

/// Mean Nusselt number of a horizontal cylinder: Churchill and Chu, Int. J. Heat Mass Transfer 18 (1975) 1049-1053.
/// On an upright tube of our length it reads some 10 % high. Throws ModelError as above.
double cylinder_nusselt(const FreeConvection& at);

/// Coefficients with air's properties at the mean of the two temperatures, which may be in either order; equal ones
/// give pure conduction. Throws ModelError outside the range of air's properties or for a size of zero.
HeatTransfer free_convection_plate(Length height, Temperature surface, Temperature air);
HeatTransfer free_convection_cylinder(Length diameter, Temperature surface, Temperature air);

/// Radiation between a small grey surface and large surroundings, as a coefficient on the difference:
/// eps sigma (Ts^4 - Ta^4) / (Ts - Ta), written so that equal temperatures are no special case. 0 <= emissivity <= 1.
HeatTransfer radiation_coefficient(double emissivity, Temperature surface, Temperature surroundings);

/// Flow inside a tube.
struct TubeHeat {
  double reynolds;
  double prandtl;
  double bore_over_length;
};

/// Laminar, developing, wall of one temperature: Hausen 1943. Below a Reynolds number of about 2300.
double hausen_nusselt(const TubeHeat& at);

/// Turbulent, long tube, smooth: Gnielinski 1976 with the friction factor (0.790 ln Re - 1.64)^-2. Reynolds number
/// 3000 to 5e6 (read from 2300 by the blend below), Prandtl number 0.5 to 2000; +-10 %. Throws ModelError outside.
double gnielinski_nusselt(double reynolds, double prandtl);

/// One continuous Nusselt number for all flows in a tube: Hausen up to Re 2300, Gnielinski from 4000, and the straight
/// line in Re between them (Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134-140). +-15 %.
double tube_nusselt(const TubeHeat& at);
}  // namespace lumwright::matter
