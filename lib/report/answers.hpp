// The results in trade words, in the order in which a reader wants them.
#pragma once
#include "report/page.hpp"

namespace lumwright::report {
/// The few results that the owner wants first.
void write_answers(Page& page, const plan::Assessment& assessment);
/// All others, by subject; a result that has no trade name stands under its key.
void write_numbers(Page& page, const plan::Assessment& assessment);
/// Every result that has a name in the trade, with it, in the order of the page.
std::vector<std::pair<std::string, std::string>> named_results();
/// What a result is called on the page; its key where it has no name.
std::string words_for(std::string_view key);
/// "8.4 min  (6.1 to 9.8 min)", "the pack is at your stop voltage".
std::string answer_text(const model::Result& result, const TextStyle& style);
/// A result without its band; empty where it is not there.
std::string number_of(const plan::Assessment& assessment, std::string_view key, const TextStyle& style);
/// A number of the page, in the figures of the result that says it; `digits` where none does.
std::string in_page_figures(const plan::Assessment& assessment, const model::Measure& measure, const TextStyle& style,
                            int digits = 3);
/// "draught.loss.tube_friction" -> "tube friction".
std::string element_words(std::string_view key);

struct NumberGroup {
  std::string heading;          // none for the chief answers, which come first
  std::vector<Page::Row> rows;  // a name and an answer each
};
/// Every result, by subject.
std::vector<NumberGroup> number_groups(const plan::Assessment& assessment, const TextStyle& style);
}  // namespace lumwright::report
