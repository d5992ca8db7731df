#include "report/picture/picture_file.hpp"
#include "report/html/style.hpp"

namespace lumwright::report {
namespace {
/// The classes of the figures with the colours themselves: what shows a file may know no variables.
std::string light_style() {
  std::string css(html::chart_style);
  css += ".chart { background: var(--paper); font-family: \"Liberation Sans\", \"DejaVu Sans\", sans-serif; }\n";
  for (const html::Colour& colour : html::colours()) {
    const std::string name = std::string("var(--") + colour.name + ")";
    for (std::size_t at = 0; (at = css.find(name, at)) != std::string::npos;)
      css.replace(at, name.size(), colour.light);
  }
  return css;
}
}  // namespace

std::string picture_file(const Picture& picture, double width) {
  const Markup holder("figure");
  picture.draw(holder.root(), picture.id, width);
  const Tag svg = holder.root().first("svg");
  svg.set("xmlns", "http://www.w3.org/2000/svg").set("width", width);
  svg.add_style(light_style());
  return Markup::xml_of(svg);
}
}  // namespace lumwright::report
