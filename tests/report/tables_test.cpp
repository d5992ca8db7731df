#include "report/detail/tables.hpp"
#include "description/writer.hpp"
#include "report/../plan/describe.hpp"
#include "report/detail/csv.hpp"
#include "report/detail/markdown.hpp"
#include "report/six_answers.hpp"
#include "specimen.hpp"
#include <doctest/doctest.h>
#include <fmt/format.h>
#include <limits>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;

TEST_CASE("a spreadsheet finds no formula in a cell") {  // OWASP, CSV injection: = + - @ tab and carriage return
  struct Row {
    std::string text, cell;
  };
  const Row rows[] = {{"=cmd()", "'=cmd()"},
                      {"+1+1", "'+1+1"},
                      {"-2+3", "'-2+3"},
                      {"@SUM(A1)", "'@SUM(A1)"},
                      {"\t=1", "'\t=1"},
                      {"\r=1", "\"'\r=1\""},
                      {"-0.5", "-0.5"},
                      {"-1e-05", "-1e-05"},
                      {"plain", "plain"},
                      {"a,b", "\"a,b\""},
                      {"say \"x\"", "\"say \"\"x\"\"\""},
                      {"two\nlines", "\"two\nlines\""},
                      {"", ""},
                      {"=1,2", "\"'=1,2\""},
                      {"-", "'-"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(csv_cell(row.text) == row.cell);
  }
  CHECK(csv_line({"a", "=b", "-1"}) == "a,'=b,-1\n");
}

TEST_CASE("the table of checks has the gravest first, in SI with its units") {
  Assessment a = specimen();
  a.checks[0].title = "=HYPERLINK(\"x\")";
  const std::string text = checks_csv(a);
  CHECK(text.starts_with(
      "id,title,verdict,value,value_unit,bound,limit,limit_unit,limit_name,holds,why,do,source,standing,missing\n"));
  CHECK(text.find("\nfit.hot,\"Tube in the chimney, hot\",fail,-1.2e-05,m,at least,3e-05,m,to pass,,") <
        text.find("\npower.fuse,"));
  CHECK(text.find("draught.flow,\"'=HYPERLINK(\"\"x\"\")\",pass,0.0004,kg/s,at least,0.00025,kg/s,to pass,") !=
        std::string::npos);
  CHECK(text.find("supply.pack.cell fan.rated.current\n") != std::string::npos);
  a.checks[1].value->quantity.si = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS(checks_csv(a), std::logic_error);
}

TEST_CASE("no text becomes Markdown") {  // CommonMark 0.31: backslash escapes, entities
  struct Row {
    std::string text, shown;
  };
  const Row rows[] = {{"<script>", "&lt;script&gt;"},
                      {"a|b", "a\\|b"},
                      {"*x* _y_", "\\*x\\* \\_y\\_"},
                      {"[a](b)", "\\[a\\](b)"},
                      {"# not a heading", "\\# not a heading"},
                      {"- item", "\\- item"},
                      {"1. item", "1\\. item"},
                      {"12.5 mm", "12.5 mm"},
                      {"7.", "7\\."},
                      {"2) item", "2\\) item"},
                      {"2)x", "2)x"},
                      {"past_bed", "past_bed"},
                      {"_a_ b_", "\\_a\\_ b\\_"},
                      {"well!", "well!"},
                      {"two\nlines", "two lines"},
                      {"a & b", "a &amp; b"},
                      {"http://x", "http&#58;//x"},
                      {"    code", "code"},
                      {"`x`", "\\`x\\`"},
                      {"\u202Egnol", "?gnol"},
                      {"3 - 2", "3 - 2"}};
  for (const Row& row : rows) {
    CAPTURE(row.text);
    CHECK(markdown_text(row.text) == row.shown);
  }
  for (const char* harmless : {"1. item", "7.", "0.403 g/s", "- item", "+-0", "= 3"})  // behind other words
    CHECK(markdown_text(harmless, Stands::behind_words) == harmless);
  CHECK(markdown_text("# *x*", Stands::behind_words) == "\\# \\*x\\*");
}
TEST_CASE("a report in Markdown escapes no point, and its description can be copied out") {
  const Build build = example("tarn-beck");
  ReportData data = report_data(build);
  data.program = "lumwright 9.8.7";
  const std::string text = markdown_report(data, {});
  CHECK(text.find("\\.") == std::string::npos);
  CHECK(text.find("\n```yaml\n" + write_build(build) + "```\n") != std::string::npos);
  CHECK(text.find("lumwright 9.8.7") != std::string::npos);
  for (const ChiefAnswer& one : six_answers(data.assessment, {}))
    CHECK(text.find(fmt::format("| {} | {} | {} |", one.title, one.figure, one.band)) != std::string::npos);
  data.build->name.value = "a```b";
  CHECK(markdown_report(data, {}).find("\n````yaml\n") != std::string::npos);
}

TEST_CASE("the Markdown report holds verdict, answers, checks, assumed values and cautions") {
  ReportData data;
  data.assessment = specimen();
  data.assessment.build = "<script>alert(1)</script>";
  const std::string text = markdown_report(data, {});
  CHECK(text.starts_with("# &lt;script&gt;alert(1)&lt;/script&gt;\n\n**Out of doors only: carbon monoxide**\n\n**Water first, then the "
                         "fire**\n\n**fail**: "));
  for (const std::string part :
       {"## Every check, the gravest first", "### fail: Tube in the chimney, hot \\[fit.hot\\]",
        "- do: take a tube that is 0.05 mm smaller", "| engine.leakage.past_bed | 25 % | 10 % .. 40 % |",
        "Raise steam out of doors and nowhere else.", "- write: supply.pack.cell, fan.rated.current"})
    CHECK_MESSAGE(text.find(part) != std::string::npos, part);
  CHECK(text.find("fail: Tube") < text.find("watch: The fuse"));
}
