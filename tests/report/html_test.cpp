#include "report/html/html.hpp"
#include "description/reader.hpp"
#include "description/writer.hpp"
#include "plan/moves.hpp"
#include "report/detail/moves.hpp"
#include "report/files.hpp"
#include "report/screen.hpp"
#include <chrono>
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>
#include <limits>
#include <pugixml.hpp>
#include <set>
#include <sstream>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::model;
using namespace lumwright::plan;
using namespace lumwright::report;
namespace {
Build build_of(const std::string& name) {
  std::ifstream in(std::string(SOURCE_DIR) + "/examples/" + name + ".yaml", std::ios::binary);
  return read_build({name + ".yaml", {std::istreambuf_iterator<char>(in), {}}});
}
/// The page, read back as XML.
struct Read {
  explicit Read(const std::string& html) {
    REQUIRE(document.load_string(html.c_str(), pugi::parse_default | pugi::parse_doctype));
  }
  pugi::xml_document document;
  template <class F>
  void each(F&& f) const {
    struct Walker : pugi::xml_tree_walker {
      F& f;
      explicit Walker(F& g) : f(g) {}
      bool for_each(pugi::xml_node& node) override {
        f(node);
        return true;
      }
    } walker(f);
    const_cast<pugi::xml_document&>(document).traverse(walker);
  }
  std::string text() const {
    std::string all;
    each([&](pugi::xml_node& node) {
      if (node.type() == pugi::node_pcdata && std::string(node.parent().name()) != "style")
        all += std::string(node.value()) + " ";
    });
    return all;
  }
};
std::string squeezed(std::string text) {  // one blank for each gap, broken or not
  for (std::size_t at = 0; (at = text.find("\u00A0", at)) != std::string::npos;) text.replace(at, 2, " ");
  std::string out;
  std::istringstream in(text);
  for (std::string word; in >> word;) out += (out.empty() ? "" : " ") + word;
  return out;
}
const char* const names[] = {"tarn-beck", "high-tarn-32mm", "great-fell-5in"};
}  // namespace

