#include "quantity/text.hpp"
#include "near.hpp"
#include "quantity/format.hpp"
#include <string>
#include <vector>
using namespace lumwright;

namespace {
struct Complaint {
  std::string message, help;
  std::size_t at, width;
};
template <class Q>
Complaint complaint(const std::string& text) {
  try {
    parse_band<Q>(text);
  } catch (const QuantityError& e) {
    return {e.what(), e.help, e.at, e.width};
  }
  return {"accepted", "", 0, 0};
}
// The bytes a caret would stand under.
template <class Q>
std::string pointed_at(const std::string& text) {
  const Complaint c = complaint<Q>(text);
  return text.substr(std::min(c.at, text.size()), c.width);
}
const std::string lengths = "mm, cm, m, um, in, thou, ft";
}  // namespace

static_assert(kind_of<Voltage>.dimension == Dimension{.m = 2, .kg = 1, .s = -3, .A = -1});
static_assert(kind_of<Temperature>.scale == Scale::point);
static_assert(kind_of<TemperatureRise>.scale == Scale::ratio);
static_assert(kind_of<GaugePressure>.scale == Scale::gauge);

TEST_CASE("lengths may be decimal, fractional or mixed") {
  struct Row {
    std::string text;
    Length expected;
  };
  // hand: 1 in is 25.4 mm exactly (SI Brochure 9, table 8 and its notes)
  const Row rows[] = {
      {"9/16 in", 14.2875 * mm},   {"1 1/2 in", 38.1 * mm}, {"-1 1/2 in", -38.1 * mm},   {"1e-3 m", 1.0 * mm},
      {"5mm", 5.0 * mm},           {".5 in", 12.7 * mm},    {"9/16\"", 14.2875 * mm},    {"14 thou", 0.3556 * mm},
      {"5/8 inches", 15.875 * mm}, {"+3 mm", 3.0 * mm},     {"17.2\u00A0mm", 17.2 * mm}, {"−2 mm", -2.0 * mm},
      {" 4 mm ", 4.0 * mm},        {"2 ft", 609.6 * mm},    {"7. mm", 7.0 * mm},         {"3.5/7 in", 12.7 * mm}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(parse_quantity<Length>(row.text) == near(row.expected, 1e-15));
  }
}

TEST_CASE("other quantities, with units that begin with a digit or hold a blank") {
  CHECK(parse_quantity<Voltage>("4.8 V") == near(4.8 * V, 0));
  CHECK(parse_quantity<Charge>("800 mAh") == near(2880.0 * A * s, 1e-15));     // hand: 0.8 A x 3600 s
  CHECK(parse_quantity<Pressure>("3.2 mmH2O") == near(31.38128 * Pa, 1e-15));  // hand: 3.2 x 9.80665
  CHECK(parse_quantity<Rotation>("5200 1/min") == near(5200.0 / 60.0 / s, 1e-15));
  CHECK(parse_quantity<Rotation>("5200 r/min") == near(5200.0 / 60.0 / s, 1e-15));
  CHECK(parse_quantity<Expansion>("19.9e-6 1/K") == near(19.9e-6 / K, 1e-15));
  CHECK(parse_quantity<Expansion>("19.9e-6/K") == near(19.9e-6 / K, 1e-15));
  CHECK(parse_quantity<Viscosity>("1.8e-5 Pa s") == near(1.8e-5 * Pa_s, 1e-15));
  CHECK(parse_quantity<double>("35 %") == near(0.35, 1e-15));
  CHECK(parse_quantity<double>("0.35") == near(0.35, 0));
  CHECK(parse_quantity<double>("1/3") == near(1.0 / 3.0, 1e-15));
}

TEST_CASE("a decimal comma is a decimal point") {
  for (const auto& [comma, point] : std::vector<std::pair<std::string, std::string>>{
           {"17,2 mm", "17.2 mm"}, {"0,125 in", "0.125 in"}, {"7,5..9,25 mm", "7.5..9.25 mm"},
           {"17,20 mm +- 0,03 mm", "17.20 mm +- 0.03 mm"}, {"1,0005 mm", "1.0005 mm"}, {"2,5e-3 m", "2.5e-3 m"}}) {
    CAPTURE(comma);
    const WrittenBand read = parse_band(comma, kind_of<Length>), wanted = parse_band(point, kind_of<Length>);
    CHECK(read.value == wanted.value);
    CHECK(read.low == wanted.low);
    CHECK(read.high == wanted.high);
  }
  CHECK(parse_quantity<double>("0,35") == near(0.35, 1e-15));
}

