#include "workshop/grommet.hpp"
#include "quantity/require.hpp"
#include <fmt/format.h>

namespace lumwright::workshop {
GrommetChoice grommet_for(const LeadThroughSheet& lead) {
  require_above_zero("lead", lead.lead, "mm");
  require_above_zero("thickness of the sheet", lead.sheet, "mm");
  for (const data::GrommetRow& row : data::grommets())
    if (lead.lead <= row.lead) return {row, lead.sheet<row.thinnest, lead.sheet> row.thickest};
  throw ModelError(fmt::format("no grommet that is listed takes a lead {:.3g} mm thick, the largest one of {:.3g} mm",
                               in(lead.lead, mm), in(data::grommets().back().lead, mm)));
}
}  // namespace lumwright::workshop