TEST_CASE("the page is well-formed, and holds nothing that runs, styles an element or is fetched") {
  for (const char* name : names) {
    CAPTURE(name);
    const Build build = build_of(name);
    const std::string html = html_report(report_data(build), {});
    CHECK(html.starts_with("<!DOCTYPE html>\n<html lang=\"en\">"));
    CHECK(html.size() < 400'000);
    const std::set<std::string> never = {"script", "img",  "iframe", "object", "embed",
                                         "link",   "base", "form",   "image",  "use"};
    std::set<std::string> ids, wanted;
    Read(html).each([&](pugi::xml_node& node) {
      CHECK_FALSE(never.contains(node.name()));
      for (const pugi::xml_attribute a : node.attributes()) {
        const std::string key = a.name(), value = a.value();
        CHECK_FALSE(key.starts_with("on"));
        CHECK(key != "style");
        CHECK(value.find("nan") == std::string::npos);
        CHECK(value.find("inf ") == std::string::npos);
        if (key == "id") CHECK_MESSAGE(ids.insert(value).second, value);
        if (key == "href") {
          CHECK((value.starts_with("#") || value.starts_with("./")));
          if (value.starts_with("#")) wanted.insert(value.substr(1));
        }
        if (key == "aria-labelledby") {
          std::istringstream in(value);
          for (std::string id; in >> id;) wanted.insert(id);
        }
        if (value.starts_with("url(#")) wanted.insert(value.substr(5, value.size() - 6));
      }
    });
    for (const std::string& id : wanted) CHECK_MESSAGE(ids.contains(id), id);
  }
}

TEST_CASE("every check, every assumed value, every source and every caution that applies is on the page, in full") {
  for (const char* name : names) {
    CAPTURE(name);
    const Build build = build_of(name);
    const ReportData data = report_data(build);
    const std::string text = squeezed(Read(html_report(data, {})).text());
    const auto has = [&](const std::string& part) {
      CHECK_MESSAGE(text.find(squeezed(part)) != std::string::npos, part);
    };
    REQUIRE(data.assessment.checks.size() > 20);
    REQUIRE(data.assessment.cautions.size() > 5);
    for (const Finding& f : data.assessment.checks) {
      has(f.title);
      has(f.why);
      has(f.action);
      has(f.basis.source);
    }
    for (const Assumed& one : data.assessment.assumed) {
      has(one.key);
      has(one.value);
      has(one.basis.source);
    }
    for (const Caution& one : data.assessment.cautions) {
      has(one.title);
      has(one.text);
      has(one.authority);
    }
  }
}

TEST_CASE("the page has the six answers of the screen, and the changes that were tried") {
  for (const char* name : names) {
    CAPTURE(name);
    const Build build = build_of(name);
    SamplesAsked few;
    few.count = 32;
    ReportData data = report_data(build, {.units = UnitSystem::as_written, .tuning = nullptr, .samples = few});
    try_moves(data.assessment, build, UnitSystem::as_written, nullptr, few);
    const Read page(html_report(data, {}));
    const std::string screen = squeezed(screen_report(data.assessment, {}, "mine.yaml"));
    int answers = 0, moves = 0;
    page.each([&](pugi::xml_node& item) {
      const std::string list = item.parent().attribute("class").value();
      if (list != "answers" || std::string(item.name()) != "li") return;
      ++answers;
      std::string told = item.child("h2").child_value();
      for (const char* look : {"figure", "small-print"})
        told += std::string(" ") + item.find_child_by_attribute("p", "class", look).child_value();
      CHECK_MESSAGE(screen.find(squeezed(told)) != std::string::npos, told);
    });
    CHECK(answers == 6);
    const std::string text = squeezed(page.text());
    for (const Finding& f : data.assessment.checks)
      if (f.move) {
        ++moves;
        CHECK_MESSAGE(text.find(squeezed(move_text(f, {}))) != std::string::npos, f.id);
      }
    CHECK((moves > 0 || std::string(name) == "tarn-beck"));
  }
}

TEST_CASE("what can kill is told first and unfolded; checks, numbers and the description are folded") {
  const Build build = build_of("tarn-beck");
  ReportData data = report_data(build);
  data.program = "lumwright 9.8.7";
  const Read page(html_report(data, {}));
  std::string folded, first;
  std::set<std::string> unfolded;
  page.each([&](pugi::xml_node& node) {
    bool within = false;
    for (pugi::xml_node up = node.parent(); up; up = up.parent())
      within = within || std::string(up.name()) == "details";
    if (within && node.type() == pugi::node_pcdata) folded += std::string(node.value()) + "\n";
    if (std::string(node.name()) == "details") CHECK(!node.attribute("open"));
    if (std::string(node.attribute("class").value()).starts_with("caution") && std::string(node.name()) == "li") {
      CHECK_FALSE(within);
      const std::string title = node.child("h3").child_value();
      if (first.empty()) first = title;
      unfolded.insert(title + node.child("p").child_value());
    }
  });
  CHECK(first == "Carbon monoxide");
  for (const Caution& one : data.assessment.cautions) CHECK_MESSAGE(unfolded.contains(one.title + one.text), one.id);
  CHECK(folded.find("lumwright 9.8.7") != std::string::npos);
  std::istringstream lines(write_build(build));
  for (std::string line; std::getline(lines, line);) CHECK_MESSAGE(folded.find(line + "\n") != std::string::npos, line);
}

TEST_CASE("hostile text stays text, in the page and in the pictures") {
  const char* const hostile[] = {"<script>alert(1)</script>", "\"><img src=x onerror=1>",
                                 "=cmd()|' /C calc'!A0",      "a\nb\r\n# c",
                                 "\u202Egnol \u2066x",        "煙突 Καμινάδα",
                                 "]]> --> <![CDATA[",         "&lt;b&gt; &amp;"};
  Build build = build_of("tarn-beck");
  for (const std::string name : hostile) {
    CAPTURE(name);
    build.name.value = name;
    build.file = name + ".yaml";
    const Read page(html_report(report_data(build), {}, {{name, name}}));
    int scripts = 0;
    page.each([&](pugi::xml_node& node) {
      scripts += std::string(node.name()) == "script" || std::string(node.name()) == "img";
    });
    CHECK(scripts == 0);
    const std::string title =
        page.document.child("html").child("body").child("header").child("div").child("div").child("h1").child_value();
    if (name.find('\n') == std::string::npos && name.find("\u202E") == std::string::npos) CHECK(title == name);
    CHECK(title.find('\n') == std::string::npos);
    CHECK(title.find("\u202E") == std::string::npos);
  }
  build.name.value = std::string(100'000, 'W');
  CHECK(Read(html_report(report_data(build), {})).text().size() > 100'000);
}

TEST_CASE("the page forbids the browser everything that it does not need") {
  const Build build = build_of("tarn-beck");
  const std::string html = html_report(report_data(build), {});
  CHECK(html.find("default-src 'none'; style-src 'unsafe-inline'") != std::string::npos);
  CHECK(html.find("http:") == std::string::npos);
  CHECK(html.find("https:") == std::string::npos);
}

TEST_CASE("a description that says little still makes a page, which says what is lacking") {
  const Build build = read_build({"x.yaml", "engine: { chimney: { bore: 17.6 mm, depth: 30 mm } }\n"});
  const std::string text = squeezed(Read(html_report(report_data(build), {})).text());
  CHECK(text.find("Not drawn: the description lacks") != std::string::npos);
  CHECK(text.find("adapter.tube.outside") != std::string::npos);
  CHECK(Read(html_report(ReportData{}, {})).text().size() > 100);
}

TEST_CASE("a number that is not finite is our mistake and never drawn") {
  const Build build = build_of("tarn-beck");
  ReportData data = report_data(build);
  data.draught.value.own().hot.path[3].pressure = std::numeric_limits<double>::quiet_NaN() * Pa;
  CHECK_THROWS_AS(html_report(data, {}), std::logic_error);
}

TEST_CASE("the same description gives the same bytes, in every system of units, fast enough to wait for") {
  const Build build = build_of("tarn-beck");
  const auto begin = std::chrono::steady_clock::now();
  const std::vector<NamedText> files = report_files(report_data(build), {});
  CHECK(std::chrono::steady_clock::now() - begin < std::chrono::seconds(1));
  const std::vector<NamedText> again = report_files(report_data(build), {});
  REQUIRE(files.size() == again.size());
  for (std::size_t i = 0; i < files.size(); ++i) CHECK(files[i].text == again[i].text);
  CHECK(files.front().name == "report.html");
  const std::string imperial =
      html_report(report_data(build, {.units = UnitSystem::imperial}), {.units = UnitSystem::imperial});
  CHECK(imperial.find("suction, inH2O") != std::string::npos);
}
