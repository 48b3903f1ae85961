// SPDX-License-Identifier: MIT
#include "plan/cover_model.h"

#include <algorithm>
#include <cmath>

namespace dunnage {

namespace {

constexpr double none = IntegerModel::no_limit;
/// Metres by which a chain may fall short in the sum: less than any tape measure tells.
constexpr double touching = 1e-6;

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
void see_holders(Build& b, int item) {
  for (const Holder& holder : b.holders[item]) see_case(b, holder.case_index);
}

std::size_t add_group(Build& b, const Asked& asked) {
  const std::size_t g = find_group(b.cover.groups, asked);
  if (g < b.cover.groups.size()) return g;
  DemandGroup group;
  group.kind = asked;
  Servings servings = servings_of(b.draft.catalogue, asked);
  group.options = std::move(servings.options);
  group.chains = std::move(servings.chains);
  for (const Option& option : group.options) {
    for (const auto& unit : option.units) see_case(b, unit.first);
    for (const auto& piece : option.pieces) see_holders(b, piece.first);
  }
  for (const Chain& chain : group.chains) {
    for (const Chain::Kind& kind : chain.kinds)
      if (kind.item < 0)
        see_case(b, kind.case_index);
      else
        see_holders(b, kind.item);
    if (chain.joint >= 0) see_holders(b, chain.joint);
  }
  b.cover.groups.push_back(std::move(group));
  return g;
}

/// Every group and every case that could have a part, following what candidates themselves would need.
void gather(Build& b) {
  const Catalogue& c = b.draft.catalogue;
  for (int k = 0; k < static_cast<int>(c.kit.cases.size()); ++k)
    for (const Content& content : case_of(b, k).holds)
      if (const int i = c.item_index(content.item.value); i >= 0)
        b.holders[i].push_back({k, content.count, measure_left(c.kit.items[static_cast<std::size_t>(i)], content)});
  for (const Demand& demand : b.draft.demands)
    b.cover.groups[add_group(b, kind_of(demand))].asked += demand.count - demand.from_site;
  for (std::size_t next = 0; next < b.case_queue.size(); ++next)
    for (const Need& need : case_of(b, b.case_queue[next]).needs) {
      if (const int k = c.case_index(need.code.value); k >= 0)
        see_case(b, k);
      else
        add_group(b, {need.code.value, Way::each, {}, {}, {}});
    }
  std::sort(b.case_queue.begin(), b.case_queue.end(),
            [&](int x, int y) { return case_of(b, x).code.value < case_of(b, y).code.value; });
}

void add_candidates(Build& b) {
  for (const int k : b.case_queue) {
    const auto [first, last] = units_of(b, k);
    for (int u = first; u < last; ++u) {
      if (b.draft.goes(u) || !b.draft.available(u)) continue;
      const UnitMass mass = b.draft.catalogue.mass_of(u);
      const long grams = mass.known ? std::lround(mass.mass / unit::gram) : 0;
      auto& mine = b.by_case[k];
      const auto at = std::find_if(mine.begin(), mine.end(), [&](std::size_t i) {
        return b.candidates[i].grams == grams && b.candidates[i].weight_known == mass.known;
      });
      if (at != mine.end()) {
        b.candidates[*at].units.push_back(u);
        continue;
      }
      mine.push_back(b.candidates.size());
      b.candidates.push_back({k, {u}, grams, mass.known, 0, -1});
    }
  }
  double unknown = 1;
  for (const Candidate& candidate : b.candidates)
    unknown += static_cast<double>(candidate.grams) * static_cast<double>(candidate.units.size());
  for (Candidate& candidate : b.candidates) {
    candidate.burden = candidate.weight_known ? static_cast<double>(candidate.grams) : unknown;
    candidate.column = b.model.add(0, static_cast<double>(candidate.units.size()));
  }
}

/// What a case needs once is shared by all its units: called for by the first that goes, and by none where one does
/// already.
void add_any_columns(Build& b) {
  for (const auto& [k, mine] : b.by_case) {
    const auto& needs = case_of(b, k).needs;
    if (std::none_of(needs.begin(), needs.end(), [](const Need& need) { return need.once > 0; })) continue;
    const auto [first, last] = units_of(b, k);
    bool called = false;
    for (int u = first; u < last; ++u) called = called || b.draft.goes(u);
    if (called) continue;
    const int any = b.any_column[k] = b.model.add(0, 1);
    for (const std::size_t i : mine)
      b.model.rows.push_back(
          {-none, 0, {{b.candidates[i].column, 1}, {any, -static_cast<double>(b.candidates[i].units.size())}}});
  }
}

int add_missing(Build& b, double most) {
  const int column = b.model.add(0, most);
  b.missing_columns.push_back(column);
  return column;
}

/// A serving counts all sources from which it alone takes, so that it needs no column of its own.
std::map<Source, int> takers(const Build& b) {
  std::map<Source, int> out;
  for (const DemandGroup& group : b.cover.groups) {
    for (const Option& option : group.options) {
      for (const auto& unit : option.units) ++out[{Source::Kind::units, unit.first}];
      for (const auto& piece : option.pieces) {
        ++out[{Source::Kind::pieces, piece.first}];
        ++out[{Source::Kind::measure, piece.first}];
        // By the measure a piece is no longer whole, so that what asks for whole ones takes both.
        if (group.kind.way == Way::measured) --out[{Source::Kind::pieces, piece.first}];
      }
    }
    for (const Chain& chain : group.chains) {
      for (const Chain::Kind& kind : chain.kinds)
        for (const auto which : {Source::Kind::pieces, Source::Kind::measure, Source::Kind::units})
          out[{which, which == Source::Kind::units ? kind.case_index : kind.item}] += 2;
      for (const auto which : {Source::Kind::pieces, Source::Kind::measure}) out[{which, chain.joint}] += 2;
    }
  }
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : case_of(b, candidate.case_index).needs)
      if (const int k = b.draft.catalogue.case_index(need.code.value); k >= 0) out[{Source::Kind::units, k}] += 2;
  return out;
}

/// What is used up may be asked for whole and by the measure, so that both are held at once (item_rows).
bool counted_directly(const DemandGroup& group, const Option& option, const std::map<Source, int>& taken) {
  const auto source = single_source(group, option);
  if (!source || group.kind.length) return false;  // with a length, waste is counted by option
  if (taken.at(*source) != 1) return false;
  return source->kind != Source::Kind::pieces || taken.at({Source::Kind::measure, source->index}) == 1;
}

/// What candidates would add to what a group is asked for.
std::vector<Term> calls_of(const Build& b, const DemandGroup& group) {
  std::vector<Term> out;
  const Catalogue& c = b.draft.catalogue;
  if (group.kind.way != Way::each || group.kind.length || c.case_index(group.kind.what) >= 0) return out;
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : case_of(b, candidate.case_index).needs)
      if (need.code.value == group.kind.what && need.each > 0) out.emplace_back(candidate.column, need.each);
  for (const auto& [k, any] : b.any_column)
    for (const Need& need : case_of(b, k).needs)
      if (need.code.value == group.kind.what && need.once > 0) out.emplace_back(any, need.once);
  return out;
}

