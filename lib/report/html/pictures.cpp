#include "report/detail/bands.hpp"
#include "report/detail/standing.hpp"
#include "report/html/parts.hpp"
#include "report/picture/picture.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::report::html {
void write_picture(Tag parent, const Picture& picture) {
  constexpr double wide = 700.0, narrow = 340.0;
  const Tag figure = parent.add("figure").set("id", "picture-" + picture.id);
  const Tag caption = figure.add("figcaption");
  caption.add("h3", picture.title);
  if (!picture.draw) {
    caption.add("p", "Not drawn: " + picture.not_drawn + ".").set("class", "faint");
    return;
  }
  caption.add("p", tied(picture.says));
  const Tag drawn = figure.add("div");
  picture.draw(drawn, picture.id + "-w", wide);
  picture.draw(drawn, picture.id + "-n", narrow);
}

namespace {
void write_narrowing(Tag list, const Writing& w, const plan::Narrowing& one, const model::Result* answer) {
  const Tag item = list.add("li");
  item.add("strong", fmt::format("{} to {}", one.what, one.within));
  item.say(tied(fmt::format(": {}.", what_it_leaves(one, answer, w.style))) + " ");
  const std::string how = description::with_ways(one.how, w.style.front);
  item.say(tied(fmt::format("How: {}{} With: {}. Write it as ", how, how.ends_with('.') ? "" : ".",
                            one.needs == "nothing" ? one.tool : fmt::format("{}; it needs {}", one.tool, one.needs))) +
           " ");
  item.add("code", description::with_ways(one.write, w.style.front));
  item.say(". ");
  item.add("span", source_in_words(one.basis)).set("class", "faint");
}
void write_next_measurements(Tag part, const Writing& w) {
  const plan::Bands& bands = *w.assessment().bands;
  std::vector<std::string> told;
  const Tag box = part.add("div").set("class", "todo");
  box.add("h3", "Measure this next");
  const Tag list = box.add("ul");
  for (const plan::Sensitivity& sensitivity : bands.sensitivities)
    for (const plan::Narrowing* one : worth_telling(sensitivity)) {
      if (std::find(told.begin(), told.end(), one->id) != told.end()) continue;
      told.push_back(one->id);
      write_narrowing(list, w, *one, plan::find_result(w.assessment(), sensitivity.answer));
    }
  if (told.empty()) list.add("li", "No single measurement narrows an answer much.");
  part.add("p", sureness(bands)).set("class", "small-print");
}
}  // namespace

void write_chief_pictures(Tag main, const Writing& w) {
  const Tag row = section(main, "pictures", "Air, steam and fit").add("div").set("class", "chief-pictures");
  write_picture(row, picture_of_draught(w.data, w.style));
  write_picture(row, picture_of_raise(w.data, w.style));
  write_picture(row, picture_of_fit(w.data, w.style));
}
void write_more_pictures(Tag folded, const Writing& w) {
  write_picture(folded, picture_of_losses(w.data, w.style));
  write_picture(folded, picture_of_heat(w.data, w.style));
  write_picture(folded, picture_of_supply(w.data, w.style));
  write_picture(folded, picture_of_sensitivities(w.data, w.style));
  if (w.assessment().bands && !w.assessment().bands->sensitivities.empty()) write_next_measurements(folded, w);
}
}  // namespace lumwright::report::html
