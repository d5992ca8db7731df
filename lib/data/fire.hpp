// What a fire is once it burns well.
#pragma once
#include "quantity/band.hpp"
#include "quantity/quantity.hpp"
#include <string>

namespace lumwright::data {
struct GlowingBed {
  Band<SpecificHeat> specific_heat;  // mean from cold to glow
  Band<Temperature> temperature;
  std::string source;
  std::string standing;
};
const GlowingBed& glowing_bed();
}  // namespace lumwright::data
