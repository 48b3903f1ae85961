// SPDX-License-Identifier: MIT
// Rule vehicle: payload, gross, train; axles and tongue by moments; tie-downs by number and strength.
#include "check/vehicle_mass.h"

#include <algorithm>

#include "check/load_stages.h"
#include "check/say.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

struct Judged {
  std::vector<Sentence> over, missing;
};

/// One vehicle with what goes in it.
struct Loaded {
  const Vehicle* vehicle = nullptr;
  const Load* load = nullptr;      ///< as the show lists it; null where it does not
  std::vector<PlacedMass> pieces;  ///< behind the front end of the cargo space
  Mass mass;
  int count = 0, unknown = 0, unplaced = 0, drawn = 0;
  Length from, to;  ///< of what is drawn, behind the bulkhead
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
    l.mass += row.mass;
    const StandsAt* spot = spot_of(l.load, c.units[static_cast<std::size_t>(unit)], c.case_at(unit));
    const LoadedPiece* drawn = drawn_piece(plan, row.vehicle, unit);
    if (drawn) {
      l.from = l.drawn++ == 0 ? drawn->box.x : std::min(l.from, drawn->box.x);
      l.to = std::max(l.to, drawn->box.x + drawn->box.length);
    }
    if (drawn)  // where the load sheet says to put it, wherever somebody meant it to stand
      l.pieces.push_back({row.mass, drawn->box.x + drawn->box.length * 0.5});
    else if (spot)
      l.pieces.push_back({row.mass, spot->from_front});
    else
      ++l.unplaced;
  }
  return l;
}

std::optional<Mass> sum(const Maybe<Mass>& a, const Maybe<Mass>& b) {
  if (!a || !b) return std::nullopt;
  return a->value + b->value;
}

class Judge {
 public:
  Judge(UnitSystem units, Judged& judged) : units_(units), judged_(judged) {}
  void above(const Sentence& what, const std::optional<Mass>& is, const std::optional<Mass>& limit,
             const Sentence& next) {
    if (is && limit && *is > *limit * slack)
      judged_.over.push_back(
          said("{} {} of {}, {} too much: {}.", what, up(*is), down(*limit), up(*is - *limit), next));
  }
  std::string up(Mass mass) const { return print(mass, units_, Rounding::up).text(); }
  std::string down(Mass mass) const { return print(mass, units_, Rounding::down).text(); }

 private:
  UnitSystem units_;
  Judged& judged_;
};

VehicleDetail begin_detail(const Loaded& l) {
  const Vehicle& v = *l.vehicle;
  VehicleDetail d;
  d.load = l.mass;
  d.pieces = l.count;
  d.unknown = l.unknown;
  d.people_and_fuel = value_of(v.people_and_fuel);
  d.empty = v.kind == Vehicle::Kind::van ? sum(v.empty_front, v.empty_rear) : sum(v.empty_axle, v.empty_tongue);
  d.payload = value_of(v.payload);
  d.gross = value_of(v.gross);
  d.train_limit = value_of(v.train);
  d.limit_front = value_of(v.limit_front);
  d.limit_rear = value_of(v.limit_rear);
  d.limit_axle = value_of(v.limit_axle);
  d.limit_tongue = value_of(v.limit_tongue);
  d.tongue_from = value_of(v.tongue_from);
  d.tongue_to = value_of(v.tongue_to);
  if (d.empty) d.total = *d.empty + d.load + d.people_and_fuel.value_or(Mass{});
  d.positions = l.count > 0 && l.unplaced == 0;
  return d;
}

