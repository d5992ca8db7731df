// Answers lines "name number..." on standard input with one number each, in SI: what an outside library checks us
// against.
#include "draught/bed.hpp"
#include "draught/friction.hpp"
#include <cstdio>
#include <iostream>
#include <sstream>
#include <string>

namespace {
using namespace lumwright;
using namespace lumwright::draught;

double answer(std::istringstream& in_line, const std::string& name) {
  const auto next = [&] {
    double x = 0;
    if (!(in_line >> x)) throw std::invalid_argument("a number is missing behind " + name);
    return x;
  };
  const double first = next();
  if (name == "churchill") return friction_short_tube(first, 1e15, next());  // long developed
  if (name == "ergun") {
    BedFlow bed{.particle = first * m,
                .sphericity = next(),
                .voidage = next(),
                .depth = next() * m,
                .superficial = next() * m_per_s,
                .density = next() * kg_per_m3,
                .viscosity = next() * Pa_s};
    return in(ergun(bed), Pa);
  }
  throw std::invalid_argument("unknown name " + name);
}
}  // namespace

int main() {
  for (std::string line; std::getline(std::cin, line);) {
    std::istringstream in_line(line);
    std::string name;
    in_line >> name;
    try {
      std::printf("%.17g\n", answer(in_line, name));
    } catch (const std::exception& e) {
      std::printf("error %s\n", e.what());
    }
  }
}
