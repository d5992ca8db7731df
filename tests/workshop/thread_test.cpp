#include "workshop/thread.hpp"
#include "data/metals.hpp"
#include "near.hpp"
#include "published.hpp"
#include "quantity/errors.hpp"
#include "workshop/off.hpp"
#include "workshop/thread_hold.hpp"
#include <cmath>
#include <set>

using namespace lumwright;
using namespace lumwright::workshop;

namespace {
TappedPlate plate(const char* name, Length thickness, const char* metal) {
  return {.thread = thread(name), .plate = thickness, .metal = metal, .screw_over_metal = 1.0};
}
}  // namespace

TEST_CASE("BA threads follow the rule of BS 93, rounded as its table rounds") {
  for (int n = 0; n <= 14; ++n) {
    const data::ThreadRow& row = thread(std::to_string(n) + "BA");
    CAPTURE(row.name);
    const double pitch = std::pow(0.9, n);  // BS 93: p = 0.9^n mm, D = 6 p^1.2 mm
    CHECK(off(row.pitch, pitch * mm) <= 0.00501);
    CHECK(off(row.major, 6.0 * std::pow(pitch, 1.2) * mm) <= 0.0501);
    CHECK(off(*row.depth, 0.6 * pitch * mm) <= 0.006);  // tabled to 0.005 mm from the rounded pitch
  }
  CHECK(std::pow(0.9, 5) == near(0.59049, 1e-9));
  CHECK(6.0 * std::pow(0.81, 1.2) == near(4.6594, 1e-4));
}

TEST_CASE("BA sizes are those that inch tables print") {
  int found = 0;
  for (const data::Row& row : published("workshop", "ba")) {
    CAPTURE(row.text("id"));
    const data::ThreadRow& ba = thread(row.text("id"));
    CHECK(off(ba.major, row.quantity<Length>("major")) < 0.02);  // printed to 0.001 in
    CHECK(double(inch / ba.pitch) == near(row.number("teeth"), 0.005));
    CHECK(off(thread_sizes(ba).root, row.quantity<Length>("core")) < 0.013);  // 0.0005 in
    CHECK(off(ba.tap, row.quantity<Length>("tap")) < 1e-9);
    ++found;
  }
  CHECK(found == 11);
}

TEST_CASE("sizes of the form are those of the standards") {
  for (const data::Row& row : published("workshop", "sizes")) {
    CAPTURE(row.text("id"));
    const ThreadSizes sizes = thread_sizes(thread(row.text("thread")));
    CHECK(off(sizes.nut_minor, row.quantity<Length>("nut_minor")) < 0.001);
    if (row.has("stress_area")) CHECK(sizes.stress_area == near(row.quantity<Area>("stress_area"), 0.005));
    if (row.has("pitch_diameter")) CHECK(off(sizes.pitch_diameter, row.quantity<Length>("pitch_diameter")) < 0.001);
  }
  CHECK(off(thread("4-40 UNC").major, 2.845 * mm) < 0.001);  // ASME B1.1: 0.060 + 0.013 x 4 in
  for (const int number : {0, 1, 2, 3, 4, 5, 6, 8, 10})
    CHECK(thread("UNF " + std::to_string(number)).major == near((0.060 + 0.013 * number) * inch, 1e-9));
}

TEST_CASE("drills leave the share of thread that tables print") {
  for (const data::Row& row : published("workshop", "shares")) {
    CAPTURE(row.text("id"));
    const data::ThreadRow& known = thread(row.text("thread"));
    const ThreadShare share = thread_share(known, row.quantity<Length>("hole"));
    CHECK(off(known.tap, row.quantity<Length>("hole")) < 1e-6);
    if (row.has("of_form")) CHECK(std::abs(share.of_form - row.number("of_form")) < 0.0006);
    if (row.has("of_handbook")) CHECK(std::abs(*share.of_handbook - row.number("of_handbook")) < 0.0006);
  }
  for (const data::ThreadRow& row : data::threads()) {
    CAPTURE(row.name);
    const ThreadShare share = thread_share(row, row.tap);
    const double shown = share.of_handbook.value_or(share.of_form);
    CHECK(shown > 0.65);  // usual tables run from two thirds to four fifths
    CHECK(shown < 0.825);
    const bool same_basis = !share.of_handbook;
    CHECK(same_basis == (row.form == "ba" || row.form == "me"));
  }
  CHECK_THROWS_AS(thread_share(thread("M3"), 3.0 * mm), ModelError);
  CHECK_THROWS_AS(thread_share(thread("M3"), 0.0 * mm), ModelError);
}

