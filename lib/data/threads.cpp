#include "data/threads.hpp"
#include "data/table.hpp"
#include "quantity/errors.hpp"
#include <stdexcept>

namespace lumwright::data {
namespace {
ThreadRow read_thread(const Row& row, const std::string& form) {
  return {.name = row.text("name"),
          .form = form,
          .major = row.quantity<Length>("major"),
          .pitch = row.has("teeth") ? inch / row.number("teeth") : row.quantity<Length>("pitch"),
          .depth = row.optional<Length>("depth"),
          .tap = row.quantity<Length>("tap"),
          .fine = row.optional<Length>("fine"),
          .medium = row.quantity<Length>("medium"),
          .coarse = row.optional<Length>("coarse"),
          .basis = row.basis()};
}
}  // namespace

const std::vector<ThreadRow>& threads() {
  static const std::vector<ThreadRow> all = [] {
    std::vector<ThreadRow> found;
    for (const char* list : {"ba", "metric", "me"})
      for (const Row& row : rows("threads", list)) found.push_back(read_thread(row, list));
    for (const Row& row : rows("threads", "unified")) found.push_back(read_thread(row, row.text("family")));
    return found;
  }();
  return all;
}

const ThreadForm& thread_form(std::string_view id) {
  static const std::vector<ThreadForm> all = [] {
    std::vector<ThreadForm> found;
    for (const Row& row : rows("threads", "forms"))
      found.push_back({row.text("id"), row.text("name"), row.number("depth"), row.number("pitch_line"),
                       row.number("nut_minor"), row.number("root"), row.optional<double>("handbook_depth"),
                       row.basis()});
    return found;
  }();
  for (const ThreadForm& form : all)
    if (form.id == id) return form;
  throw std::logic_error("threads.yaml has no form " + std::string(id));
}

const EngagementRow& engagement_rule(std::string_view metal) {
  static const std::vector<EngagementRow> all = [] {
    std::vector<EngagementRow> found;
    for (const Row& row : rows("threads", "engagement"))
      found.push_back({row.text("metal"), row.number("least"), row.number("prefer"), row.yes("never"), row.basis()});
    return found;
  }();
  for (const EngagementRow& row : all)
    if (row.metal == metal) return row;
  throw ModelError("no rule says how much thread `" + std::string(metal) + "` must give");
}
}  // namespace lumwright::data
