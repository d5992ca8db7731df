#include "report/places/places.hpp"
#include "report/chart/labels.hpp"
#include "report/picture/parts.hpp"
#include "report/places/sketch.hpp"
#include <fmt/format.h>
#include <memory>

namespace lumwright::report::places {
namespace {
constexpr double gap = 8.0;

std::string described(const Drawing& drawing, const Sizes& sizes) {
  std::string text = fmt::format("{} Marked are", drawing.shows);
  char letter = 'A';
  for (const Mark& mark : drawing.marks) {
    const Told told = sizes.told(mark.key);
    text += fmt::format("{} {}: {}, {}", letter == 'A' ? "" : ";", letter, mark.name,
                        told.text.empty() ? "not known" : told.text);
    ++letter;
  }
  return text + ".";
}
/// The legend below the sketch, or beside it where there is room.
void draw(const Drawing& drawing, const Sizes& sizes, Tag parent, const chart::About& about, double width) {
  const bool broad = width >= 1.8 * sketch_width;
  const Legend legend = legend_of(drawing.marks, sizes, broad ? width - sketch_width - 2.0 * gap : width);
  const double height = broad ? std::max(drawing.height, legend.height + gap) : drawing.height + gap + legend.height;
  chart::Figure figure(parent, about, width, height);
  Sketch sketch(figure, sizes, drawing.marks, legend,
                broad ? Spot{sketch_width + 2.0 * gap, gap} : Spot{0.0, drawing.height + gap});
  drawing.draw(sketch);
  sketch.finish();
}
PartPicture picture(Drawing drawing, const std::shared_ptr<const Sizes>& sizes) {
  Picture words{.id = "places-" + std::string(drawing.id),
                .title = std::string(drawing.title),
                .says = "",
                .description = described(drawing, *sizes)};
  std::string part(drawing.part), description = words.description;
  return {
      std::move(part),
      drawn(std::move(words), "The letters are the places to measure. A sketch, not to scale.", std::move(description),
            [drawing = std::move(drawing), sizes](Tag parent, const chart::About& about, double width) {
              draw(drawing, *sizes, parent, about, width);
            })};
}
}  // namespace

std::vector<PartPicture> pictures(const description::Build& build, const std::vector<model::Assumed>& assumed,
                                  const TextStyle& style) {
  const auto sizes = std::make_shared<const Sizes>(build, assumed, style);
  std::vector<PartPicture> all;
  for (Drawing& one :
       std::vector<Drawing>{boiler(), grate(), cylinders(), chimney(), fire(), tube(), box(), fan(build), supply()})
    all.push_back(picture(std::move(one), sizes));
  return all;
}
}  // namespace lumwright::report::places
