// Reads a description, asks how long steam takes with three settings of its step-up, and prints what each gives.
#include "description/reader.hpp"
#include "description/settings.hpp"
#include "input/source.hpp"
#include "plan/assess.hpp"
#include "quantity/format.hpp"
#include <cstdio>
#include <fstream>
#include <iterator>

int main(int count, char** words) {
  if (count != 2) return std::fputs("usage: will_it_steam BUILD.yaml\n", stderr), 2;
  std::ifstream file(words[1], std::ios::binary);
  const std::string text{std::istreambuf_iterator<char>(file), {}};
  try {
    const lumwright::description::Build build = lumwright::description::read_build({words[1], text});
    for (const char* volts : {"9 V", "10.5 V", "12 V"}) {
      const lumwright::description::Build set =
          lumwright::description::with_settings(build, {{"supply.step_up.output", volts}});
      const lumwright::plan::Assessment answer = lumwright::plan::assess(set);
      const lumwright::model::Result* steam = lumwright::plan::find_result(answer, "raise.to_own_blower");
      std::printf("%s: %s, steam after %s\n", volts, lumwright::plan::verdict_word(answer.verdict),
                  steam
                      ? lumwright::format(std::get<lumwright::model::Measure>(steam->value).quantity, "min", 2).c_str()
                      : "never");
    }
  } catch (const lumwright::input::InputError& fault) {  // every fault of the file, with its place
    return std::fputs(fault.what(), stderr), 2;
  }
}
