#include "description/ways.hpp"
#include "data/table.hpp"
#include <map>

namespace lumwright::description {
namespace {
struct Way {
  std::string terminal, page;
};
const std::map<std::string, Way, std::less<>>& ways() {
  static const auto all = [] {
    std::map<std::string, Way, std::less<>> found;
    for (const data::Row& row : data::rows("ways", "ways"))
      found[row.text("id")] = {row.text("terminal"), row.text("page")};
    return found;
  }();
  return all;
}
}  // namespace

const std::string& way(std::string_view id, FrontEnd front) {
  const auto found = ways().find(id);
  if (found == ways().end()) throw std::logic_error("ways.yaml has no way called " + std::string(id));
  return front == FrontEnd::page ? found->second.page : found->second.terminal;
}
std::string with_ways(std::string_view sentence, FrontEnd front) {
  constexpr std::string_view begins = "{way ";
  std::string out;
  for (;;) {
    const std::size_t at = sentence.find(begins), end = sentence.find('}', at);
    if (at == std::string_view::npos || end == std::string_view::npos) return out.append(sentence);
    out.append(sentence.substr(0, at));
    out += way(sentence.substr(at + begins.size(), end - at - begins.size()), front);
    sentence.remove_prefix(end + 1);
  }
}
}  // namespace lumwright::description
