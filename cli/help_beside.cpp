#include "help_pages.hpp"

namespace lumwright::cli {
const std::string_view sweep_page = R"(lumwright sweep FILE KEY FROM..TO [KEY FROM..TO]: along one key or two

  Gives one key of the description nine values from one end of the range to the
  other, everything else as written, and tells the chief answers for each, how
  many checks fail and how many are to be watched, and the minutes to steam as
  a bar. With two keys four values of each. Whole numbers go one by one, words
  stand with a comma between them.
  Spreads are left out: it shows what a key does, not how sure that is. The
  picture has them as light bands behind its lines.

  --format text | csv         a page to read, or a table in SI units
  -o DIR                      write page, table and a picture (SVG) into DIR: the
                              chief answers along the key, or the minutes over
                              both
  --samples N                 samples at each value for the bands of the picture
                              (usual: 200; 0 for no bands)
  --seed N                    other samples (usual: 1)
  --set KEY=VALUE             as if the description said so; may be repeated
  --untuned                   leave out what was tuned
  --units as-written | metric | imperial
  --colour auto | always | never

Examples
  lumwright sweep mine.yaml supply.step_up.output "8 V..13 V"
  lumwright sweep mine.yaml adapter.bleed.holes 2..8 -o holes
  lumwright sweep mine.yaml fuel.bed "20 mm..36 mm" fuel.lump "6 mm..12 mm"

Exit status: 0, 2 when the description, a key or a range cannot be used.
)";
const std::string_view compare_page = R"(lumwright compare FILE FILE ...: builds side by side

  Tells which keys of two to five descriptions differ, which answers, and which
  verdicts. A difference of answers is clear where the bands of two of them do
  not meet, and within the spread where they do.

  --samples N                 samples to try (usual: 1000; 0 for no bands)
  --seed N                    other samples (usual: 1)
  --set KEY=VALUE             as if each description said so; may be repeated
  --untuned                   leave out what was tuned
  --units as-written | metric | imperial
  --colour auto | always | never

Example
  lumwright compare mine.yaml other.yaml

Exit status: 0, 2 when a description cannot be used.
)";
}  // namespace lumwright::cli
