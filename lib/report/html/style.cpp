#include "report/html/style.hpp"

// Own colours. On their grounds words have a contrast of 4.5 and more, lines of 3 and more (WCAG 2.2, 1.4.3 and
// 1.4.11), and the colours of lines stay apart for eyes that lack one cone (tests/report/palette_test.cpp). Every line
// differs in dashes or marker too, every area in its hatching, every verdict in shape and word.
namespace lumwright::report::html {
namespace {
constexpr Colour palette[] = {
    {"paper", "#fcfbf8", "#15191e", "#ffffff"},
    {"card", "#f3f1ea", "#1f252c", "#f4f3ee"},
    {"ink", "#2a2f36", "#e6e8ea", "#1c2024"},
    {"faint", "#5b626b", "#a9b1ba", "#4d545c"},
    {"rule", "#c9c6bb", "#434b55", "#bdbab0"},
    {"grid", "#e4e1d7", "#2b323a", "#dedbd2"},
    {"hot", "#c0470f", "#ff9a62", "#c0470f"},
    {"cold", "#1f5f99", "#7fb7ee", "#1f5f99"},
    {"grey", "#7b828a", "#8b939c", "#7b828a"},
    {"stripe", "#ece9df", "#20272e", "#ebe8df"},
    {"good", "#1d6b3a", "#7fd49b", "#1d6b3a"},
    {"care", "#8a5a00", "#f0c35a", "#8a5a00"},
    {"bad", "#b3201f", "#ff8f86", "#b3201f"},
    {"link", "#1f5f99", "#7fb7ee", "#1c2024"}};

constexpr std::string_view page_style = R"css(* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 70rem; padding: 1rem; background: var(--paper); color: var(--ink);
  font: 1rem/1.5 system-ui, "Segoe UI", "Liberation Sans", "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
.report { font-family: -apple-system, "Segoe UI", Roboto, "Helvetica Neue", Arial, "Liberation Sans",
  "DejaVu Sans Condensed", "DejaVu Sans", sans-serif; }
.report .chart text { font-family: system-ui, "Segoe UI", "Liberation Sans", "DejaVu Sans", sans-serif; }
h1, h2, h3, h4, p, ul, dl, dd, figure { margin: 0; }
a { color: var(--link); }
code { font: 0.92em ui-monospace, "DejaVu Sans Mono", monospace; }
.faint { color: var(--faint); }
.small-print { color: var(--faint); font-size: 0.875rem; }

.title-block { border: 2px solid var(--ink); }
.title-block .name { padding: 0.75rem 1rem; }
.first-words { margin: 0 0 0.8rem; padding: 0; list-style: none; font-weight: 700; }
.title-block h1 { font-size: 1.5rem; line-height: 1.2; }
.title-block dl { display: grid; grid-template-columns: repeat(auto-fit, minmax(9rem, 1fr)); border-top: 1px solid var(--ink); }
.title-block dl div { padding: 0.35rem 1rem; border-right: 1px solid var(--rule); }
.title-block dt { font-size: 0.75rem; color: var(--faint); }
.title-block dd { font-size: 0.875rem; }
.verdict { display: flex; gap: 0.9rem; align-items: center; padding: 0.9rem 1rem; border: 2px solid var(--ink); border-top: 0;
  font-size: 1.25rem; line-height: 1.3; font-weight: 600; }
.verdict .badge { flex: none; }
.verdict .badge .icon { width: 2rem; height: 2rem; vertical-align: -0.5rem; }
@media screen and (max-width: 38rem) { .verdict { flex-wrap: wrap; font-size: 1.1rem; } }
.pass { color: var(--good); } .watch { color: var(--care); } .fail, .bad { color: var(--bad); } .unknown { color: var(--faint); }
.verdict .words { color: var(--ink); }
.badge { display: inline-block; font-weight: 600; }
.badge .icon { width: 1.1em; height: 1.1em; vertical-align: -0.18em; margin-right: 0.35em; }
.icon { fill: currentColor; } .icon .cut { fill: none; stroke: var(--paper); stroke-width: 2.4; stroke-linecap: round; stroke-linejoin: round; }
.icon .cut-dot { fill: var(--paper); }

.answers { display: grid; grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: 0.75rem; margin: 0.75rem 0; padding: 0; list-style: none; }
.answers li { min-width: 0; background: var(--card); border-top: 3px solid currentColor; padding: 0.8rem 1rem; }
.answers h2 { font-size: 0.95rem; color: var(--faint); font-weight: 600; }
.answers .figure { font-size: 2rem; line-height: 1.15; font-weight: 700; color: var(--ink); font-variant-numeric: tabular-nums; }
.answers p { color: var(--ink); }
.answers .small-print { color: var(--faint); }
.todo { border: 1px solid var(--rule); padding: 0.8rem 1rem; }
.todo h2 { font-size: 1.1rem; }
.todo ul, .todo ol { margin: 0.4rem 0 0; padding-left: 1.4rem; }
.report .todo ul { padding: 0; list-style: none; }
.todo + .todo { border-top: 0; }
.todo li { margin: 0.25rem 0; }
nav { margin: 1rem 0 0; font-size: 0.95rem; }
nav ul { display: flex; flex-wrap: wrap; gap: 0.25rem 1.1rem; padding: 0; list-style: none; }
nav a { display: inline-block; padding: 0.3rem 0; }

main section { margin-top: 2.4rem; }
main h2 { font-size: 1.35rem; line-height: 1.25; padding-bottom: 0.3rem; border-bottom: 2px solid var(--ink); }
main h3, main h4, main h5, header h3 { font-size: 1.05rem; line-height: 1.3; }
main .apart { margin-top: 1.4rem; }
figure { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0.6rem 1.6rem; padding: 1.1rem 0; border-bottom: 1px solid var(--rule); }
figcaption p { margin-top: 0.3rem; }
.chart { display: block; width: 100%; height: auto; max-width: 45rem; overflow: visible; }
.narrow { display: none; }
@media (min-width: 60rem) { figure { grid-template-columns: 18rem minmax(0, 1fr); } }
@media screen and (max-width: 38rem) { .chart.wide { display: none; } .chart.narrow { display: block; max-width: 28rem; } }

.cautions { margin: 1rem 0 0; padding: 0; list-style: none; columns: 3 18rem; column-gap: 1.6rem; }
.cautions li { margin-bottom: 1rem; }
.caution { padding: 0.1rem 0 0.1rem 1.3rem; font-size: 0.9375rem; line-height: 1.45; break-inside: avoid;
  background: repeating-linear-gradient(135deg, var(--care) 0 6px, var(--paper) 6px 11px) left / 8px 100% no-repeat; }
.caution p { margin-top: 0.2rem; }

.check { padding: 0.9rem 0; border-bottom: 1px solid var(--rule); display: grid; gap: 0.2rem 1.2rem; grid-template-columns: 1fr; break-inside: avoid; }
.check .head { display: flex; flex-wrap: wrap; gap: 0.2rem 0.8rem; align-items: baseline; }
.check dl { display: grid; grid-template-columns: 4rem minmax(0, 1fr); gap: 0.15rem 0.6rem; }
.check dt { color: var(--faint); }
.check .do { font-weight: 600; }
.passing { columns: 2 26rem; column-gap: 2rem; }
.tables { columns: 2 26rem; column-gap: 2rem; }
.tables .scroll { break-inside: avoid; margin: 0; padding-top: 1rem; }
details { margin-top: 1rem; border: 1px solid var(--rule); padding: 0 1rem; }
summary { cursor: pointer; padding: 0.7rem 0; font-weight: 600; }
summary h3 { display: inline; }
.folded { padding-bottom: 1rem; }
.listing { margin-top: 0.6rem; padding: 0.6rem 0.8rem; background: var(--card); }
.listing code { display: block; white-space: pre-wrap; }
.scroll { overflow-x: auto; margin-top: 1rem; }
.scroll:focus-visible, a:focus-visible, summary:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; }
table { border-collapse: collapse; width: 100%; font-size: 0.9375rem; overflow-wrap: normal; }
caption { text-align: left; font-weight: 600; padding: 0.3rem 0; }
th, td { text-align: left; vertical-align: top; padding: 0.35rem 0.9rem 0.35rem 0; border-bottom: 1px solid var(--grid); }
thead th { border-bottom: 1px solid var(--ink); font-size: 0.85rem; color: var(--faint); }
tbody th { font-weight: 400; }
td.number { font-variant-numeric: tabular-nums; min-width: 6.5rem; }
td.figures { white-space: nowrap; }
.figures span { display: inline-block; min-width: 6.5rem; font-variant-numeric: tabular-nums; }
@media screen and (max-width: 38rem) { .figures span { display: block; min-width: 0; } }
.sources { padding-left: 1.2rem; columns: 2 24rem; column-gap: 2rem; margin-top: 0.8rem; font-size: 0.9rem; }
.sources li { break-inside: avoid; margin-bottom: 0.5rem; }
.report .answers { grid-template-columns: repeat(auto-fit, minmax(9.5rem, 1fr)); gap: 0.5rem; margin-bottom: 0.3rem; }
.report .answers li { padding: 0.5rem 0.7rem; }
.report .answers h2 { font-size: 0.85rem; line-height: 1.25; }
.report .answers .figure { font-size: 1.35rem; }
.remark { margin-top: 0.6rem; font-weight: 600; }
.first-things { display: grid; grid-template-columns: minmax(0, 1fr); gap: 0 1.6rem; margin-top: 0.75rem; }
.report figure { display: block; border-bottom: 0; }
.report .first-things figure { padding: 0.6rem 0 0; }
.report .chart { margin-top: 0.6rem; }
.report .chief-pictures figure { padding: 0.9rem 0 0; }
.report .caution { font-size: 0.875rem; line-height: 1.38; padding-left: 1rem; }
.report .cautions li { margin-bottom: 0.6rem; }
.report .caution h3 { font-size: inherit; line-height: inherit; }
.report .caution.kills h3 { color: var(--bad); }
@media screen and (max-width: 38rem), print {
  .report .caution h3, .report .caution p { display: inline; }
  .report .caution h3::after { content: ". "; }
}
@media screen and (min-width: 60rem) {
  .first-things:has(svg) { grid-template-columns: minmax(0, 1fr) 22rem; }
  .first-things .chart.wide, .chief-pictures .chart.wide { display: none; }
  .first-things .chart.narrow, .chief-pictures .chart.narrow { display: block; }
  .chief-pictures { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 0 1.6rem; }
}
@media screen and (max-width: 38rem) {
  .report { padding: 0.75rem; line-height: 1.4; }
  .report .title-block dl div:first-child { display: none; }
  .report .caution { font-size: 0.84rem; line-height: 1.33; }
  .report .cautions li { margin-bottom: 0.35rem; }
  .report nav { margin-top: 0.5rem; }
  .report details { margin-top: 0.4rem; }
  .report summary { padding: 0.3rem 0; }
  .report summary h3 { font-size: 1rem; }
  .report .title-block .name { padding: 0.5rem 0.7rem; }
  .report .title-block dl div { padding: 0.2rem 0.7rem; }
  .report .verdict { flex-wrap: nowrap; gap: 0.7rem; padding: 0.5rem 0.7rem; font-size: 1rem; }
  .report .todo { padding: 0.6rem 0.7rem; }
  .report main section { margin-top: 1.1rem; }
  .report .chart.narrow { max-width: 22rem; }
  .report .scroll { overflow: visible; }
  .report table { overflow-wrap: anywhere; }
  .report td.number { min-width: 0; }
  .values thead { display: none; }
  .values tr { display: block; padding: 0.5rem 0; border-bottom: 1px solid var(--grid); }
  .values th, .values td { display: block; padding: 0; border: 0; }
  .values .band-of::before { content: "may lie between "; color: var(--faint); }
  .values .as-measured::before { content: "measured "; color: var(--faint); }
  .values .as-reckoned::before { content: "ours "; color: var(--faint); }
}
footer { margin-top: 2.4rem; padding-top: 0.8rem; border-top: 2px solid var(--ink); }
)css";
constexpr std::string_view paper_size = R"css(
@page { size: A4; margin: 10mm 11mm 12mm;
  @bottom-right { content: "sheet " counter(page) " of " counter(pages); font: 8pt "Liberation Sans", sans-serif; color: #4d545c; } }
@media print {
)css";
constexpr std::string_view paper_style = R"css(  * { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  html { font-size: 9.5pt; }
  body { padding: 0; max-width: none; }
  nav { display: none; }
  a { text-decoration: none; }
  main section { margin-top: 1.4rem; }
  h2, h3, caption, summary, .lead { break-after: avoid; }
  figure, tr, .todo, .answers li, .check, .caution { break-inside: avoid; }
  figure { display: block; }
  figcaption { margin-bottom: 0.5rem; }
  .chart { max-width: 50rem; }
  .narrow { display: none; }
  .answers { grid-template-columns: repeat(3, 1fr); }
  .answers .figure { font-size: 1.5rem; }
  .scroll { overflow: visible; }
  thead { display: table-header-group; }

  details { border: 0; padding: 0; margin: 0; }
  details:not([open]), .appendix:not(:has(details[open])), .appendix .how { display: none; }
  summary { list-style: none; }
  .report { line-height: 1.3; }
  #pictures { position: absolute; clip-path: inset(50%); }
  .report .first-words { display: flex; gap: 2rem; margin-bottom: 0.3rem; }
  .report .title-block .name { padding: 0.25rem 0.6rem; }
  .report .title-block h1 { font-size: 1.3rem; }
  .report .title-block dl { grid-template-columns: none; grid-auto-flow: column; }
  .report .title-block dl div { padding: 0.1rem 0.6rem; }
  .report .verdict { padding: 0.3rem 0.6rem; font-size: 1.05rem; }
  .report .verdict .badge .icon { width: 1.4rem; height: 1.4rem; vertical-align: -0.3rem; }
  .report .answers { grid-template-columns: repeat(6, 1fr); gap: 0.3rem; margin: 0.4rem 0 0.1rem; }
  .report .answers li { padding: 0.25rem 0.4rem; }
  .report .answers h2 { font-size: 0.8rem; }
  .report .answers .figure { font-size: 1.1rem; }
  .report .small-print { font-size: 0.8rem; }
  .report .todo { padding: 0.3rem 0.6rem; }
  .report .todo h2, .report main h2 { font-size: 1.1rem; padding: 0; }
  .report .todo li { margin: 0.1rem 0; }
  .report main section { margin-top: 0.6rem; }
  .report figcaption p { margin-top: 0.1rem; font-size: 0.85rem; line-height: 1.25; }
  .report figcaption { margin: 0; }
  .report h3 { font-size: 0.95rem; }
  .first-things { margin-top: 0.4rem; gap: 0 0.8rem; }
  .first-things:has(svg) { grid-template-columns: minmax(0, 1fr) 58mm; }
  .report .first-things figure, .report .chief-pictures figure { padding: 0.2rem 0 0; }
  .report .chart { margin-top: 0.2rem; }
  .chief-pictures { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 0 0.8rem; }
  .first-things .wide, .chief-pictures .wide { display: none; }
  .first-things .narrow, .chief-pictures .narrow { display: block; }
  .report .cautions { columns: 3; column-gap: 4mm; margin-top: 0.3rem; }
  .report .cautions { font-size-adjust: 0.547; }
  .report .caution { font-size: 7.2pt; line-height: 1.17; padding-left: 0.6rem; break-inside: auto; orphans: 3; widows: 3; background-size: 4px 100%; }
  .report .caution.kills { font-size: 7.7pt; break-inside: avoid; }
  .report .cautions li { margin-bottom: 0.25rem; }
  .report footer { margin-top: 0.5rem; padding-top: 0.2rem; }
  .guide nav { display: block; }
  .guide .caution { font-size: 0.9rem; line-height: 1.3; }
  .guide .chart.wide { max-width: 150mm; }
  .guide .sheet img { max-width: 110mm; }
  .guide .sheet, .guide .todo { break-inside: avoid; }
  .screen { overflow: visible; padding: 0.4rem 0.6rem; }
  .screen code { font-size: 8pt; line-height: 1.3; orphans: 3; }
}
)css";

std::string root_rules(std::string_view scheme, const char* Colour::* of) {
  std::string css = ":root { color-scheme: " + std::string(scheme) + ";";
  for (const Colour& colour : palette) css += std::string(" --") + colour.name + ": " + colour.*of + ";";
  return css + " }\n";
}
}  // namespace

std::span<const Colour> colours() { return palette; }
const std::string& style_sheet() {
  static const std::string sheet = root_rules("light dark", &Colour::light) + "@media (prefers-color-scheme: dark) { " +
                                   root_rules("dark", &Colour::dark) + "}\n" + std::string(page_style) +
                                   std::string(chart_style) + std::string(guide_style) + std::string(paper_size) +
                                   root_rules("light", &Colour::paper) + std::string(paper_style);
  return sheet;
}
}  // namespace lumwright::report::html
