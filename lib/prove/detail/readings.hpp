// From the keys of a file of readings to the columns of the samples.
#pragma once
#include "description/proof.hpp"
#include "model/result.hpp"
#include "prove/detail/weigh.hpp"
#include <string>
#include <vector>

namespace lumwright::prove {
/// One key of the file, at the place of its row in data::proofs().
struct WrittenReading {
  bool there = false;
  AnyQuantity value{};
  std::string unit{}, word{};
  std::optional<double> sigma{};  // SI, where a spread was written
};
/// In the order of data::proofs(). Throws std::logic_error for a key without a row: our mistake.
std::vector<WrittenReading> written_readings(const description::Proof& proof);
/// Where the word stands among the answers of the paper: 1, 0, -1.
double paper_number(const std::string& word);
/// What kind of quantity a reading is; a pressure for the paper.
Kind kind_of_reading(const data::ProofRow& row);
/// A number of a reading in the unit of the page: suctions as a U-tube shows them.
model::Measure measured(const data::ProofRow& row, double si, const model::Solved& solved);
}  // namespace lumwright::prove
