// SPDX-License-Identifier: MIT
#include "plan/cover_model.h"

#include <algorithm>
#include <cmath>

namespace dunnage {

namespace {

constexpr double none = IntegerModel::no_limit;

template <class Q>
bool same(const Maybe<Q>& a, const Maybe<Q>& b) {
  return a.has_value() == b.has_value() && (!a || a->value == b->value);
}

std::size_t find_group(const std::vector<DemandGroup>& groups, const Asked& asked) {
  for (std::size_t g = 0; g < groups.size(); ++g) {
    const Asked& k = groups[g].kind;
    if (k.what == asked.what && k.way == asked.way && same(k.length, asked.length) && same(k.bears, asked.bears))
      return g;
  }
  return groups.size();
}

Asked kind_of(const Demand& d) { return {d.what, d.way, d.length, d.bears, d.unit}; }

void see_case(Build& b, int k) {
  if (b.cases_seen.insert(k).second) b.case_queue.push_back(k);
}

std::size_t add_group(Build& b, const Asked& asked) {
  const std::size_t g = find_group(b.cover.groups, asked);
  if (g < b.cover.groups.size()) return g;
  DemandGroup group;
  group.kind = asked;
  group.options = options_for(b.draft.catalogue, asked);
  for (const Option& option : group.options) {
    for (const auto& unit : option.units) see_case(b, unit.first);
    for (const auto& piece : option.pieces)
      for (const Holder& holder : b.holders[piece.first]) see_case(b, holder.case_index);
  }
  b.cover.groups.push_back(std::move(group));
  return g;
}

/// Every group and every case that could have a part, following what candidates themselves would need.
void gather(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  for (int k = 0; k < static_cast<int>(c.kit.cases.size()); ++k)
    for (const Content& content : c.kit.cases[static_cast<std::size_t>(k)].holds)
      if (const int i = c.item_index(content.item.value); i >= 0)
        b.holders[i].push_back({k, content.count, measure_left(c.kit.items[static_cast<std::size_t>(i)], content)});
  for (const Demand& demand : b.draft.demands)
    b.cover.groups[add_group(b, kind_of(demand))].asked += demand.count - demand.from_site;
  for (std::size_t next = 0; next < b.case_queue.size(); ++next)
    for (const Need& need : c.kit.cases[static_cast<std::size_t>(b.case_queue[next])].needs) {
      if (const int k = c.case_index(need.code.value); k >= 0)
        see_case(b, k);
      else
        add_group(b, {need.code.value, Way::each, {}, {}, {}});
    }
  std::sort(b.case_queue.begin(), b.case_queue.end(), [&](int x, int y) {
    return c.kit.cases[static_cast<std::size_t>(x)].code.value < c.kit.cases[static_cast<std::size_t>(y)].code.value;
  });
}

void add_candidates(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  for (const int k : b.case_queue) {
    if (c.kit.cases[static_cast<std::size_t>(k)].spare_for) continue;
    const auto [first, last] = c.units_of[static_cast<std::size_t>(k)];
    for (int u = first; u < last; ++u) {
      if (b.draft.goes(u) || !b.draft.available(u)) continue;
      const UnitMass mass = c.mass_of(u);
      const long grams = std::lround(mass.mass / unit::gram);
      auto& mine = b.by_case[k];
      const auto at =
          std::find_if(mine.begin(), mine.end(), [&](std::size_t i) { return b.candidates[i].grams == grams; });
      if (at != mine.end()) {
        b.candidates[*at].units.push_back(u);
        continue;
      }
      mine.push_back(b.candidates.size());
      b.candidates.push_back({k, {u}, grams, mass.known, -1});
    }
  }
  for (Candidate& candidate : b.candidates)
    candidate.column = b.model.add(static_cast<double>(candidate.grams), static_cast<double>(candidate.units.size()));
}

int add_missing(Build& b, double most) {
  const int column = b.model.add(0, most);
  b.missing_columns.push_back(column);
  return column;
}

/// What units that go anyway supply of an item: pieces, or metres or litres.
double supply_going(const Build& b, int item, bool measured) {
  const auto at = b.holders.find(item);
  double sum = 0;
  if (at == b.holders.end()) return sum;
  for (const Holder& holder : at->second) {
    const auto [first, last] = b.draft.catalogue.units_of[static_cast<std::size_t>(holder.case_index)];
    for (int u = first; u < last; ++u)
      if (b.draft.goes(u) && !b.draft.spare(u)) sum += measured ? holder.measure : holder.count;
  }
  return sum;
}
int free_units(const Draft& draft, int case_index) {
  const auto [first, last] = draft.catalogue.units_of[static_cast<std::size_t>(case_index)];
  int sum = 0;
  for (int u = first; u < last; ++u) sum += draft.goes(u) && draft.may_serve(u) && !draft.spare(u);
  return sum;
}

/// Each group: what its options serve, and what is missing, make what is asked and what candidates need.
void demand_rows(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g) {
    DemandGroup& group = b.cover.groups[g];
    IntegerModel::Row row{static_cast<double>(group.asked), static_cast<double>(group.asked), {}};
    double most = group.asked;
    for (const Candidate& candidate : b.candidates)
      for (const Need& need : c.kit.cases[static_cast<std::size_t>(candidate.case_index)].needs)
        if (group.kind.way == Way::each && !group.kind.length && need.code.value == group.kind.what &&
            c.case_index(need.code.value) < 0) {
          const int each = need.each + need.once;  // `once` as if each: never too little
          row.terms.emplace_back(candidate.column, -each);
          most += each * static_cast<double>(candidate.units.size());
        }
    b.option_columns.emplace_back();
    for (std::size_t o = 0; o < group.options.size(); ++o) {
      b.option_columns.back().push_back(b.model.add(0, most));
      row.terms.emplace_back(b.option_columns.back().back(), 1);
    }
    row.terms.emplace_back(add_missing(b, most), 1);
    b.model.rows.push_back(std::move(row));
  }
}

/// Metres or litres that one piece of an item is worth.
double worth(const Item& item) {
  if (item.each_volume) return steps_up(item.each_volume->value / unit::litre);
  return item.each ? steps_up(item.each->value / unit::metre) : 0;
}

/// No more of an item is used than goes: pieces by count, and what is used up by measure too, so that a roll that
/// is asked for whole is not cut from.
void item_rows(Build& b) {
  std::map<std::pair<int, bool>, IntegerModel::Row> rows;
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g)
    for (std::size_t o = 0; o < b.cover.groups[g].options.size(); ++o)
      for (const auto& [item, count] : b.cover.groups[g].options[o].pieces) {
        const bool measured = b.cover.groups[g].kind.way == Way::measured;
        const int column = b.option_columns[g][o];
        if (measured) {
          rows[{item, true}].terms.emplace_back(column, 1);
          continue;
        }
        rows[{item, false}].terms.emplace_back(column, count);
        const double each = worth(b.draft.catalogue.kit.items[static_cast<std::size_t>(item)]);
        if (each > 0) rows[{item, true}].terms.emplace_back(column, count * each);
      }
  for (auto& [key, row] : rows) {
    row.low = -none;
    row.high = supply_going(b, key.first, key.second);
    for (const Holder& holder : b.holders[key.first])
      for (const std::size_t i : b.by_case[holder.case_index])
        row.terms.emplace_back(b.candidates[i].column, key.second ? -holder.measure : -holder.count);
    b.model.rows.push_back(std::move(row));
  }
}

