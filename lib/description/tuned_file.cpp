#include "description/tuned_file.hpp"
#include "description/detail/part_reader.hpp"
#include "description/part_writer.hpp"

namespace lumwright::description {
namespace {
struct ValueCheck {
  std::vector<input::Fault> faults{};
  bool found = false;
  template <class Q>
  void operator()(const Field& field, const Given<Q>& given, Limits) {
    found = found || given;
    must_be_above_zero(field, given, faults);
  }
  void operator()(const Field&, const Text&, Allowed) {}
  template <class Part>
  void section(const Field&, const Part& part) {
    Part::fields(part, *this);
  }
};
std::vector<input::Fault> contradictions_in(const TunedFile& tuned) {
  ValueCheck visitor;
  TunedFile::fields(tuned, visitor);
  if (visitor.found) return visitor.faults;
  return {{{}, "", "nothing is tuned here", "delete the file, or let `lumwright tune` write it anew"}};
}
}  // namespace

TunedFile read_tuned(const input::Source& source) {
  TunedFile tuned = read_parts<TunedFile>(source, "tuned values", "log: first-of-may.yaml", contradictions_in);
  tuned.file = source.name;
  return tuned;
}
std::string write_tuned(const TunedFile& tuned) {
  PartWriter writer(0);
  TunedFile::fields(tuned, writer);
  return "# Written by lumwright tune, from measured lighting-ups. `check` and `explain` take these values in place "
         "of\n"
         "# those of the description beside it. Delete the file to go back.\n" +
         writer.out;
}
std::string write_pooled(const TunedFile& usual) {
  PartWriter writer(0);
  TunedFile::fields(usual, writer);
  return "# Written by lumwright priors, from the records of a club. `tune` and `season` take these values for usual "
         "in "
         "place\n"
         "# of those of the tables. Delete the file to go back.\n" +
         writer.out;
}
}  // namespace lumwright::description