TEST_CASE("a time may have minutes and seconds") {
  struct Row {
    std::string text;
    double value, low, high;  // s
  };
  const Row rows[] = {{"6 min 30 s", 390, 390, 390},      {"6min30s", 390, 390, 390},
                      {"1 h 20 min", 4800, 4800, 4800},   {"1 h 20 min 5 s", 4805, 4805, 4805},
                      {"6:30", 390, 390, 390},            {"0:05", 5, 5, 5},
                      {"90:00", 5400, 5400, 5400},        {"6:30 +- 10 s", 390, 380, 400},
                      {"6:30 +- 0:10", 390, 380, 400},    {"6 min 30 s +- 10 s", 390, 380, 400},
                      {"6 min 30 s +- 10", 390, 380, 400}, {"5:30..6:30", 360, 330, 390},
                      {"5 min 30 s..6:30", 360, 330, 390}, {"6:30 min", 390, 390, 390},
                      {"6,5 min", 390, 390, 390},          {"6:30 +- 10 %", 390, 351, 429}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Band<Duration> band = parse_band<Duration>(row.text);
    CHECK(band.value == near(row.value * s, 1e-13));
    CHECK(band.low == near(row.low * s, 1e-13));
    CHECK(band.high == near(row.high * s, 1e-13));
  }
  CHECK(parse_band("6:30", kind_of<Duration>).unit == "min");
  const std::string clock = "write minutes and seconds as in `6:30`, or `6 min 30 s`; the seconds from 00 to 59",
                    parts = "write whole minutes and less than 60 s, as in `6 min 30 s`";
  for (const std::string text : {"6:60", "6:5", "6:305", "1:06:30", "6.5:30", "6:", "6:3,0", "6:30,5"}) {
    CAPTURE(text);
    CHECK(complaint<Duration>(text).help == clock);
  }
  for (const std::string text : {"6 min 60 s", "6.5 min 30 s", "6 s 30 min", "6 min 6 min"}) {
    CAPTURE(text);
    CHECK(complaint<Duration>(text).help == parts);
  }
  CHECK(complaint<Duration>("6 min 30").help.starts_with("a unit is missing"));
  CHECK(pointed_at<Duration>("6 min 30") == "30");
  CHECK(complaint<Duration>("6 min 30 mm").help.starts_with("`mm` measures a length"));
  CHECK(pointed_at<Duration>("6 min 30 mm") == "mm");
  CHECK(complaint<Duration>("6:30 h").help == "minutes and seconds as in `6:30` need no unit");
  CHECK(complaint<Length>("6:30").message == "expected a length, got '6:30'");
  CHECK(complaint<Mass>("300 ml").help == "`ml` measures a volume: weigh it, and use one of g, kg, mg, oz, lb");
}

TEST_CASE("a spread in every form") {
  struct Row {
    std::string text;
    double value, low, high;  // mm
  };
  const Row rows[] = {{"17.2 mm ± 0.05 mm", 17.2, 17.15, 17.25},
                      {"17.2 mm +- 0.05 mm", 17.2, 17.15, 17.25},
                      {"17.2 mm +/- 0.05 mm", 17.2, 17.15, 17.25},
                      {"17.2 ± 0.05 mm", 17.2, 17.15, 17.25},
                      {"17.2 mm ± 0.05", 17.2, 17.15, 17.25},
                      {"17.2mm±0.05mm", 17.2, 17.15, 17.25},
                      {"17.2 mm ± 2 thou", 17.2, 17.1492, 17.2508},
                      {"5/8 in +- 1/64 in", 15.875, 15.478125, 16.271875},
                      {"20 mm +- 10 %", 20, 18, 22},
                      {"-20 mm +- 10 %", -20, -22, -18},
                      {"7..9 mm", 8, 7, 9},
                      {"7 mm .. 9 mm", 8, 7, 9},
                      {"0.5 in..13.3 mm", 13, 12.7, 13.3},
                      {"1/2..3/4 in", 15.875, 12.7, 19.05},
                      {"1 1/2..2 in", 44.45, 38.1, 50.8},
                      {"-3..-1 mm", -2, -3, -1},
                      {".5...7 mm", 0.6, 0.5, 0.7},
                      {"5 mm", 5, 5, 5}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Band<Length> band = parse_band<Length>(row.text);
    CHECK(band.value == near(row.value * mm, 1e-14));
    CHECK(band.low == near(row.low * mm, 1e-14));
    CHECK(band.high == near(row.high * mm, 1e-14));
  }
}

