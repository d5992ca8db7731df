// Runs one fuzz target where the compiler has no libFuzzer: replays files, then changes them at random for a while.
// Takes the flags of libFuzzer that the tests use: -runs=N, -max_total_time=S, -seed=N, -max_len=N, -timeout=S,
// -dict=FILE, -artifact_prefix=P.
#include "oracle.hpp"
#include <chrono>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <random>
#include <unistd.h>
#include <vector>

extern "C" void __sanitizer_set_death_callback(void (*)()) __attribute__((weak));

namespace {
using Bytes = std::string;
struct Flags {
  std::map<std::string, std::string> text{};
  long whole(const std::string& name, long otherwise) const {
    const auto found = text.find(name);
    return found == text.end() ? otherwise : std::stol(found->second);
  }
};
Bytes current;
std::string artifact;

void keep_current() {
  std::ofstream(artifact, std::ios::binary) << current;
  std::fprintf(stderr, "the input is kept in %s\n", artifact.c_str());
}
void died(int signal) {
  if (signal == SIGALRM) std::fprintf(stderr, "this input takes too long\n");
  keep_current();
  _exit(77);
}

Bytes contents(const std::filesystem::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}
std::vector<Bytes> seeds_in(const std::string& place) {
  std::vector<Bytes> found;
  if (!std::filesystem::is_directory(place)) return {contents(place)};
  for (const auto& entry : std::filesystem::recursive_directory_iterator(place))
    if (entry.is_regular_file()) found.push_back(contents(entry.path()));
  return found;
}
std::vector<Bytes> dictionary(const std::string& file) {  // lines of "text", with \xNN
  std::vector<Bytes> words;
  std::ifstream in(file);
  for (std::string line; std::getline(in, line);) {
    if (line.size() < 2 || line.front() != '"') continue;
    Bytes word;
    for (std::size_t i = 1; i + 1 < line.size(); ++i) {
      if (line[i] != '\\') {
        word += line[i];
      } else if (line[i + 1] == 'x') {
        word += static_cast<char>(std::stoi(line.substr(i + 2, 2), nullptr, 16));
        i += 3;
      } else {
        word += line[++i];
      }
    }
    words.push_back(std::move(word));
  }
  return words;
}

class Mutator {
 public:
  Mutator(unsigned long seed, std::vector<Bytes> words) : random_(seed), words_(std::move(words)) {}
  Bytes change(const std::vector<Bytes>& from) {
    Bytes text = from[pick(from.size())];
    for (std::size_t n = 1 + pick(4); n > 0; --n) once(text, from);
    return text;
  }

 private:
  std::size_t pick(std::size_t below) { return below == 0 ? 0 : random_() % below; }
  void once(Bytes& text, const std::vector<Bytes>& others) {
    const std::size_t at = pick(text.size() + 1), size = std::min(text.size() - at, 1 + pick(12));
    switch (pick(7)) {
      case 0:
        text.erase(at, size);
        break;
      case 1:
        text.insert(at, 1, static_cast<char>(pick(256)));
        break;
      case 2:
        if (at < text.size()) text[at] = static_cast<char>(text[at] ^ (1 << pick(8)));
        break;
      case 3:
        text.insert(at, text.substr(pick(text.size() + 1), 1 + pick(40)));
        break;
      case 4: {
        const Bytes& other = others[pick(others.size())];
        text.replace(at, size, other.substr(pick(other.size() + 1), 1 + pick(80)));
        break;
      }
      case 5:
        if (!words_.empty()) text.replace(at, size, words_[pick(words_.size())]);
        break;
      default:
        number(text, at);
    }
  }
  void number(Bytes& text, std::size_t at) {  // the next digit becomes another, or many
    at = text.find_first_of("0123456789", at);
    if (at == Bytes::npos) return;
    const char* const values[] = {"0", "1", "9", "00", "1e400", "1e-320", "99999999999", ".", "-1", "0.0001"};
    text.replace(at, 1, values[pick(std::size(values))]);
  }
  std::mt19937_64 random_;
  std::vector<Bytes> words_;
};

void run(const Bytes& input, const Flags& flags) {
  current = input;
  alarm(static_cast<unsigned>(flags.whole("-timeout", 60)));
  LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
  alarm(0);
}
}  // namespace

int main(int argc, char** argv) {
  Flags flags;
  std::vector<Bytes> seeds;
  const std::vector<std::string> arguments(argv + 1, argv + argc);
  for (const std::string& one : arguments) {
    const auto equals = one.find('=');
    if (one.starts_with('-')) {
      flags.text[one.substr(0, equals)] = one.substr(equals + 1);
      continue;
    }
    const auto found = seeds_in(one);
    seeds.insert(seeds.end(), found.begin(), found.end());
  }
  artifact = flags.text["-artifact_prefix"] + "crash-input";
  if (__sanitizer_set_death_callback != nullptr) __sanitizer_set_death_callback(keep_current);
  for (const int signal : {SIGABRT, SIGALRM, SIGSEGV}) std::signal(signal, died);

  for (const Bytes& seed : seeds) run(seed, flags);
  std::uint64_t runs = seeds.size();
  const auto longest = static_cast<std::size_t>(flags.whole("-max_len", 4096));
  const auto begun = std::chrono::steady_clock::now();
  if (seeds.empty()) seeds.emplace_back();
  if (flags.whole("-runs", -1) < 0) {
    Mutator mutator(static_cast<unsigned long>(flags.whole("-seed", 1)), dictionary(flags.text["-dict"]));
    const std::chrono::seconds allowed(flags.whole("-max_total_time", 20));
    while (std::chrono::steady_clock::now() - begun < allowed) {
      run(mutator.change(seeds).substr(0, longest), flags);
      ++runs;
    }
  }
  std::printf("%llu runs, no finding\n", static_cast<unsigned long long>(runs));
  return 0;
}
