#include "asked.hpp"
#include "data/embedded.hpp"
#include "data/first_words.hpp"
#include "data/how_measured.hpp"
#include "description/build.hpp"
#include "description/values.hpp"
#include "description/ways.hpp"
#include "quantity/units.hpp"
#include "report/html/style.hpp"

namespace lumwright::page {
std::span<const data::EmbeddedFile> shipped_examples();  // made by the build

namespace {
/// Visits the fields of a description as its reader does.
class FormLister {
 public:
  FormLister(Json& out, std::string path, bool expert) : out_(out), path_(std::move(path)), expert_(expert) {}

  template <class Q>
  void operator()(description::Field field, const description::Given<Q>&, description::Limits limits) {
    Json& key = add(field, "quantity");
    key["kind"] = kind_name(kind_of<Q>);
    key["units"] = accepted_units(kind_of<Q>);
    key["limits"] = {limits.low, limits.high};
  }
  void operator()(description::Field field, const description::Count&, int least, int most) {
    add(field, "count")["limits"] = {std::to_string(least), std::to_string(most)};
  }
  void operator()(description::Field field, const description::Text&, description::Allowed allowed) {
    Json& key = add(field, allowed != nullptr ? "words" : "text");
    if (allowed != nullptr) key["words"] = allowed();
  }
  template <class X, class Y>
  void operator()(description::Field field, const description::Points<X, Y>&, description::Limits, description::Limits) {
    Json& key = add(field, "table");
    key["kind"] = kind_name(kind_of<X>) + " and " + kind_name(kind_of<Y>);
    key["units"] = accepted_units(kind_of<X>) + "; " + accepted_units(kind_of<Y>);
  }
  void operator()(description::Field field, const description::EfficiencyTable&) { add(field, "table"); }
  template <class Part>
  void section(description::Field field, const Part& part) {
    const std::string path = full(field);
    out_.push_back({{"key", path}, {"form", "part"}, {"meaning", field.meaning}, {"expert", expert_ || field.expert}});
    FormLister inner(out_, path, expert_ || field.expert);
    Part::fields(part, inner);
  }

 private:
  std::string full(const description::Field& field) const { return (path_.empty() ? "" : path_ + ".") + std::string(field.key); }
  Json& add(const description::Field& field, const char* form) {
    const std::string path = full(field);
    out_.push_back({{"key", path},
                    {"form", form},
                    {"meaning", field.meaning},
                    {"example", field.example},
                    {"how", description::with_ways(data::how_measured(path), description::FrontEnd::page)},
                    {"expert", expert_ || field.expert}});
    return out_.back();
  }
  Json& out_;
  std::string path_;
  bool expert_;
};
}  // namespace

Json form() {
  Json keys = Json::array();
  const description::Build empty;
  FormLister lister(keys, "", false);
  description::Build::fields(empty, lister);
  Json examples = Json::array();
  for (const data::EmbeddedFile& file : shipped_examples())
    examples.push_back({{"name", file.name}, {"text", file.text}});
  return {{"keys", std::move(keys)},
          {"examples", std::move(examples)},
          {"first", data::first_words()},
          {"version", LUMWRIGHT_VERSION}};
}
Json style() { return {{"css", report::html::style_sheet()}}; }
}  // namespace lumwright::page