TEST_CASE("whether a spread was written") {
  CHECK(parse_band("5 mm +- 1 mm", kind_of<Length>).has_spread);
  CHECK_FALSE(parse_band("5 mm +- 0 mm", kind_of<Length>).has_spread);
  CHECK_FALSE(parse_band("5 mm", kind_of<Length>).has_spread);
  CHECK_FALSE(parse_band("5..5 mm", kind_of<Length>).has_spread);
}

TEST_CASE("a percentage has its spread in points, any other quantity in shares of itself") {
  const Band<double> share = parse_band<double>("35 % +- 5 %");
  CHECK(share.low == near(0.30, 1e-14));
  CHECK(share.high == near(0.40, 1e-14));
  const Band<double> pure = parse_band<double>("0.7 +- 0.1");
  CHECK(pure.low == near(0.6, 1e-14));
  const Band<double> range = parse_band<double>("30..40 %");
  CHECK(range.high == near(0.40, 1e-14));
  const Band<Pressure> rise = parse_band<Pressure>("60 Pa +- 10 %");
  CHECK(rise.low == near(54.0 * Pa, 1e-14));
  CHECK(rise.high == near(66.0 * Pa, 1e-14));
}

TEST_CASE("a temperature is a point, its spread a difference") {
  struct Row {
    std::string text;
    double value, low, high;  // K
  };
  // hand: t/degC + 273.15; (t/degF + 459.67) x 5/9; a difference of 9 degF is 5 K
  const Row rows[] = {{"15 degC", 288.15, 288.15, 288.15},
                      {"59 degF", 288.15, 288.15, 288.15},
                      {"15 degC +- 2 K", 288.15, 286.15, 290.15},
                      {"15 degC +- 2 degC", 288.15, 286.15, 290.15},
                      {"15 °C ± 2 °C", 288.15, 286.15, 290.15},
                      {"15 +- 2 degC", 288.15, 286.15, 290.15},
                      {"15 degC +- 9 degF", 288.15, 283.15, 293.15},
                      {"59 degF +- 9 degF", 288.15, 283.15, 293.15},
                      {"10..20 degC", 288.15, 283.15, 293.15},
                      {"50 degF..20 degC", 288.15, 283.15, 293.15},
                      {"300 K", 300, 300, 300},
                      {"-40 degC", 233.15, 233.15, 233.15},
                      {"-40 degF", 233.15, 233.15, 233.15}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const WrittenBand band = parse_band(row.text, kind_of<Temperature>);
    CHECK(band.value == near(row.value, 1e-14));
    CHECK(band.low == near(row.low, 1e-14));
    CHECK(band.high == near(row.high, 1e-14));
  }
  CHECK(parse_quantity<TemperatureRise>("15 K") == near(15.0 * K, 0));
  CHECK(complaint<TemperatureRise>("15 degC").help == "a rise or difference is written in K");
  CHECK(complaint<TemperatureRise>("15 C").help == "a rise or difference is written in K");
  CHECK(complaint<Temperature>("15 C").help == "did you mean `degC`?");
  CHECK(complaint<Temperature>("59 F").help == "did you mean `degF`?");
  CHECK(complaint<Temperature>("15 degC +- 10 %").help == "write the spread of a temperature in K");
  CHECK(complaint<Temperature>("-300 degC").help == "this lies below absolute zero");
  CHECK(complaint<Temperature>("10 K +- 20 K").help == "this lies below absolute zero");
}

