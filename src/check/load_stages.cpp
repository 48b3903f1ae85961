// SPDX-License-Identifier: MIT
#include "check/load_stages.h"

#include <algorithm>

#include "base/unit.h"
#include "check/on_wheels.h"
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

bool is_aboard(const Freight& f, const LoadedPiece& piece, const std::vector<std::string>& done) {
  const auto at = static_cast<std::size_t>(std::max(piece.stop, 0));
  return at >= f.stops.size() || std::find(done.begin(), done.end(), f.stops[at]) == done.end();
}

/// What is still aboard; on the stage, left and right by the share of each piece on either side.
Aboard still_aboard(const Freight& f, const Plan& plan, const std::vector<std::string>& done, LoadStage& stage) {
  Aboard out;
  const double middle = f.vehicle->cargo ? f.vehicle->cargo->value.width.si() / 2 : 0;
  double moment = 0;
  for (const LoadedPiece& piece : f.loading->pieces) {
    if (!is_aboard(f, piece, done)) continue;
    const Mass mass = plan.rows[static_cast<std::size_t>(piece.unit)].mass;
    const Cuboid& box = piece.box;
    out.pieces.push_back({mass, box.x + box.length * 0.5});
    out.mass += mass;
    moment += mass.si() * out.pieces.back().behind.si();
    const double left = std::clamp((middle - box.y.si()) / box.width.si(), 0.0, 1.0);
    stage.left += mass * left;
    stage.right += mass * (1 - left);
  }
  if (out.mass > Mass{}) stage.centre = Length::from_si(moment / out.mass.si());
  return out;
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

/// The trailer behind a van, where one is loaded or listed.
struct Towed {
  Freight freight;
  Hitched hitched;  ///< without its weights, which differ from stage to stage
};

Towed towed_by(const Catalogue& c, const Show& show, const Plan& plan, const Loading& loading, const Vehicle& van) {
  Towed t;
  for (const Vehicle* v : trailers_of(c, show, plan, van)) {
    if (++t.hitched.trailers > 1) continue;
    t.freight = {v, nullptr, stops_of(show, v->code.value)};
    for (const VehicleLoading& one : loading.vehicles)
      if (one.vehicle == v->code.value && one.faults.empty()) t.freight.loading = &one;
  }
  if (t.hitched.trailers == 0) return t;
  const Vehicle& v = *t.freight.vehicle;
  std::vector<Sentence>& missing = t.hitched.missing;
  if (!v.empty_axle || !v.empty_tongue || !v.coupling_to_axle || !v.coupling_to_cargo)
    missing.push_back(said("empty axle, tongue and coupling of its trailer"));
  if (!t.freight.loading) missing.push_back(said("where the load of the trailer stands"));
  const int unknown = t.freight.loading ? unknown_masses(t.freight, plan) : 0, unsized = unsized_in(v, plan, loading);
  if (unknown > 0) missing.push_back(said("the mass of {} pieces in its trailer", unknown));
  if (unsized > 0) missing.push_back(said("the size of {} pieces in its trailer", unsized));
  return t;
}

/// The trailer's weights after as many stops.
Hitched hitched_at(const Towed& towed, const Plan& plan, const std::vector<std::string>& done) {
  Hitched out = towed.hitched;
  if (out.trailers != 1 || !towed.freight.loading) return out;
  LoadStage trailer;
  weigh(*towed.freight.vehicle, still_aboard(towed.freight, plan, done, trailer), {}, trailer);
  out.tongue = trailer.tongue;
  out.total = trailer.total;
  return out;
}

/// A word about sides that differ, where the empty vehicle's mass is known.
void warn_of_sides(LoadStage& stage, UnitSystem units) {
  if (!stage.total) return;
  const Mass heavy = std::max(stage.left, stage.right), apart = heavy - std::min(stage.left, stage.right);
  if (apart <= ((*stage.total - stage.cargo) * 0.5 + heavy) * uneven) return;
  const std::string by = print(apart, units, Rounding::up).text();
  stage.warns.push_back(at_stage(stage, stage.left > stage.right ? said("the left side is heavier by {}", by)
                                                                 : said("the right side is heavier by {}", by)));
}

std::optional<Mass> less(const Maybe<Mass>& limit, Mass taken) {
  return limit ? std::optional(limit->value - taken) : std::nullopt;
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
      most = then ? lesser(most, then) : std::nullopt;
      if (!most) break;
    }
    if (most) out.allowed.emplace_back(centre, std::max(*most, Mass{}));
  }
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
  out.missing = not_typed(*f.vehicle, towed.hitched, true);
  if (const int unknown = unknown_masses(f, plan); unknown > 0)
    out.missing.push_back(said("the mass of {} pieces", unknown));
  const std::vector<std::string> way = van ? one_way(f.stops, towed.freight.stops) : f.stops;
  std::vector<std::string> done;
  for (std::size_t i = 0; i <= way.size(); ++i) {
    LoadStage stage;
    if (i > 0) done.push_back(stage.after = way[i - 1]);
    const Aboard load = still_aboard(f, plan, done, stage);
    weigh(*f.vehicle, load, hitched_at(towed, plan, done), stage);
    for (const Sentence& what : above_plates(*f.vehicle, stage, units)) stage.over.push_back(at_stage(stage, what));
    warn_of_sides(stage, units);
    out.stages.push_back(std::move(stage));
  }
  const LoadStage& first = out.stages.front();
  if (van ? first.front.has_value() : first.tongue.has_value()) add_curve(*f.vehicle, out);
  return out;
}

}  // namespace dunnage
