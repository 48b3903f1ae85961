// SPDX-License-Identifier: MIT
#include "load/plan_load.h"

#include <algorithm>
#include <numeric>

#include "base/slack.h"
#include "formula/vehicle_load.h"
#include "load/cargo_rules.h"
#include "load/left_out.h"

namespace dunnage {
namespace {

/// A vehicle on its way to a plan.
struct Filling {
  const Vehicle* vehicle = nullptr;
  std::vector<int> typed, taken;  ///< units asked of it; units planned with it
  std::vector<LeftOut> heavy;     ///< over its plates
  Cargo cargo;
  VehiclePlan plan;
  long work = 0;
};

/// What trailers rest on a hitch, kg.
struct Resting {
  double mass = 0;
  bool guessed = false;
};

class LoadPlanner {
 public:
  LoadPlanner(const Catalogue& c, const Show& show, const Plan& plan, const LoadEffort& effort)
      : c_(c), show_(show), plan_(plan), effort_(effort) {}

  Loading run() {
    sort_out();
    std::vector<int> homeless = untyped_;
    for (Filling& f : fillings_) fill(f, homeless);
    for (Filling& f : fillings_) settle_tongue(f);
    Loading out;
    out.unsized = unsized_;
    for (Filling& f : fillings_)
      out.vehicles.push_back(written(f, &f == &fillings_.back() ? homeless : std::vector<int>{}));
    return out;
  }

 private:
  double mass(int unit) const {
    const PlanRow& row = plan_.rows[static_cast<std::size_t>(unit)];
    return row.mass_known ? row.mass.si() : 0;
  }

  void sort_out() {
    for (const Vehicle& v : c_.kit.vehicles) {
      if (!v.cargo) continue;
      Filling f;
      f.vehicle = &v;
      fillings_.push_back(f);
    }
    for (const int unit : plan_.pulled()) {
      const std::string& code = plan_.rows[static_cast<std::size_t>(unit)].vehicle;
      const auto f = std::find_if(fillings_.begin(), fillings_.end(),
                                  [&](const Filling& x) { return x.vehicle->code.value == code; });
      if (f == fillings_.end() && (!code.empty() || fillings_.empty())) continue;
      if (!c_.case_at(unit).size)
        unsized_.push_back(unit);
      else if (f == fillings_.end())
        untyped_.push_back(unit);
      else
        f->typed.push_back(unit);
    }
    keep_those_that_go();
  }

  /// A vehicle takes part that is asked to carry something, or that the show sends; where it sends none, any may.
  void keep_those_that_go() {
    const auto sent = [&](const Filling& f) {
      return std::any_of(show_.loads.begin(), show_.loads.end(),
                         [&](const Load& l) { return l.vehicle.value == f.vehicle->code.value; });
    };
    std::erase_if(fillings_, [&](const Filling& f) {
      return f.typed.empty() && !sent(f) && (untyped_.empty() || !show_.loads.empty());
    });
    if (fillings_.empty()) untyped_.clear();
  }

  /// Takes units off that the plates do not allow: the lightest one that is enough, else the heaviest and on.
  std::vector<int> within_plates(Filling& f, std::vector<int> units, const Resting& tongue) {
    const double most = most_cargo(*f.vehicle, tongue.mass);
    double sum = 0;
    for (const int unit : units) sum += mass(unit);
    const double excess = sum - most;
    while (most >= 0 && exceeds(sum, most) && !units.empty()) {
      auto off = units.end();
      for (auto at = units.begin(); at != units.end(); ++at) {
        const bool enough = mass(*at) >= sum - most, before = off != units.end() && mass(*off) >= sum - most;
        if (off == units.end() || (enough && (!before || mass(*at) < mass(*off))) ||
            (!enough && !before && mass(*at) > mass(*off)))
          off = at;
      }
      sum -= mass(*off);
      f.heavy.push_back({*off, LeftOut::Want::mass, !tongue.guessed, excess});
      units.erase(off);
    }
    return units;
  }

  Resting tongue_on(const Vehicle& van) const {
    Resting sum;
    for (const Filling& f : fillings_) {
      const Vehicle& v = *f.vehicle;
      if (v.kind != Vehicle::Kind::trailer || !v.pulled_by || v.pulled_by->value != van.code.value) continue;
      if (!f.plan.boxes.empty()) {
        sum.mass += tongue_of(f.cargo, f.plan.boxes);
        continue;
      }
      double gross = v.empty_axle && v.empty_tongue ? (v.empty_axle->value + v.empty_tongue->value).si() : 0;
      for (const int unit : f.typed) gross += mass(unit);
      sum.mass += gross * (v.tongue_to ? v.tongue_to->value : assumed_tongue);
      sum.guessed = true;
    }
    return sum;
  }

  static bool is_typed(const Filling& f, int unit) {
    return std::find(f.typed.begin(), f.typed.end(), unit) != f.typed.end();
  }

  /// What is typed with this vehicle, and these.
  void plan_units(Filling& f, const std::vector<int>& offered) {
    std::vector<int> units = f.typed;
    units.insert(units.end(), offered.begin(), offered.end());
    std::sort(units.begin(), units.end());
    const Resting tongue = tongue_on(*f.vehicle);
    f.heavy.clear();
    f.taken = within_plates(f, std::move(units), tongue);
    f.cargo = make_cargo(c_, show_, plan_, *f.vehicle, f.taken, effort_.hands);
    // Of units that no rule tells apart, those of this vehicle are not the ones that stay behind.
    for (CargoKind& kind : f.cargo.kinds)
      std::stable_partition(kind.units.begin(), kind.units.end(), [&](int unit) { return is_typed(f, unit); });
    f.plan = plan_vehicle(f.cargo, effort_, tongue.mass);
    f.work += f.plan.work;
  }

