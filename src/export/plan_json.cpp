// SPDX-License-Identifier: MIT
#include "export/plan_json.h"

#include <map>
#include <nlohmann/json.hpp>

#include "export/json_text.h"

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
    out.push_back({{"what", s.what},
                   {"wanted", s.wanted},
                   {"short", s.missing},
                   {"because", s.because.english()},
                   {"nearest", s.nearest.english()},
                   {"where", s.place.words()}});
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
  return {{"units", count},   {"mass_kg", kg(sum)},     {"without_mass", unknown},
          {"by_team", teams}, {"by_vehicle", vehicles}, {"printed", {{"value", printed}, {"unit", unit}}}};
}

Json findings_json(const Findings& findings) {
  Json out = Json::array();
  for (const Finding& f : findings.list)
    out.push_back({{"rule", name(f.rule)},
                   {"subject", f.called.english()},
                   {"outcome", name(f.outcome)},
                   {"measured", figure(f.measured)},
                   {"limit", figure(f.limit)},
                   {"says", f.says.english()},
                   {"assumption", strung(f.assumptions, "; ").english()},
                   {"source", strung(f.sources, "; ").english()},
                   {"where", f.place.known() ? Json(f.place.words()) : Json(nullptr)}});
  return out;
}

const LoadingDetail* loading_detail(const Catalogue& c, const Findings& findings, const std::string& vehicle) {
  const Vehicle* owned = c.vehicle(vehicle);
  for (const Finding& f : findings.list)
    if (const auto* detail = std::get_if<LoadingDetail>(&f.detail);
        detail && owned && f.subject == subject_in(c.kit.vehicles, *owned, Subject::Kind::vehicle))
      return detail;
  return nullptr;
}

Json stages(const LoadingDetail& detail) {
  Json out = Json::array();
  const auto english = [](const std::vector<Sentence>& all) {
    Json list = Json::array();
    for (const Sentence& one : all) list.push_back(one.english());
    return list;
  };
  const auto mass = [](const std::optional<Mass>& m) { return m ? Json(kg(*m)) : Json(nullptr); };
  for (const LoadStage& s : detail.stages)
    out.push_back({{"after", s.after.empty() ? Json(nullptr) : Json(s.after)},
                   {"cargo_kg", kg(s.cargo)},
                   {"left_kg", kg(s.left)},
                   {"right_kg", kg(s.right)},
                   {"centre_m", s.centre ? Json(s.centre->si()) : Json(nullptr)},
                   {"total_kg", mass(s.total)},
                   {"front_kg", mass(s.front)},
                   {"rear_kg", mass(s.rear)},
                   {"axle_kg", mass(s.axle)},
                   {"tongue_kg", mass(s.tongue)},
                   {"tongue_share", s.tongue_share ? Json(*s.tongue_share) : Json(nullptr)},
                   {"train_kg", mass(s.train)},
                   {"over", english(s.over)},
                   {"warns", english(s.warns)}});
  return out;
}

Json placements(const Catalogue& c, const Plan& plan, const VehicleLoading& v) {
  Json out = Json::array();
  for (const LoadedPiece& p : v.pieces) {
    const Cuboid& b = p.box;
    out.push_back({{"code", code_of(c, p.unit)},
                   {"row", p.row},
                   {"stop", p.stop},
                   {"place", plan.rows[static_cast<std::size_t>(p.unit)].place},
                   {"stance", name(p.stance)},
                   {"at_m", {b.x.si(), b.y.si(), b.z.si()}},
                   {"size_m", {b.length.si(), b.width.si(), b.height.si()}}});
  }
  return out;
}

/// A dropped plan has faults and no pieces.
Json loadings(const Catalogue& c, const Plan& plan, const Findings& findings) {
  Json out = Json::array();
  if (!plan.loading) return out;
  for (const VehicleLoading& v : plan.loading->vehicles) {
    Json left = Json::array(), faults = Json::array();
    for (const LeftOut& one : v.left)
      left.push_back(
          {{"code", code_of(c, one.unit)}, {"want", name(one.want)}, {"by_si", one.by}, {"proved", one.proved}});
    for (const LoadFault& fault : v.faults) faults.push_back(fault.says.english());
    const LoadingDetail* detail = loading_detail(c, findings, v.vehicle);
    out.push_back({{"vehicle", v.vehicle},
                   {"pieces", placements(c, plan, v)},
                   {"left_out", left},
                   {"faults", faults},
                   {"stages", detail ? stages(*detail) : Json::array()}});
  }
  return out;
}

Json unsized(const Catalogue& c, const Plan& plan) {
  Json out = Json::array();
  if (plan.loading)
    for (const int unit : plan.loading->unsized) out.push_back(code_of(c, unit));
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
                      {"units", plan.cover.units},
                      {"unweighed", plan.cover.unweighed},
                      {"unweighed_left", plan.cover.unweighed_left},
                      {"nodes", plan.cover.nodes}}},
                    {"loadings", loadings(catalogue, plan, findings)},
                    {"unsized", unsized(catalogue, plan)},
                    {"suffice", plan.loading ? plan.loading->suffice : std::vector<std::vector<std::string>>{}},
                    {"remarks", remarks},
                    {"findings", findings_json(findings)}};
  return json_text(out);
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
  return json_text(out);
}

}  // namespace dunnage
