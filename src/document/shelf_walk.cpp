// SPDX-License-Identifier: MIT
#include "document/shelf_walk.h"

#include <algorithm>

namespace dunnage {

void sort_by_walk(const Catalogue& catalogue, std::vector<const PlanRow*>& rows) {
  std::stable_sort(rows.begin(), rows.end(), [&](const PlanRow* a, const PlanRow* b) {
    if (a->home != b->home) return walks_before(a->home, b->home);
    return walks_before(code_of(catalogue, *a), code_of(catalogue, *b));
  });
}

std::vector<const PlanRow*> rows_to_pull(const Context& context) {
  std::vector<const PlanRow*> rows;
  for (const PlanRow& row : context.plan.rows)
    if (row.goes && (context.only_team.empty() || row.team == context.only_team)) rows.push_back(&row);
  sort_by_walk(context.catalogue, rows);
  return rows;
}

std::vector<Walk> walks(const Context& context) {
  const std::vector<const PlanRow*> rows = rows_to_pull(context);
  std::vector<Walk> out;
  const auto add_walk = [&](const std::string& team, const std::string& printed) {
    Walk walk{printed, {}};
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(walk.rows),
                 [&](const PlanRow* row) { return row->team == team; });
    if (!walk.rows.empty()) out.push_back(std::move(walk));
  };
  for (const Team& team : context.show.teams) add_walk(team.name.value, team.name.value);
  add_walk({}, context.show.teams.empty() ? std::string() : context.words("team.none"));
  return out;
}

std::vector<VehicleLoad> vehicle_loads(const Context& context) {
  const std::vector<const PlanRow*> rows = rows_to_pull(context);
  std::vector<std::string> codes;
  for (const Vehicle& vehicle : context.catalogue.kit.vehicles) codes.push_back(vehicle.code.value);
  codes.emplace_back();
  std::vector<VehicleLoad> loads;
  for (const std::string& code : codes) {
    VehicleLoad load{code, code.empty() ? context.words("vehicle.none") : vehicle_words(context.catalogue, code), {}};
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(load.rows),
                 [&](const PlanRow* row) { return row->vehicle == code; });
    if (!load.rows.empty()) loads.push_back(std::move(load));
  }
  return loads;
}

std::vector<const PlanRow*> by_place(const Show& show, std::vector<const PlanRow*> rows) {
  const auto rank = [&](const PlanRow* row) {
    if (row->place.empty()) return show.places.size() + 1;
    const auto same = [&](const ShowPlace& place) { return place.code.value == row->place; };
    return static_cast<std::size_t>(std::find_if(show.places.begin(), show.places.end(), same) - show.places.begin());
  };
  std::stable_sort(rows.begin(), rows.end(), [&](const PlanRow* a, const PlanRow* b) {
    return rank(a) != rank(b) ? rank(a) < rank(b) : walks_before(a->place, b->place);
  });
  return rows;
}

const std::string& code_of(const Catalogue& catalogue, const PlanRow& row) {
  return catalogue.units[static_cast<std::size_t>(row.unit)].code;
}

PrintedSum sum_of(const std::vector<const PlanRow*>& rows, UnitSystem units) {
  PrintedSum sum(units);
  for (const PlanRow* row : rows) sum.add(*row);
  return sum;
}

}  // namespace dunnage
