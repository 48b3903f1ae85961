// SPDX-License-Identifier: MIT
#include "check/load_plan_rule.h"

#include <algorithm>
#include <optional>

#include "check/load_place.h"
#include "check/load_stages.h"
#include "check/say.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

constexpr std::size_t most_faults_told = 3;

const std::string& code_of(const Catalogue& c, int unit) { return c.units[static_cast<std::size_t>(unit)].code; }

std::string figure_of(const LeftOut& left, UnitSystem units) {
  switch (left.want) {
    case LeftOut::Want::volume:
      return print(Volume::from_si(left.by), units, Rounding::up).text();
    case LeftOut::Want::floor:
      return print(Area::from_si(left.by), units, Rounding::up).text();
    case LeftOut::Want::mass:
      return print(Mass::from_si(left.by), units, Rounding::up).text();
    default:
      return print_small(Length::from_si(left.by), units, Rounding::up).text();
  }
}

Sentence lacks(LeftOut::Want want) {
  switch (want) {
    case LeftOut::Want::size:
      return said("too large for the cargo space");
    case LeftOut::Want::door:
      return said("too large for the doors");
    case LeftOut::Want::length:
      return said("the rows are too long");
    case LeftOut::Want::volume:
      return said("the load is more than the cargo space");
    case LeftOut::Want::floor:
      return said("the load is more than the floor");
    case LeftOut::Want::mass:
      return said("the load is above what the vehicle may carry");
    case LeftOut::Want::room:
      break;
  }
  return said("no room was found");
}

/// Units left out for one reason stand in one sentence.
std::vector<Sentence> left_sentences(const Catalogue& c, const VehicleLoading& v) {
  std::vector<std::pair<LeftOut, std::vector<Sentence>>> reasons;
  for (const LeftOut& left : v.left) {
    auto found = std::find_if(reasons.begin(), reasons.end(), [&](const auto& r) {
      return r.first.want == left.want && r.first.proved == left.proved && r.first.by == left.by;
    });
    if (found == reasons.end()) found = reasons.insert(reasons.end(), {left, {}});
    found->second.emplace_back(code_of(c, left.unit));
  }
  std::vector<Sentence> out;
  for (const auto& [left, codes] : reasons) {
    const Sentence why =
        left.by > 0 ? said("{}, by {}", lacks(left.want), figure_of(left, c.kit.house.units)) : lacks(left.want);
    const bool alone = left.want == LeftOut::Want::size || left.want == LeftOut::Want::door;
    out.push_back(
        left.proved && alone ? said("Left out, and proved that no plan can take it: {}: {}.", strung(codes, ", "), why)
        : left.proved        ? said("Left out, and proved that no plan can take all: {}: {}.", strung(codes, ", "), why)
                             : said("Left out, which is not proved: {}: {}.", strung(codes, ", "), why));
  }
  return out;
}

/// A strip that lies along a wall is beside a bar; one that lies across is ahead of it or behind it, as a row is.
bool beside_bars(const LoadedPiece& p) { return p.row == 0 && p.box.length > p.box.width; }

/// A bar behind what is still aboard when `done` stops are done; nothing where nothing is.
std::optional<LoadBar> bar_after(const Plan& plan, const VehicleLoading& v, const std::vector<std::string>& stops,
                                 int done) {
  LoadBar bar;
  if (done > 0) bar.stop = stops[static_cast<std::size_t>(done) - 1];
  for (const LoadedPiece& p : v.pieces) {
    if (std::min(p.stop, static_cast<int>(stops.size())) < done) continue;
    if (!beside_bars(p)) bar.at = std::max(bar.at, p.box.x + p.box.length);
    bar.holds += plan.rows[static_cast<std::size_t>(p.unit)].mass * working_load.rearward;
  }
  return bar.at > Length{} ? std::optional(bar) : std::nullopt;
}

/// A bar before what stands clear of the bulkhead or of all ahead of it: it holds all from there on.
std::vector<LoadBar> bars_ahead(const Plan& plan, const VehicleLoading& v) {
  std::vector<const LoadedPiece*> pieces;
  Mass behind;
  for (const LoadedPiece& p : v.pieces) {
    if (beside_bars(p)) continue;
    pieces.push_back(&p);
    behind += plan.rows[static_cast<std::size_t>(p.unit)].mass;
  }
  std::stable_sort(pieces.begin(), pieces.end(),
                   [](const LoadedPiece* a, const LoadedPiece* b) { return a->box.x < b->box.x; });
  std::vector<LoadBar> out;
  Length reach;
  for (const LoadedPiece* p : pieces) {
    if (p->box.x - reach > blocked_within) out.push_back({{}, p->box.x, behind * working_load.forward, true});
    reach = std::max(reach, p->box.x + p->box.length);
    behind = behind - plan.rows[static_cast<std::size_t>(p->unit)].mass;
  }
  return out;
}