TEST_CASE("a gauge does not read absolute pressure, and the other way round") {
  for (const std::string& text : std::vector<std::string>{"3 bar", "3 bar g", "3 barg", "3 bar(g)"}) {
    CAPTURE(text);
    CHECK(in(parse_quantity<GaugePressure>(text).above_barometer, bar) == near(3.0, 1e-15));
  }
  CHECK(in(parse_quantity<GaugePressure>("45 psi g").above_barometer, psi) == near(45.0, 1e-15));
  CHECK(in(parse_band<GaugePressure>("3 bar +- 2 psi").high.above_barometer, Pa) ==
        near(3e5 + 2 * 6894.757293168361, 1e-14));
  CHECK(parse_quantity<Pressure>("1.013 bar a") == near(101300.0 * Pa, 1e-15));
  CHECK(complaint<GaugePressure>("3 bar a").message == "expected a gauge pressure, got '3 bar a'");
  CHECK(complaint<GaugePressure>("3 bar a").help ==
        "this is read on a gauge: take the barometer off, write `bar` or `psi`");
  CHECK(complaint<Pressure>("3 bar g").help == "this is not read on a gauge: write it without the `g`");
  CHECK(complaint<Pressure>("45 psig").help == "this is not read on a gauge: write it without the `g`");
}

