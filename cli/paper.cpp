#include "paper.hpp"
#include "files.hpp"
#include "quantity/errors.hpp"
#include "quantity/text.hpp"
#include <algorithm>
#include <fmt/format.h>

namespace lumwright::cli {
namespace {
double stretch_of(std::string_view option, const std::string& measured, Length bar) {
  if (measured.empty()) return 1.0;
  try {
    return drawing::stretch(bar, parse_quantity<Length>(measured));
  } catch (const QuantityError& e) {
    throw UsageError(fmt::format("{} takes what the bar of {:.0f} mm measures on your print, as in \"99.2 mm\": {}",
                                 option, in(bar, mm), e.what()));
  } catch (const ModelError& e) {
    throw UsageError(fmt::format("{}: {}", option, e.what()));
  }
}
}  // namespace

drawing::PrintOptions print_options(const Words& words) {
  return {stretch_of("--scale-x", words.text("--scale-x"), 100.0 * mm), stretch_of("--scale-y", words.text("--scale-y"), 150.0 * mm)};
}
std::string list_of(const std::string& folder, const std::vector<report::NamedText>& files) {
  std::string told = fmt::format("{}:\n", printable_name(folder));
  for (const report::NamedText& file : files) told += fmt::format("  {:<22} {}\n", file.name, file.what);
  const bool templates = std::any_of(files.begin(), files.end(),
                                     [](const report::NamedText& file) { return file.name.ends_with(".pdf"); });
  return told + (templates
                     ? "\nPrint at 100 %, never \"fit to page\". Measure both bars before you trust a template.\n"
                     : "");
}
}  // namespace lumwright::cli
