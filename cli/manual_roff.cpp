#include "manual_roff.hpp"
#include <algorithm>
#include <cctype>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
// A line that roff takes as it is: backslashes, hyphens and a leading dot or quote mean something there.
std::string plain(std::string_view line) {
  std::string out = !line.empty() && (line.front() == '.' || line.front() == '\'') ? "\\&" : "";
  for (const char c : line) {
    if (c == '\\')
      out += "\\e";
    else if (c == '-')
      out += "\\-";
    else
      out += c;
  }
  return out;
}
std::string upper(std::string_view words) {
  std::string out(words);
  std::transform(out.begin(), out.end(), out.begin(),
                 [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
  return out;
}
/// Text as it stands, without filling.
void verbatim(std::string& out, std::string_view text) {
  out += ".nf\n";
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    out += plain(text.substr(0, end)) + "\n";
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  out += ".fi\n";
}
std::string_view first_line(std::string_view text) { return text.substr(0, text.find('\n')); }
std::string_view after_first_line(std::string_view text) {
  const std::size_t end = text.find('\n');
  return end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
}
}  // namespace

std::string manual_roff(const std::vector<ManualPage>& pages, std::string_view version) {
  std::string out = fmt::format(".TH LUMWRIGHT 1 \"\" \"lumwright {}\" \"User Commands\"\n", version);
  for (const ManualPage& page : pages) {
    if (page.topic.empty()) {  // "lumwright: plans the fan ..."
      const std::string_view line = first_line(page.text);
      out += ".SH NAME\nlumwright \\- " + plain(line.substr(line.find(": ") + 2)) + "\n.SH SYNOPSIS\n";
      verbatim(out, after_first_line(page.text));
      continue;
    }
    out += ".SH " + upper(page.topic) + "\n";
    verbatim(out, page.text);
  }
  return out;
}
}  // namespace lumwright::cli