TEST_CASE("clearance holes widen from fine to coarse and pass the screw") {
  for (const data::ThreadRow& row : data::threads()) {
    CAPTURE(row.name);
    CHECK(clearance_hole(row, ClearanceFit::fine) > row.major);
    CHECK(clearance_hole(row, ClearanceFit::medium) >= clearance_hole(row, ClearanceFit::fine));
    CHECK(clearance_hole(row, ClearanceFit::coarse) >= clearance_hole(row, ClearanceFit::medium));
    CHECK(row.tap < row.major);
    CHECK(row.tap > 0.98 * thread_sizes(row).root);
    if (row.form == "metric") CHECK(off(row.tap, row.major - row.pitch) <= 0.0501);  // rule of ISO 2306
  }
  // ISO 273, two tables that agree
  CHECK(off(clearance_hole(thread("M3"), ClearanceFit::fine), 3.2 * mm) < 1e-9);
  CHECK(off(clearance_hole(thread("M4"), ClearanceFit::medium), 4.5 * mm) < 1e-9);
  CHECK(off(clearance_hole(thread("M5"), ClearanceFit::coarse), 5.8 * mm) < 1e-9);
  CHECK(off(clearance_hole(thread("2BA"), ClearanceFit::medium), 4.9 * mm) < 1e-9);  // model engineers' table
}

TEST_CASE("a thread answers to every way of writing it") {
  const std::pair<const char*, const char*> ways[] = {{"8 BA", "8BA"},
                                                      {"8ba", "8BA"},
                                                      {"No. 8 B.A.", "8BA"},
                                                      {"No.8BA", "8BA"},
                                                      {"BA 8", "8BA"},
                                                      {"m3", "M3"},
                                                      {"M 3 x 0.5", "M3"},
                                                      {"m3x.50", "M3"},
                                                      {"M3×0,5", "M3"},
                                                      {"M2.50", "M2.5"},
                                                      {"M6x1", "M6"},
                                                      {"M6 x 1.00", "M6"},
                                                      {"4-40", "4-40 UNC"},
                                                      {"#4-40 UNC", "4-40 UNC"},
                                                      {"4 x 40 unc", "4-40 UNC"},
                                                      {"UNC 4-40", "4-40 UNC"},
                                                      {"#8-36", "8-36 UNF"},
                                                      {"No 4 UNF", "4-48 UNF"},
                                                      {"1/4-20", "1/4-20 UNC"},
                                                      {"1/4 x 40 ME", "1/4x40 ME"},
                                                      {"1/4\" x 40 tpi", "1/4x40 ME"},
                                                      {"1/4in-40", "1/4x40 ME"},
                                                      {"ME 3/16 by 40 T.P.I.", "3/16x40 ME"},
                                                      {"3/16 ME", "3/16x40 ME"}};
  for (const auto& [written, name] : ways) {
    CAPTURE(std::string(written));
    CHECK(thread(written).name == name);
  }
  std::set<std::string> names;
  for (const data::ThreadRow& row : data::threads()) {
    CAPTURE(row.name);
    CHECK(names.insert(row.name).second);
    CHECK(thread(row.name).name == row.name);
  }
  CHECK(names.size() >= 50);
}

TEST_CASE("a thread that is not there is named with the nearest") {
  CHECK_THROWS_WITH_AS(thread("8AB"), "no thread is called `8AB`; did you mean `8BA`", ModelError);
  CHECK_THROWS_WITH_AS(thread("M3x0.6"), "no thread is called `M3x0.6`; did you mean `M3`", ModelError);
  CHECK_THROWS_WITH_AS(thread("1/4 ME"), "`1/4 ME` fits more than one thread: `1/4x40 ME`, `1/4x32 ME`", ModelError);
  CHECK_THROWS_WITH_AS(thread("wood screw"),
                       "no thread is called `wood screw`; known are 0BA to 14BA, M1.6 to M6, ME such as `1/4x40 ME`, "
                       "UNC and UNF",
                       ModelError);
  CHECK_THROWS_AS(thread(""), ModelError);
  CHECK_THROWS_AS(thread("no."), ModelError);
}

