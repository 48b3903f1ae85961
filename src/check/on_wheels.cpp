// SPDX-License-Identifier: MIT
#include "check/on_wheels.h"

#include <algorithm>

#include "base/slack.h"
#include "base/unit.h"
#include "check/say.h"

namespace dunnage {
namespace {

std::optional<Mass> sum(const Maybe<Mass>& a, const Maybe<Mass>& b) {
  return a && b ? std::optional(a->value + b->value) : std::nullopt;
}

std::optional<Mass> empty_mass(const Vehicle& v) {
  return v.kind == Vehicle::Kind::van ? sum(v.empty_front, v.empty_rear) : sum(v.empty_axle, v.empty_tongue);
}

std::vector<PlacedMass> moved_back(std::vector<PlacedMass> pieces, Length by) {
  for (PlacedMass& piece : pieces) piece.behind += by;
  return pieces;
}

/// What the cargo may weigh by payload and gross; nothing where neither is known.
std::optional<Mass> most_cargo(const Vehicle& v, const LoadStage& stage) {
  std::optional<Mass> by_payload, by_gross;
  if (v.payload && stage.aboard) by_payload = v.payload->value - (*stage.aboard - stage.cargo);
  if (v.gross && stage.total) by_gross = v.gross->value - (*stage.total - stage.cargo);
  return lesser(by_payload, by_gross);
}

void weigh_trailer(const Vehicle& v, const Aboard& load, LoadStage& stage) {
  stage.aboard = load.mass;
  const std::optional<Mass> empty = empty_mass(v);
  if (!empty) return;
  stage.total = *empty + load.mass;
  if (!load.placed || !v.coupling_to_axle || !v.coupling_to_cargo) return;
  const TongueFigures f = tongue_load(*empty, v.empty_tongue->value, v.coupling_to_axle->value,
                                      moved_back(load.pieces, v.coupling_to_cargo->value));
  stage.axle = f.axle;
  stage.tongue = f.tongue;
  stage.tongue_share = f.share;
}

void weigh_van(const Vehicle& v, const Aboard& load, const Hitched& hitched, LoadStage& stage) {
  if (hitched.trailers == 1) stage.tongue = hitched.tongue;
  if (!v.people_and_fuel || (hitched.trailers > 0 && !stage.tongue)) return;
  const Mass people = v.people_and_fuel->value;
  const Mass tongue = stage.tongue.value_or(Mass{});  // nothing is pulled
  stage.aboard = load.mass + people + tongue;
  const std::optional<Mass> empty = empty_mass(v);
  if (!empty) return;
  stage.total = *empty + *stage.aboard;
  if (hitched.total) stage.train = *stage.total - tongue + *hitched.total;
  if (!load.placed || !v.wheelbase || !v.front_to_cargo || (stage.tongue && !v.hitch_behind)) return;
  const AxleFigures bare =
      axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value,
                 moved_back(load.pieces, v.front_to_cargo->value), tongue, value_of(v.hitch_behind).value_or(Length{}));
  // People sit somewhere between the axles: on the front axle for its limit, on the rear for its own.
  stage.front = bare.front + people;
  stage.rear = bare.rear + people;
}

/// Plates that are exceeded, as they are found.
class Judge {
 public:
  explicit Judge(UnitSystem units) : units_(units) {}
  void above(const Sentence& what, const std::optional<Mass>& is, const Maybe<Mass>& limit, const Sentence& next) {
    if (is && limit && exceeds(*is, limit->value))
      say(said("{} {} of {}, {} too much: {}", what, up(*is), print(limit->value, units_, Rounding::down).text(),
               up(*is - limit->value), next));
  }
  void say(Sentence what) { over_.push_back(std::move(what)); }
  std::vector<Sentence> over() { return std::move(over_); }

