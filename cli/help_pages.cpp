#include "help_pages.hpp"

namespace lumwright::cli {
const std::string_view report_page = R"(lumwright report FILE -o DIR: one page to read at the bench

  Writes into the folder DIR, which is made if it is not there:
    report.html               the verdict, the six answers, what to do and to
                              settle first, the unit cut through, fan and gas
                              path, lighting-up and fit, and the cautions in
                              full: two sheets of A4. Every check and number,
                              what was assumed, sources and the description lie
                              folded behind it, and are printed only where they
                              are unfolded. One file: it needs no network
    report.md, report.json    the same as plain text and for programs
    *.csv                     checks, assumed values and what goes through time
    templates.pdf and others  the drawings, as `lumwright draw` makes them, when
                              no check of fit or making fails
  Files of these names are replaced, others are left alone.

  --samples N, --seed N       as in `lumwright help check`
  --paper, --scale-x, --scale-y
                              as in `lumwright help draw`
  --units as-written | metric | imperial
  --untuned                   leave out what was tuned
  --set KEY=VALUE             as if the description said so; may be repeated

Example
  lumwright report mine.yaml -o mine

Exit status: 0, 1 when a check fails, 2 when the description cannot be
used.
)";
const std::string_view choose_page = R"(lumwright choose BIN: which fan, pack, step-up and tube

  Tries every combination of what lies in the bin for each engine of the shed,
  and ranks those that do what each engine wants: minutes to steam, light-ups on
  one charge, mass. What is shown has passed every check, in full: first what
  does all that is wanted, then what has fewest points to watch, then minutes,
  light-ups, mass. Times too close to tell apart share a place. Box, fuse and
  wires that an engine does not name itself are sized for the unit where those
  at the top do not suit, and it says so. It names the
  one unit that serves every engine, with a tube for each; the combinations that
  nothing beats on all three; and in a word why each other one loses.

  A bin holds the parts of a description as lists
    fans, packs, step_ups, tubes, engines
                              each item with a `name` and the keys of its part
    place, fuel, adapter, supply, want
                              at the top: for every engine that says nothing
    count                     how many there are: two fans may be a pair
    pairs: yes                two like fans in series or side by side as well
    drawers, from             loose cells that packs are made from: none is
                              used twice in one unit
    step_ups: [ none, ... ]   none: the fan straight on the pack
    lower_to                  a lower output once steam is near
    tubes: stock              tubes off the shelf, by the table of stock sizes

  -o DIR                      everything into a folder, which is made if it is
                              not there: choice.html, a page with a picture for
                              each engine that needs no network and prints on
                              A4; choice.txt, choice.json, choice.csv; and what
                              is advised, as descriptions for `check`, `draw`
                              and `report`: first-ENGINE.yaml and
                              for-all-ENGINE.yaml. Files of these names are
                              replaced, others are left alone
  --samples N                 samples in which what is advised is checked (usual:
                              1000, as `check`), all else that is shown in 100
                              of them
  --format text | json | csv  what is printed without a folder
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright choose shed.yaml
  lumwright choose shed.yaml -o shed

Exit status: 0, 2 when the bin cannot be used.
)";
const std::string_view bench_page = R"(lumwright bench READINGS: the curve of an unmarked fan

  Works out a fan's curve from a test made with a box, plates with sharp holes
  and a U-tube: corrected to air of 1.2 kg/m3 and to the rated voltage, with its
  band, and with warnings of a box too small, a leak, readings out of range. The
  last lines it prints go into a description as they are.
  `lumwright new --readings FILE` writes a file of readings to fill in.

  --box                       how to make the test box for this fan, and what
                              each shortcut costs in accuracy
  -o DIR                      everything into a folder: the lines for the
                              description, CSV, JSON, the page, the test box,
                              and its orifice plates at true size
  --format text | json | csv
  --paper A4 | Letter, --scale-x, --scale-y
                              as in `lumwright help draw`
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright new --readings fan.yaml
  lumwright bench --box fan.yaml
  lumwright bench fan.yaml -o fan-test

Exit status: 0, 1 when no curve follows from the readings, 2 when they
cannot be used.
)";
const std::string_view draw_page = R"(lumwright draw FILE -o DIR: 1:1 templates for tin and brass

  Writes into the folder DIR, which is made if it is not there:
    templates.pdf             every part at true size, to print at 100 %, check
                              with the two bars, and stick on the metal
    templates-1.svg ...       the same, one sheet each
    flange_mm.dxf ...         each part for a machine (DXF R12, millimetres)
    holes.csv                 co-ordinates of every hole, about the middle of
                              the part and from the edges that touch it
    sheet.txt                 the build sheet, as `lumwright sheet` prints it
  Files of these names are replaced, others are left alone. A build that fails
  a check of fit or making (fit.*, make.*) is not drawn, unless as a draft. The
  screw holes of a fan whose sizes no table fixes are drawn only when the
  description says `measured: yes` under fan.holes.

  --paper A4 | Letter         the paper you print on (usual: A4)
  --scale-x 99.2 mm           what the 100 mm bar across the paper measures on
  --scale-y 150.4 mm          your print, and the 150 mm bar along it: the next
                              print comes out true. Not for DXF
  --draft                     draw what fails as well, with DRAFT across it
  --units as-written | metric | imperial
                              units of templates, table of holes and build sheet
                              (as written: those the description has most of,
                              the others beneath). The DXF is in millimetres
  --untuned                   leave out what was tuned
  --set KEY=VALUE             as if the description said so; may be repeated

