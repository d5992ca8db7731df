// The parts of the page, in the order in which they stand on it.
#pragma once
#include "report/html/html.hpp"
#include "report/html/style.hpp"
#include "report/markup.hpp"
#include "report/picture/picture.hpp"
#include <string_view>

namespace lumwright::report::html {
/// What every part is written from.
struct Writing {
  const plan::ReportData& data;
  const TextStyle& style;
  const plan::Assessment& assessment() const { return data.assessment; }
};

void write_head(Tag html, const std::string& title);
void write_verdict(Tag body, const Writing& w);  // title block, verdict, six answers, what to do and to settle first
void write_chief_pictures(Tag main, const Writing& w);  // curve and gas path, raise, fit
void write_cautions(Tag main, const Writing& w);        // all that apply, in full
/// What is folded until the reader opens it, and printed only then.
void write_appendix(Tag main, const Writing& w, const std::vector<Beside>& beside);
void write_more_pictures(Tag folded, const Writing& w);
void write_checks(Tag folded, const Writing& w);   // the gravest first, then what is not known yet
void write_numbers(Tag folded, const Writing& w);  // every result
void write_places(Tag folded, const Writing& w);   // drawings of the parts; the description must be at hand
void write_assumed(Tag folded, const Writing& w);
void write_held(Tag folded, const Writing& w);         // how far all of it was held against measurement
void write_sources(Tag folded, const Writing& w);      // each once, with what leans on it
void write_description(Tag folded, const Writing& w);  // as it was read
void write_beside(Tag main, const std::vector<Beside>& beside);  // a section of its own, where there are any
void write_links(Tag parent, const std::vector<Beside>& beside);
void write_footer(Tag body, std::string_view last);  // what lumwright never judges, and a last sentence

// What they share.

/// The text with a blank that does not break between a number and its unit.
std::string tied(std::string_view text);
/// A verdict as a shape and a word.
void badge(Tag parent, plan::Verdict verdict, std::string_view word = {});
/// A section with its heading, which contents may link to.
Tag section(Tag parent, const char* id, std::string_view heading);
void write_cautions(Tag parent, const std::vector<const plan::Caution*>& cautions, bool with_authority);
/// A picture with its words, once for a desk and once for a phone.
void write_picture(Tag parent, const Picture& picture);
/// A pair of a title block.
/// The name at the head of a page; what it returns takes the facts.
Tag add_title_block(Tag header, std::string_view name);
void add_fact(Tag list, std::string_view name, std::string_view value);
/// A table in a box of its own, which scrolls where the page is too narrow. One row of headings.
Tag table(Tag parent, std::string_view caption, const std::vector<std::string_view>& headings);
}  // namespace lumwright::report::html
