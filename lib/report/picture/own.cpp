#include "report/picture/own.hpp"
#include "data/first_words.hpp"

namespace lumwright::report {
namespace {
// By itself, on white paper: the colours of the report's light page (html/style.cpp).
constexpr std::string_view own_style =
    "text{font:12.5px 'Liberation Sans','DejaVu Sans',sans-serif;fill:#2a2f36}"
    ".tick,.axis-title{fill:#5b626b;font-size:11.5px}.small{fill:#5b626b;font-size:11px}.strong{font-weight:700}"
    ".grid{stroke:#e4e1d7}.axis{stroke:#2a2f36;stroke-width:1.2}.line{fill:none;stroke-width:2.4}"
    ".line.hot{stroke:#c0470f}.line.cold{stroke:#1f5f99}.dot-hot{fill:#c0470f}.dot-cold{fill:#1f5f99}"
    ".dot-bad{fill:none;stroke:#b3201f;stroke-width:2}.band{fill-opacity:0.16}.band.hot{fill:#c0470f}"
    ".band.cold{fill:#1f5f99}.paper{fill:#fcfbf8}.cell{fill:#c0470f;stroke:#fcfbf8;stroke-width:2}"
    ".shade0{fill-opacity:0.08}.shade1{fill-opacity:0.2}.shade2{fill-opacity:0.32}.shade3{fill-opacity:0.44}"
    ".shade4{fill-opacity:0.56}.never{fill:#7b828a;fill-opacity:0.3}"
    ".level{stroke:#7b828a;stroke-width:1.2;stroke-dasharray:10 4}.carry{stroke:#7b828a}";
}  // namespace

std::string own_picture(const std::function<double(Tag root)>& draw) {
  Markup document("svg");
  const Tag root = document.root().set("xmlns", "http://www.w3.org/2000/svg").set("width", own_width);
  root.add_style(own_style);
  const double height = draw(root);
  root.set("height", height).set("viewBox", "0 0 " + coordinate(own_width) + " " + coordinate(height));
  return Markup::xml_of(root);
}
void write_own_head(chart::Figure& figure, const chart::About& about) {
  figure.words({14.0, 20.0}, about.title, "strong");
  figure.words({14.0, 37.0}, about.description, "small");
  std::string safety;
  for (const std::string& first : data::first_words()) safety += first + ". ";
  figure.words({14.0, 52.0}, safety, "small");
}
}  // namespace lumwright::report
