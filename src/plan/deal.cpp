// SPDX-License-Identifier: MIT
#include "plan/deal.h"

#include <algorithm>
#include <map>

namespace dunnage {

namespace {

/// What is left to hand out, units that go anyway before those of the cover.
class Pool {
 public:
  Pool(const Draft& draft, const Cover& cover) : draft_(draft) {
    std::vector<bool> covering(draft.rows.size(), false);
    for (const int u : cover.units) covering[static_cast<std::size_t>(u)] = true;
    for (const bool later : {false, true})
      for (const PlanRow& row : draft.rows)
        if (row.goes && !row.spare && covering[static_cast<std::size_t>(row.unit)] == later) add(row.unit);
  }

  /// Takes up to `count` pieces of an item.
  std::vector<Demand::By> pieces(int item, int count) { return take(items_[item], next_item_[item], item, count); }
  /// Takes up to so many metres or litres of an item.
  std::vector<Demand::By> measure(int item, int amount) {
    return take(measures_[item], next_measure_[item], item, amount);
  }
  std::vector<Demand::By> whole_units(int case_index, int count) {
    std::vector<Demand::By> out;
    auto& list = cases_[case_index];
    for (; count > 0 && next_case_[case_index] < list.size(); --count)
      out.push_back({list[next_case_[case_index]++], -1, 1});
    return out;
  }

 private:
  using Stock = std::vector<std::pair<int, int>>;  // unit, how much it still has

