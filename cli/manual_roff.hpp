// The manual as a man page.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace lumwright::cli {
struct ManualPage {
  std::string topic, text;  // an empty topic: the first page
};
/// In the language of man pages (roff, the man macros): the first page in sections, then each command's page as it is
/// shown on a terminal.
std::string manual_roff(const std::vector<ManualPage>& pages, std::string_view version);
}  // namespace lumwright::cli
