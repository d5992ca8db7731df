// The only file of the report that names pugixml.
#include "report/markup.hpp"
#include "report/detail/wrap.hpp"
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <pugixml.hpp>
#include <sstream>
#include <stdexcept>

namespace lumwright::report {
namespace {
constexpr std::string_view empty_in_html[] = {"br", "col", "hr", "img", "link", "meta"};  // HTML, 13.1.2: void elements

/// HTML takes <td/> for an opening tag: only void elements, and those of a picture, may close themselves.
void open_empty_elements(pugi::xml_node node) {
  for (pugi::xml_node child = node.first_child(); child; child = child.next_sibling()) {
    if (child.type() != pugi::node_element || std::string_view(child.name()) == "svg") continue;
    const bool is_void =
        std::find(std::begin(empty_in_html), std::end(empty_in_html), child.name()) != std::end(empty_in_html);
    if (!child.first_child() && !is_void) child.append_child(pugi::node_pcdata).set_value("");
    open_empty_elements(child);
  }
}
std::string written(const pugi::xml_document& document) {
  std::ostringstream out;
  document.save(out, "", pugi::format_indent | pugi::format_no_declaration, pugi::encoding_utf8);
  return out.str();
}
}  // namespace

std::string coordinate(double x) {
  if (!std::isfinite(x)) throw std::logic_error("a co-ordinate that is not finite");
  std::string text = fmt::format("{:.2f}", x);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

Tag Tag::add(const char* name, std::string_view text) const {
  const Tag child(pugi::xml_node(node_).append_child(name).internal_object());
  if (!text.empty()) child.say(text);
  return child;
}
Tag Tag::set(const char* attribute, std::string_view value) const {
  pugi::xml_node node(node_);
  pugi::xml_attribute found = node.attribute(attribute);
  if (!found) found = node.append_attribute(attribute);
  found.set_value(legible(value).c_str());
  return *this;
}
Tag Tag::set(const char* attribute, double value) const { return set(attribute, coordinate(value)); }
Tag Tag::say(std::string_view text) const {
  pugi::xml_node(node_).append_child(pugi::node_pcdata).set_value(legible(text).c_str());
  return *this;
}
Tag Tag::first(const char* name) const {
  const pugi::xml_node found = pugi::xml_node(node_).child(name);
  if (!found) throw std::logic_error(std::string("no element ") + name);
  return Tag(found.internal_object());
}
Tag Tag::add_style(std::string_view css) const {
  if (css.find_first_of("<>&") != std::string_view::npos) throw std::logic_error("a style sheet with <, > or &");
  const Tag style = add("style");
  pugi::xml_node(style.node_).append_child(pugi::node_pcdata).set_value(std::string(css).c_str());
  return style;
}

Markup::Markup(const char* root) : document_(std::make_unique<pugi::xml_document>()) { document_->append_child(root); }
Markup::~Markup() = default;
Tag Markup::root() const { return Tag(document_->document_element().internal_object()); }
std::string Markup::html() const {
  pugi::xml_document page;
  page.append_child(pugi::node_doctype).set_value("html");
  page.append_copy(document_->document_element());
  open_empty_elements(page);
  return written(page);
}
std::string Markup::xml_of(Tag tag) {
  std::ostringstream out;
  pugi::xml_node(tag.node_).print(out, "", pugi::format_indent, pugi::encoding_utf8);
  return out.str();
}
}  // namespace lumwright::report
