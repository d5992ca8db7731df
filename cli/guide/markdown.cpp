#include "guide/markdown.hpp"
#include <md4c.h>
#include <optional>
#include <stdexcept>

namespace lumwright::cli {
namespace {
using Kind = Piece::Kind;

std::string words_of(const MD_ATTRIBUTE& attribute) { return {attribute.text, attribute.size}; }

std::optional<Kind> kind_of(MD_BLOCKTYPE type) {
  switch (type) {
    case MD_BLOCK_DOC:
      return Kind::page;
    case MD_BLOCK_QUOTE:
      return Kind::quote;
    case MD_BLOCK_UL:
      return Kind::bullets;
    case MD_BLOCK_OL:
      return Kind::steps;
    case MD_BLOCK_LI:
      return Kind::item;
    case MD_BLOCK_H:
      return Kind::heading;
    case MD_BLOCK_CODE:
      return Kind::fence;
    case MD_BLOCK_P:
      return Kind::paragraph;
    case MD_BLOCK_TABLE:
      return Kind::table;
    case MD_BLOCK_THEAD:
      return Kind::table_head;
    case MD_BLOCK_TBODY:
      return Kind::table_body;
    case MD_BLOCK_TR:
      return Kind::row;
    case MD_BLOCK_TH:
      return Kind::head_cell;
    case MD_BLOCK_TD:
      return Kind::cell;
    default:
      return std::nullopt;
  }
}
std::optional<Kind> kind_of(MD_SPANTYPE type) {
  switch (type) {
    case MD_SPAN_EM:
      return Kind::emphasis;
    case MD_SPAN_STRONG:
      return Kind::strong;
    case MD_SPAN_CODE:
      return Kind::code;
    case MD_SPAN_A:
      return Kind::link;
    default:
      return std::nullopt;
  }
}
// No exception may pass through a library of C, and it goes on where it is told to stop: what is wrong is kept, and
// told afterwards.
struct Growing {
  std::vector<Piece> open{};
  Piece done{Kind::page};
  std::string wrong{};

  int enter(std::optional<Kind> kind, std::string info, unsigned level) {
    if (!kind) refuse("a block or a span of a kind that the guide does not use");
    open.push_back({.kind = kind.value_or(Kind::paragraph), .info = std::move(info), .level = level});
    return 0;
  }
  int leave() {
    Piece piece = std::move(open.back());
    open.pop_back();
    if (open.empty())
      done = std::move(piece);
    else
      open.back().children.push_back(std::move(piece));
    return 0;
  }
  int say(std::string_view text) {
    Piece& at = open.back();
    if (at.kind == Kind::fence || at.kind == Kind::code) return at.text += text, 0;
    if (at.children.empty() || at.children.back().kind != Kind::text) at.children.push_back({.kind = Kind::text});
    at.children.back().text += text;
    return 0;
  }
  int refuse(const std::string& what) {
    if (wrong.empty()) wrong = what;
    return 0;
  }
};
Growing& growing(void* user) { return *static_cast<Growing*>(user); }

int enter_block(MD_BLOCKTYPE type, void* detail, void* user) {
  std::string info;
  unsigned level = 0;
  if (type == MD_BLOCK_CODE) info = words_of(static_cast<MD_BLOCK_CODE_DETAIL*>(detail)->info);
  if (type == MD_BLOCK_H) level = static_cast<MD_BLOCK_H_DETAIL*>(detail)->level;
  return growing(user).enter(kind_of(type), std::move(info), level);
}
int enter_span(MD_SPANTYPE type, void* detail, void* user) {
  std::string info;
  if (type == MD_SPAN_A) info = words_of(static_cast<MD_SPAN_A_DETAIL*>(detail)->href);
  return growing(user).enter(kind_of(type), std::move(info), 0);
}
int take_text(MD_TEXTTYPE type, const MD_CHAR* text, MD_SIZE size, void* user) {
  switch (type) {
    case MD_TEXT_NORMAL:
    case MD_TEXT_CODE:
      return growing(user).say({text, size});
    case MD_TEXT_SOFTBR:
      return growing(user).say(" ");
    default:
      return growing(user).refuse("HTML, an entity or a forced line end: `" + std::string(text, size) + "`");
  }
}
}  // namespace

Piece read_markdown(std::string_view text) {
  Growing page;
  MD_PARSER parser{};
  parser.flags = MD_FLAG_TABLES;
  parser.enter_block = enter_block;
  parser.leave_block = [](MD_BLOCKTYPE, void*, void* user) { return growing(user).leave(); };
  parser.enter_span = enter_span;
  parser.leave_span = [](MD_SPANTYPE, void*, void* user) { return growing(user).leave(); };
  parser.text = take_text;
  if (md_parse(text.data(), static_cast<MD_SIZE>(text.size()), &parser, &page) != 0)
    page.refuse("it cannot be read as Markdown");
  if (!page.wrong.empty()) throw std::logic_error(page.wrong);
  return page.done;
}
}  // namespace lumwright::cli
