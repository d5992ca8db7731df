// Writes the report of a description into a folder: report_probe FILE FOLDER [SAMPLES [NAME]]. With a NAME, the build is
// called so, and a file of that name is said to lie beside the report. report_probe choose BIN FOLDER: a choice.
#include "choose/choose.hpp"
#include "description/reader.hpp"
#include "plan/moves.hpp"
#include "report/files.hpp"
#include <cstdlib>
#include <exception>
#include <fstream>
#include <iostream>
#include <iterator>

namespace {
using namespace lumwright;
using namespace lumwright::input;
using namespace lumwright::description;
using namespace lumwright::plan;
using namespace lumwright::choose;
using namespace lumwright::report;
Source read(const char* name) {
  std::ifstream in(name, std::ios::binary);
  return {name, {std::istreambuf_iterator<char>(in), {}}};
}
std::vector<NamedText> report_of(int argc, char** argv) {
  Build build = read_build(read(argv[1]));
  ReportAsked asked;
  if (argc > 3) asked.samples.count = std::strtoul(argv[3], nullptr, 10);
  std::vector<Beside> beside;
  if (argc > 4) {
    build.name.value = argv[4];
    beside.push_back({argv[4], argv[4]});
  }
  ReportData data = report_data(build, asked);
  try_moves(data.assessment, build, asked.units, nullptr, asked.samples);
  return report_files(data, {}, beside);
}
}  // namespace

int main(int argc, char** argv) {
  if (argc < 3) return 2;
  try {
    const bool choosing = argc == 4 && std::string(argv[1]) == "choose";
    const std::string folder = argv[choosing ? 3 : 2];
    for (const NamedText& file :
         choosing ? choice_files(choose::choose(read_bin(read(argv[2]))), {}) : report_of(argc, argv)) {
      std::ofstream out(folder + "/" + file.name, std::ios::binary);
      out << file.text;
      if (!out.flush()) return 1;
      std::cout << file.name << " " << file.text.size() << "\n";
    }
  } catch (const std::exception& e) {
    std::cerr << e.what() << "\n";
    return 1;
  }
  return 0;
}