/// No more whole units of a case are used, by demands or by what candidates need, than go.
void case_rows(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  std::map<int, IntegerModel::Row> rows;
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g)
    for (std::size_t o = 0; o < b.cover.groups[g].options.size(); ++o)
      for (const auto& [k, count] : b.cover.groups[g].options[o].units)
        rows[k].terms.emplace_back(b.option_columns[g][o], count);
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : c.kit.cases[static_cast<std::size_t>(candidate.case_index)].needs)
      if (const int k = c.case_index(need.code.value); k >= 0 && k != candidate.case_index && need.each > 0)
        rows[k].terms.emplace_back(candidate.column, need.each);
  for (auto& [k, row] : rows) {
    row.low = -none;
    row.high = free_units(b.draft, k);
    for (const std::size_t i : b.by_case[k]) row.terms.emplace_back(b.candidates[i].column, -1);
    row.terms.emplace_back(add_missing(b, 1e6), -1);
    b.model.rows.push_back(std::move(row));
  }
}

/// A candidate that needs another case once: if any unit of it goes, so many of the other do.
void once_rows(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : c.kit.cases[static_cast<std::size_t>(candidate.case_index)].needs) {
      const int k = c.case_index(need.code.value);
      if (need.once <= 0 || k < 0) continue;
      int going = 0, owned = 0;
      const auto [first, last] = c.units_of[static_cast<std::size_t>(k)];
      for (int u = first; u < last; ++u) going += b.draft.goes(u);
      for (const std::size_t i : b.by_case[k]) owned += static_cast<int>(b.candidates[i].units.size());
      const int wanted = std::min(need.once - going, owned);
      if (wanted <= 0) continue;
      // wanted * x <= units * (sum of the other): enough to force all `wanted` once x is 1 or more.
      const int any = b.model.add(0, 1);
      const double units = static_cast<double>(candidate.units.size());
      b.model.rows.push_back({-none, 0, {{candidate.column, 1}, {any, -units}}});
      IntegerModel::Row row{0, none, {{any, -static_cast<double>(wanted)}}};
      for (const std::size_t i : b.by_case[k]) row.terms.emplace_back(b.candidates[i].column, 1);
      b.model.rows.push_back(std::move(row));
    }
}

}  // namespace

std::size_t group_of(const std::vector<DemandGroup>& groups, const Demand& demand) {
  return find_group(groups, kind_of(demand));
}

Build build_model(const Draft& draft) {
  Build b{draft, {}, {}, {}, {}, {}, {}, {}, {}, {}};
  gather(b);
  add_candidates(b);
  demand_rows(b);
  item_rows(b);
  case_rows(b);
  once_rows(b);
  return b;
}

}  // namespace dunnage
