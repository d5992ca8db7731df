// What a fire is once it burns well.
#pragma once
#include "data/basis.hpp"
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright::data {
struct GlowingBed {
  Band<SpecificHeat> specific_heat;  // mean from cold to glow
  Band<Temperature> temperature;
  Basis basis{};
};
const GlowingBed& glowing_bed();
}  // namespace lumwright::data
