// SPDX-License-Identifier: MIT
// Axle and tongue loads by moments, and how many tie-downs a load asks for.
#pragma once

#include <optional>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

/// A mass and where it stands, measured rearwards.
struct PlacedMass {
  Mass mass;
  Length behind;
};

/// A trailer: x from the coupling. Single axle, or an axle group at its middle (statics).
struct TongueFigures {
  Mass tongue, axle, gross;
  double share = 0;
};  ///< share: tongue / gross
TongueFigures tongue_load(Mass empty, Mass empty_tongue, Length coupling_to_axle, const std::vector<PlacedMass>& load);
/// How far rearwards cargo of this mass moves to lower the tongue by so much (statics).
Length shift_for_tongue(Mass change, Mass moved, Length coupling_to_axle);

/// A van or truck on two axles: x from the front axle. `tongue` at `hitch_behind` the rear axle.
struct AxleFigures {
  Mass front, rear, total;
};
AxleFigures axle_loads(Mass empty_front, Mass empty_rear, Length wheelbase, const std::vector<PlacedMass>& load,
                       Mass tongue = {}, Length hitch_behind = {});

/// Limits of a van or truck as it leaves, with people, and with a trailer's tongue counted into the bare axles.
struct AxleLimits {
  Mass front0, rear0;  ///< without cargo
  Length wheelbase;
  std::optional<Mass> front, rear, gross;
  double steered = 0;  ///< least share of the whole on the front axle
};
/// Most cargo whose centre lies there, behind the front axle; nothing where no limit is known. Statics; the same sums
/// as a load distribution plan of the EU best practice guidelines of 2014.
std::optional<Mass> allowed_cargo(const AxleLimits& limits, Length centre);
/// The same of a trailer, its centre behind the coupling. A tongue that the empty trailer has too light sets no most.
struct TongueLimits {
  Mass empty, tongue0;
  Length coupling_to_axle;
  std::optional<Mass> axle, tongue, gross;
  std::optional<double> share_from, share_to;
};
std::optional<Mass> allowed_cargo(const TongueLimits& limits, Length centre);

/// Least share of the total on the steered axle. Source: DGUV rule 70, commentary on clause 37.
inline constexpr double least_steered = 0.2;
/// Share of a loaded trailer on its tongue where nothing says: the upper end of the usual window. Common practice, no
/// source.
inline constexpr double assumed_tongue = 0.15;

/// Tie-downs by length and mass. Blocked forward: one for each 10 ft or part. Else one up to 5 ft and
/// 1100 lb, two up to 10 ft, one more for each further 10 ft or part. Source: 49 CFR 393.110.
int tie_downs(Length length, Mass mass, bool blocked_forward);
/// Sum of working load limits: at least half the weight. Source: 49 CFR 393.106(d).
Mass working_load_needed(Mass mass);
enum class TieDownRoute { over_to_other_side, vehicle_to_cargo, back_to_same_side };
/// How much of a tie-down's working load limit counts: over to the other side all, else half.
Mass working_load_counted(Mass limit, TieDownRoute route);
/// Nearer than that to the bulkhead, or to the row ahead, a load is blocked forward. Common practice, no source.
inline constexpr Length blocked_within = 0.1 * unit::metre;
/// Forces that straps must hold, as shares of weight. Source: 49 CFR 393.102.
struct SecureForce {
  double forward, rearward, sideways;
};
inline constexpr SecureForce breaking_strength{0.8, 0.5, 0.5}, working_load{0.435, 0.5, 0.25};

}  // namespace dunnage
