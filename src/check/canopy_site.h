// SPDX-License-Identifier: MIT
// One canopy where it stands: its shape, its weights on each leg, the wind it must meet. Read once here for
// every rule about canopies.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "check/standing_site.h"
#include "formula/canopy_shape.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// What stands on one leg. Units of unknown mass count nothing.
struct LegLoad {
  std::string name;
  Mass mass;
  Mass staked;                                   ///< what tested stakes count for; not part of `mass`
  std::vector<std::pair<Sentence, int>> pieces;  ///< case code and how many
  bool unknown = false;                          ///< a unit's mass is not given
};

struct CanopySite : StandingSite {
  CanopyShape shape;
  CanopyReading reading;
  std::vector<LegLoad> legs;
};

/// The canopies in use, in the order of the show.
std::vector<CanopySite> canopy_sites(const Catalogue& catalogue, const Show& show, const Plan& plan);

/// Share of its tested hold that a stake counts for: wet ground holds about half of dry.
/// Source: University of Illinois stake study, as quoted in the trade press on 1 June 2009; not seen itself.
inline constexpr double stake_share = 0.5;

/// Mass in all that stands on the legs, without stakes.
Mass ballast_in_all(const CanopySite& site);
/// The least that holds any leg down, stakes included.
Mass least_ballast(const CanopySite& site);
/// Factored gust at which the lightest leg lifts, with `more` on every leg. Empty where nothing lifts it.
std::optional<Speed> lifting_gust_of(const CanopySite& site, Mass more = {});
/// Factored gust at which it slides; empty where friction or heights are not known, or nothing pushes.
std::optional<Speed> sliding_gust_of(const CanopySite& site, Mass more_a_leg = {});
/// The same canopy with its walls off, or with nothing hung on it.
CanopySite without_walls(const CanopySite& site);
CanopySite without_hung(const CanopySite& site);
/// The lower of the two and the maker's limit; empty when the ballast cannot be judged.
std::optional<Speed> holding_gust_of(const CanopySite& site, Mass more_a_leg = {});

}  // namespace dunnage
