// Writes random builds as files: random_builds COUNT FOLDER. Half keep near the examples of their keys, half are wild.
#include "description/random_build.hpp"
#include <fstream>

int main(int count, char** words) {
  if (count != 3) return 2;
  const unsigned builds = static_cast<unsigned>(std::strtoul(words[1], nullptr, 10));
  for (unsigned seed = 1; seed <= builds; ++seed) {
    std::ofstream file(fmt::format("{}/{}.yaml", words[2], seed));
    file << lumwright::RandomBuild(seed, seed % 2 == 0 ? 0.9 : 0.7, seed % 4 == 3).text();
    if (!file.flush()) return 1;
  }
}
