// SPDX-License-Identifier: MIT
#include "check/load_stages.h"

#include <algorithm>

#include "base/unit.h"
#include "check/say.h"
#include "formula/vehicle_load.h"

namespace dunnage {
namespace {

/// Left and right wheels apart by more than this share of the heavier side are worth a word. Our choice.
constexpr double uneven = 0.10;
constexpr int curve_points = 48;

/// One vehicle's pieces with what is asked of each stage.
struct Freight {
  const Vehicle* vehicle = nullptr;
  const VehicleLoading* loading = nullptr;
  std::vector<std::string> stops;
};

bool aboard(const Freight& f, const LoadedPiece& piece, const std::vector<std::string>& done) {
  const auto at = static_cast<std::size_t>(std::max(piece.stop, 0));
  return at >= f.stops.size() || std::find(done.begin(), done.end(), f.stops[at]) == done.end();
}

/// Masses behind the bulkhead of what is still aboard; left and right by the share of each piece on either side.
std::vector<PlacedMass> placed(const Freight& f, const Plan& plan, const std::vector<std::string>& done,
                               LoadStage& stage) {
  std::vector<PlacedMass> out;
  const double middle = f.vehicle->cargo ? f.vehicle->cargo->value.width.si() / 2 : 0;
  double moment = 0;
  for (const LoadedPiece& piece : f.loading->pieces) {
    if (!aboard(f, piece, done)) continue;
    const Mass mass = plan.rows[static_cast<std::size_t>(piece.unit)].mass;
    const Cuboid& box = piece.box;
    out.push_back({mass, box.x + box.length * 0.5});
    stage.cargo += mass;
    moment += mass.si() * out.back().behind.si();
    const double left = std::clamp((middle - box.y.si()) / box.width.si(), 0.0, 1.0);
    stage.left += mass * left;
    stage.right += mass * (1 - left);
  }
  if (stage.cargo > Mass{}) stage.centre = Length::from_si(moment / stage.cargo.si());
  return out;
}

class Judge {
 public:
  Judge(UnitSystem units, LoadStage& stage) : units_(units), stage_(stage) {}
  void above(const Sentence& what, const std::optional<Mass>& is, const std::optional<Mass>& limit) {
    if (is && limit && *is > *limit * slack)
      say(said("{} {} of {}, {} too much", what, up(*is), print(*limit, units_, Rounding::down).text(),
               up(*is - *limit)));
  }
  void sides(Mass bare) {
    const Mass heavier = bare * 0.5 + std::max(stage_.left, stage_.right);
    const Mass apart = std::max(stage_.left, stage_.right) - std::min(stage_.left, stage_.right);
    if (apart > heavier * uneven)
      stage_.warns.push_back(sentence(stage_.left > stage_.right ? said("the left side is heavier by {}", up(apart))
                                                                 : said("the right side is heavier by {}", up(apart))));
  }
  void say(const Sentence& what) { stage_.over.push_back(sentence(what)); }