  std::vector<int> left_units(const Filling& f) const {
    std::vector<int> out;
    for (std::size_t k = 0; k < f.plan.left.size(); ++k) {
      const std::vector<int>& units = f.cargo.kinds[k].units;
      out.insert(out.end(), units.end() - f.plan.left[k], units.end());
    }
    for (const LeftOut& heavy : f.heavy) out.push_back(heavy.unit);
    std::sort(out.begin(), out.end());
    return out;
  }

  /// What is typed goes first; then as much of the rest as leaves nothing behind that would have found room alone.
  void fill(Filling& f, std::vector<int>& homeless) {
    plan_units(f, homeless);
    if (homeless.empty()) return;
    std::vector<int> offered = homeless, left = left_units(f);
    if (std::any_of(left.begin(), left.end(), [&](int unit) { return is_typed(f, unit); })) {
      plan_units(f, {});
      const std::vector<int> hopeless = left_units(f);
      const auto wronged = [&](int unit) {
        return is_typed(f, unit) && std::find(hopeless.begin(), hopeless.end(), unit) == hopeless.end();
      };
      for (;; offered.resize(offered.size() / 2)) {
        plan_units(f, offered);
        left = left_units(f);
        if (offered.empty() || std::none_of(left.begin(), left.end(), wronged)) break;
      }
    }
    left.insert(left.end(), homeless.begin() + static_cast<std::ptrdiff_t>(offered.size()), homeless.end());
    std::erase_if(left, [&](int unit) { return is_typed(f, unit); });
    std::sort(left.begin(), left.end());
    give_back(f, left);
    homeless = std::move(left);
  }

  /// These are no longer asked of it.
  static void give_back(Filling& f, const std::vector<int>& units) {
    const auto given = [&](int unit) { return std::binary_search(units.begin(), units.end(), unit); };
    std::erase_if(f.heavy, [&](const LeftOut& left) { return given(left.unit); });
    std::erase_if(f.taken, given);
    for (std::size_t k = 0; k < f.plan.left.size(); ++k)
      f.plan.left[k] -= static_cast<int>(std::erase_if(f.cargo.kinds[k].units, given));
  }

  /// A van was planned with a guess of what its trailer rests on it.
  void settle_tongue(Filling& f) {
    const double tongue = tongue_on(*f.vehicle).mass;
    if (f.vehicle->kind != Vehicle::Kind::van || tongue == 0) return;
    if (trim_of(f.cargo, f.plan.boxes, tongue).over <= 1e-6) return;
    std::vector<StoodBox> boxes = loading_order(f.cargo, trimmed(f.cargo, f.plan.boxes, tongue));
    if (ways_free(f.cargo, boxes)) f.plan.boxes = std::move(boxes);
  }

  bool too_big_for_all(int unit) const {
    return std::all_of(fillings_.begin(), fillings_.end(), [&](const Filling& f) {
      const LeftOut::Want want =
          reasons_left(c_, make_cargo(c_, show_, plan_, *f.vehicle, {unit}, effort_.hands), {unit}).front().want;
      return want == LeftOut::Want::size || want == LeftOut::Want::door;
    });
  }

  VehicleLoading written(const Filling& f, const std::vector<int>& homeless) const {
    VehicleLoading out;
    out.vehicle = f.vehicle->code.value;
    out.work = f.work;
    std::vector<std::size_t> used(f.cargo.kinds.size(), 0);
    const std::vector<int> rows = rows_of(f.cargo, f.plan.boxes);
    for (std::size_t i = 0; i < f.plan.boxes.size(); ++i) {
      const StoodBox& b = f.plan.boxes[i];
      const auto k = static_cast<std::size_t>(b.box);
      const auto length = [](int mm) { return mm * unit::millimetre; };
      LoadedPiece piece;
      piece.unit = f.cargo.kinds[k].units[used[k]++];
      piece.box = {length(b.at[0]),   length(b.at[1]),   length(b.at[2]),
                   length(b.size[0]), length(b.size[1]), length(b.size[2])};
      piece.stance = static_cast<Stance>(b.word);
      piece.row = rows[i] + 1;
      piece.stop = f.cargo.kinds[k].stop;
      out.pieces.push_back(piece);
    }
    out.left = f.heavy;
    std::vector<int> left = homeless;
    for (std::size_t k = 0; k < f.plan.left.size(); ++k) {
      const std::vector<int>& units = f.cargo.kinds[k].units;
      left.insert(left.end(), units.end() - f.plan.left[k], units.end());
    }
    if (left.empty()) return out;
    std::vector<int> asked = f.taken;
    asked.insert(asked.end(), homeless.begin(), homeless.end());
    const Cargo cargo = make_cargo(c_, show_, plan_, *f.vehicle, asked, effort_.hands);
    for (LeftOut& l : reasons_left(c_, cargo, left)) {
      const bool homes = std::find(homeless.begin(), homeless.end(), l.unit) != homeless.end();
      if (homes && fillings_.size() > 1 && !too_big_for_all(l.unit)) l = {l.unit, LeftOut::Want::room, false, 0};
      out.left.push_back(l);
    }
    std::sort(out.left.begin(), out.left.end(), [](const LeftOut& a, const LeftOut& b) { return a.unit < b.unit; });
    return out;
  }

  const Catalogue& c_;
  const Show& show_;
  const Plan& plan_;
  LoadEffort effort_;
  std::vector<Filling> fillings_;
  std::vector<int> untyped_, unsized_;
};

}  // namespace

Loading plan_load(const Catalogue& catalogue, const Show& show, const Plan& plan, const LoadEffort& effort) {
  return LoadPlanner(catalogue, show, plan, effort).run();
}

}  // namespace dunnage