void judge_trailer_axle(VehicleDetail& d, const Loaded& l, Judge& judge, Judged& judged) {
  const Vehicle& v = *l.vehicle;
  if (!d.positions) return;
  if (!v.coupling_to_axle || !v.coupling_to_cargo || !v.empty_tongue || !d.empty) {
    judged.missing.push_back(said("coupling to axle, coupling to cargo, empty axle and tongue"));
    return;
  }
  std::vector<PlacedMass> load = l.pieces;
  for (PlacedMass& p : load) p.behind += v.coupling_to_cargo->value;
  const TongueFigures f = tongue_load(*d.empty, v.empty_tongue->value, v.coupling_to_axle->value, load);
  d.axle = f.axle;
  d.tongue = f.tongue;
  d.tongue_share = f.share;
  judge.above(said("Axle"), d.axle, d.limit_axle, said("take load off"));
  judge.above(said("Tongue"), d.tongue, d.limit_tongue, said("move load back, or take it off"));
  if (f.tongue < Mass{}) judged.over.push_back(said("The tongue pulls up on the hitch: move mass forward."));
  if (d.tongue_from && f.share < *d.tongue_from * (1 - 1e-9))
    judged.over.push_back(said("Tongue {} % of the whole, {} % at least: move mass forward.",
                               plain(steps_down(f.share * 1000) / 10, 1), plain(*d.tongue_from * 100, 1)));
  if (d.tongue_to && f.share > *d.tongue_to * slack)
    judged.over.push_back(said("Tongue {} of the whole, {} % at most: move mass back.", percent_up(f.share),
                               plain(*d.tongue_to * 100, 1)));
}

void judge_van_axles(VehicleDetail& d, const Loaded& l, Mass tongue, Judge& judge, Judged& judged) {
  const Vehicle& v = *l.vehicle;
  if (!d.positions) return;
  if (!v.empty_front || !v.empty_rear || !v.wheelbase || !v.front_to_cargo) {
    judged.missing.push_back(said("empty axles, wheelbase and front axle to cargo"));
    return;
  }
  std::vector<PlacedMass> load = l.pieces;
  for (PlacedMass& p : load) p.behind += v.front_to_cargo->value;
  const Length hitch = v.hitch_behind ? v.hitch_behind->value : Length{};
  const Mass people = d.people_and_fuel.value_or(Mass{});
  // People sit somewhere between the axles: on the front axle for its limit, on the rear for its own.
  const AxleFigures bare =
      axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value, load, tongue, hitch);
  d.front = bare.front + people;
  d.rear = bare.rear + people;
  judge.above(said("Front axle"), d.front, d.limit_front, said("move load back, or take it off"));
  judge.above(said("Rear axle"), d.rear, d.limit_rear, said("move load forward, or take it off"));
  if (bare.front < bare.total * least_steered)
    judged.over.push_back(said("The front axle carries less than a fifth: it hardly steers. Move mass forward."));
}

void judge_straps(const Loaded& l, Judge& judge, Judged& judged) {
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
  const int needed = all_drawn ? tie_downs(l.to - l.from, l.mass, l.from <= blocked_within)
                               : tie_downs(l.load->length->value, l.mass, l.load->blocked);
  if (count < needed) judged.over.push_back(said("{} straps, {} are asked: add {}.", count, needed, needed - count));
  if (holds * slack < working_load_needed(l.mass))
    judged.over.push_back(said("Straps count {}, half the load is {}: add straps, or stronger ones.", judge.down(holds),
                               judge.up(working_load_needed(l.mass))));
}

/// What a trailer behind this vehicle weighs and rests on its hitch.
struct Towed {
  std::optional<Mass> total, tongue;
  int trailers = 0, unknown = 0;  ///< that it pulls; pieces in them without a mass
  bool assumed = false;
};

Towed towed_by(const Catalogue& c, const Show& show, const Plan& plan, const Vehicle& van, UnitSystem units) {
  Towed t;
  for (const Vehicle* v : trailers_of(c, show, plan, van)) {
    const Loaded l = loaded(c, show, plan, *v);
    VehicleDetail d = begin_detail(l);
    Judged ignored;
    Judge judge(units, ignored);
    judge_trailer_axle(d, l, judge, ignored);
    ++t.trailers;
    t.unknown += l.unknown;
    t.total = d.total;
    t.assumed = !d.tongue;
    t.tongue = d.tongue;
    if (!d.tongue && d.total) t.tongue = *d.total * d.tongue_to.value_or(assumed_tongue);
  }
  return t;
}

/// What it pulls: the train, and what rests on the hitch.
void judge_train(VehicleDetail& d, const Vehicle& v, const Towed& towed, Finding& f, Judge& judge, Judged& judged) {
  if (towed.trailers > 1) judged.missing.push_back(said("which one of {} trailers it pulls", towed.trailers));
  if (towed.trailers != 1) return;
  const Mass tongue = towed.tongue.value_or(Mass{});
  if (d.total && towed.total) d.train = *d.total - tongue + *towed.total;
  if (!d.train || !d.train_limit) judged.missing.push_back(said("what it may weigh with its trailer"));
  if (!v.limit_tongue) judged.missing.push_back(said("limit of the hitch"));
  if (towed.unknown > 0) judged.missing.push_back(said("the mass of {} pieces in its trailer", towed.unknown));
  judge.above(said("Van and trailer"), d.train, d.train_limit, said("take it off, or send another vehicle"));
  judge.above(said("Tongue on the hitch"), towed.tongue, d.limit_tongue, said("move load back, or take it off"));
  if (towed.assumed) assume(f, said("the trailer's tongue at the upper end of its window"));
}

