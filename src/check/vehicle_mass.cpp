// SPDX-License-Identifier: MIT
// Rule vehicle: a vehicle as it leaves, on its wheels as the load's stages are; tie-downs by number and strength.
#include "check/vehicle_mass.h"

#include <algorithm>

#include "base/slack.h"
#include "check/load_stages.h"
#include "check/on_wheels.h"
#include "check/say.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

struct PlateJudged {
  std::vector<Sentence> over, missing;
};

/// One vehicle with what goes in it.
struct Loaded {
  const Vehicle* vehicle = nullptr;
  const Load* load = nullptr;  ///< as the show lists it; null where it does not
  Aboard aboard;
  int count = 0, unknown = 0, drawn = 0;  ///< pieces; those without a mass; those in the plan of the load
  Length from, to;                        ///< of what is drawn, behind the bulkhead
};

const StandsAt* spot_of(const Load* load, const CaseUnit& unit, const Case& box) {
  if (!load) return nullptr;
  for (const StandsAt& spot : load->stands)
    if (spot.code.value == unit.code || spot.code.value == box.code.value) return &spot;
  return nullptr;
}

/// As planned; null where nobody planned it.
const LoadedPiece* drawn_piece(const Plan& plan, const std::string& vehicle, int unit) {
  if (!plan.loading) return nullptr;
  for (const VehicleLoading& loading : plan.loading->vehicles)
    if (loading.vehicle == vehicle)
      for (const LoadedPiece& piece : loading.pieces)
        if (piece.unit == unit) return &piece;
  return nullptr;
}

Loaded loaded(const Catalogue& c, const Show& show, const Plan& plan, const Vehicle& vehicle) {
  Loaded l;
  l.vehicle = &vehicle;
  for (const Load& load : show.loads)
    if (load.vehicle.value == vehicle.code.value) l.load = &load;
  for (int unit : plan.pulled()) {
    const PlanRow& row = plan.rows[static_cast<std::size_t>(unit)];
    if (row.vehicle != vehicle.code.value) continue;
    ++l.count;
    if (!row.mass_known) ++l.unknown;
    l.aboard.mass += row.mass;
    const StandsAt* spot = spot_of(l.load, c.units[static_cast<std::size_t>(unit)], c.case_at(unit));
    const LoadedPiece* drawn = drawn_piece(plan, row.vehicle, unit);
    if (drawn) {
      l.from = l.drawn++ == 0 ? drawn->box.x : std::min(l.from, drawn->box.x);
      l.to = std::max(l.to, drawn->box.x + drawn->box.length);
    }
    if (drawn)  // where the load sheet says to put it, wherever somebody meant it to stand
      l.aboard.pieces.push_back({row.mass, drawn->box.x + drawn->box.length * 0.5});
    else if (spot)
      l.aboard.pieces.push_back({row.mass, spot->from_front});
    else
      l.aboard.placed = false;
  }
  if (l.count == 0) l.aboard.placed = false;
  return l;
}

void judge_straps(const Loaded& l, UnitSystem units, PlateJudged& judged) {
  if (!l.load || l.load->straps.empty()) return;
  int count = 0;
  Mass holds;
  bool known = true;
  for (const Strap& strap : l.load->straps) {
    count += strap.count;
    known = known && strap.limit;
    const TieDownRoute route = strap.over ? TieDownRoute::over_to_other_side : TieDownRoute::vehicle_to_cargo;
    if (strap.limit) holds += working_load_counted(strap.limit->value, route) * strap.count;
  }
  if (!known) judged.missing.push_back(said("the working load limit of its straps"));
  const bool all_drawn = l.drawn == l.count;
  if (!l.load->length && !all_drawn) judged.missing.push_back(said("the length of the load"));
  if (!known || (!l.load->length && !all_drawn)) return;
  // As drawn, where all of it is: the load sheet asks for as many.
  const int needed = all_drawn ? tie_downs(l.to - l.from, l.aboard.mass, l.from <= blocked_within)
                               : tie_downs(l.load->length->value, l.aboard.mass, l.load->blocked);
  if (count < needed) judged.over.push_back(said("{} straps, {} are asked: add {}.", count, needed, needed - count));
  if (falls_short(holds, working_load_needed(l.aboard.mass)))
    judged.over.push_back(said("Straps count {}, half the load is {}: add straps, or stronger ones.",
                               print(holds, units, Rounding::down).text(),
                               print(working_load_needed(l.aboard.mass), units, Rounding::up).text()));
}

struct PlateTowed {
  Hitched hitched;
  bool assumed = false;  ///< its tongue
};

