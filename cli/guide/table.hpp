// Tables of the guide: side by side on a desk, row under row on a telephone.
#pragma once
#include "report/markup.hpp"
#include <string>
#include <vector>

namespace lumwright::cli {
class GuideTable {
 public:
  GuideTable(report::Tag parent, const std::string& name, std::vector<std::string> headings);
  void begin_row();
  /// The next cell of the row.
  report::Tag cell();

 private:
  std::vector<std::string> headings_;
  report::Tag body_, row_;
  std::size_t next_ = 0;
};
}  // namespace lumwright::cli