void judge_masses(VehicleDetail& d, const Vehicle& v, const Towed& towed, Finding& f, Judge& judge, Judged& judged) {
  const Mass tongue = towed.tongue.value_or(Mass{});
  const Mass aboard = d.load + d.people_and_fuel.value_or(Mass{}) + tongue;
  if (d.total) d.total = *d.total + tongue;
  f.measured = aboard;
  if (d.payload) f.limit = *d.payload;
  if (!d.payload && !(d.gross && d.total)) judged.missing.push_back(said("payload, or gross and empty masses"));
  if (d.unknown > 0) judged.missing.push_back(said("the mass of {} pieces", d.unknown));
  const Sentence take_off = said("take it off, or send another vehicle");
  judge.above(said("Payload"), aboard, d.payload, take_off);
  judge.above(said("Gross"), d.total, d.gross, take_off);
  if (v.kind == Vehicle::Kind::van) {
    if (!v.people_and_fuel) judged.missing.push_back(said("people and fuel"));
    judge_train(d, v, towed, f, judge, judged);
  } else if (!v.pulled_by) {
    judged.missing.push_back(said("what pulls it"));
  }
}

/// "3 pieces, 450 lb; 900 lb aboard of 1200 lb payload": what was given of it.
Sentence load_words(const VehicleDetail& d, Mass aboard, const Judge& judge) {
  std::vector<Sentence> words{d.pieces == 1 ? said("1 piece, {}", judge.up(d.load))
                                            : said("{} pieces, {}", d.pieces, judge.up(d.load))};
  if (d.payload) words.push_back(said("{} aboard of {} payload", judge.up(aboard), judge.down(*d.payload)));
  if (d.total && d.gross) words.push_back(said("{} of {} gross", judge.up(*d.total), judge.down(*d.gross)));
  if (d.tongue) words.push_back(said("tongue {}, {}", judge.up(*d.tongue), percent_up(*d.tongue_share)));
  return strung(words, "; ");
}

Finding finding_of(const Catalogue& c, const Show& show, const Plan& plan, const Loaded& l) {
  const UnitSystem units = c.kit.house.units;
  const bool van = l.vehicle->kind == Vehicle::Kind::van;
  Finding f = begin_finding(RuleName::vehicle, subject_in(c.kit.vehicles, *l.vehicle, Subject::Kind::vehicle),
                            l.vehicle->code.value, l.load ? l.load->place : l.vehicle->place);
  f.sources = {said("its plates as typed"), as_is("49 CFR 393.106, 393.110")};
  f.caution = said("The plate, the tyre placard and the hitch plate win. Weigh it once loaded.");
  Judged judged;
  Judge judge(units, judged);
  VehicleDetail d = begin_detail(l);
  const Towed towed = van ? towed_by(c, show, plan, *l.vehicle, units) : Towed{};
  judge_masses(d, *l.vehicle, towed, f, judge, judged);
  if (van)
    judge_van_axles(d, l, towed.tongue.value_or(Mass{}), judge, judged);
  else
    judge_trailer_axle(d, l, judge, judged);
  judge_straps(l, judge, judged);
  f.says = said("{}.", load_words(d, std::get<Mass>(f.measured), judge));
  for (const Sentence& words : judged.over) f.says.then(words);
  if (!judged.missing.empty())
    f.says.then(said("Not given: {}. Weigh it or read its plate, and type it.", strung(judged.missing, ", ")));
  f.outcome = !judged.over.empty() ? Outcome::over : judged.missing.empty() ? Outcome::within : Outcome::not_checked;
  if (!d.positions)
    assume(f, van ? said("axles not worked out: no positions") : said("axle and tongue not worked out: no positions"));
  if (!l.load || l.load->straps.empty())
    assume(f,
           said("tie-downs not given: straps that hold {} together are asked", judge.up(working_load_needed(l.mass))));
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
