// SPDX-License-Identifier: MIT
#include "plan/deal.h"

#include <fmt/format.h>

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
  std::vector<Demand::By> pieces(int item, int count) {
    std::vector<Demand::By> out;
    auto& list = items_[item];
    for (; count > 0 && next_item_[item] < list.size();) {
      auto& [unit, left] = list[next_item_[item]];
      const int n = std::min(left, count);
      if (n > 0) out.push_back({unit, item, n});
      left -= n;
      count -= n;
      if (left == 0) ++next_item_[item];
    }
    return out;
  }
  std::vector<Demand::By> unit_of(int case_index) {
    auto& list = cases_[case_index];
    if (next_case_[case_index] == list.size()) return {};
    return {{list[next_case_[case_index]++], -1, 1}};
  }

 private:
  void add(int unit) {
    const Catalogue& c = draft_.catalogue;
    for (const Content& content : c.case_at(unit).holds)
      if (const int i = c.item_index(content.item.value); i >= 0) items_[i].emplace_back(unit, content.count);
    if (draft_.may_serve(unit)) cases_[c.units[static_cast<std::size_t>(unit)].case_index].push_back(unit);
  }
  const Draft& draft_;
  std::map<int, std::vector<std::pair<int, int>>> items_;
  std::map<int, std::vector<int>> cases_;
  std::map<int, std::size_t> next_item_, next_case_;
};

/// Serves one piece of a demand in one way; false when the pieces are gone after all.
bool serve(Pool& pool, const Option& option, Demand& demand) {
  std::vector<Demand::By> got;
  if (option.case_index >= 0) {
    got = pool.unit_of(option.case_index);
    if (got.empty()) return false;
  }
  for (const auto& [item, count] : option.pieces) {
    auto some = pool.pieces(item, count);
    int n = 0;
    for (const auto& by : some) n += by.count;
    got.insert(got.end(), some.begin(), some.end());
    if (n < count) return false;
  }
  demand.by.insert(demand.by.end(), got.begin(), got.end());
  ++demand.covered;
  return true;
}

std::string place_words(const Draft& draft, const std::vector<int>& cases) {
  std::string out;
  for (const int k : cases) {
    const std::string why = not_available(draft, k);
    if (!why.empty()) out += (out.empty() ? "" : "; ") + why;
  }
  return out;
}

/// What is owned that would come nearest: a unit that stays, or the longest piece of the kind.
std::string nearest_owned(const Draft& draft, const DemandGroup& group) {
  const Catalogue& c = draft.catalogue;
  std::vector<int> cases = c.cases_serving(group.what);
  const Item* longest = nullptr;
  for (const int i : c.items_serving(group.what)) {
    const Item& item = c.kit.items[static_cast<std::size_t>(i)];
    if (item.length && (!longest || item.length->value > longest->length->value)) longest = &item;
    for (int k = 0; k < static_cast<int>(c.kit.cases.size()); ++k)
      for (const Content& content : c.kit.cases[static_cast<std::size_t>(k)].holds)
        if (content.item.value == item.code.value) cases.push_back(k);
  }
  std::sort(cases.begin(), cases.end());
  cases.erase(std::unique(cases.begin(), cases.end()), cases.end());
  const std::string staying = place_words(draft, cases);
  if (!staying.empty()) return staying;
  if (group.length && longest && longest->length->value < group.length->value)
    return fmt::format("the longest owned is {} ({})", longest->code.value, longest->name.value);
  return cases.empty() ? "nothing owned serves it" : "all that is owned goes already";
}

/// "input 4 (Ana, voice) asks for vocal-dynamic", "the show asks for table: for the desk".
std::string asking(const Demand& demand) {
  std::string out = demand.because + " asks for " + demand.what;
  if (!demand.reason.empty()) out += ": " + demand.reason;
  return out;
}

void note_short(Draft& draft, const DemandGroup& group, const Demand& demand) {
  const int missing = demand.count - demand.from_site - demand.covered;
  if (missing <= 0) return;
  Shortage s;
  s.what = demand.what;
  s.length = demand.length;
  s.wanted = demand.count;
  s.missing = missing;
  s.because = asking(demand);
  s.place = demand.place;
  s.nearest = nearest_owned(draft, group);
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
    for (int n = demand.from_site; n < demand.count; ++n) {
      while (at[g] < group.used.size() && group.used[at[g]] == 0) ++at[g];
      if (at[g] == group.used.size()) break;
      --group.used[at[g]];
      serve(pool, group.options[at[g]], demand);
    }
    note_short(draft, group, demand);
    for (const Demand::By& by : demand.by) {
      const bool covers = std::binary_search(cover.units.begin(), cover.units.end(), by.unit);
      if (covers) draft.send(by.unit, {Why::demand, asking(demand), demand.place});
    }
  }
}

}  // namespace dunnage