/// What pulls behind this van, its tongue where its pieces have places, else by its window.
PlateTowed towed_by(const Catalogue& c, const Show& show, const Plan& plan, const Vehicle& van) {
  PlateTowed t;
  for (const Vehicle* v : trailers_of(c, show, plan, van)) {
    const Loaded l = loaded(c, show, plan, *v);
    LoadStage stage;
    weigh(*v, l.aboard, {}, stage);
    ++t.hitched.trailers;
    t.hitched.total = stage.total;
    t.hitched.tongue = stage.tongue;
    t.assumed = !stage.tongue && stage.total;
    if (t.assumed) t.hitched.tongue = *stage.total * value_of(v->tongue_to).value_or(assumed_tongue);
    if (!stage.total) t.hitched.missing.push_back(said("empty axle, tongue and coupling of its trailer"));
    if (l.unknown > 0) t.hitched.missing.push_back(said("the mass of {} pieces in its trailer", l.unknown));
  }
  if (t.hitched.trailers > 1) t.hitched.tongue = t.hitched.total = std::nullopt;
  return t;
}

/// "3 pieces, 450 lb; 900 lb aboard of 1200 lb payload": what was given of it.
Sentence load_words(const Vehicle& v, const VehicleDetail& d, UnitSystem units) {
  const auto up = [&](Mass mass) { return print(mass, units, Rounding::up).text(); };
  const auto down = [&](Mass mass) { return print(mass, units, Rounding::down).text(); };
  const LoadStage& s = d.stage;
  std::vector<Sentence> words{d.pieces == 1 ? said("1 piece, {}", up(s.cargo))
                                            : said("{} pieces, {}", d.pieces, up(s.cargo))};
  if (v.payload && s.aboard) words.push_back(said("{} aboard of {} payload", up(*s.aboard), down(v.payload->value)));
  if (v.gross && s.total) words.push_back(said("{} of {} gross", up(*s.total), down(v.gross->value)));
  if (s.tongue_share) words.push_back(said("tongue {}, {}", up(*s.tongue), percent_up(*s.tongue_share)));
  return strung(words, "; ");
}

void assume_of(const Loaded& l, const PlateTowed& towed, UnitSystem units, Finding& f) {
  const bool van = l.vehicle->kind == Vehicle::Kind::van;
  if (towed.assumed && towed.hitched.trailers == 1)
    assume(f, said("the trailer's tongue at the upper end of its window"));
  if (!l.aboard.placed)
    assume(f, van ? said("axles not worked out: no positions") : said("axle and tongue not worked out: no positions"));
  else if (van && l.vehicle->people_and_fuel)
    assume(f, said("people and fuel count on the front axle and on the rear axle"));
  if (!l.load || l.load->straps.empty())
    assume(f, said("tie-downs not given: straps that hold {} together are asked",
                   print(working_load_needed(l.aboard.mass), units, Rounding::up).text()));
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const Loaded& l) {
  const UnitSystem units = c.kit.house.units;
  const Vehicle& v = *l.vehicle;
  Finding f = begin_finding(RuleName::vehicle, subject_in(c.kit.vehicles, v, Subject::Kind::vehicle), v.code.value,
                            l.load ? l.load->place : v.place);
  f.sources = {said("its plates as typed"), as_is("49 CFR 393.106, 393.110")};
  f.caution = said("The plate, the tyre placard and the hitch plate win. Weigh it once loaded.");
  const PlateTowed towed = v.kind == Vehicle::Kind::van ? towed_by(c, show, plan, v) : PlateTowed{};
  VehicleDetail d;
  d.pieces = l.count;
  d.unknown = l.unknown;
  weigh(v, l.aboard, towed.hitched, d.stage);
  if (d.stage.aboard) f.measured = *d.stage.aboard;
  if (v.payload) f.limit = v.payload->value;
  PlateJudged judged;
  for (const Sentence& what : above_plates(v, d.stage, units)) judged.over.push_back(at_stage(d.stage, what));
  judged.missing = not_typed(v, towed.hitched, l.aboard.placed);
  if (l.unknown > 0) judged.missing.push_back(said("the mass of {} pieces", l.unknown));
  judge_straps(l, units, judged);
  f.says = said("{}.", load_words(v, d, units));
  for (const Sentence& words : judged.over) f.says.then(words);
  if (!judged.missing.empty())
    f.says.then(said("Not given: {}. Weigh it or read its plate, and type it.", strung(judged.missing, ", ")));
  f.outcome = !judged.over.empty() ? Outcome::over : judged.missing.empty() ? Outcome::within : Outcome::not_checked;
  assume_of(l, towed, units, f);
  f.detail = std::move(d);
  return f;
}

}  // namespace

void check_vehicles(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const Vehicle& vehicle : catalogue.kit.vehicles) {
    const Loaded l = loaded(catalogue, show, plan, vehicle);
    const bool pulls = vehicle.kind == Vehicle::Kind::van && !trailers_of(catalogue, show, plan, vehicle).empty();
    if (l.count > 0 || pulls) findings.list.push_back(finding_of(catalogue, show, plan, l));
  }
}

}  // namespace dunnage