  static std::vector<Demand::By> take(Stock& stock, std::size_t& next, int item, int count) {
    std::vector<Demand::By> out;
    while (count > 0 && next < stock.size()) {
      auto& [unit, left] = stock[next];
      const int n = std::min(left, count);
      if (n > 0) out.push_back({unit, item, n});
      left -= n;
      count -= n;
      if (left == 0) ++next;
    }
    return out;
  }
  void add(int unit) {
    const Catalogue& c = draft_.catalogue;
    for (const Content& content : c.case_at(unit).holds) {
      const int i = c.item_index(content.item.value);
      if (i < 0) continue;
      items_[i].emplace_back(unit, content.count);
      measures_[i].emplace_back(unit,
                                static_cast<int>(measure_left(c.kit.items[static_cast<std::size_t>(i)], content)));
    }
    if (draft_.may_serve(unit)) cases_[c.units[static_cast<std::size_t>(unit)].case_index].push_back(unit);
  }
  const Draft& draft_;
  std::map<int, Stock> items_, measures_;
  std::map<int, std::vector<int>> cases_;
  std::map<int, std::size_t> next_item_, next_measure_, next_case_;
};

int total(const std::vector<Demand::By>& list) {
  int n = 0;
  for (const Demand::By& by : list) n += by.count;
  return n;
}

/// Serves one piece of a demand in one way; false when the pieces are gone after all.
bool serve(Pool& pool, const Option& option, Demand& demand) {
  std::vector<Demand::By> got;
  auto keep = [&](std::vector<Demand::By> some, int wanted) {
    got.insert(got.end(), some.begin(), some.end());
    return total(some) == wanted;
  };
  for (const auto& [k, count] : option.units)
    if (!keep(pool.whole_units(k, count), count)) return false;
  for (const auto& [item, count] : option.pieces)
    if (!keep(pool.pieces(item, count), count)) return false;
  demand.by.insert(demand.by.end(), got.begin(), got.end());
  ++demand.covered;
  return true;
}

/// Serves one demand from what the cover set aside for its group.
void serve_demand(Pool& pool, DemandGroup& group, std::size_t& at, Demand& demand) {
  for (int rest = demand.count - demand.from_site; rest > 0;) {
    while (at < group.used.size() && group.used[at] == 0) ++at;
    if (at == group.used.size()) return;
    if (group.kind.way == Way::measured) {
      const int amount = static_cast<int>(std::min<long>(group.used[at], rest));
      const auto got = pool.measure(group.options[at].pieces.front().first, amount);
      demand.by.insert(demand.by.end(), got.begin(), got.end());
      demand.covered += total(got);
      group.used[at] -= amount;
      rest -= amount;
    } else {
      --group.used[at];
      --rest;
      serve(pool, group.options[at], demand);
    }
  }
}

Sentence staying_words(const Draft& draft, const std::vector<int>& cases) {
  std::vector<Sentence> out;
  for (const int k : cases) out.push_back(not_available(draft, k));
  return strung(out, "; ");
}

/// Cases that serve what is asked for, or hold an item that does.
std::vector<int> owned_cases(const Catalogue& c, const std::string& what) {
  std::vector<int> cases = c.cases_serving(what);
  for (const int i : c.items_serving(what))
    for (int k = 0; k < static_cast<int>(c.kit.cases.size()); ++k)
      for (const Content& content : c.kit.cases[static_cast<std::size_t>(k)].holds)
        if (content.item.value == c.kit.items[static_cast<std::size_t>(i)].code.value) cases.push_back(k);
  std::sort(cases.begin(), cases.end());
  cases.erase(std::unique(cases.begin(), cases.end()), cases.end());
  return cases;
}

/// What is owned that would come nearest: a unit that stays, or the longest piece of the kind.
Sentence nearest_owned(const Draft& draft, const DemandGroup& group, const std::vector<int>& cases) {
  const Catalogue& c = draft.catalogue;
  const Item* longest = nullptr;
  for (const int i : c.items_serving(group.kind.what)) {
    const Item& item = c.kit.items[static_cast<std::size_t>(i)];
    if (item.length && (!longest || item.length->value > longest->length->value)) longest = &item;
  }
  const Sentence staying = staying_words(draft, cases);
  if (!staying.empty()) return staying;
  if (group.kind.way == Way::each && group.kind.length && longest && longest->length->value < group.kind.length->value)
    return said("the longest owned is {} ({}): stand nearer, or borrow one that reaches", longest->code.value,
                longest->name.value);
  if (cases.empty()) return said("nothing owned serves it: borrow or hire it");
  const bool all_go = std::all_of(cases.begin(), cases.end(), [&](int k) {
    const auto [first, last] = c.units_of[static_cast<std::size_t>(k)];
    for (int u = first; u < last; ++u)
      if (!draft.goes(u)) return false;
    return true;
  });
  return all_go ? said("all that is owned goes already: borrow, hire, or want fewer")
                : said(
                      "more is owned, but it does not serve here or lacks what it needs in turn: borrow, hire, or want "
                      "fewer");
}

/// "input 4 (Ana, voice) asks for vocal-dynamic", "the show asks for table: for the desk".
Sentence asking(const Demand& demand) {
  if (demand.reason.empty()) return said("{} asks for {}", demand.because, demand.what);
  return said("{} asks for {}: {}", demand.because, demand.what, demand.reason);
}

void note_short(Draft& draft, const DemandGroup& group, const Demand& demand) {
  const int missing = demand.count - demand.from_site - demand.covered;
  if (missing <= 0) return;
  Shortage s;
  s.what = demand.what;
  s.length = demand.length;
  s.unit = demand.unit;
  s.wanted = demand.count;
  s.missing = missing;
  s.because = asking(demand);
  s.place = demand.place;
  const std::vector<int> cases = owned_cases(draft.catalogue, group.kind.what);
  s.nearest = nearest_owned(draft, group, cases);
  s.left_at_home = std::any_of(cases.begin(), cases.end(), [&](int k) { return draft.leaves_some(k); });
  draft.shortages.push_back(std::move(s));
}

}  // namespace

void deal(Draft& draft, const Cover& cover) {
  Pool pool(draft, cover);
  std::vector<DemandGroup> groups = cover.groups;
  std::vector<std::size_t> at(groups.size(), 0);  // the option in use, by group
  for (Demand& demand : draft.demands) {
    const std::size_t g = group_of(groups, demand);
    if (g == groups.size()) continue;
    DemandGroup& group = groups[g];
    serve_demand(pool, group, at[g], demand);
    note_short(draft, group, demand);
    for (const Demand::By& by : demand.by) {
      const bool covers = std::binary_search(cover.units.begin(), cover.units.end(), by.unit);
      if (covers) draft.send(by.unit, {Why::demand, asking(demand), demand.place, demand.what});
    }
  }
}

}  // namespace dunnage
