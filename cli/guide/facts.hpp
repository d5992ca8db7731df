// What the pages of the guide are filled with: the shipped examples, and what the commands say of them.
#pragma once
#include "choose/choose.hpp"
#include "exit_status.hpp"
#include "plan/report_data.hpp"
#include "shelf.hpp"
#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
/// What a command printed, and the status it left with.
struct Said {
  std::string text;
  ExitStatus status;
};
/// "check mine.yaml --set fuel.bed=\"30 mm\"" as the words that a shell would hand over.
std::vector<std::string> shell_words(std::string_view line);

class Facts {
 public:
  /// The shelf holds the examples, as files called examples/...; every run takes so many samples.
  explicit Facts(std::size_t samples);
  /// `line` is a command without the name of the program. What it writes stays on the shelf.
  Said run(const std::string& line);
  /// An example by its name, "tarn-beck", judged as `check` judges it.
  const plan::ReportData& example(const std::string& name);
  /// The choice from a bin by its name, "tarn-beck-shed", without samples.
  const choose::Choice& choice(const std::string& name);
  /// A file on the shelf. Throws std::logic_error where there is none.
  const std::string& file(const std::string& name) const;
  /// The text with every {{...}} in it replaced by what it stands for; see DEVELOPERS.md, "A page of the guide". Throws
  /// std::logic_error for one that stands for nothing.
  std::string filled(std::string_view text);
  /// 1, 2, 3: the number of the next screen that is shown.
  std::size_t next_screen() { return ++screens_; }

 private:
  struct Example {
    description::Build build;
    plan::ReportData data;
  };
  Said run_anew(const std::string& line);
  std::string fact(const std::vector<std::string>& words);
  std::string written(const std::string& example, const std::string& key) const;

  std::size_t samples_, screens_ = 0;
  Shelf shelf_{};
  std::optional<std::pair<std::string, Said>> last_{};  // two cuts of one long page stand one after the other
  std::map<std::string, std::unique_ptr<Example>> examples_{};
  std::map<std::string, choose::Choice> choices_{};
};
}  // namespace lumwright::cli
