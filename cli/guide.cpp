#include "commands.hpp"
#include "files.hpp"
#include "guide/guide_page.hpp"
#include "guide/pages.hpp"
#include "paper.hpp"
#include "progress.hpp"
#include <filesystem>
#include <map>

namespace lumwright::cli {
Answer guide(const Options& options) {
  Progress progress("pages of the guide");
  Facts facts(options.samples);
  const std::vector<NamedText> page = {
      {"guide.html", "the guide, to read", guide_html(facts, "lumwright " LUMWRIGHT_VERSION, progress.watch())}};
  std::map<std::string, std::vector<NamedText>> folders;  // a folder is written in one step
  for (const data::EmbeddedFile& one : shipped_examples()) {
    const std::filesystem::path name(one.name);
    folders[name.parent_path().string()].push_back({name.filename().string(), "", one.text});
  }
  for (const auto& [folder, files] : folders) write_folder(options.folder + "/" + folder, files);
  write_folder(options.folder, page);
  return {list_of(options.folder, page) +
          "  examples/              the examples it shows: try its commands in this folder\n"};
}
}  // namespace lumwright::cli
