// SPDX-License-Identifier: MIT
#include "export/plan_json.h"

#include <nlohmann/json.hpp>

#include <map>

namespace dunnage {

namespace {

using Json = nlohmann::ordered_json;

double kg(Mass m) { return m / unit::kilogram; }

std::string code_of(const Catalogue& c, int unit) { return c.units[static_cast<std::size_t>(unit)].code; }

Json figure(const Figure& f) {
  struct {
    Json operator()(std::monostate) const { return nullptr; }
    Json operator()(Mass v) const { return {{"value", kg(v)}, {"unit", "kg"}}; }
    Json operator()(Force v) const { return {{"value", v.si()}, {"unit", "N"}}; }
    Json operator()(Speed v) const { return {{"value", v.si()}, {"unit", "m/s"}}; }
    Json operator()(Pressure v) const { return {{"value", v.si()}, {"unit", "Pa"}}; }
    Json operator()(Length v) const { return {{"value", v.si()}, {"unit", "m"}}; }
    Json operator()(Power v) const { return {{"value", v.si()}, {"unit", "W"}}; }
    Json operator()(Current v) const { return {{"value", v.si()}, {"unit", "A"}}; }
    Json operator()(Voltage v) const { return {{"value", v.si()}, {"unit", "V"}}; }
    Json operator()(Temperature v) const { return {{"value", v.in_celsius()}, {"unit", "C"}}; }
    Json operator()(Duration v) const { return {{"value", v.si()}, {"unit", "s"}}; }
    Json operator()(Volume v) const { return {{"value", v / unit::litre}, {"unit", "l"}}; }
    Json operator()(double v) const { return {{"value", v}, {"unit", ""}}; }
  } to_json;
  return std::visit(to_json, f);
}

Json mass_or_null(const PlanRow& row) { return row.mass_known ? Json(kg(row.mass)) : Json(nullptr); }

Json cases(const Catalogue& c, const Plan& plan, UnitSystem units) {
  Json out = Json::array();
  for (const PlanRow& row : plan.rows) {
    if (!row.goes) continue;
    Json because = Json::array();
    for (const Reason& reason : row.reasons) because.push_back(reason.text.english());
    const Printed printed = print(row.mass, units, Rounding::up);
    out.push_back({{"code", code_of(c, row.unit)},
                   {"name", c.case_at(row.unit).name.value},
                   {"mass_kg", mass_or_null(row)},
                   {"estimated", row.estimated},
                   {"printed", row.mass_known ? Json(printed.text()) : Json(nullptr)},
                   {"home", row.home},
                   {"place", row.place},
                   {"team", row.team},
                   {"vehicle", row.vehicle},
                   {"spare", row.spare},
                   {"because", because}});
  }
  return out;
}

Json demands(const Catalogue& c, const Plan& plan) {
  Json out = Json::array();
  for (const Demand& d : plan.demands) {
    Json by = Json::array();
    for (const Demand::By& b : d.by) {
      Json one = {{"unit", code_of(c, b.unit)}, {"count", b.count}};
      if (b.item >= 0) one["item"] = c.kit.items[static_cast<std::size_t>(b.item)].code.value;
      by.push_back(one);
    }
    Json one = {{"what", d.what}, {"wanted", d.count}, {"covered", d.covered}, {"from_site", d.from_site}};
    if (d.length) one["length_m"] = d.length->value.si();
    one["because"] = d.because.english();
    one["by"] = by;
    out.push_back(one);
  }
  return out;
}

Json shortages(const Plan& plan) {
  Json out = Json::array();
  for (const Shortage& s : plan.shortages)
    out.push_back({{"what", s.what}, {"wanted", s.wanted}, {"short", s.missing}, {"because", s.because.english()},
                   {"nearest", s.nearest.english()}, {"where", s.place.words()}});
  return out;
}

Json totals(const Plan& plan, UnitSystem units) {
  Mass sum;
  double printed = 0;
  int count = 0, unknown = 0;
  std::map<std::string, Mass> by_team, by_vehicle;
  std::string unit;
  for (const PlanRow& row : plan.rows) {
    if (!row.goes) continue;
    ++count;
    if (!row.mass_known) ++unknown;
    sum += row.mass;
    by_team[row.team] += row.mass;
    by_vehicle[row.vehicle] += row.mass;
    const Printed p = print(row.mass, units, Rounding::up);
    printed += row.mass_known ? p.value : 0;
    unit = p.unit;
  }
  Json teams = Json::object(), vehicles = Json::object();
  for (const auto& [name, mass] : by_team) teams[name] = kg(mass);
  for (const auto& [name, mass] : by_vehicle) vehicles[name] = kg(mass);
  return {{"units", count},      {"mass_kg", kg(sum)},      {"without_mass", unknown},
          {"by_team", teams},    {"by_vehicle", vehicles},  {"printed", {{"value", printed}, {"unit", unit}}}};
}

Json findings_json(const Findings& findings) {
  Json out = Json::array();
  for (const Finding& f : findings.list)
    out.push_back({{"rule", f.rule}, {"subject", f.subject}, {"outcome", name(f.outcome)},
                   {"measured", figure(f.measured)}, {"limit", figure(f.limit)}, {"says", f.says.english()},
                   {"assumption", f.assumption.english()}, {"source", f.source.english()},
                   {"where", f.place.known() ? Json(f.place.words()) : Json(nullptr)}});
  return out;
}

}  // namespace

std::string plan_json(const Catalogue& catalogue, const Plan& plan, const Findings& findings, UnitSystem units) {
  Json remarks = Json::array();
  for (const Sentence& remark : plan.remarks) remarks.push_back(remark.english());
  const Json out = {{"schema", 1},
                    {"cases", cases(catalogue, plan, units)},
                    {"demands", demands(catalogue, plan)},
                    {"shortages", shortages(plan)},
                    {"totals", totals(plan, units)},
                    {"cover",
                     {{"mass_kg", kg(plan.cover.mass)},
                      {"proved", plan.cover.proved},
                      {"bound_kg", kg(plan.cover.bound)},
                      {"nodes", plan.cover.nodes}}},
                    {"remarks", remarks},
                    {"findings", findings_json(findings)}};
  return out.dump(2) + "\n";
}

std::string answer_json(const Answer& answer) {
  Json inputs = Json::object(), also = Json::object();
  for (const auto& [key, value] : answer.inputs) inputs[key] = value;
  for (const auto& [key, value] : answer.also) also[key] = value;
  const Json out = {{"question", answer.question},
                    {"inputs", inputs},
                    {"result", {{"value", answer.value}, {"unit", answer.unit}}},
                    {"also", also},
                    {"formula", answer.formula},
                    {"source", answer.source},
                    {"cautions", answer.cautions}};
  return out.dump(2) + "\n";
}

}  // namespace dunnage
