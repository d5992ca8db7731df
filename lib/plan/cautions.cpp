#include "plan/cautions.hpp"
#include "data/embedded.hpp"
#include "data/table.hpp"
#include <algorithm>
#include <stdexcept>

namespace lumwright {
namespace {
struct Entry {
  Caution caution;
  const CautionCondition* when;
};
const CautionCondition& condition_called(const std::string& file, const std::string& name) {
  const auto all = conditions();
  const auto found = std::find_if(all.begin(), all.end(), [&](const CautionCondition& c) { return c.name == name; });
  if (found == all.end()) throw std::logic_error(file + ": no condition is called `" + name + "`");
  return *found;
}
Entry read_entry(const data::EmbeddedFile& file) {
  const Source source{file.name + ".yaml", file.text};
  std::vector<Fault> faults;
  const Node root = read_yaml(source, faults);
  if (!faults.empty()) throw std::logic_error(InputError(source, faults).what());
  const data::Row row(source.name, root);
  return {{row.text("id"), row.text("title"), row.text("text"), row.text("authority"), row.text("near")},
          &condition_called(source.name, row.text("when"))};
}
/// Those of `always` first, else in the order of their files.
const std::vector<Entry>& entries() {
  static const std::vector<Entry> all = [] {
    std::vector<Entry> found;
    for (const data::EmbeddedFile& file : data::embedded_files())
      if (file.name.starts_with("cautions/")) found.push_back(read_entry(file));
    std::stable_partition(found.begin(), found.end(), [](const Entry& e) { return e.when->name == "always"; });
    return found;
  }();
  return all;
}
}  // namespace

std::vector<Caution> cautions_for(const Build& build, const Assessment& so_far) {
  std::vector<Caution> apply;
  for (const Entry& entry : entries())
    if (entry.when->holds(build, so_far)) apply.push_back(entry.caution);
  return apply;
}
}  // namespace lumwright
