// SPDX-License-Identifier: MIT
// A kit and a show of a few structs, so that a test states only what it is about.
#pragma once

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

#include "check/rules.h"

namespace dunnage::test {

template <class T>
Maybe<T> given(T value) {
  return Sourced<T>{value, {}};
}
inline Text text(std::string word) { return {std::move(word), {}}; }

/// As the planner of what goes would have it: everything goes where its case says.
inline Plan all_go(const Catalogue& c) {
  Plan plan;
  for (int unit = 0; unit < static_cast<int>(c.units.size()); ++unit) {
    PlanRow row;
    row.unit = unit;
    row.goes = true;
    const UnitMass mass = c.mass_of(unit);
    row.mass = mass.mass;
    row.mass_known = mass.known;
    row.place = c.case_at(unit).place_word;
    row.vehicle = c.case_at(unit).vehicle;
    plan.rows.push_back(row);
  }
  return plan;
}

/// What a finding takes for granted, on one line.
inline std::string assumed(const Finding& finding) { return strung(finding.assumptions, "; ").english(); }
/// All that a finding says to whoever reads it, a line each: outcome and sentence, assumptions, sources, caution.
inline std::string whole(const Finding& finding) {
  std::string out = std::string(name(finding.outcome)) + ": " + finding.says.english();
  if (!finding.assumptions.empty()) out += "\nassumed: " + assumed(finding);
  if (!finding.sources.empty()) out += "\nfrom: " + strung(finding.sources, "; ").english();
  if (!finding.caution.empty()) out += "\nmind: " + finding.caution.english();
  return out;
}

/// A square canopy of 10 ft with four legs and a maker's limit, ten bags, nothing assigned; outdoors.
struct SmallShow {
  Kit kit;
  Show show;
  int bags_a_leg = 0;

  SmallShow() {
    kit.house.units = UnitSystem::us;
    kit.house.meter = "mph";
    Case bag;
    bag.code = text("BAG");
    bag.form = Form::bag;
    bag.count = 20;
    bag.grips = 1;
    bag.weighed = given(30 * unit::pound);
    kit.cases.push_back(bag);
    Structure canopy;
    canopy.code = text("CANOPY");
    canopy.legs = {text("NW"), text("NE"), text("SE"), text("SW")};
    canopy.roof = Roof::four_slope;
    canopy.plan_length = canopy.plan_width = given(10 * unit::foot);
    canopy.eaves = given(7 * unit::foot);
    canopy.peak = given(9 * unit::foot);
    canopy.standing = given(44 * unit::pound);
    canopy.maker_gust = given(35 * unit::mile_per_hour);
    kit.structures.push_back(canopy);
    Use use;
    use.structure = text("CANOPY");
    use.as = text("foh canopy");
    use.under = Under::half_full;
    show.uses.push_back(use);
    show.setting = given<std::string>("outdoor");
    forecast(20 * unit::mile_per_hour);
  }
  void forecast(Speed gust) {
    show.forecast.emplace();
    show.forecast->gust = given(gust);
  }
  Findings check() const {
    const Catalogue catalogue = make_catalogue(kit);
    Plan plan;
    int unit = 0;
    for (int i = 0; i < static_cast<int>(catalogue.units.size()); ++i) {
      PlanRow row;
      row.unit = i;
      row.goes = true;
      plan.rows.push_back(row);
    }
    for (int leg = 0; leg < 4; ++leg)
      for (int n = 0; n < bags_a_leg; ++n) plan.ballast.push_back({0, leg, {}, unit++, {}});
    Findings findings = check_all(catalogue, show, plan);
    for (const Finding& f : findings.list) {  // nothing is said without them, whatever a test is about
      INFO(whole(f));
      CHECK_FALSE(f.sources.empty());
      CHECK_FALSE(f.caution.empty());
    }
    return findings;
  }
  Finding one(std::string_view rule) const {
    for (const Finding& f : check().list)
      if (name(f.rule) == rule && f.subject.index <= 0) return f;
    return {};
  }
  bool told(std::string_view rule) const {
    const Findings all = check();
    return std::any_of(all.list.begin(), all.list.end(), [&](const Finding& f) { return name(f.rule) == rule; });
  }
  CanopyDetail canopy() const { return std::get<CanopyDetail>(one("canopy-ballast").detail); }
};

}  // namespace dunnage::test
