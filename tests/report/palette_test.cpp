// The colours of the page, read from its style sheet, against what is published about eyes.
#include "report/html/style.hpp"
#include <algorithm>
#include <array>
#include <cmath>
#include <doctest/doctest.h>
#include <map>
#include <stdexcept>
#include <string>

using namespace lumwright;
using namespace lumwright::report;
namespace {
using Rgb = std::array<double, 3>;  // linear light
using Palette = std::map<std::string, Rgb>;

double linear(int byte) {  // IEC 61966-2-1, sRGB
  const double c = byte / 255.0;
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}
Palette palette_from(std::string_view css) {
  Palette found;
  const std::string_view block = css.substr(0, css.find('}'));
  for (std::size_t at = 0; (at = block.find("--", at)) != std::string_view::npos;) {
    const std::size_t colon = block.find(':', at);
    const std::string name(block.substr(at + 2, colon - at - 2)), hex(block.substr(block.find('#', colon) + 1, 6));
    const auto byte = [&](std::size_t i) { return linear(std::stoi(hex.substr(i, 2), nullptr, 16)); };
    found[name] = {byte(0), byte(2), byte(4)};
    at = colon;
  }
  return found;
}
std::string_view of_sheet(std::string_view from) {
  return std::string_view(html::style_sheet()).substr(html::style_sheet().find(from));
}
Palette light() { return palette_from(html::style_sheet()); }
Palette dark() {
  return palette_from(of_sheet("(prefers-color-scheme: dark)"));
}
Palette paper() { return palette_from(of_sheet("@media print")); }

double luminance(const Rgb& c) {
  return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2];
}  // WCAG 2.2, relative luminance
double contrast(const Rgb& a, const Rgb& b) {  // WCAG 2.2, contrast ratio
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}
using Matrix = std::array<double, 9>;
Rgb seen(const Matrix& m, const Rgb& c) {
  Rgb out{};
  for (std::size_t i = 0; i < 3; ++i)
    out[i] = std::clamp(m[3 * i] * c[0] + m[3 * i + 1] * c[1] + m[3 * i + 2] * c[2], 0.0, 1.0);
  return out;
}
// Machado, Oliveira and Fernandes 2009, table of severity 1.0 (from memory)
const std::map<std::string, Matrix> eyes = {
    {"all cones", {1, 0, 0, 0, 1, 0, 0, 0, 1}},
    {"no red cone", {0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998}},
    {"no green cone", {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881}},
    {"no blue cone", {1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900}}};
double difference(const Rgb& a, const Rgb& b) {  // CIE 1976 L*a*b*, white D65
  const auto lab = [](const Rgb& c) {
    const auto f = [](double t) { return t > 216.0 / 24389.0 ? std::cbrt(t) : (24389.0 / 27.0 * t + 16.0) / 116.0; };
    const double x = f((0.4124564 * c[0] + 0.3575761 * c[1] + 0.1804375 * c[2]) / 0.95047), y = f(luminance(c)),
                 z = f((0.0193339 * c[0] + 0.1191920 * c[1] + 0.9503041 * c[2]) / 1.08883);
    return std::array<double, 3>{116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)};
  };
  const auto p = lab(a), q = lab(b);
  return std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}
}  // namespace

TEST_CASE("words have a contrast of 4.5 and lines of 3 on every ground that they stand on") {
  for (const Palette& p : {light(), dark(), paper()}) {
    REQUIRE(p.size() >= 12);
    for (const char* ground : {"paper", "card"}) {
      CAPTURE(ground);
      for (const char* words : {"ink", "faint", "good", "care", "bad", "link"}) {
        CAPTURE(words);
        CHECK(contrast(p.at(words), p.at(ground)) >= 4.5);
      }
    }
    for (const char* ground : {"paper", "stripe"})
      for (const char* line : {"hot", "cold", "grey", "ink"}) {
        CAPTURE(line);
        CHECK(contrast(p.at(line), p.at(ground)) >= 3.0);
      }
  }
}

TEST_CASE("the colours of lines stay apart for eyes that lack one cone") {
  // twenty units of L*a*b*: a just noticeable difference is about two (Mahy and others 1994, from memory)
  for (const Palette& p : {light(), dark(), paper()})
    for (const auto& [eye, matrix] : eyes) {
      CAPTURE(eye);
      const std::array lines = {"hot", "cold", "ink", "grey"};
      for (std::size_t i = 0; i < lines.size(); ++i)
        for (std::size_t k = i + 1; k < lines.size(); ++k) {
          CAPTURE(lines[i]);
          CAPTURE(lines[k]);
          CHECK(difference(seen(matrix, p.at(lines[i])), seen(matrix, p.at(lines[k]))) >= 20.0);
        }
    }
}

TEST_CASE("the style sheet is written so that HTML and XML read the same") {
  CHECK(html::style_sheet().find_first_of("<>&") == std::string_view::npos);
}
