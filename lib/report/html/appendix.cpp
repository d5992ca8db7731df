#include "description/writer.hpp"
#include "report/html/parts.hpp"
#include "report/places/places.hpp"
#include <algorithm>

namespace lumwright::report::html {
namespace {
/// Folded under a heading. The id lies inside the fold, so that a link to it opens it.
Tag fold(Tag appendix, const char* id, std::string_view heading) {
  const Tag details = appendix.add("details");
  details.add("summary").add("h3", heading);
  return details.add("div").set("class", "folded").set("id", id);
}
}  // namespace

void write_places(Tag folded, const Writing& w) {
  folded.add("p", "The letters are the places. What is grey was assumed or is not known. Sketches, not to scale.");
  const Tag row = folded.add("div").set("class", "sketches");
  for (const places::PartPicture& one : places::pictures(*w.data.build, w.assessment().assumed, w.style)) {
    const Tag figure = row.add("figure");
    figure.add("figcaption").add("h3", one.picture.title);
    one.picture.draw(figure, one.picture.id, 340.0);
  }
}
void write_description(Tag folded, const Writing& w) {
  if (!w.data.build) return static_cast<void>(folded.add("p", "It is not at hand."));
  folded.add("p", "Save these lines as a file of their own to check, change and compare this build again.");
  const Tag listing = folded.add("div").set("class", "listing");
  const std::string text = description::write_build(*w.data.build);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    listing.add("code", std::string_view(text).substr(at, end - at));
    at = end + 1;
  }
  if (!w.data.program.empty())
    folded.add("p", "Read and reckoned by " + w.data.program + ".").set("class", "small-print");
}
void write_appendix(Tag main, const Writing& w, const std::vector<Beside>& beside) {
  const Tag part = section(main, "appendix", "Appendix").set("class", "appendix");
  part.add("p", "Tap a line to open it. Only what is open is printed.").set("class", "small-print how");
  write_checks(fold(part, "checks", "Every check, the gravest first"), w);
  write_more_pictures(fold(part, "more", "More pictures, and what to measure next"), w);
  if (w.data.build) write_places(fold(part, "places", "Where each size is measured"), w);
  write_numbers(fold(part, "numbers", "All numbers"), w);
  write_assumed(fold(part, "assumed", "What was assumed"), w);
  write_held(fold(part, "held", "How far it was held against measurement"), w);
  write_sources(fold(part, "sources", "Sources, and what leans on each"), w);
  write_description(fold(part, "description", "The description as it was read, and the program"), w);
  if (!beside.empty()) write_links(fold(part, "beside", "Beside this file"), beside);
}
}  // namespace lumwright::report::html
