// SPDX-License-Identifier: MIT
// The lifting filter of the UK's health and safety authority, and what a team may lift together.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

/// Whose column of the filter. Crew: the men's figures; volunteers, unknown and mixed: the women's,
/// which suit nearly everybody.
enum class Lifter { crew, anyone };
/// Where the hands are, the highest first.
enum class HandZone { above_shoulder, shoulder_to_elbow, elbow_to_knuckle, knuckle_to_shin, below_shin };
enum class Reach { close, far };

/// The filter's figure for one person in one zone, for up to about 30 lifts an hour.
/// Source: HSE, INDG143 (rev. 2020) and L23 Appendix 1, lifting and lowering filter.
Mass filter_limit(Lifter lifter, HandZone zone, Reach reach);
/// The figure of the best zone, elbow to knuckle and close: 25 kg crew, 16 kg anyone.
Mass best_zone_limit(Lifter lifter);
/// The least over all zones that the hands pass. Empty without a zone.
std::optional<Mass> filter_limit(Lifter lifter, const std::vector<HandZone>& zones, Reach reach);
/// The zones that hands pass between two heights above the floor. Heights of a body, from memory: shin 25 cm,
/// knuckle 75, elbow 105, shoulder 140.
std::vector<HandZone> zones_between(Length low, Length high);
/// Hands this far ahead of the ankles count as at arm's length (common practice, no source).
inline constexpr Length arms_length = 40 * unit::centimetre;
/// What is left of a limit at this rate: 1 up to 30 an hour, 0.7 at 1 to 2 a minute, 0.5 at 5 to 8, 0.2
/// above 12. Between those the leaflet gives nothing: empty. Source: copies of the older INDG143.
std::optional<double> rate_share(double per_minute);
/// 1, 0.9 beyond 45 degrees, 0.8 beyond 90. Same source.
double twist_share(double degrees);

/// What people lift together: one the figure itself, two 2/3 of the sum, three 1/2 of the sum.
/// More than three: empty, as nothing is published. Source: HSE, L23, team handling.
std::optional<Mass> team_limit(const std::vector<Mass>& each);

/// Whose limits: the published ones, or a house's own for one to four people together.
struct TeamLimits {
  Lifter lifter = Lifter::anyone;
  std::array<std::optional<Mass>, 4> own;
};
struct TeamFigure {
  Mass limit;
  bool own = false;  ///< the house's own figure, or worked from it
};
/// What so many people lift together: the house's own figure; else the best zone, or the house's figure for
/// one, times the published team factor. Four: only a house's own. Empty where there is none.
std::optional<TeamFigure> team_figure(int people, const TeamLimits& limits);

/// The fewest whose limit covers a mass, never more than the grips allow (one may always try).
struct FewestPeople {
  int people = 0;  ///< 0: beyond all of them, or the mass is not known
  Mass limit;      ///< of that many, or of the largest team
  bool own = false;
};
FewestPeople fewest_people(std::optional<Mass> mass, int grips, const TeamLimits& limits);

}  // namespace dunnage
