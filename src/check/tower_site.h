// SPDX-License-Identifier: MIT
// One tower, light stand, banner or screen where it stands: what the wind meets, what holds it, what it
// carries.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "check/standing_site.h"
#include "formula/overturning.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

struct TowerSite : StandingSite {
  std::vector<WindArea> areas;
  std::vector<WindArea> hung;  ///< those of `areas` that banners add
  Length lever;                ///< from the middle to the nearest tipping line
  Moment holds;                ///< about the worst tipping line, ballast where it really is
  Moment bare;                 ///< what holds without any ballast
  Mass ballast;                ///< in all
  Mass weight;                 ///< of everything, on the ground
};

/// What a use carries and what hangs on it, with cable where that is typed.
struct HeadLoad {
  Mass mass;
  std::optional<Length> highest;  ///< of what it carries
  std::vector<Sentence> missing;  ///< masses that are not given
};
HeadLoad head_load(const Catalogue& catalogue, const Structure& structure, const Use& use);

/// Factored gust at which it slides; empty where no friction is known for its ground.
std::optional<Speed> sliding_gust_of(const TowerSite& site);
/// Factored gust at which it tips; empty where nothing pushes it.
std::optional<Speed> tipping_gust_of(const TowerSite& site);
/// The least of tipping, sliding and the maker's limit.
std::optional<Speed> holding_gust_of(const TowerSite& site);
/// The same tower with `more` in the middle of its base, or without what hangs on it.
TowerSite with_more(const TowerSite& site, Mass more);
TowerSite without_hung(const TowerSite& site);

/// Uses of structures other than canopies, in the order of the show.
std::vector<TowerSite> tower_sites(const Catalogue& catalogue, const Show& show, const Plan& plan);

}  // namespace dunnage
