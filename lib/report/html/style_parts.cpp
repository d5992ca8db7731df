#include "report/html/style.hpp"

// What the pictures look like, wherever they stand, and what is the guide's own.
namespace lumwright::report::html {
const std::string_view chart_style = R"css(
.chart text { font-family: inherit; font-size: 12.5px; fill: var(--ink); }
.chart .tick, .chart .axis-title { fill: var(--faint); font-size: 11.5px; }
.chart .small { font-size: 11px; fill: var(--faint); }
.chart .strong { font-weight: 700; }
.chart text.bad { fill: var(--bad); }
.chart .halo { paint-order: stroke; stroke: var(--paper); stroke-width: 4px; stroke-linejoin: round; }
.grid { stroke: var(--grid); stroke-width: 1; }
.axis { stroke: var(--ink); stroke-width: 1.2; }
.rule { stroke: var(--rule); stroke-width: 1; }
.carry { stroke: var(--grey); stroke-width: 1; }
.line { fill: none; stroke-width: 2.4; stroke-linejoin: round; }
.line.ink { stroke: var(--ink); } .line.hot { stroke: var(--hot); } .line.cold { stroke: var(--cold); }
.dashed { stroke-dasharray: 7 4; }
.ring { fill: var(--paper); stroke-width: 2.4; }
.ring.line { fill: var(--paper); }
.dot-hot { fill: var(--hot); stroke: var(--paper); stroke-width: 1.5; } .dot-cold { fill: var(--cold); stroke: var(--paper); stroke-width: 1.5; }
.band { stroke: none; fill-opacity: 0.16; } .band.hot { fill: var(--hot); } .band.cold { fill: var(--cold); }
.bar.hot { fill: var(--hot); } .bar.cold { fill: var(--cold); } .bar.grey { fill: var(--grey); }
.trough { fill: var(--stripe); } .stripe { fill: var(--stripe); }
.hatch { stroke: var(--paper); stroke-width: 1.4; stroke-opacity: 0.75; fill: none; } .dot { fill: var(--paper); }
.hatched { stroke: none; }
.speck { fill: none; stroke: var(--grey); stroke-width: 1.3; }
.moment { stroke: var(--ink); stroke-width: 1; stroke-dasharray: 2 3; } .moment.bad { stroke: var(--bad); stroke-dasharray: none; }
.moment.wish { stroke: var(--hot); stroke-dasharray: 8 3 2 3; }
.level { stroke: var(--grey); stroke-width: 1.2; stroke-dasharray: 10 4; } .level.bad { stroke: var(--bad); }
.seen { fill: none; stroke: var(--ink); stroke-width: 1.4; } .cut-metal { fill: var(--grey); stroke: var(--ink); stroke-width: 0.8; }
.metal { fill: var(--grey); } .metal-warm { fill: var(--hot); } .soot { fill: var(--ink); } .clash { fill: var(--bad); fill-opacity: 0.5; }
.ghost { stroke: var(--ink); stroke-width: 1.4; stroke-dasharray: 5 3; }
.centre { stroke: var(--faint); stroke-width: 1; stroke-dasharray: 12 3 2 3; }
.size { stroke: var(--ink); stroke-width: 1.1; } .lead { stroke: var(--grey); stroke-width: 1; } .tip { fill: var(--ink); }
.balloon { fill: var(--paper); stroke: var(--ink); stroke-width: 1.1; } .chart .letter { font-size: 10.5px; font-weight: 700; }
.assumed .balloon, .not-known .balloon { stroke: var(--grey); stroke-dasharray: 3 2; }
.chart .assumed .value, .chart .not-known .value { fill: var(--faint); font-style: italic; }
.water { fill: var(--cold); fill-opacity: 0.16; } .water-line { stroke: var(--cold); stroke-width: 1.6; }
.felt { fill: var(--care); fill-opacity: 0.3; } .glow { fill: var(--hot); fill-opacity: 0.3; } .soot-shown { fill: var(--ink); fill-opacity: 0.4; }
.void { fill: var(--paper); } .void-seen { fill: var(--paper); stroke: var(--ink); stroke-width: 1.2; }
.lump { fill: var(--grey); fill-opacity: 0.6; stroke: var(--ink); stroke-width: 0.7; } .gap { stroke: var(--paper); stroke-width: 3; }
.circle-of-holes { fill: none; stroke: var(--faint); stroke-width: 1; stroke-dasharray: 8 3 2 3; }
.ghost-box { fill: none; stroke: var(--faint); stroke-width: 1; stroke-dasharray: 5 3; }
.sketches { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(20rem, 100%), 1fr)); gap: 0 1.6rem; }
.sketches .chart { display: block; max-width: 24rem; }
.lens { fill: none; stroke: var(--ink); stroke-width: 1.6; } .lens.ring { fill: none; }
)css";

const std::string_view guide_style = R"css(
.guide { max-width: 48rem; }
.guide main p, .guide main ul, .guide main ol { margin-top: 0.7rem; }
.guide main ul, .guide main ol { padding-left: 1.4rem; }
.guide main li { margin-top: 0.25rem; }
.guide main .cautions { columns: 2 18rem; padding: 0; margin-top: 1rem; }
.guide main .cautions li { margin: 0 0 1rem; }
.guide main h3 { margin-top: 1.4rem; }
.guide main .caution h3, .guide main figure h3 { margin-top: 0; }
.guide main .caution p, .guide main figcaption p { margin-top: 0.2rem; }
.guide .caution.kills h3 { color: var(--bad); }
.guide figure { display: block; border-bottom: 0; }
.guide .chart { margin-top: 0.6rem; }
.guide .sheet img { display: block; width: 100%; max-width: 30rem; border: 1px solid var(--rule); background: #ffffff; }
.guide .sheet figcaption { margin-top: 0.3rem; color: var(--faint); font-size: 0.875rem; }
.guide nav ol { padding-left: 1.6rem; columns: 2 16rem; }
.guide main .todo { margin-top: 1rem; border-left: 4px solid var(--care); }
.guide main .todo p:first-child { margin-top: 0; }
.screen { margin-top: 0.8rem; padding: 0.6rem 0.8rem; background: var(--card); overflow-x: auto; }
.screen code { display: block; white-space: pre-wrap; font-size: 0.8125rem; line-height: 1.4; overflow-wrap: normal; }
.screen:focus-visible { outline: 3px solid var(--cold); outline-offset: 2px; }
@media screen and (max-width: 38rem) {
  .guide { padding: 0.75rem; line-height: 1.4; }
  .guide .chart.narrow { max-width: 22rem; }
  .rows thead { display: none; }
  .rows tr { display: block; padding: 0.5rem 0; border-bottom: 1px solid var(--grid); }
  .rows th, .rows td { display: block; padding: 0; border: 0; }
  .rows th { font-weight: 600; }
  .rows td::before { content: attr(data-heading) ": "; color: var(--faint); }
  .screen { padding: 0.5rem; }
  .screen code { white-space: pre; font-size: 0.72rem; }
}
)css";
}  // namespace lumwright::report::html
