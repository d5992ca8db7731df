// Elements of a page or a picture. What is put into them is text and never markup, whoever wrote it.
#pragma once
#include <memory>
#include <string>
#include <string_view>

namespace pugi {
struct xml_node_struct;
class xml_document;
}  // namespace pugi

namespace lumwright::report {
/// A place in a Markup document; valid as long as that is.
class Tag {
 public:
  /// A new last child; `text`, if any, is what stands in it. Names are ours, never the user's.
  Tag add(const char* name, std::string_view text = {}) const;
  /// An attribute; one that is there is written over.
  Tag set(const char* attribute, std::string_view value) const;
  /// At most two decimals, with a point whatever the locale. Throws std::logic_error for a number that is not finite.
  Tag set(const char* attribute, double value) const;
  /// More text behind what is there. Control characters and marks that turn the direction of writing do not get through
  /// (wrap.hpp, legible).
  Tag say(std::string_view text) const;
  /// The first child of that name. Throws std::logic_error where there is none.
  Tag first(const char* name) const;
  /// A style sheet of our own: kept as it is. It must not hold <, > or &.
  Tag add_style(std::string_view css) const;

 private:
  friend class Markup;
  explicit Tag(pugi::xml_node_struct* node) : node_(node) {}
  pugi::xml_node_struct* node_;
};

class Markup {
 public:
  explicit Markup(const char* root);
  ~Markup();
  Tag root() const;
  /// A whole HTML document that is well-formed XML too: <!DOCTYPE html>, elements without content closed as HTML asks.
  std::string html() const;
  /// One element and all in it.
  static std::string xml_of(Tag tag);

 private:
  std::unique_ptr<pugi::xml_document> document_;
};

/// "12.34", "-0.5", "3": at most two decimals, for co-ordinates. Throws std::logic_error if not finite.
std::string coordinate(double x);
}  // namespace lumwright::report
