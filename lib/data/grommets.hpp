// Rubber grommets: the hole they go into and the lead that goes through.
#pragma once
#include "data/basis.hpp"
#include "quantity/quantity.hpp"
#include <string>
#include <vector>

namespace lumwright::data {
struct GrommetRow {
  Length hole;      // in the panel
  Length lead;      // thickest that goes through
  Length thinnest;  // panel that fills the groove
  Length thickest;
  Basis basis{};
};
/// Smallest hole first.
const std::vector<GrommetRow>& grommets();
}  // namespace lumwright::data
