#include "quantity/sound.hpp"
#include "quantity/format.hpp"
#include <fmt/format.h>

namespace lumwright {
namespace {
std::string text(AnyQuantity q) {  // not format_number: it may be NaN
  const std::string number = fmt::format("{:.6g}", q.si);
  return q.kind == kind_of<double> ? number : number + " " + si_symbol(q.kind);
}
}  // namespace

void refuse_unsound(std::string_view element, std::string_view what, AnyQuantity value,
                    std::initializer_list<Operand> inputs) {
  std::string from;
  for (const Operand& input : inputs)
    from += fmt::format("{}{} {}", from.empty() ? " from " : ", ", input.name, text(input.value));
  throw UnsoundNumber(fmt::format("{}: {} came to {}{}", element, what, text(value), from));
}
}  // namespace lumwright
