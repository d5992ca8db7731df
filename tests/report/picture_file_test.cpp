// The picture that README shows is the one that the program draws of the example.
#include "report/picture/picture_file.hpp"
#include "description/reader.hpp"
#include "golden.hpp"
#include <pugixml.hpp>

using namespace lumwright;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::report;
namespace {
std::string text_of(const std::string& name) {
  std::ifstream in(std::string(SOURCE_DIR) + "/" + name, std::ios::binary);
  REQUIRE(in);
  return {std::istreambuf_iterator<char>(in), {}};
}
}  // namespace

TEST_CASE("README's picture is drawn anew from the example and stands alone") {
  const std::string name = "examples/tarn-beck.yaml";
  const ReportData data = report_data(read_build({name, text_of(name)}));
  const std::string svg = picture_file(picture_of_unit(data, {}), 340.0);
  check_kept("cli/guide/tarn-beck-unit.svg", svg);
  CHECK(text_of("README.md").find("cli/guide/tarn-beck-unit.svg") != std::string::npos);
  pugi::xml_document read;
  REQUIRE(read.load_string(svg.c_str()));
  CHECK(read.child("svg").attribute("xmlns"));
  CHECK(svg.find("var(") == std::string::npos);
  CHECK(svg.find("<image") == std::string::npos);
}