 private:
  Sentence sentence(const Sentence& what) const {
    return stage_.after.empty() ? said("At departure: {}.", what) : said("After {}: {}.", stage_.after, what);
  }
  std::string up(Mass mass) const { return print(mass, units_, Rounding::up).text(); }
  UnitSystem units_;
  LoadStage& stage_;
};

/// Loads of a trailer on its axle and tongue; nothing where a figure was not typed.
void weigh_trailer(const Freight& f, std::vector<PlacedMass> load, LoadStage& stage) {
  const Vehicle& v = *f.vehicle;
  if (!v.empty_axle || !v.empty_tongue) return;
  const Mass empty = v.empty_axle->value + v.empty_tongue->value;
  stage.total = empty + stage.cargo;
  if (!v.coupling_to_axle || !v.coupling_to_cargo) return;
  for (PlacedMass& p : load) p.behind += v.coupling_to_cargo->value;
  const TongueFigures t = tongue_load(empty, v.empty_tongue->value, v.coupling_to_axle->value, load);
  stage.axle = t.axle;
  stage.tongue = t.tongue;
  stage.tongue_share = t.share;
}

std::optional<Mass> less(const Maybe<Mass>& limit, Mass taken) {
  return limit ? std::optional(limit->value - taken) : std::nullopt;
}
std::optional<Mass> least(const std::optional<Mass>& a, const std::optional<Mass>& b) {
  return a && b ? std::min(*a, *b) : a ? a : b;
}

void judge_trailer(const Vehicle& v, LoadStage& stage, UnitSystem units) {
  Judge judge(units, stage);
  judge.above(said("axle"), stage.axle, value_of(v.limit_axle));
  judge.above(said("tongue"), stage.tongue, value_of(v.limit_tongue));
  if (stage.tongue && *stage.tongue < Mass{}) judge.say(said("the tongue pulls up on the hitch"));
  judge.above(said("gross"), stage.total, value_of(v.gross));
  judge.above(said("payload"), stage.cargo, value_of(v.payload));
  stage.most_cargo = value_of(v.payload);
  if (stage.total) stage.most_cargo = least(stage.most_cargo, less(v.gross, *stage.total - stage.cargo));
  if (!stage.tongue_share || stage.cargo <= Mass{}) return;  // the window is the loaded trailer's
  if (v.tongue_from && *stage.tongue_share < v.tongue_from->value * (1 - 1e-9))
    judge.say(said("tongue {} % of the whole, {} % at least", plain(steps_down(*stage.tongue_share * 1000) / 10, 1),
                   plain(v.tongue_from->value * 100, 1)));
  if (v.tongue_to && *stage.tongue_share > v.tongue_to->value * slack)
    judge.say(said("tongue {} of the whole, {} % at most", percent_up(*stage.tongue_share),
                   plain(v.tongue_to->value * 100, 1)));
  judge.sides(*stage.total - stage.cargo);
}

/// The trailer behind a van, where one is loaded or listed.
struct Towed {
  Freight freight;
  int trailers = 0;  ///< that go with this van
};

Towed towed_by(const Catalogue& c, const Show& show, const Plan& plan, const Loading& loading, const Vehicle& van) {
  Towed t;
  for (const Vehicle* v : trailers_of(c, show, plan, van)) {
    if (++t.trailers > 1) continue;
    t.freight = {v, nullptr, stops_of(show, v->code.value)};
    for (const VehicleLoading& one : loading.vehicles)
      if (one.vehicle == v->code.value && one.faults.empty()) t.freight.loading = &one;
  }
  return t;
}

/// One van with its trailer's tongue at one stage. False where something that it needs was not typed.
bool weigh_van(const Freight& f, const Plan& plan, const Towed& towed, const std::vector<std::string>& done,
               std::vector<PlacedMass> load, LoadStage& stage, UnitSystem units) {
  const Vehicle& v = *f.vehicle;
  if (!v.empty_front || !v.empty_rear) return false;
  const Mass people = v.people_and_fuel ? v.people_and_fuel->value : Mass{};
  LoadStage trailer;
  if (towed.freight.loading) weigh_trailer(towed.freight, placed(towed.freight, plan, done, trailer), trailer);
  if (towed.trailers > 1 || (towed.trailers == 1 && !trailer.tongue)) return false;
  stage.tongue = trailer.tongue;  // on its hitch
  const Mass tongue = trailer.tongue.value_or(Mass{});
  stage.total = v.empty_front->value + v.empty_rear->value + people + stage.cargo + tongue;
  if (towed.trailers == 1) stage.train = *stage.total - tongue + *trailer.total;
  Judge judge(units, stage);
  judge.above(said("gross"), stage.total, value_of(v.gross));
  judge.above(said("payload"), stage.cargo + people + tongue, value_of(v.payload));
  stage.most_cargo = least(less(v.payload, people + tongue), less(v.gross, *stage.total - stage.cargo));
  judge.above(said("tongue on the hitch"), trailer.tongue, value_of(v.limit_tongue));
  judge.above(said("van and trailer"), stage.train, value_of(v.train));
  judge.sides(*stage.total - stage.cargo);
  if (!v.wheelbase || !v.front_to_cargo || (towed.trailers > 0 && !v.hitch_behind)) return false;
  for (PlacedMass& p : load) p.behind += v.front_to_cargo->value;
  const AxleFigures bare = axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value, load, tongue,
                                      v.hitch_behind ? v.hitch_behind->value : Length{});
  // People sit somewhere between the axles: on the front axle for its limit, on the rear for its own.
  stage.front = bare.front + people;
  stage.rear = bare.rear + people;
  judge.above(said("front axle"), stage.front, value_of(v.limit_front));
  judge.above(said("rear axle"), stage.rear, value_of(v.limit_rear));
  if (bare.front < bare.total * least_steered)
    judge.say(said("the front axle carries less than a fifth, and hardly steers"));
  return true;
}

/// The most cargo with its middle there; nothing where not even an empty vehicle keeps its limits.
std::optional<Mass> van_bears(const Vehicle& v, Length centre, Mass tongue) {
  const Mass people = v.people_and_fuel ? v.people_and_fuel->value : Mass{};
  const AxleFigures bare = axle_loads(v.empty_front->value, v.empty_rear->value, v.wheelbase->value, {}, tongue,
                                      v.hitch_behind ? v.hitch_behind->value : Length{});
  const auto most = allowed_cargo(AxleLimits{bare.front, bare.rear, v.wheelbase->value, less(v.limit_front, people),
                                             less(v.limit_rear, people), less(v.gross, people), least_steered},
                                  centre + v.front_to_cargo->value);
  return v.payload && most ? std::min(*most, v.payload->value - people - tongue) : most;
}

std::optional<Mass> trailer_bears(const Vehicle& v, Length centre) {
  const Mass empty = v.empty_axle->value + v.empty_tongue->value;
  const auto most = allowed_cargo(
      TongueLimits{empty, v.empty_tongue->value, v.coupling_to_axle->value, value_of(v.limit_axle),
                   value_of(v.limit_tongue), value_of(v.gross), value_of(v.tongue_from), value_of(v.tongue_to)},
      centre + v.coupling_to_cargo->value);
  return v.payload && most ? std::min(*most, v.payload->value) : most;
}

/// The curve of the load distribution picture: of a van the least that the tongues of all stages leave.
void add_curve(const Vehicle& v, StagedLoad& out) {
  if (!v.cargo) return;
  for (int i = 0; i <= curve_points; ++i) {
    const Length centre = v.cargo->value.length * (static_cast<double>(i) / curve_points);
    std::optional<Mass> most;
    for (const LoadStage& stage : out.stages) {
      const auto then =
          v.kind == Vehicle::Kind::van ? van_bears(v, centre, stage.tongue.value_or(Mass{})) : trailer_bears(v, centre);
      most = then ? least(most, then) : std::nullopt;
      if (!most) break;
    }
    if (most) out.allowed.emplace_back(centre, std::max(*most, Mass{}));
  }
}

int unknown_masses(const Freight& f, const Plan& plan) {
  return static_cast<int>(std::count_if(f.loading->pieces.begin(), f.loading->pieces.end(), [&](const LoadedPiece& p) {
    return !plan.rows[static_cast<std::size_t>(p.unit)].mass_known;
  }));
}

int unsized_in(const Vehicle& v, const Plan& plan, const Loading& loading) {
  return static_cast<int>(std::count_if(loading.unsized.begin(), loading.unsized.end(), [&](int unit) {
    return plan.rows[static_cast<std::size_t>(unit)].vehicle == v.code.value;
  }));
}

class Missing {
 public:
  explicit Missing(std::vector<Sentence>& out) : out_(out) {}
  void need(bool given, const Sentence& what) {
    if (!given) out_.push_back(what);
  }