/// No more chains than pieces.
int owned_pieces(const Build& b, const Chain& chain) {
  double sum = 0;
  for (const Chain::Kind& kind : chain.kinds) {
    const Source source =
        kind.item < 0 ? Source{Source::Kind::units, kind.case_index} : Source{Source::Kind::pieces, kind.item};
    sum += supply_going(b, source);
    for (const auto& [column, each] : supply_added(b, source))
      sum += each * b.model.columns[static_cast<std::size_t>(column)].upper;
  }
  return static_cast<int>(std::min(sum, 1e6));
}

void add_chain_uses(Build& b, std::size_t g, IntegerModel::Row& served) {
  const DemandGroup& group = b.cover.groups[g];
  for (std::size_t n = 0; n < group.chains.size(); ++n) {
    const Chain& chain = group.chains[n];
    const double reach = group.kind.length ? group.kind.length->value.si() : 0;
    for (int copy = 0; copy < std::min(group.asked, owned_pieces(b, chain)); ++copy) {
      ChainUse use{g, n, b.model.add(0, 1), {}};
      IntegerModel::Row reaches{0, none, {{use.used, touching - reach}}}, few{-none, 0, {{use.used, -chain.most}}};
      for (const Chain::Kind& kind : chain.kinds) {
        const double most = chain.most > 0 ? chain.most : std::max(1.0, steps_up(reach / kind.length.si() - 1e-9));
        use.pieces.push_back(b.model.add(0, most));
        reaches.terms.emplace_back(use.pieces.back(), std::min(kind.length.si(), reach));
        few.terms.emplace_back(use.pieces.back(), 1);
      }
      b.model.rows.push_back(std::move(reaches));
      if (chain.most > 0) b.model.rows.push_back(std::move(few));
      // Chains that are alike are used in order: no other order is tried.
      if (copy > 0) b.model.rows.push_back({0, none, {{b.chain_uses.back().used, 1}, {use.used, -1}}});
      served.terms.emplace_back(use.used, 1);
      b.chain_uses.push_back(std::move(use));
    }
  }
}