 private:
  std::string up(Mass mass) const { return print(mass, units_, Rounding::up).text(); }
  UnitSystem units_;
  std::vector<Sentence> over_;
};

void judge_tongue(const Vehicle& v, const LoadStage& stage, Judge& judge) {
  judge.above(said("axle"), stage.axle, v.limit_axle, said("take load off"));
  judge.above(said("tongue"), stage.tongue, v.limit_tongue, said("move load back, or take it off"));
  if (stage.tongue && *stage.tongue < Mass{}) judge.say(said("the tongue pulls up on the hitch: move mass forward"));
  if (!stage.tongue_share || stage.cargo <= Mass{}) return;  // the window is the loaded trailer's
  if (v.tongue_from && falls_short(*stage.tongue_share, v.tongue_from->value))
    judge.say(said("tongue {} % of the whole, {} % at least: move mass forward",
                   plain(steps_down(*stage.tongue_share * 1000) / 10, 1), plain(v.tongue_from->value * 100, 1)));
  if (v.tongue_to && exceeds(*stage.tongue_share, v.tongue_to->value))
    judge.say(said("tongue {} of the whole, {} % at most: move mass back", percent_up(*stage.tongue_share),
                   plain(v.tongue_to->value * 100, 1)));
}

void judge_axles(const Vehicle& v, const LoadStage& stage, Judge& judge) {
  judge.above(said("tongue on the hitch"), stage.tongue, v.limit_tongue, said("move load back, or take it off"));
  judge.above(said("van and trailer"), stage.train, v.train, said("take it off, or send another vehicle"));
  judge.above(said("front axle"), stage.front, v.limit_front, said("move load back, or take it off"));
  judge.above(said("rear axle"), stage.rear, v.limit_rear, said("move load forward, or take it off"));
  if (!stage.front) return;
  const Mass people = v.people_and_fuel->value;
  if (*stage.front - people < (*stage.total - people) * least_steered)
    judge.say(said("the front axle carries less than a fifth, and hardly steers: move mass forward"));
}

void need(bool given, Sentence what, std::vector<Sentence>& missing) {
  if (!given) missing.push_back(std::move(what));
}

void need_for_van(const Vehicle& v, const Hitched& hitched, bool placed, std::vector<Sentence>& missing) {
  need(v.people_and_fuel.has_value(), said("people and fuel"), missing);
  if (placed) {
    need(v.empty_front && v.empty_rear, said("empty axles"), missing);
    need(v.wheelbase && v.front_to_cargo, said("wheelbase and front axle to cargo"), missing);
    need(v.limit_front && v.limit_rear, said("limits of the axles"), missing);
    need(hitched.trailers == 0 || v.hitch_behind, said("rear axle to hitch"), missing);
  }
  if (hitched.trailers == 0) return;
  need(hitched.trailers == 1, said("which one of {} trailers it pulls", hitched.trailers), missing);
  need(v.limit_tongue.has_value(), said("limit of the hitch"), missing);
  need(v.train && empty_mass(v), said("what it may weigh with its trailer"), missing);
  missing.insert(missing.end(), hitched.missing.begin(), hitched.missing.end());
}

void need_for_trailer(const Vehicle& v, bool placed, std::vector<Sentence>& missing) {
  need(v.pulled_by.has_value(), said("what pulls it"), missing);
  if (!placed) return;
  need(v.empty_axle && v.empty_tongue, said("empty axle and tongue"), missing);
  need(v.coupling_to_axle && v.coupling_to_cargo, said("coupling to axle and to cargo"), missing);
  need(v.limit_axle.has_value(), said("limit of the axle"), missing);
  need(v.limit_tongue && v.tongue_from && v.tongue_to, said("limit of the tongue and its window"), missing);
}

}  // namespace

std::optional<Mass> lesser(const std::optional<Mass>& a, const std::optional<Mass>& b) {
  return a && b ? std::min(*a, *b) : a ? a : b;
}

void weigh(const Vehicle& vehicle, const Aboard& aboard, const Hitched& hitched, LoadStage& stage) {
  stage.cargo = aboard.mass;
  if (vehicle.kind == Vehicle::Kind::van)
    weigh_van(vehicle, aboard, hitched, stage);
  else
    weigh_trailer(vehicle, aboard, stage);
  stage.most_cargo = most_cargo(vehicle, stage);
}

std::vector<Sentence> above_plates(const Vehicle& vehicle, const LoadStage& stage, UnitSystem units) {
  const bool van = vehicle.kind == Vehicle::Kind::van;
  const Mass with_it = value_of(vehicle.people_and_fuel).value_or(Mass{}) + stage.tongue.value_or(Mass{});
  const Mass aboard = van ? stage.cargo + with_it : stage.cargo;
  const std::optional<Mass> empty = empty_mass(vehicle);
  const Sentence off = said("take it off, or send another vehicle");
  Judge judge(units);
  judge.above(said("payload"), aboard, vehicle.payload, off);
  judge.above(said("gross"), empty ? std::optional(*empty + aboard) : std::nullopt, vehicle.gross, off);
  if (van)
    judge_axles(vehicle, stage, judge);
  else
    judge_tongue(vehicle, stage, judge);
  return judge.over();
}

std::vector<Sentence> not_typed(const Vehicle& vehicle, const Hitched& hitched, bool placed) {
  std::vector<Sentence> missing;
  need(vehicle.payload || (vehicle.gross && empty_mass(vehicle)), said("payload, or gross and empty masses"), missing);
  if (vehicle.kind == Vehicle::Kind::van)
    need_for_van(vehicle, hitched, placed, missing);
  else
    need_for_trailer(vehicle, placed, missing);
  return missing;
}

Sentence at_stage(const LoadStage& stage, const Sentence& what) {
  return stage.after.empty() ? said("At departure: {}.", what) : said("After {}: {}.", stage.after, what);
}

}  // namespace dunnage