 private:
  std::vector<Sentence>& out_;
};

/// What a van needs to know of the trailer behind it.
void add_missing_trailer(const Vehicle& v, const Plan& plan, const Loading& loading, const Towed& towed,
                         Missing& missing) {
  if (towed.trailers == 0) return;
  missing.need(towed.trailers == 1, said("which one of {} trailers it pulls", towed.trailers));
  missing.need(v.hitch_behind.has_value(), said("rear axle to hitch"));
  missing.need(v.limit_tongue.has_value(), said("limit of the hitch"));
  missing.need(v.train.has_value(), said("what it may weigh with its trailer"));
  const Vehicle& trailer = *towed.freight.vehicle;
  missing.need(trailer.empty_axle && trailer.empty_tongue && trailer.coupling_to_axle && trailer.coupling_to_cargo,
               said("empty axle, tongue and coupling of its trailer"));
  missing.need(towed.freight.loading != nullptr, said("where the load of the trailer stands"));
  const int unknown = towed.freight.loading ? unknown_masses(towed.freight, plan) : 0,
            unsized = unsized_in(trailer, plan, loading);
  missing.need(unknown == 0, said("the mass of {} pieces in its trailer", unknown));
  missing.need(unsized == 0, said("the size of {} pieces in its trailer", unsized));
}

void add_missing(const Freight& f, const Plan& plan, const Loading& loading, const Towed& towed, StagedLoad& out) {
  const Vehicle& v = *f.vehicle;
  Missing missing(out.missing);
  if (v.kind == Vehicle::Kind::van) {
    missing.need(v.empty_front && v.empty_rear, said("empty axles"));
    missing.need(v.people_and_fuel.has_value(), said("people and fuel"));
    missing.need(v.wheelbase && v.front_to_cargo, said("wheelbase and front axle to cargo"));
    missing.need(v.limit_front && v.limit_rear, said("limits of the axles"));
    add_missing_trailer(v, plan, loading, towed, missing);
  } else {
    missing.need(v.pulled_by.has_value(), said("what pulls it"));
    missing.need(v.empty_axle && v.empty_tongue, said("empty axle and tongue"));
    missing.need(v.coupling_to_axle && v.coupling_to_cargo, said("coupling to axle and to cargo"));
    missing.need(v.limit_axle.has_value(), said("limit of the axle"));
    missing.need(v.limit_tongue && v.tongue_from && v.tongue_to, said("limit of the tongue and its window"));
  }
  missing.need(v.gross.has_value(), said("gross"));
  const int unknown = unknown_masses(f, plan);
  missing.need(unknown == 0, said("the mass of {} pieces", unknown));
}

}  // namespace

