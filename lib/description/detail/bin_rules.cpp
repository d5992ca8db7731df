#include "description/detail/bin_rules.hpp"
#include "description/detail/contradictions.hpp"
#include "quantity/words.hpp"
#include <any>
#include <fmt/format.h>
#include <map>
#include <set>
#include <type_traits>

namespace lumwright::description {
namespace {
// Two parts of one type, key by key: what was seen of the first, which is const, fills what is empty in the second.
class HandDown {
 public:
  template <class T, class... Rest>
  void operator()(Field, T& value, Rest&&...) {
    if constexpr (std::is_const_v<T>) {
      seen_.emplace_back(&value);
    } else {
      const T& from = *std::any_cast<const T*>(seen_.at(next_++));
      if (!value && from) value = from;
    }
  }
  template <class Part>
  void section(Field, Part& part) {
    std::remove_const_t<Part>::fields(part, *this);
  }

 private:
  std::vector<std::any> seen_;
  std::size_t next_ = 0;
};

void hand_to(const part::BinShared& top, part::BinShared& engine) {
  HandDown hand;
  part::BinShared::shared_fields(top, hand);
  part::BinShared::shared_fields(engine, hand);
}

const part::BinDrawer* drawer_of(const Bin& bin, const part::BinPack& pack) {
  for (const part::BinDrawer& drawer : bin.drawers)
    if (pack.from && drawer.name && *drawer.name == *pack.from) return &drawer;
  return nullptr;
}
std::string drawer_names(const Bin& bin) {
  std::string names;
  for (const part::BinDrawer& drawer : bin.drawers)
    if (drawer.name) names += (names.empty() ? "" : ", ") + *drawer.name;
  return names.empty() ? "this bin has no drawers" : "the drawers are: " + names;
}

// What only the items of one list show.
class Lists {
 public:
  std::vector<input::Fault> faults;
  void say(input::Position at, std::string key, std::string message, std::string help = "") {
    faults.push_back({at, std::move(key), std::move(message), std::move(help)});
  }
  template <class Item>
  void names(const std::string& list, const std::vector<Item>& items) {
    std::map<std::string, int> first;
    for (std::size_t i = 0; i < items.size(); ++i) {
      const Item& item = items[i];
      const bool forgotten = !item.name && item.name.at.line == 1 && item.name.at.column == 1;  // not merely faulty
      if (forgotten)
        say(item.at, list, fmt::format("{}. of the list: `name` is missing", i + 1), "as in `name: grey fan`");
      if (!item.name) continue;
      const auto [earlier, is_new] = first.emplace(*item.name, item.name.at.line);
      if (!is_new)
        say(item.name.at, list + ".name",
            fmt::format("{}. of the list: '{}' is the name of another one, on line {}", i + 1, *item.name,
                        earlier->second));
    }
  }
  void needs(bool there, const char* list, const char* help) {
    if (!there) say({}, list, "a bin needs at least one of them", help);
  }
};

void packs(const Bin& bin, Lists& out) {
  for (std::size_t i = 0; i < bin.packs.size(); ++i) {
    const part::BinPack& pack = bin.packs[i];
    const std::string item = fmt::format("{}. of the list: ", i + 1);
    if (!pack.from && !pack.cell) out.say(pack.at, "packs", item + "`cell` is missing", "as in `cell: NiMH AA`");
    const part::BinDrawer* drawer = drawer_of(bin, pack);
    if (drawer == nullptr) continue;
    const int takes = pack.series.value.value_or(1) * pack.parallel.value.value_or(1),
              holds = drawer->count.value.value_or(1);
    if (takes > holds)
      out.say(pack.at, "packs",
              fmt::format("{}it takes {} cells, the drawer '{}' on line {} holds {}", item, takes, *drawer->name,
                          drawer->at.line, holds),
              "no cell can be in two places of one pack");
    if (pack.count && takes * *pack.count > holds && takes <= holds)
      out.say(pack.count.at, "packs.count",
              fmt::format("{}{} such packs take {} cells, the drawer '{}' holds {}", item, *pack.count,
                          takes * *pack.count, *drawer->name, holds));
  }
}

void step_ups(const Bin& bin, Lists& out) {
  for (std::size_t i = 0; i < bin.step_ups.size(); ++i) {
    const part::BinStepUp& s = bin.step_ups[i];
    if (s.lower_to && s.output && !(s.lower_to.band->value < s.output.band->value))
      out.say(s.lower_to.at, "step_ups.lower_to",
              fmt::format("{}. of the list: expected less than the output, got no less", i + 1));
  }
}

// The rules of a description, on each part by itself: a combination of sound parts is judged, not refused.
void contradictory(const Bin& bin, Lists& out) {
  std::set<std::pair<std::pair<int, int>, std::string>> said;
  const auto check = [&](const Build& build, const std::string& list, std::string_view part, std::size_t i) {
    for (input::Fault& fault : contradictions(build)) {
      if (!said.insert({{fault.at.line, fault.at.column}, fault.message}).second) continue;
      if (fault.key.starts_with(part)) fault.key = list + fault.key.substr(part.size());
      fault.message = fmt::format("{}. of the list: {}", i + 1, fault.message);
      out.faults.push_back(std::move(fault));
    }
  };
  for (std::size_t i = 0; i < bin.engines.size(); ++i) {
    Build build;
    const part::BinEngine& e = bin.engines[i];
    build.engine = e.engine;
    build.adapter = e.adapter;
    build.supply.control = e.supply.control;
    check(build, "engines.", "", i);
  }
  for (std::size_t i = 0; i < bin.fans.size(); ++i) {
    Build build;
    build.fan = bin.fans[i];
    check(build, "fans", "fan", i);
  }
  for (std::size_t i = 0; i < bin.step_ups.size(); ++i) {
    Build build;
    build.supply.step_up = bin.step_ups[i];
    check(build, "step_ups", "supply.step_up", i);
  }
  for (std::size_t i = 0; i < bin.tubes.size(); ++i) {
    Build build;
    build.adapter.tube = bin.tubes[i];
    check(build, "tubes", "adapter.tube", i);
  }
}
}  // namespace

part::AdapterTube tube_for(const part::AdapterTube& tube, const part::BinEngine& engine) {
  part::AdapterTube whole = tube;
  HandDown hand;
  const part::AdapterTube& usual = engine.adapter.tube;
  part::AdapterTube::fields(usual, hand);
  part::AdapterTube::fields(whole, hand);
  return whole;
}

void hand_down(Bin& bin, std::vector<input::Fault>& faults) {
  for (part::BinEngine& engine : bin.engines) {
    engine.own_box = static_cast<bool>(engine.adapter.box.diameter);
    engine.own_fuse = static_cast<bool>(engine.supply.fuse);
    engine.own_wire = static_cast<bool>(engine.supply.leads.section);
    hand_to(bin, engine);
  }
  for (std::size_t i = 0; i < bin.packs.size(); ++i) {
    part::BinPack& pack = bin.packs[i];
    if (!pack.from) continue;
    const part::BinDrawer* drawer = drawer_of(bin, pack);
    if (drawer == nullptr) {
      faults.push_back({pack.from.at, "packs.from",
                        fmt::format("{}. of the list: there is no drawer '{}'", i + 1, *pack.from), drawer_names(bin)});
      continue;
    }
    if (!pack.cell) pack.cell = drawer->cell;
    if (!pack.condition) pack.condition = drawer->condition;
    if (!pack.capacity) pack.capacity = drawer->capacity;
  }
}

std::vector<input::Fault> bin_faults(const Bin& bin, bool whole) {
  Lists out;
  out.names("fans", bin.fans);
  out.names("drawers", bin.drawers);
  out.names("packs", bin.packs);
  out.names("step_ups", bin.step_ups);
  out.names("tubes", bin.tubes);
  out.names("engines", bin.engines);
  step_ups(bin, out);
  contradictory(bin, out);
  if (!whole) return std::move(out.faults);
  packs(bin, out);
  out.needs(!bin.fans.empty(), "fans", "as in `fans: [ {name: grey fan, kind: axial, frame: 50 mm} ]`");
  out.needs(!bin.packs.empty(), "packs", "as in `packs: [ {name: five AA, cell: NiMH AA, series: 5} ]`");
  out.needs(!bin.tubes.empty() || bin.tubes_from_stock, "tubes", "name some, or write `tubes: stock`");
  out.needs(!bin.engines.empty(), "engines", "as in `engines: [ {name: No 2, engine: {...}} ]`");
  if (out.faults.empty() && combinations(bin) > most_combinations)
    out.say({}, "",
            fmt::format("{} combinations are more than the {} that are looked at: {}", combinations(bin),
                        most_combinations, counted_by_part(bin)),
            "leave out what you would not take anyway, or choose for one engine at a time");
  return std::move(out.faults);
}
}  // namespace lumwright::description