/// What to tie and block, from the load as drawn.
void add_securing(const Catalogue& c, const Show& show, const Plan& plan, const VehicleLoading& v, LoadingDetail& d) {
  Length from = v.pieces.front().box.x, to;
  Mass mass;
  for (const LoadedPiece& p : v.pieces) {
    from = std::min(from, p.box.x);
    to = std::max(to, p.box.x + p.box.length);
    mass += plan.rows[static_cast<std::size_t>(p.unit)].mass;
    if (std::min(p.box.length, p.box.width) < p.box.height * working_load.rearward)
      d.tips.push_back(code_of(c, p.unit));
  }
  d.bars = bars_ahead(plan, v);
  const std::vector<std::string> stops = stops_of(show, v.vehicle);
  for (int done = 0; done <= static_cast<int>(stops.size()); ++done)
    if (const std::optional<LoadBar> bar = bar_after(plan, v, stops, done)) d.bars.push_back(*bar);
  d.length = to - from;
  d.blocked = from <= blocked_within;
  d.tie_downs = tie_downs(d.length, mass, d.blocked);
  d.straps_hold = working_load_needed(mass);
}

void say_dropped(const VehicleLoading& v, Finding& f) {
  f.outcome = Outcome::not_checked;
  f.says =
      said("The plan of this load breaks {} of its rules; it is dropped and not drawn. Load by hand, and weigh it.",
           v.faults.size());
  for (std::size_t i = 0; i < std::min(most_faults_told, v.faults.size()); ++i) f.says.then(v.faults[i].says);
}

int rows_in(const VehicleLoading& v) {
  int most = 0;
  for (const LoadedPiece& p : v.pieces) most = std::max(most, p.row);
  return most;
}

void assume_of(const Vehicle& v, const Show& show, Finding& f) {
  if (v.doors.empty()) assume(f, said("no door given: loaded from the rear, over its whole width"));
  if (std::any_of(v.doors.begin(), v.doors.end(),
                  [](const DoorOpening& d) { return !d.at && wall_of(d) != Wall::rear; }))
    assume(f, said("a side door whose place is not typed is not used"));
  if (v.kind == Vehicle::Kind::van && v.people_and_fuel)
    assume(f, said("people and fuel count on the front axle and on the rear axle"));
  std::vector<Sentence> spots;
  for (const Load& load : show.loads)
    if (load.vehicle.value == v.code.value)
      for (const StandsAt& spot : load.stands) spots.emplace_back(spot.code.value);
  if (!spots.empty()) assume(f, said("the plan gives {} places of its own, whatever was typed", strung(spots, ", ")));
}

void say_loaded(const Catalogue& c, const Show& show, const Plan& plan, const VehicleLoading& v, Finding& f) {
  StagedLoad staged = load_stages(c, show, plan, *plan.loading, v);
  f.says = said("Planned: {} pieces, {} rows, {} stops.", v.pieces.size(), rows_in(v), staged.stages.size() - 1);
  bool over = !v.left.empty();
  for (const Sentence& sentence : left_sentences(c, v)) f.says.then(sentence);
  for (const LoadStage& stage : staged.stages) {
    over = over || !stage.over.empty();
    for (const Sentence& sentence : stage.over) f.says.then(sentence);
  }
  for (const LoadStage& stage : staged.stages)
    for (const Sentence& sentence : stage.warns) f.says.then(sentence);
  if (!staged.missing.empty())
    f.says.then(said("Not given: {}. Weigh it or read its plate, and type it.", strung(staged.missing, ", ")));
  f.outcome = over ? Outcome::over : staged.missing.empty() ? Outcome::within : Outcome::not_checked;
  LoadingDetail d;
  d.stages = std::move(staged.stages);
  d.allowed = std::move(staged.allowed);
  if (!v.pieces.empty()) add_securing(c, show, plan, v, d);
  const Vehicle* vehicle = c.vehicle(v.vehicle);
  if (vehicle) assume_of(*vehicle, show, f);
  f.detail = std::move(d);
}

