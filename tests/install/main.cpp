// An outside program that uses the installed library: reads a description, prints the verdict.
#include "description/reader.hpp"
#include "plan/assess.hpp"
#include <cstdio>

int main() {
  const lumwright::Build build = lumwright::read_build(
      {"inline", "engine: { chimney: { bore: 20 mm } }\nadapter: { tube: { outside: 19.5 mm } }\n"});
  const lumwright::Assessment assessment = lumwright::assess(build);
  const lumwright::Finding* fit = lumwright::find_check(assessment, "fit.hot");
  std::printf("%s\n", fit == nullptr ? "no such check" : lumwright::verdict_word(fit->verdict));
  return fit == nullptr;
}
