// Run by the build: draws YAML files out into the constant data that data::tables() hands out.
//   lumwright_embed OUT.cpp FILE...
#include "data/detail/flat_table.hpp"
#include "input/source.hpp"
#include "input/yaml_tree.hpp"
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fmt/format.h>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace {
using namespace lumwright;

std::string literal(std::string_view words) {  // in pieces: one compiler stops at 16 kB a literal
  std::string text;
  for (std::size_t at = 0; at < words.size(); at += 8000)
    text += fmt::format("\n    R\"~~~~({})~~~~\"", words.substr(at, 8000));
  return text.empty() ? "\"\"" : text;
}

std::string drawn_out(const std::filesystem::path& file, std::size_t number) {
  std::ifstream in(file, std::ios::binary);
  if (!in) throw std::runtime_error("cannot read " + file.string());
  const input::Source source{file.string(), {std::istreambuf_iterator<char>(in), {}}};
  std::vector<input::Fault> faults;
  const input::Node root = input::read_yaml(source, faults, 1024 * 1024);
  if (!faults.empty()) throw input::InputError(source, faults);
  const data::FlatTable flat(file.parent_path().filename().string() + "/" + file.filename().string(), root);
  std::string text = fmt::format("constexpr std::string_view words_{} ={};\nconstexpr TableNode nodes_{}[] = {{\n",
                                 number, literal(flat.table().words), number);
  for (const data::TableNode& n : flat.table().nodes)
    text +=
        fmt::format("{{{},{},{},{},{},{},{}}},\n", n.key, n.key_size, n.text, n.text_size, n.children, n.count, n.line);
  return text + fmt::format("}};\nconstexpr std::string_view name_{} = \"{}\";\n", number, flat.table().name);
}

void write(const std::string& out, int count, char** files) {
  std::string text =
                  "// Written by lib/data/embed: do not edit.\n#include \"data/table.hpp\"\n\n"
                  "namespace lumwright::data {\nnamespace {\n",
              all;
  for (int i = 0; i < count; ++i) {
    text += drawn_out(files[i], static_cast<std::size_t>(i));
    all += fmt::format("    {{name_{0}, words_{0}, nodes_{0}}},\n", i);
  }
  text += fmt::format(
      "constexpr Table all[] = {{\n{}}};\n}}  // namespace\n"
      "std::span<const Table> tables() {{ return all; }}\n}}  // namespace lumwright::data\n",
      all);
  std::ofstream to(out, std::ios::binary);
  if (!(to << text).flush()) throw std::runtime_error("cannot write " + out);
}
}  // namespace

int main(int argc, char** argv) {
  try {
    if (argc < 3) throw std::runtime_error("usage: lumwright_embed OUT.cpp FILE...");
    write(argv[1], argc - 2, argv + 2);
    return 0;
  } catch (const std::exception& e) {
    std::fprintf(stderr, "%s\n", e.what());
    return 1;
  }
}
