// A reader at the page is sent to places of the page, one at a terminal to its commands.
#include "description/reader.hpp"
#include "description/ways.hpp"
#include "plan/moves.hpp"
#include "plan/report_data.hpp"
#include "report/folder.hpp"
#include <doctest/doctest.h>
#include <fstream>
#include <iterator>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::report;
namespace {
std::string file_text(const std::string& name) {
  std::ifstream in(std::string(SOURCE_DIR) + "/" + name, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
struct Written {
  std::string html, markdown, sheet, not_drawn;
};
Written written(const std::string& text, FrontEnd front) {
  const Build build = read_build({"b.yaml", text});
  const plan::SamplesAsked samples{.count = 64};
  const model::Solved solved = plan::solved_to_judge(build, UnitSystem::as_written, nullptr, samples);
  plan::ReportData data = plan::report_data(solved, nullptr, samples);
  plan::try_moves(data.assessment, build, UnitSystem::as_written, nullptr, samples);
  const Folder folder = report_folder(data, solved, {.paper = "A4", .print = {}, .draft = false, .front = front});
  Written out{.html = "", .markdown = "", .sheet = "", .not_drawn = folder.not_drawn};
  for (const NamedText& file : folder.files) {
    if (file.name == "report.html") out.html = file.text;
    if (file.name == "report.md") out.markdown = file.text;
    if (file.name == "sheet.txt") out.sheet = file.text;
    CAPTURE(file.name);
    CHECK(file.text.find("{way ") == std::string::npos);
  }
  return out;
}
/// A weak fan on an engine that it cannot raise steam in: its check names the losses.
std::string slow() {
  std::string text = file_text("examples/tarn-beck.yaml");
  const std::string wish = "steam_within: 11 min";
  return text.replace(text.find(wish), wish.size(), "steam_within: 2 min");
}
}  // namespace

TEST_CASE("the page's report names no command to run") {
  for (const std::string& text :
       {file_text("examples/tarn-beck.yaml"), file_text("examples/high-tarn-32mm.yaml"), slow()}) {
    const Written page = written(text, FrontEnd::page), terminal = written(text, FrontEnd::terminal);
    for (const std::string* one : {&page.html, &page.markdown, &page.sheet, &page.not_drawn})
      for (const char* command : {"`lumwright", "--set", "--samples", "--draft", "--scale", "`explain", "`tune`"}) {
        CAPTURE(command);
        CHECK(one->find(command) == std::string::npos);
      }
    CHECK((terminal.html + terminal.markdown).find("lumwright explain") != std::string::npos);
  }
  CHECK(written(slow(), FrontEnd::page).html.find("the picture \"Where the suction goes\"") != std::string::npos);
  CHECK(written(slow(), FrontEnd::terminal).html.find("`explain draught.flow`") != std::string::npos);
  CHECK(written(file_text("examples/high-tarn-32mm.yaml"), FrontEnd::page).not_drawn.find("tick ") !=
        std::string::npos);
  CHECK(written(file_text("examples/high-tarn-32mm.yaml"), FrontEnd::terminal).not_drawn.find("take --draft") !=
        std::string::npos);
}
TEST_CASE("a way that nobody wrote is our mistake") {
  CHECK(with_ways("a {b} {way log} c", FrontEnd::terminal) == "a {b} a log for `tune` c");
  CHECK_THROWS_AS(with_ways("{way nowhere}", FrontEnd::page), std::logic_error);
}
