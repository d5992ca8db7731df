// Writes the report of a description into a folder: report_probe FILE FOLDER [WORLDS [NAME]]. With a NAME, the build is
// called so, and a file of that name is said to lie beside the report.
#include "build/reader.hpp"
#include "report/files.hpp"
#include <cstdlib>
#include <exception>
#include <fstream>
#include <iostream>
#include <iterator>

int main(int argc, char** argv) {
  using namespace lumwright;
  if (argc < 3) return 2;
  try {
    std::ifstream in(argv[1], std::ios::binary);
    Build build = read_build({argv[1], {std::istreambuf_iterator<char>(in), {}}});
    ReportAsked asked;
    if (argc > 3) asked.worlds.count = std::strtoul(argv[3], nullptr, 10);
    std::vector<Beside> beside;
    if (argc > 4) {
      build.name.value = argv[4];
      beside.push_back({argv[4], argv[4]});
    }
    const ReportData data = report_data(build, asked);
    for (const NamedText& file : report_files(data, {}, beside)) {
      std::ofstream out(std::string(argv[2]) + "/" + file.name, std::ios::binary);
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
