#include "commands.hpp"
#include "described.hpp"
#include "files.hpp"
#include "guide/guide_page.hpp"
#include "guide/pages.hpp"
#include "paper.hpp"
#include "progress.hpp"
#include <filesystem>
#include <map>

namespace lumwright::cli {
namespace {
struct GuideOptions {
  std::string folder;
  std::size_t samples;
};
GuideOptions guide_options(const Words& words) { return {words.text("-o"), samples_of(words)}; }
Answer run_guide(const Words& words) {
  const GuideOptions options = guide_options(words);
  Progress progress("pages of the guide");
  Facts facts(options.samples);
  const std::vector<report::NamedText> page = {
      {"guide.html", "the guide, to read", guide_html(facts, "lumwright " LUMWRIGHT_VERSION, progress.watch())}};
  std::map<std::string, std::vector<report::NamedText>> folders;  // a folder is written in one step
  for (const data::EmbeddedFile& one : shipped_examples()) {
    const std::filesystem::path name(one.name);
    folders[name.parent_path().string()].push_back({name.filename().string(), "", one.text});
  }
  for (const auto& [folder, files] : folders) write_folder(options.folder + "/" + folder, files);
  write_folder(options.folder, page);
  return {list_of(options.folder, page) +
          "  examples/              the examples it shows: try its commands in this folder\n"};
}
}  // namespace

const CommandRow guide_command{
    .word = "guide",
    .usage = "guide",
    .brief = "the way from scrap bin to steam, with pictures",
    .headline = "guide [-o DIR]: from scrap bin to steam, with pictures",
    .about = R"(  Ten short pages: what the thing does, what to look for in the scrap bin, what
  to measure and with what, the first check, what to change, the tube in the
  chimney, drilling, wiring, lighting up, and what to learn afterwards. Every
  figure and picture in it is worked out while it is made, from the examples
  that come with the program; that takes some seconds.
)",
    .below = R"(Example
  lumwright guide -o guide

Exit status: 0, 2 when the folder cannot be written.
)",
    .run = run_guide};
}  // namespace lumwright::cli