/// Each group: what its ways serve, and what is missing, make what is asked and what candidates need.
void demand_rows(Build& b) {
  const auto taken = takers(b);
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g) {
    const DemandGroup& group = b.cover.groups[g];
    IntegerModel::Row row{static_cast<double>(group.asked), none, {}};
    double most = group.asked;
    b.called.push_back(calls_of(b, group));
    for (const auto& [column, each] : b.called.back()) {
      row.terms.emplace_back(column, -each);
      most += each * b.model.columns[static_cast<std::size_t>(column)].upper;
    }
    b.option_columns.emplace_back();
    for (const Option& option : group.options) {
      const bool direct = counted_directly(group, option, taken);
      b.option_columns.back().push_back(direct ? Build::direct : b.model.add(0, most));
      if (!direct) {
        row.terms.emplace_back(b.option_columns.back().back(), 1);
        continue;
      }
      const auto added = supply_added(b, *single_source(group, option));
      row.terms.insert(row.terms.end(), added.begin(), added.end());
      row.low -= supply_going(b, *single_source(group, option));
    }
    add_chain_uses(b, g, row);
    row.terms.emplace_back(add_missing(b, most), 1);
    if (row.low > 0 || !b.called.back().empty()) b.model.rows.push_back(std::move(row));
  }
}

/// Metres or litres that one piece of an item is worth.
double worth(const Item& item) {
  if (item.each_volume) return steps_up(item.each_volume->value / unit::litre);
  return item.each ? steps_up(item.each->value / unit::metre) : 0;
}

using SourceRows = std::map<Source, IntegerModel::Row>;

void take_pieces(const Build& b, SourceRows& rows, int item, int column, double count) {
  rows[{Source::Kind::pieces, item}].terms.emplace_back(column, count);
  const double each = worth(b.draft.catalogue.kit.items[static_cast<std::size_t>(item)]);
  if (each > 0) rows[{Source::Kind::measure, item}].terms.emplace_back(column, count * each);
}

void take_options(const Build& b, SourceRows& rows) {
  for (std::size_t g = 0; g < b.cover.groups.size(); ++g)
    for (std::size_t o = 0; o < b.cover.groups[g].options.size(); ++o) {
      const int column = b.option_columns[g][o];
      if (column == Build::direct) continue;
      for (const auto& [k, count] : b.cover.groups[g].options[o].units)
        rows[{Source::Kind::units, k}].terms.emplace_back(column, count);
      for (const auto& [item, count] : b.cover.groups[g].options[o].pieces)
        if (b.cover.groups[g].kind.way == Way::measured)
          rows[{Source::Kind::measure, item}].terms.emplace_back(column, 1);
        else
          take_pieces(b, rows, item, column, count);
    }
}

void take_chains(const Build& b, SourceRows& rows) {
  for (const ChainUse& use : b.chain_uses) {
    const Chain& chain = b.cover.groups[use.group].chains[use.chain];
    for (std::size_t n = 0; n < chain.kinds.size(); ++n) {
      if (chain.kinds[n].item < 0)
        rows[{Source::Kind::units, chain.kinds[n].case_index}].terms.emplace_back(use.pieces[n], 1);
      else
        take_pieces(b, rows, chain.kinds[n].item, use.pieces[n], 1);
      if (chain.joint >= 0) take_pieces(b, rows, chain.joint, use.pieces[n], 1);
    }
    if (chain.joint >= 0) take_pieces(b, rows, chain.joint, use.used, -1);  // one joint fewer than pieces
  }
}

double owned(const Build& b, int k) {
  double sum = 0;
  if (const auto mine = b.by_case.find(k); mine != b.by_case.end())
    for (const std::size_t i : mine->second) sum += static_cast<double>(b.candidates[i].units.size());
  return sum;
}

