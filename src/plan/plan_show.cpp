// SPDX-License-Identifier: MIT
#include "plan/plan_show.h"

#include <algorithm>
#include <set>

#include "plan/counts.h"
#include "plan/cover.h"
#include "plan/deal.h"
#include "plan/demands.h"
#include "plan/draft.h"
#include "plan/senders.h"

namespace dunnage {

namespace {

bool names(const std::vector<Text>& list, const CaseUnit& unit, const Case& box) {
  return std::any_of(list.begin(), list.end(),
                     [&](const Text& t) { return t.value == unit.code || t.value == box.code.value; });
}

std::string place_of(const Show& show, const CaseUnit& unit, const Case& box) {
  for (const ShowPlace& place : show.places)
    if (names(place.takes, unit, box)) return place.code.value;
  return box.place_word;
}

std::string vehicle_of(const Show& show, const CaseUnit& unit, const Case& box) {
  for (const Load& load : show.loads)
    if (names(load.takes, unit, box)) return load.vehicle.value;
  return box.vehicle;
}

bool matches(const std::vector<Text>& list, const std::string& word, bool by_beginning) {
  if (list.empty()) return true;
  return std::any_of(list.begin(), list.end(), [&](const Text& t) {
    return by_beginning ? !word.empty() && word.rfind(t.value, 0) == 0 : word == t.value;
  });
}

std::string team_of(const Show& show, const PlanRow& row) {
  for (const Team& team : show.teams)
    if (matches(team.homes, row.home, true) && matches(team.places, row.place, false) &&
        matches(team.vehicles, row.vehicle, false))
      return team.name.value;
  return {};
}

/// Why a unit that nothing keeps at home does not go all the same.
Reason why_not(const Draft& draft, int unit) {
  const Case& box = draft.catalogue.case_at(unit);
  if (box.spare_for)
    return {Why::spare, said("nothing that goes has need of it as a spare for {}", box.spare_for->value),
            box.spare_for->place};
  if (box.goes.kind == Goes::Kind::when)
    if (const Sentence why = why_none_holds(draft.catalogue, draft.show, box.goes); !why.empty())
      return {Why::rule, said("its rule does not send it ({}), and what the show asks for is served without it", why),
              box.goes.place};
  if (!box.per.empty())
    return {Why::per,
            said("enough go already ({}), and what the show asks for is served without it",
                 words(draft.catalogue, draft.show, box.per.front())),
            box.per.front().place};
  return {Why::demand, said("it goes only when something asks for it, and what the show asks for is served without it"),
          box.goes.place};
}

/// Where each unit stands, who pulls it, what it weighs.
void finish_rows(Draft& draft) {
  for (PlanRow& row : draft.rows) {
    const CaseUnit& unit = draft.catalogue.units[static_cast<std::size_t>(row.unit)];
    const Case& box = draft.catalogue.case_at(row.unit);
    const UnitMass mass = draft.catalogue.mass_of(row.unit);
    row.mass = mass.mass;
    row.mass_known = mass.known;
    row.estimated = mass.estimated;
    row.home = unit.home;
    row.place = place_of(draft.show, unit, box);
    row.vehicle = vehicle_of(draft.show, unit, box);
    row.team = team_of(draft.show, row);
    if (!row.goes && row.stays.empty()) row.stays.push_back(why_not(draft, row.unit));
  }
}

/// A scale that disagrees with the list is told, since one of them is wrong or something is missing.
void remark_masses(Draft& draft) {
  constexpr double worth_telling = 0.05;
  std::set<int> told;
  for (const PlanRow& row : draft.rows) {
    const UnitMass mass = draft.catalogue.mass_of(row.unit);
    const CaseUnit& unit = draft.catalogue.units[static_cast<std::size_t>(row.unit)];
    if (!row.goes || !unit.weighed || !mass.summed_known || mass.summed.si() <= 0) continue;
    const double gap = (mass.mass - mass.summed) / mass.mass;
    if (std::abs(gap) < worth_telling || !told.insert(unit.case_index).second) continue;
    const UnitSystem system = draft.catalogue.kit.house.units;
    draft.remarks.push_back(said("{}: the scale says {}, its list adds up to {}", unit.code,
                                 print(mass.mass, system, Rounding::up).text(),
                                 print(mass.summed, system, Rounding::up).text()));
  }
}

/// Leaving what something that goes has need of bites; say so.
void remark_left(Draft& draft) {
  for (const Shortage& s : draft.shortages)
    if (s.left_at_home) draft.remarks.push_back(said("{} is left at home, yet {}", s.what, s.because));
}

Plan to_plan(Draft draft, const Cover& cover) {
  finish_rows(draft);
  remark_masses(draft);
  remark_left(draft);
  Plan plan;
  plan.rows = std::move(draft.rows);
  plan.demands = std::move(draft.demands);
  plan.shortages = std::move(draft.shortages);
  plan.cover = cover.report;
  plan.ballast = std::move(draft.ballast);
  plan.inputs = input_needs(draft.catalogue, draft.show, plan.demands);
  plan.remarks = std::move(draft.remarks);
  return plan;
}

}  // namespace

Plan plan_show(const Catalogue& catalogue, const Show& show, double effort) {
  std::vector<SpareCall> spares;
  const std::size_t rounds = catalogue.kit.cases.size() + 1;  // each adds a spare, or is the last
  for (std::size_t round = 0;; ++round) {
    Draft draft(catalogue, show);
    draft.demands = demands_of(catalogue, show);
    send_spares(draft, spares);
    send_brought(draft);
    send_ruled(draft);
    send_structures(draft);
    draft.call_needs();
    const Cover cover = find_cover(draft, effort);
    for (const int unit : cover.units) draft.send_for_cover(unit);
    draft.call_needs();
    std::vector<SpareCall> wanted = spares_wanted(draft);
    if (wanted == spares || round == rounds) {
      deal(draft, cover);
      return to_plan(std::move(draft), cover);
    }
    spares = std::move(wanted);
  }
}

}  // namespace dunnage