std::vector<std::string> one_way(const std::vector<std::string>& van, const std::vector<std::string>& trailer) {
  std::vector<std::string> way;
  const auto add = [&](const std::string& stop) {
    if (std::find(way.begin(), way.end(), stop) == way.end()) way.push_back(stop);
  };
  std::size_t next = 0;
  for (const std::string& stop : van) {
    const auto shared = std::find(trailer.begin(), trailer.end(), stop);
    if (shared != trailer.end())
      for (; next < static_cast<std::size_t>(shared - trailer.begin()); ++next) add(trailer[next]);
    add(stop);
  }
  for (; next < trailer.size(); ++next) add(trailer[next]);
  return way;
}

std::vector<const Vehicle*> trailers_of(const Catalogue& c, const Show& show, const Plan& plan, const Vehicle& van) {
  std::vector<const Vehicle*> out;
  for (const Vehicle& v : c.kit.vehicles) {
    if (v.kind != Vehicle::Kind::trailer || !v.pulled_by || v.pulled_by->value != van.code.value) continue;
    const auto in_it = [&](const PlanRow& row) { return row.goes && row.vehicle == v.code.value; };
    const auto listed = [&](const Load& l) { return l.vehicle.value == v.code.value; };
    if (std::any_of(plan.rows.begin(), plan.rows.end(), in_it) ||
        std::any_of(show.loads.begin(), show.loads.end(), listed))
      out.push_back(&v);
  }
  return out;
}

std::vector<std::string> stops_of(const Show& show, const std::string& vehicle) {
  std::vector<std::string> stops;
  for (const Load& load : show.loads)
    if (load.vehicle.value == vehicle)
      for (const Text& stop : load.stops) stops.push_back(stop.value);
  return stops;
}

StagedLoad load_stages(const Catalogue& catalogue, const Show& show, const Plan& plan, const Loading& loading,
                       const VehicleLoading& vehicle) {
  StagedLoad out;
  const Freight f{catalogue.vehicle(vehicle.vehicle), &vehicle, stops_of(show, vehicle.vehicle)};
  if (!f.vehicle) return out;
  const UnitSystem units = catalogue.kit.house.units;
  const bool van = f.vehicle->kind == Vehicle::Kind::van;
  const Towed towed = van ? towed_by(catalogue, show, plan, loading, *f.vehicle) : Towed{};
  add_missing(f, plan, loading, towed, out);
  const std::vector<std::string> way = van ? one_way(f.stops, towed.freight.stops) : f.stops;
  std::vector<std::string> done;
  for (std::size_t i = 0; i <= way.size(); ++i) {
    LoadStage stage;
    if (i > 0) done.push_back(stage.after = way[i - 1]);
    std::vector<PlacedMass> load = placed(f, plan, done, stage);
    if (van) {
      weigh_van(f, plan, towed, done, std::move(load), stage, units);
    } else {
      weigh_trailer(f, std::move(load), stage);
      judge_trailer(*f.vehicle, stage, units);
    }
    out.stages.push_back(std::move(stage));
  }
  const LoadStage& first = out.stages.front();
  if (van ? first.front.has_value() : first.tongue.has_value()) add_curve(*f.vehicle, out);
  return out;
}

}  // namespace dunnage
