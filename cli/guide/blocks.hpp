// The blocks of a page that are filled by the program: runs, pictures, drawings, cautions, questions.
#pragma once
#include "guide/facts.hpp"
#include "guide/markdown.hpp"
#include "report/markup.hpp"

namespace lumwright::cli {
/// Writes what a fence stands for (its `info` is the kind). Throws std::logic_error for a kind, a name or a line that
/// stands for nothing, and for a run that leaves with another status than the page says.
void write_block(report::Tag parent, const Piece& fence, Facts& facts);
}  // namespace lumwright::cli
