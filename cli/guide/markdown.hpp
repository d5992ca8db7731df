// A page of the guide as a tree. The only door to md4c.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
struct Piece {
  enum class Kind {
    page,
    heading,
    paragraph,
    bullets,
    steps,
    item,
    quote,
    fence,  // a block of code between ```: `info` stands behind the first of them
    table,
    table_head,
    table_body,
    row,
    head_cell,
    cell,
    emphasis,
    strong,
    code,
    link,  // `info` is where it leads
    text,
  };
  Kind kind;
  std::string text{}, info{};
  unsigned level = 0;  // of a heading
  std::vector<Piece> children{};
};
/// CommonMark with tables. Throws std::logic_error for what no page of the guide may hold: HTML, pictures from files,
/// rules, entities.
Piece read_markdown(std::string_view text);
}  // namespace lumwright::cli