TEST_CASE("what is not the quantity it should be is refused with the reason and the place") {
  struct Row {
    std::string text, message, help, under;
  };
  const Row rows[] = {
      {"14 V", "expected a length, got '14 V'", "`V` measures a voltage; use one of " + lengths, "V"},
      {"14", "expected a length, got '14'", "a unit is missing; write one of " + lengths, "14"},
      {"9/16", "expected a length, got '9/16'", "a unit is missing; write one of " + lengths, "9/16"},
      {"60 +- 10 %", "expected a length, got '60 +- 10 %'", "a unit is missing; write one of " + lengths, "60 +- 10 %"},
      {"1,000 mm", "expected a length, got '1,000 mm'",
       "a comma before three digits may mean thousands: write 1000 or 1.000", ","},
      {"1,234,5 mm", "expected a length, got '1,234,5 mm'",
       "write one decimal point or comma, and nothing between thousands", ","},
      {"1.234,5 mm", "expected a length, got '1.234,5 mm'",
       "write one decimal point or comma, and nothing between thousands", ","},
      {"17, mm", "expected a length, got '17, mm'", "`, mm` is not a unit known here; use one of " + lengths, ", mm"},
      {"14 mmm", "expected a length, got '14 mmm'", "`mmm` is not a unit known here; did you mean `mm`?", "mmm"},
      {"14 MM", "expected a length, got '14 MM'", "`MM` is not a unit known here; did you mean `mm`?", "MM"},
      {"14 inchs", "expected a length, got '14 inchs'", "`inchs` is not a unit known here; did you mean `in`?",
       "inchs"},
      {"14 parsec", "expected a length, got '14 parsec'", "`parsec` is not a unit known here; use one of " + lengths,
       "parsec"},
      {"mm", "expected a length, got 'mm'", "write a number and a unit (" + lengths + ")", "mm"},
      {"", "expected a length, got ''", "write a number and a unit (" + lengths + ")", ""},
      {"  ", "expected a length, got '  '", "write a number and a unit (" + lengths + ")", " "},
      {"nan mm", "expected a length, got 'nan mm'", "write a number and a unit (" + lengths + ")", "nan mm"},
      {"inf mm", "expected a length, got 'inf mm'", "write a number and a unit (" + lengths + ")", "inf mm"},
      {"1e400 mm", "expected a length, got '1e400 mm'", "the number is out of range", "1e400"},
      {"1e-400 mm", "expected a length, got '1e-400 mm'", "the number is out of range", "1e-400"},
      {"1e308 m +- 1e308 m", "expected a length, got '1e308 m +- 1e308 m'", "the number is out of range",
       "1e308 m +- 1e308 m"},
      {"1e300/1e-300 m", "expected a length, got '1e300/1e-300 m'", "the number is out of range", "1e300/1e-300 m"},
      {"9/0 in", "expected a length, got '9/0 in'", "a fraction needs a number other than 0 below the line", "0"},
      {"17 2 mm", "expected a length, got '17 2 mm'", "write a mixed number as in `1 1/2 in`", " "},
      {"1-1/2 in", "expected a length, got '1-1/2 in'", "write a mixed number as in `1 1/2 in`", "-1/2 in"},
      {"7-9 mm", "expected a length, got '7-9 mm'", "write a range as in `7..9 mm`", "-9 mm"},
      {"7–9 mm", "expected a length, got '7–9 mm'", "write a range as in `7..9 mm`", "–9 mm"},
      {"7 to 9 mm", "expected a length, got '7 to 9 mm'", "write a range as in `7..9 mm`", "to 9 mm"},
      {"1½ in", "expected a length, got '1½ in'", "write a fraction as in `1/2 in` or `1 1/2 in`", "½ in"},
      {"9..7 mm", "expected a length, got '9..7 mm'", "write a range from low to high", "9..7 mm"},
      {"7..9", "expected a length, got '7..9'", "a unit is missing; write one of " + lengths, "7..9"},
      {"7 V..9 mm", "expected a length, got '7 V..9 mm'", "`V` measures a voltage; use one of " + lengths, "V"},
      {"5 mm 6 mm", "expected a length, got '5 mm 6 mm'", "there is more text than one quantity", "6 mm"},
      {"5 mm ± 1 mm ± 2 mm", "expected a length, got '5 mm ± 1 mm ± 2 mm'", "there is more text than one quantity",
       "± 2 mm"},
      {"5 mm +- -1 mm", "expected a length, got '5 mm +- -1 mm'", "a spread is not negative", "-1"},
      {"5 mm +-", "expected a length, got '5 mm +-'", "write a number and a unit (" + lengths + ")", ""},
      {"5 mm +- 1 V", "expected a length, got '5 mm +- 1 V'", "`V` measures a voltage; use one of " + lengths, "V"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    const Complaint c = complaint<Length>(row.text);
    CHECK(c.message == row.message);
    CHECK(c.help == row.help);
    CHECK(pointed_at<Length>(row.text) == row.under);
  }
  CHECK(complaint<double>("x").help == "write a number, as in `3` or `35 %`");
  CHECK(complaint<double>("3 mm").help == "`mm` measures a length; use one of %");
  CHECK(complaint<double>("0.35 +- 10 %").help == "write `35 % +- 5 %` or `0.35 +- 0.05`");
  CHECK(complaint<Length>(std::string(200, '1')).message == "expected a length, got 200 bytes of text");
}

TEST_CASE("gauge numbers are refused where a thickness is meant, and only there") {
  for (const std::string& text :
       std::vector<std::string>{"22 swg", "22 SWG", "22 gauge", "No. 22", "no 22", "#22", "22g", "22 ga", "AWG 22"}) {
    CAPTURE(text);
    try {
      parse_quantity<Length>(text);
      FAIL("accepted");
    } catch (const QuantityError& e) {
      CHECK(e.gauge == 22);
      CHECK(std::string(e.what()) == "expected a length, got the gauge number '" + text + "'");
      CHECK(e.width == text.size());
    }
  }
  CHECK(in(parse_quantity<Mass>("22 g"), g) == near(22.0, 1e-15));
  CHECK(complaint<Voltage>("22 g").message == "expected a voltage, got '22 g'");
  CHECK(complaint<Length>("0.5 g").message == "expected a length, got '0.5 g'");
}

TEST_CASE("the unit that answers come back in is the known symbol") {
  CHECK(parse_band("9/16\"", kind_of<Length>).unit == "in");
  CHECK(parse_band("7..9 millimetres", kind_of<Length>).unit == "mm");
  CHECK(parse_band("15 °C ± 2 K", kind_of<Temperature>).unit == "degC");
  CHECK(parse_band("17.2 ± 0.1 mm", kind_of<Length>).unit == "mm");
  CHECK(parse_band("0.5", kind_of<double>).unit.empty());
  CHECK(parse_band("50 %", kind_of<double>).unit == "%");
}