/// Units of a vehicle that are in no plan, as nobody typed their size; or all of them, as nobody typed its cargo space.
std::vector<Sentence> unplanned(const Catalogue& c, const Plan& plan, const std::string& vehicle) {
  std::vector<Sentence> codes;
  for (const int unit : plan.loading->unsized)
    if (plan.rows[static_cast<std::size_t>(unit)].vehicle == vehicle) codes.emplace_back(code_of(c, unit));
  return codes;
}

void say_unsized(const std::vector<Sentence>& codes, Finding& f) {
  if (codes.empty()) return;
  f.says.then(said("In no plan, as nobody typed their size: {}.", strung(codes, ", ")));
  if (f.outcome == Outcome::within) f.outcome = Outcome::not_checked;
}

Finding begin_loading(Subject subject, Sentence called, const Place& place) {
  Finding f = begin_finding(RuleName::loading, subject, std::move(called), place);
  f.sources = {said("statics"), as_is("49 CFR 393.106, 393.110"), as_is("DGUV 70")};
  f.caution = said("Keep to the plan, block what rolls, and weigh each axle once loaded.");
  return f;
}

/// Where the show loads it, or the kit describes it.
const Place& place_of(const Vehicle& vehicle, const Show& show) {
  const Place* place = &vehicle.place;
  for (const Load& load : show.loads)
    if (load.vehicle.value == vehicle.code.value) place = &load.place;
  return *place;
}

/// What goes, and is neither drawn nor named in any vehicle.
void say_homeless(const Catalogue& c, const Plan& plan, Findings& findings) {
  const auto& all = plan.loading->vehicles;
  if (c.kit.vehicles.empty() ||
      std::any_of(all.begin(), all.end(), [](const VehicleLoading& v) { return !v.faults.empty(); }))
    return;
  const auto named = [&](int unit) {
    return std::any_of(all.begin(), all.end(), [&](const VehicleLoading& v) {
      return std::any_of(v.pieces.begin(), v.pieces.end(), [&](const LoadedPiece& p) { return p.unit == unit; }) ||
             std::any_of(v.left.begin(), v.left.end(), [&](const LeftOut& l) { return l.unit == unit; });
    });
  };
  std::vector<Sentence> codes;
  Place place;
  for (const PlanRow& row : plan.rows) {
    if (!row.goes || !row.vehicle.empty() || named(row.unit)) continue;
    if (codes.empty()) place = c.case_at(row.unit).code.place;
    codes.emplace_back(code_of(c, row.unit));
  }
  if (codes.empty()) return;
  Finding f = begin_loading({}, {}, place);
  f.outcome = Outcome::not_checked;
  f.says = said("Goes, and in no vehicle: {}. Type its size and its vehicle.", strung(codes, ", "));
  findings.list.push_back(std::move(f));
}

}  // namespace

void check_loading(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  if (!plan.loading) return;
  const auto& all = plan.loading->vehicles;
  for (const Vehicle& vehicle : catalogue.kit.vehicles) {
    const std::string& code = vehicle.code.value;
    const bool carries = std::any_of(plan.rows.begin(), plan.rows.end(),
                                     [&](const PlanRow& row) { return row.goes && row.vehicle == code; });
    const bool pulls = vehicle.kind == Vehicle::Kind::van && !trailers_of(catalogue, show, plan, vehicle).empty();
    const auto found = std::find_if(all.begin(), all.end(), [&](const VehicleLoading& v) { return v.vehicle == code; });
    if (!carries && !pulls && (found == all.end() || found->left.empty())) continue;
    Finding f = begin_loading(subject_in(catalogue.kit.vehicles, vehicle, Subject::Kind::vehicle), code,
                              place_of(vehicle, show));
    if (carries && (found == all.end() || !vehicle.cargo))
      f.says = said("Not given: its cargo space. Measure it inside, between the arches too, and type it.");
    else if (found != all.end() && !found->faults.empty())
      say_dropped(*found, f);
    else
      say_loaded(catalogue, show, plan, found == all.end() ? VehicleLoading{code, {}, {}, 0} : *found, f);
    say_unsized(unplanned(catalogue, plan, code), f);
    findings.list.push_back(std::move(f));
  }
  say_homeless(catalogue, plan, findings);
}

}  // namespace dunnage
