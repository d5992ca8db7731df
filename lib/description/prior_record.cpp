#include "description/prior_record.hpp"
#include "description/detail/part_reader.hpp"
#include "description/part_writer.hpp"

namespace lumwright::description {
namespace {
struct RecordCheck {
  std::vector<input::Fault> faults{};
  bool told = false;
  template <class Q>
  void operator()(const Field& field, const Given<Q>& given, Limits) {
    told = told || given;
    must_be_above_zero(field, given, faults);
    if (given && !given.has_spread)
      faults.push_back({given.at, std::string(field.key), "expected a spread behind the value",
                        fmt::format("as in {}", field.example)});
  }
  void operator()(const Field& field, const Text& text, Allowed) {
    if (!text && text.at.column <= 1)
      faults.push_back({text.at, std::string(field.key), fmt::format("`{}` is missing", field.key),
                        fmt::format("as in `{}: {}`", field.key, field.example)});
  }
  void operator()(const Field&, const Count&, int, int) {}
};
std::vector<input::Fault> faults_of_record(const PriorRecord& record) {
  RecordCheck check;
  PriorRecord::fields(record, check);
  if (!check.told) check.faults.push_back({{}, "", "nothing is told here", "`lumwright priors` writes such a record"});
  return check.faults;
}
}  // namespace

PriorRecord read_prior_record(const input::Source& source) {
  PriorRecord record = read_parts<PriorRecord>(source, "a record of an engine", "heat: 0.86 +- 0.05", faults_of_record);
  record.file = source.name;
  return record;
}
std::string write_prior_record(const PriorRecord& record) {
  PartWriter writer(0);
  PriorRecord::fields(record, writer);
  return "# What one engine has taught, for a club to pool: no names, no days, no sizes. Written by lumwright "
         "priors.\n" +
         writer.out;
}
}  // namespace lumwright::description
