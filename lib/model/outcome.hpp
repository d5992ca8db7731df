// A part of the model: solved, or what it lacks, or why there is no physical answer.
#pragma once
#include "quantity/errors.hpp"
#include <memory>
#include <string>
#include <utility>
#include <vector>

namespace lumwright::model {
/// A part that cannot be, in its owner's words: the check that asks after it says so, and all others wait for that one.
struct Refused : ModelError {
  std::string told_by, action;  // id of the check, and what to do
  Refused(std::string check, const std::string& why, std::string what_to_do)
      : ModelError(why), told_by(std::move(check)), action(std::move(what_to_do)) {}
};
/// What was solved for a part, or nothing. Copies share it until one of them asks for its own(). T need not be known where
/// a part is only passed on, so that a file sees the parts that it asks and no others.
template <class T>
class Part {
 public:
  static Part holding(T made) {
    Part part;
    part.made_ = std::make_shared<T>(std::move(made));
    return part;
  }
  explicit operator bool() const { return made_ != nullptr; }
  const T* operator->() const { return made_.get(); }
  const T& operator*() const { return *made_; }
  /// To change it: a copy that nobody shares. There must be something.
  T& own() {
    if (made_.use_count() > 1) made_ = std::make_shared<T>(*made_);
    return *made_;
  }

 private:
  std::shared_ptr<T> made_{};
};
/// What may be passed on unseen; each is defined in a header of its own: model/solved_fan.hpp and so on.
struct SolvedFan;
struct SolvedSupply;
struct SolvedDraught;
struct SolvedFit;
struct SolvedRaise;
struct SolvedLightUps;
struct FanUnit;

template <class T>
struct Outcome {
  Part<T> value{};
  std::vector<std::string> missing{};  // keys
  std::string impossible{};            // why there is no answer
  std::string told_by{}, action{};     // of that: the check that says so, and what to do
  explicit operator bool() const { return static_cast<bool>(value); }
  const T* operator->() const { return value.operator->(); }
  const T& operator*() const { return *value; }
};
}  // namespace lumwright::model
