#include "data/how_measured.hpp"
#include "description/log.hpp"
#include "description/proof.hpp"
#include "description/readings.hpp"
#include "description/ways.hpp"
#include "quantity/words.hpp"
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace lumwright::description {
namespace {
constexpr std::size_t line_width = 80;

/// `text` behind "# ", in lines of a page's width.
std::string remark(const std::string& margin, std::string_view text) {
  std::string out, line = margin + "#";
  for (const std::string_view word : words(text)) {
    if (line.size() + 1 + word.size() > line_width) {
      out += line + '\n';
      line = margin + "#";
    }
    line += " " + std::string(word);
  }
  return out + line + '\n';
}

/// Every key with its meaning and limits and its example behind a `#`, under sections that are there.
struct Example {
  std::string_view name, rows_are;  // what the file is called in it; what a line of its list is
  std::vector<std::string_view> rows;
};
class Writer {
 public:
  Writer(const Example& example, std::string path) : example_(example), path_(std::move(path)) {
    margin_.assign(path_.empty() ? 0 : 2 * words(path_, '.').size(), ' ');
  }
  std::string out{};

  template <class Q>
  void operator()(Field field, const Given<Q>&, Limits limits) {
    key(field, fmt::format(" ({} to {})", limits.low, limits.high));
  }
  void operator()(Field field, const Count&, int least, int most) {
    key(field, fmt::format(" ({} to {})", least, most));
  }
  void operator()(Field field, const Text&, Allowed allowed) {
    key(field, allowed != nullptr ? fmt::format(" (one of: {})", fmt::join(allowed(), ", ")) : "");
  }
  template <class X, class Y>
  void operator()(Field field, const Points<X, Y>&, Limits, Limits) {
    key(field, "");
  }
  template <class Part>
  void section(Field field, const Part& part) {
    out += (margin_.empty() ? "\n" : "") + remark(margin_, field.meaning);
    out += fmt::format("{}{}:\n", margin_, field.key);
    Writer inner(example_, full(field.key));
    Part::fields(part, inner);
    out += inner.out;
  }
  template <class Part>
  void list(Field field, const std::vector<Part>&) {
    const Part one{};
    out += "\n" + remark("", fmt::format("{}; what a line may hold:", example_.rows_are));
    Meanings meanings{};
    Part::fields(one, meanings);
    out += meanings.out;
    out += fmt::format("{}:\n", field.key);
    for (const std::string_view row : example_.rows) out += fmt::format("  #- {}\n", row);
  }

 private:
  struct Meanings {
    std::string out{};
    template <class... Rest>
    void operator()(Field field, Rest&&...) {
      out += remark("", fmt::format("{}: {}, as in {}", field.key, field.meaning, field.example));
    }
  };
  std::string full(std::string_view key) const { return (path_.empty() ? "" : path_ + ".") + std::string(key); }
  void key(Field field, const std::string& limits) {
    std::string meaning(field.meaning);
    if (const std::string how = with_ways(data::how_measured(full(field.key)), FrontEnd::terminal); !how.empty())
      meaning += fmt::format("; {}", how);
    out += remark(margin_, meaning + limits);
    const bool is_name = path_.empty() && field.key == "name";
    out += is_name ? fmt::format("name: {}\n", example_.name)
                   : fmt::format("{}#{}: {}\n", margin_, field.key, field.example);
  }
  const Example& example_;
  std::string path_, margin_;
};
}  // namespace

std::string new_log() {
  const Example example{"first of May",
                        "One line for each time at which you read something, in their order",
                        {"{ time: 0 s, water: 14 degC, fan_current: 0.16 A }", "{ time: 2 min, water: 29 degC }",
                         "{ time: 4 min, water: 58 degC }", "{ time: 6 min, gauge: 0.4 bar, fuel: 11 g }",
                         "{ time: 8 min, gauge: 1.2 bar, smokebox: 1.3 mmH2O }"}};
  Writer writer(example, "");
  const Log empty;
  Log::fields(empty, writer);
  return R"(# What was read while steam was raised: `lumwright tune` learns from it. Everything
# waits behind a `#`, with an example: take the `#` away from what you have read,
# and write your own values over the examples.
#
# Every quantity has its unit and may have a spread, as in 58 degC +- 2 K. The
# best single log is the water from 50 to 90 degC, every minute, its mass weighed.

)" + writer.out;
}
std::string new_proof() {
  const Example example{"first trial", "", {}};
  Writer writer(example, "");
  const Proof empty;
  Proof::fields(empty, writer);
  return R"(# What was read on the finished unit: `lumwright prove` holds it against the plan.
# `lumwright prove FILE` is the sheet that says where, how and in which band each
# should lie. Everything waits behind a `#`, with an example: take the `#` away
# from what you have read, and write your own values over the examples.
#
# Every quantity has its unit and may have a spread, as in 4.2 mmH2O +- 0.5 mmH2O,
# which is then taken for what the instrument is good for.

)" + writer.out;
}
std::string new_fan_readings() {
  const Example example{"my fan",
                        "One line for each plate",
                        {"{ plate: 0 mm, depression: 5.5 mmH2O, voltage: 12.0 V, current: 0.16 A }",
                         "{ plate: 8 mm, depression: 5.0 mmH2O, voltage: 12.0 V }",
                         "{ plate: 12 mm, depression: 4.5 mmH2O, voltage: 12.0 V }",
                         "{ plate: 18 mm, depression: 3.5 mmH2O, voltage: 12.0 V }",
                         "{ plate: 25 mm, depression: 2.0 mmH2O, voltage: 12.0 V }"}};
  Writer writer(example, "");
  const FanReadings empty;
  FanReadings::fields(empty, writer);
  return R"(# A shop-made test of a fan: it sucks at a box, the air comes in through a hole
# in a thin plate, and one U-tube tells pressure and flow at once. Everything
# waits behind a `#`, with an example: take the `#` away from what you have and
# read, and write your own values over the examples. A box has a `diameter` or a
# `width` and a `height`, not both.
#
# Every quantity has its unit and may have a spread, as in 4.5 mmH2O +- 10 %.

)" + writer.out;
}
}  // namespace lumwright::description