/// A unit that is needed goes if it can: short are needs only where all that there are go.
void let_short(Build& b, int k, IntegerModel::Row& row) {
  double needed = -row.high - owned(b, k);
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : case_of(b, candidate.case_index).needs)
      if (b.draft.catalogue.case_index(need.code.value) == k && k != candidate.case_index)
        needed += need.each * static_cast<double>(candidate.units.size());
  if (needed <= 0) return;
  const int missing = add_missing(b, needed), all = b.model.add(0, 1);
  row.terms.emplace_back(missing, -1);
  b.model.rows.push_back({-none, 0, {{missing, 1}, {all, -needed}}});
  for (const std::size_t i : b.by_case[k])
    b.model.rows.push_back(
        {0, none, {{b.candidates[i].column, 1}, {all, -static_cast<double>(b.candidates[i].units.size())}}});
}

/// No more is used than goes: of an item pieces by count, and of what is used up the measure too, so that a roll that
/// is asked for whole is not cut from; of a case whole units, by demands or by what candidates need.
void source_rows(Build& b) {
  SourceRows rows;
  take_options(b, rows);
  take_chains(b, rows);
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : case_of(b, candidate.case_index).needs)
      if (const int k = b.draft.catalogue.case_index(need.code.value);
          k >= 0 && k != candidate.case_index && need.each > 0)
        rows[{Source::Kind::units, k}].terms.emplace_back(candidate.column, need.each);
  for (auto& [source, row] : rows) {
    row.low = -none;
    row.high = supply_going(b, source);
    for (const auto& [column, each] : supply_added(b, source)) row.terms.emplace_back(column, -each);
    if (source.kind == Source::Kind::units) let_short(b, source.index, row);
    b.model.rows.push_back(std::move(row));
  }
}

/// A case that needs another once: if any unit of it goes, so many of the other do, or all that there are.
void once_rows(Build& b) {
  for (const auto& [needing, any] : b.any_column)
    for (const Need& need : case_of(b, needing).needs) {
      const int k = b.draft.catalogue.case_index(need.code.value);
      if (need.once <= 0 || k < 0 || k == needing) continue;
      double wanted = need.once;
      const auto [first, last] = units_of(b, k);
      for (int u = first; u < last; ++u) wanted -= b.draft.goes(u) && !b.draft.spare(u);
      if (wanted <= 0) continue;
      const double there = std::min(wanted, owned(b, k));
      if (wanted > there)
        b.model.rows.push_back({0, none, {{any, there - wanted}, {add_missing(b, wanted - there), 1}}});
      IntegerModel::Row row{0, none, {{any, -there}}};
      for (const std::size_t i : b.by_case[k]) row.terms.emplace_back(b.candidates[i].column, 1);
      b.model.rows.push_back(std::move(row));
    }
}

/// A column stands in a row once, and a source that holds more than a row asks for does no more than what asks for all
/// of it.
void settle(IntegerModel::Row& row) {
  std::map<int, double> sum;
  for (const auto& [column, each] : row.terms) sum[column] += each;
  row.terms.assign(sum.begin(), sum.end());
  std::erase_if(row.terms, [](const Term& t) { return t.second == 0; });
  const bool covers = row.high >= none && row.low > 0 &&
                      std::all_of(row.terms.begin(), row.terms.end(), [](const Term& t) { return t.second >= 0; });
  if (covers)
    for (Term& term : row.terms) term.second = std::min(term.second, row.low);
}

}  // namespace

std::size_t group_of(const std::vector<DemandGroup>& groups, const Demand& demand) {
  return find_group(groups, kind_of(demand));
}

std::optional<Source> single_source(const DemandGroup& group, const Option& option) {
  if (option.units.size() + option.pieces.size() != 1) return std::nullopt;
  if (!option.units.empty())
    return option.units[0].second == 1 ? std::optional(Source{Source::Kind::units, option.units[0].first})
                                       : std::nullopt;
  if (option.pieces[0].second != 1) return std::nullopt;
  return Source{group.kind.way == Way::measured ? Source::Kind::measure : Source::Kind::pieces, option.pieces[0].first};
}

Build build_model(const Draft& draft) {
  Build b{draft, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}};
  gather(b);
  add_candidates(b);
  add_any_columns(b);
  demand_rows(b);
  source_rows(b);
  once_rows(b);
  for (IntegerModel::Row& row : b.model.rows) settle(row);
  return b;
}

}  // namespace dunnage
