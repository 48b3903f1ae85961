// SPDX-License-Identifier: MIT
// From a use of a tower to areas and masses about its tipping line.
#include "check/tower_site.h"

#include <algorithm>
#include <cmath>

namespace dunnage {
namespace {

/// Width of a mast for the wind where nobody gives one: an assumption, said on the sheet.
Length assumed_mast_width(StructureKind kind) { return (kind == StructureKind::tower ? 0.10 : 0.05) * unit::metre; }
constexpr double kTubeCoefficient = 1.2;  // round tube, common practice, no source

void read_base(TowerSite& site) {
  const Structure& s = *site.structure;
  if (s.feet && s.foot_radius) {
    if (const auto lever = tipping_lever(s.feet->value, s.foot_radius->value))
      site.lever = *lever;
    else
      site.missing.push_back(said("three feet or more"));
  } else if (s.base_length && s.base_width) {
    site.lever = tipping_lever(s.base_length->value, s.base_width->value);
  } else {
    site.missing.push_back(said("feet and their radius, or the base"));
  }
}

std::optional<Mass> carried_mass(const Catalogue& c, const Carried& carried) {
  if (carried.mass) return carried.mass->value;
  if (const int i = c.case_index(carried.code.value); i >= 0) {
    const UnitMass mass = c.mass_of(c.units_of[static_cast<std::size_t>(i)].first);
    return mass.known ? std::optional<Mass>(mass.mass) : std::nullopt;
  }
  const Item* item = c.item(carried.code.value);
  return item && item->mass ? std::optional<Mass>(item->mass->value) : std::nullopt;
}

std::optional<Area> carried_area(const Catalogue& c, const Carried& carried) {
  if (carried.area) return carried.area->value;
  const Case* box = c.case_of(carried.code.value);
  return box && box->wind_area ? std::optional<Area>(box->wind_area->value) : std::nullopt;
}

std::optional<Length> head_height(const Structure& s) {
  if (s.head_height) return s.head_height->value;
  if (s.mast_height) return s.mast_height->value;
  return std::nullopt;
}

void read_carried(TowerSite& site, const Catalogue& c, const Use& use, Mass& middle) {
  for (const Carried& carried : use.carries) {
    const auto mass = carried_mass(c, carried);
    const auto area = carried_area(c, carried);
    const auto height = carried.at ? std::optional<Length>(carried.at->value) : head_height(*site.structure);
    if (mass) middle += *mass * carried.count;
    if (area && height)
      site.areas.push_back({*area * carried.count, panel_coefficient, *height});
    else
      site.missing.push_back(area ? said("the height of {}", carried.code.value)
                                  : said("the wind area of {}", carried.code.value));
  }
  for (const Hung& hung : use.hung) {
    const auto height = hung.at ? std::optional<Length>(hung.at->value) : head_height(*site.structure);
    if (hung.area && height)
      site.hung.push_back({hung.area->value, panel_coefficient, *height});
    else
      site.missing.push_back(hung.area ? said("the height of {}", hung.what.value)
                                       : said("the area of {}", hung.what.value));
  }
  site.areas.insert(site.areas.end(), site.hung.begin(), site.hung.end());
}

void read_own_area(TowerSite& site) {
  const Structure& s = *site.structure;
  const auto height = head_height(s);
  if (s.head_area && height)
    site.areas.push_back({s.head_area->value, panel_coefficient, *height});
  else if (s.head_area)
    site.missing.push_back(said("the head's height"));
  if (site.areas.empty()) site.missing.push_back(said("head area"));
  if (!s.mast_height) {
    site.missing.push_back(said("mast height"));
    return;
  }
  const Length mast = s.mast_height->value;
  site.areas.push_back({mast * assumed_mast_width(s.kind), kTubeCoefficient, mast / 2.0});
  site.assumptions.push_back(s.kind == StructureKind::tower ? said("mast taken as 100 mm wide")
                                                            : said("mast taken as 50 mm wide"));
}

void read_ballast(TowerSite& site, const Catalogue& c, const Plan& plan, Mass middle) {
  double east = 0, north = 0;  // kg m: how far the ballast lies off the middle
  for (const BallastPiece& piece : plan.ballast) {
    if (piece.use != site.use) continue;
    const UnitMass mass = c.mass_of(piece.unit);
    if (!mass.known && !c.case_at(piece.unit).filled) {
      site.assumptions.push_back(said("a ballast piece without a mass is not counted"));
      continue;
    }
    site.ballast += mass.as_ballast;
    east += mass.as_ballast.si() * piece.at.first.si();
    north += mass.as_ballast.si() * piece.at.second.si();
  }
  // The wind may come from anywhere, so the line that the ballast is farthest from is not the one that
  // counts: over all directions the least holding moment is lever x mass less the ballast's pull off the
  // middle.
  site.bare = holding_moment({{middle, site.lever}});
  const Moment centred = holding_moment({{middle + site.ballast, site.lever}});
  const double off = std::hypot(east, north);
  site.weight = middle + site.ballast;
  site.holds = centred - Moment::from_si(off * standard_gravity.si());
  if (off > 1e-9) site.assumptions.push_back(said("ballast off the middle: the worst wind direction counts"));
}

}  // namespace

HeadLoad head_load(const Catalogue& c, const Structure& structure, const Use& use) {
  HeadLoad load;
  for (const Carried& carried : use.carries) {
    const auto height = carried.at ? std::optional<Length>(carried.at->value) : head_height(structure);
    if (height) load.highest = load.highest ? std::max(*load.highest, *height) : *height;
    if (const auto mass = carried_mass(c, carried))
      load.mass += *mass * carried.count;
    else
      load.missing.push_back(said("the mass of {}", carried.code.value));
  }
  for (const Hung& hung : use.hung)
    if (hung.mass)
      load.mass += hung.mass->value;
    else
      load.missing.push_back(said("the mass of {}", hung.what.value));
  if (use.cable) load.mass += use.cable->value;
  return load;
}

std::optional<Speed> sliding_gust_of(const TowerSite& site) {
  if (!site.friction || !site.missing.empty()) return std::nullopt;
  CanopyStand stand;
  stand.own = site.weight;
  for (const WindArea& a : site.areas) stand.wind.side += a.coefficient * a.area.si();
  return sliding_gust(stand, {}, site.friction->share);
}

std::optional<Speed> tipping_gust_of(const TowerSite& site) {
  if (!site.missing.empty()) return std::nullopt;
  return tipping_gust(site.areas, site.holds);
}

std::optional<Speed> holding_gust_of(const TowerSite& site) {
  return lowest({tipping_gust_of(site), sliding_gust_of(site), site.maker});
}

TowerSite with_more(const TowerSite& site, Mass more) {
  TowerSite heavier = site;
  heavier.ballast += more;
  heavier.weight += more;
  heavier.holds += holding_moment({{more, site.lever}});
  return heavier;
}

TowerSite without_hung(const TowerSite& site) {
  TowerSite bare = site;
  // Areas that banners add stand together, so as many are taken out again.
  for (const WindArea& hung : site.hung) {
    const auto same = [&](const WindArea& a) { return a.area == hung.area && a.height == hung.height; };
    const auto found = std::find_if(bare.areas.begin(), bare.areas.end(), same);
    if (found != bare.areas.end()) bare.areas.erase(found);
  }
  bare.hung.clear();
  return bare;
}

std::vector<TowerSite> tower_sites(const Catalogue& catalogue, const Show& show, const Plan& plan) {
  std::vector<TowerSite> sites;
  for (int i = 0; i < static_cast<int>(show.uses.size()); ++i) {
    const Use& use = show.uses[static_cast<std::size_t>(i)];
    const Structure* structure = catalogue.structure(use.structure.value);
    if (!structure || structure->kind == StructureKind::canopy) continue;
    TowerSite site;
    static_cast<StandingSite&>(site) = standing_site(catalogue, show, i, *structure);
    Mass middle;
    if (structure->standing)
      middle = structure->standing->value;
    else
      site.assumptions.push_back(said("the structure's own mass is not stated: none counted"));
    read_base(site);
    read_carried(site, catalogue, use, middle);
    read_own_area(site);
    read_ballast(site, catalogue, plan, middle);
    sites.push_back(std::move(site));
  }
  return sites;
}

}  // namespace dunnage