TEST_CASE("drills are those of the charts") {
  for (const data::Row& row : published("workshop", "numbered")) {
    const std::string name = row.text("id");
    CAPTURE(name);
    const data::DrillRow& drill = nearest_drill(row.quantity<Length>("diameter"), "number");
    CHECK(drill.name == name);
    CHECK(off(drill.diameter, row.quantity<Length>("diameter")) < 1e-6);
  }
  CHECK(nearest_drill(1.80 * mm).name == "1.80 mm");
  CHECK(nearest_drill(12.70 * mm).name == "12.70 mm");  // and 1/2 in: the metric one is named
  CHECK(nearest_drill(0.1875 * inch, "fractional").name == "3/16 in");
  CHECK(nearest_drill(1.785 * mm).name == "no. 50");  // 0.0700 in = 1.778 mm, nearer than 1.80
  for (std::size_t i = 1; i < data::drills().size(); ++i)
    CHECK(data::drills()[i - 1].diameter <= data::drills()[i].diameter);
  CHECK_THROWS_AS(nearest_drill(20.0 * mm), ModelError);
  CHECK_THROWS_AS(nearest_drill(2.0 * mm, "letter"), ModelError);
}

TEST_CASE("how much thread a plate gives") {
  // FED-STD-H28 in its simplified form, by hand: 2 x 5.03 / (0.5 pi 2.675)
  CHECK(off(thread_hold(plate("M3", 3.0 * mm, "brass")).strip_safe, 2.394 * mm) < 0.005);
  CHECK(off(thread_hold(plate("M4", 3.0 * mm, "brass")).strip_safe, 3.15 * mm) < 0.01);
  TappedPlate strong = plate("M3", 3.0 * mm, "brass");
  strong.screw_over_metal = 2.0;
  CHECK(thread_hold(strong).strip_safe == near(2.0 * thread_hold(plate("M3", 3.0 * mm, "brass")).strip_safe, 1e-12));

  const ThreadHold m3 = thread_hold(plate("M3", 3.0 * mm, "brass")), ba2 = thread_hold(plate("2BA", 3.0 * mm, "brass"));
  CHECK(m3.full_threads == near(6.0, 1e-9));  // by hand
  CHECK(m3.hold == Hold::short_of_wish);
  CHECK(ba2.over_major == near(0.638, 0.001));
  CHECK(ba2.full_threads == near(3.70, 0.002));
  CHECK(ba2.hold == Hold::too_thin);
  CHECK(thread_hold(plate("6BA", 3.0 * mm, "brass")).hold == Hold::short_of_wish);
  CHECK(thread_hold(plate("8BA", 3.3 * mm, "brass")).hold == Hold::enough);  // 1.5 diameters to the very size
  CHECK(thread_hold(plate("8BA", 1.6 * mm, "brass")).hold == Hold::too_thin);
  CHECK(thread_hold(plate("8BA", 0.25 * mm, "tinplate")).hold == Hold::never);
  CHECK(thread_hold(plate("M3", 6.0 * mm, "aluminium")).hold == Hold::enough);
  CHECK_THROWS_AS(thread_hold(plate("M3", 0.0 * mm, "brass")), ModelError);
  CHECK_THROWS_WITH_AS(thread_hold(plate("M3", 3.0 * mm, "cheese")), "no rule says how much thread `cheese` must give",
                       ModelError);
}

TEST_CASE("a plate just refused is taken once it has the least, for every metal that can be tapped") {
  for (const data::MetalRow& metal : data::metals()) {
    if (metal.name == "silver solder" || metal.name == "tinplate") continue;
    CAPTURE(metal.name);
    TappedPlate tried{thread("6BA"), 1.0 * mm, metal.name, 1.0};
    const ThreadHold thin = thread_hold(tried);
    CHECK(thin.hold == Hold::too_thin);
    CHECK(thin.least >= 3.0 * tried.thread.pitch * (1.0 - 1e-12));
    tried.plate = thin.least;
    CHECK(thread_hold(tried).hold != Hold::too_thin);
    tried.plate = thin.prefer;
    CHECK(thread_hold(tried).hold == Hold::enough);
  }
}