Examples
  lumwright draw mine.yaml -o bench
  lumwright draw mine.yaml -o bench --paper Letter --scale-x "99.5 mm"

Exit status: 0, 1 when the build is not to be drawn, and says why; with 2
when the description or an option cannot be used.
)";
const std::string_view sheet_page = R"(lumwright sheet FILE: what goes to the bench

  Prints what to measure before you cut, the cut list, the drill list in order
  of size with pilot and step drills, taps and screws, where every hole lies,
  and the order of work, with the cautions at the step where they bite.

  --units as-written | metric | imperial
  --colour auto | always | never
  --untuned                   leave out what was tuned
  --set KEY=VALUE             as if the description said so; may be repeated

Example
  lumwright sheet mine.yaml > bench.txt

Exit status: 0, 1 when the description has nothing to make in it.
)";
const std::string_view new_page = R"(lumwright new FILE: write a description to fill in

  Writes a description in which every key is explained and waits behind a `#`,
  with an example: take the `#` away from what you know and write your own value
  over the example. What stays behind its `#`, or has nothing behind its colon,
  counts as not known. A file that is there already is left alone and the
  command leaves with 2. With - for FILE the description goes to standard
  output.

  --readings                  readings of a shop-made fan test instead, for
                              `lumwright bench`
  --bin                       a bin instead, for `lumwright choose`
  --log                       a log of a lighting-up instead, for
                              `lumwright tune`
  --ask                       a short interview on the terminal: the questions
                              that matter most, each with where and how to
                              measure. A blank line means that you do not know;
                              a fault is told at once and the question asked
                              again. FILE is written when the last question is
                              answered, with what follows from it already, what
                              is still missing, and what to measure next. Where
                              the answers end before that, nothing is written

  One line of it is for editors that know YAML: with the schema beside it
  (`lumwright schema`) they complete keys and mark mistakes while you type.

Examples
  lumwright new mine.yaml
  lumwright new --ask mine.yaml
)";
const std::string_view guide_page = R"(lumwright guide [-o DIR]: from scrap bin to steam, with pictures

  Ten short pages: what the thing does, what to look for in the scrap bin, what
  to measure and with what, the first check, what to change, the tube in the
  chimney, drilling, wiring, lighting up, and what to learn afterwards. Every
  figure and picture in it is worked out while it is made, from the examples
  that come with the program; that takes some seconds.

  -o DIR                      the folder that it goes to (usual:
                              lumwright-guide): guide.html, one file that needs
                              no network and prints on A4 and Letter, and the
                              examples in DIR/examples, so that its commands can
                              be tried there. Files of these names are replaced,
                              others are left alone
  --samples N                 samples of its runs (usual: 1000, as those of
                              `check`, whose figures it then shows)

Example
  lumwright guide -o guide

Exit status: 0, 2 when the folder cannot be written.
)";
const std::string_view units_page = R"(lumwright units: list the units that may be written

  Lists every unit by what it measures, and the forms in which a number may be
  written: fractions, decimal commas, spreads, per cent, minutes and seconds,
  gauge numbers of sheet and wire.
)";
const std::string_view schema_page = R"(lumwright schema KIND: print the JSON Schema of a kind of file

  For editors that complete keys and mark mistakes while you type: `new` writes
  the line by which they find it. The kinds are description (usual), bin,
  readings and log. The kind answer is what the commands print in JSON, for
  programs that read it.

  --table                     of answer: every key with its type and meaning,
                              command by command, to read

Examples
  lumwright schema > description.schema.json
  lumwright schema bin > bin.schema.json
  lumwright schema answer --table
)";
const std::string_view help_page = R"(lumwright help COMMAND: more on one command

  --roff                      the whole manual as a man page
)";
const std::string_view completion_page = R"(lumwright completion SHELL: words that a shell can complete

  Prints a script for bash, zsh or fish, made from the program's own table of
  commands and options. An installed package has put it in its place already.

Example
  lumwright completion bash > ~/.local/share/bash-completion/completions/lumwright
)";
}  // namespace lumwright::cli
