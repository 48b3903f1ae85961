// SPDX-License-Identifier: MIT
// From a use of a canopy to what the formulas need, saying what is missing or assumed.
#include "check/canopy_site.h"

#include <algorithm>
#include <cassert>

namespace dunnage {
namespace {

RoofShape shape_of(Roof roof) {
  switch (roof) {
    case Roof::flat:
      return RoofShape::flat;
    case Roof::single_slope:
      return RoofShape::single_slope;
    case Roof::two_slope:
      return RoofShape::two_slope;
    case Roof::four_slope:
      return RoofShape::four_slope;
  }
  return RoofShape::flat;
}

std::optional<double> blockage_of(Under under) {
  switch (under) {
    case Under::empty:
      return 0.0;
    case Under::half_full:
      return 0.5;
    case Under::full:
      return 1.0;
    case Under::not_stated:
      break;
  }
  return std::nullopt;
}

int wall_count(const Use& use) {
  for (const Text& wall : use.walls)
    if (wall.value == "all" || wall.value == "each") return 4;
  return static_cast<int>(use.walls.size());
}

void read_hung(CanopySite& site, const Use& use) {
  for (const Hung& hung : use.hung) {
    if (hung.area)
      site.shape.hung.push_back({hung.area->value, value_of(hung.at)});
    else
      site.missing.push_back(said("the area of {}", hung.what.value));
  }
  for (const Carried& carried : use.carries) {
    if (carried.area)
      site.shape.hung.push_back({carried.area->value * carried.count, value_of(carried.at)});
    else
      site.missing.push_back(said("the area of {}", carried.code.value));
  }
  if (!use.hung.empty() || !use.carries.empty()) site.assumptions.push_back(said("what hangs on it adds its area"));
}

void read_shape(CanopySite& site, const Use& use) {
  const Structure& s = *site.structure;
  site.shape.roof = shape_of(s.roof);
  if (s.plan_length && s.plan_width) {
    site.shape.length = s.plan_length->value;
    site.shape.width = s.plan_width->value;
  } else {
    site.missing.push_back(said("plan"));
  }
  if (s.legs.empty()) site.missing.push_back(said("legs"));
  site.shape.eaves = value_of(s.eaves);
  site.shape.peak = value_of(s.peak);
  site.shape.blockage = blockage_of(use.under);
  site.shape.walls = wall_count(use);
  site.shape.own = value_of(s.standing);
  site.shape.legs = static_cast<int>(s.legs.size());
  site.shape.own_uplift = value_of(s.own_uplift);
  read_hung(site, use);
}

void read_legs(CanopySite& site, const Catalogue& catalogue, const Plan& plan) {
  for (const Text& leg : site.structure->legs) site.legs.push_back({leg.value, {}, {}, {}, false});
  bool estimated = false, off_leg = false;
  for (const BallastPiece& piece : plan.ballast) {
    if (piece.use != site.use) continue;
    if (piece.leg < 0 || piece.leg >= static_cast<int>(site.legs.size())) {
      off_leg = true;
      continue;
    }
    LegLoad& leg = site.legs[static_cast<std::size_t>(piece.leg)];
    const UnitMass mass = catalogue.mass_of(piece.unit);
    const Case& box = catalogue.case_at(piece.unit);
    if (mass.known || box.filled)
      leg.mass += mass.as_ballast;
    else
      leg.unknown = true;
    estimated = estimated || (mass.estimated && !box.filled);
    const Sentence code = box.code.value;
    const auto same =
        std::find_if(leg.pieces.begin(), leg.pieces.end(), [&](const auto& known) { return known.first == code; });
    if (same != leg.pieces.end())
      ++same->second;
    else
      leg.pieces.emplace_back(code, 1);
  }
  if (estimated) site.assumptions.push_back(said("ballast added up, not weighed"));
  if (off_leg) site.assumptions.push_back(said("ballast that stands on no leg is not counted"));
}

/// Stakes count only where the house pulled one, in the ground that is here.
void read_stakes(CanopySite& site, const Catalogue& catalogue, const Use& use) {
  if (use.stakes.empty()) return;
  const auto& tested = catalogue.kit.house.stake;
  if (!tested || !site.ground || tested->ground != *site.ground) {
    site.assumptions.push_back(said("stakes not counted: no tested hold for this ground"));
    return;
  }
  for (const BallastLine& line : use.stakes)
    for (LegLoad& leg : site.legs) {
      const auto named = [&](const Text& one) { return one.value == leg.name; };
      if (!line.each_leg && std::none_of(line.legs.begin(), line.legs.end(), named)) continue;
      leg.staked += tested->holds * (stake_share * line.count);
      leg.pieces.emplace_back(said("stake"), line.count);
    }
  site.assumptions.push_back(said("stakes at half their tested hold ({})", tested->tested));
}

}  // namespace

std::vector<CanopySite> canopy_sites(const Catalogue& catalogue, const Show& show, const Plan& plan) {
  std::vector<CanopySite> sites;
  for (int i = 0; i < static_cast<int>(show.uses.size()); ++i) {
    const Use& use = show.uses[static_cast<std::size_t>(i)];
    const Structure* structure = catalogue.structure(use.structure.value);
    if (!structure || structure->kind != StructureKind::canopy) continue;
    CanopySite site{standing_site(catalogue, show, i, *structure), {}, {}, {}};
    read_shape(site, use);
    read_legs(site, catalogue, plan);
    read_stakes(site, catalogue, use);
    if (site.missing.empty()) site.reading = read_canopy(site.shape);
    for (const Sentence& m : site.reading.missing) site.missing.push_back(m);
    for (const Sentence& a : site.reading.assumptions) site.assumptions.push_back(a);
    sites.push_back(std::move(site));
  }
  return sites;
}

Mass ballast_in_all(const CanopySite& site) {
  Mass sum;
  for (const LegLoad& leg : site.legs) sum += leg.mass;
  return sum;
}

Mass least_ballast(const CanopySite& site) {
  assert(!site.legs.empty());
  Mass least = site.legs.front().mass + site.legs.front().staked;
  for (const LegLoad& leg : site.legs) least = std::min(least, leg.mass + leg.staked);
  return least;
}

std::optional<Speed> lifting_gust_of(const CanopySite& site, Mass more) {
  return lifting_gust(site.reading.stand, least_ballast(site) + more);
}

std::optional<Speed> sliding_gust_of(const CanopySite& site, Mass more) {
  if (!site.friction || !site.reading.side_known) return std::nullopt;
  return sliding_gust(site.reading.stand, ballast_in_all(site) + more * static_cast<double>(site.legs.size()),
                      site.friction->share);
}

CanopySite without_walls(const CanopySite& site) {
  CanopySite bare = site;
  bare.shape.walls = 0;
  bare.reading = read_canopy(bare.shape);
  return bare;
}

CanopySite without_hung(const CanopySite& site) {
  CanopySite bare = site;
  bare.shape.hung.clear();
  bare.reading = read_canopy(bare.shape);
  return bare;
}

std::optional<Speed> holding_gust_of(const CanopySite& site, Mass more) {
  if (!site.missing.empty() || (site.reading.needs_maker_limit && !site.maker)) return std::nullopt;
  return lowest({lifting_gust_of(site, more), sliding_gust_of(site, more), site.maker});
}

}  // namespace dunnage
