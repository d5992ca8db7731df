// The grommet for a lead.
#pragma once
#include "data/grommets.hpp"

namespace lumwright::workshop {
struct GrommetChoice {
  data::GrommetRow grommet;
  bool needs_thicker_edge;  // the sheet is thinner than the groove: fold or solder a second thickness round the hole
  bool too_thick;           // the sheet does not enter the groove
};
struct LeadThroughSheet {
  Length lead;  // over its insulation; of a pair, across both
  Length sheet;
};
/// The smallest grommet that passes the lead. Common practice, no source. Throws ModelError for sizes not above zero or
/// a lead thicker than the table (9.5 mm).
GrommetChoice grommet_for(const LeadThroughSheet& lead);
}  // namespace lumwright::workshop
