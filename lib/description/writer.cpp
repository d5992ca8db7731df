#include "description/writer.hpp"
#include "description/part_writer.hpp"

namespace lumwright::description {
namespace {
bool plain(
    const std::string& text) {  // needs no quotes in YAML: letters, digits, and what cannot start or end anything
  if (text.front() == ' ' || text.back() == ' ' || text.front() == '-' || text.front() == '.') return false;
  for (char c : text) {
    const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
    if (!letter && std::string_view(" .-/_()").find(c) == std::string_view::npos) return false;
  }
  return text != "null" && text != "Null" && text != "NULL";
}
}  // namespace

std::string yaml_text(const std::string& text) {
  if (!text.empty() && plain(text)) return text;
  std::string out = "\"";
  for (char c : text) out += c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
  return out + '"';
}

std::string write_build(const Build& build) {
  PartWriter writer(0);
  Build::fields(build, writer);
  return writer.out.empty() ? "{}\n" : writer.out;
}
}  // namespace lumwright::description
