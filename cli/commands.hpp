// The commands: each takes the options and gives what to print and the status to leave with.
#pragma once
#include "exit_status.hpp"
#include "options.hpp"
#include "report/no_answer.hpp"
#include <string>

namespace lumwright::cli {
struct Answer {
  std::string text;
  ExitStatus status = fine;
};
Answer check(const Options& options);
Answer sweep(const Options& options);
Answer compare(const Options& options);
Answer explain(const Options& options);
Answer trace(const Options& options);
Answer tune(const Options& options);
Answer report(const Options& options);
Answer guide(const Options& options);
Answer choose(const Options& options);
Answer bench(const Options& options);
Answer draw(const Options& options);
Answer sheet(const Options& options);
Answer create(const Options& options);  // `new`
Answer units(const Options& options);
Answer schema(const Options& options);
Answer completion(const Options& options);
Answer help(const Options& options);
Answer version(const Options& options);
}  // namespace lumwright::cli
