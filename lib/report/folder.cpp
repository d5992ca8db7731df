#include "report/folder.hpp"
#include "quantity/errors.hpp"
#include "report/day.hpp"
#include "report/files.hpp"
#include <iterator>

namespace lumwright::report {
Folder report_folder(const plan::ReportData& data, const model::Solved& solved, const DrawingWish& wish) {
  Folder folder;
  std::vector<NamedText> drawings;
  try {
    drawings = drawing_files(data.assessment, solved, wish);
  } catch (const NoAnswer& why) {
    folder.not_drawn = why.what();
  } catch (const ModelError& why) {
    folder.not_drawn = why.what();
    drawings = {{"not_drawn.txt", "why there are no drawings", "Not drawn: " + folder.not_drawn + ".\n"}};
  }
  TextStyle style{.units = wish.units, .front = wish.front};
  drawings.insert(drawings.begin(),
                  {"day.html", "the card of the day, to print", day_page(day_card(data.assessment, solved, style))});
  std::vector<Beside> beside;
  beside.reserve(drawings.size());
  for (const NamedText& file : drawings) beside.push_back({file.name, file.what});
  folder.files = report_files(data, style, beside);
  folder.files.insert(folder.files.end(), std::make_move_iterator(drawings.begin()),
                      std::make_move_iterator(drawings.end()));
  return folder;
}
}  // namespace lumwright::report
