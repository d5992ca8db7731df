// What the page asks of the program: one question as JSON, one answer as JSON.
#pragma once
#include "input/source.hpp"
#include <nlohmann/json.hpp>
#include <string>

namespace lumwright::page {
using Json = nlohmann::ordered_json;

/// Every key of a description in its order, with what a form needs to ask for it; the examples; the first words.
Json form();
/// The looks of the report, for the page that shows it.
Json style();
/// Verdict, chief answers and what was assumed, of the description `text`. `samples`: none, or so many; `whole`: with
/// the moves that clear checks. `parts`: which parts of the report as HTML (head, pictures, cautions, appendix), and
/// "sketches", the drawings of where to measure; asked of the same build again they are not worked out anew.
Json answer(const Json& question);
/// The JSON of `check --format json` for the same question.
Json report_as_json(const Json& question);
/// Every file that `report` and `draw` write; what is not text as base64.
Json files(const Json& question);
/// The changes a workshop can make that move this build most, with what each does.
Json levers(const Json& question);
/// What the log `log` teaches about the description: the words of `tune`, and the text that it keeps.
Json tuned(const Json& question);
/// The page of `choose` for the bin `text`.
Json choice(const Json& question);

/// The text of a question under this key, as a file of this name.
input::Source source_of(const Json& question, const char* key, const std::string& name);
/// `{"do": "answer", ...}` to its answer; faults, refusals and errors of our own come back as such and are never
/// thrown.
std::string ask(const std::string& question);
}  // namespace lumwright::page
