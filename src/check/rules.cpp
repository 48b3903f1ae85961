// SPDX-License-Identifier: MIT
// A new rule: its file, and one row here.
#include "check/rules.h"

#include "check/canopy_ballast.h"
#include "check/canopy_sliding.h"
#include "check/lifting.h"
#include "check/tower_load.h"
#include "check/tower_tip.h"

namespace dunnage {

const std::vector<Rule>& rules() {
  static const std::vector<Rule> table = {
      {"lifting", "how many people lift each case that goes",
       "best zone of the filter (25 kg crew, 16 kg volunteers); two people 2/3 of the sum, three 1/2; four "
       "only by a house figure; never more people than grips",
       "HSE, Manual handling at work, INDG143; L23 Appendix 1", "leaflet of 2020",
       "lifts away from the body, above the elbow or below the knuckles, twisting, steps, slopes, wet "
       "ground, repeated lifts, anyone pregnant, injured or under 18",
       "the crew chief, and each person for themselves", check_lifting},
      {"canopy-ballast",
       "weight on each leg of a canopy against the forecast gust, and the gust at which to take it down",
       "q = 1/2 rho v^2, rho 1.25; uplift = q x coefficient x plan; ballast a leg = (1.5 x pull / g - 0.9 x "
       "own share) / 0.9; down level = the gust so held, or the maker's limit if that is less",
       "EN 1991-1-4 clauses 4.5, 7.3, Tables 7.6 and 7.7; EN 1990 Table A1.2(A)",
       "2005+A1:2010; 2002+A1:2005",
       "strength of frame and fabric, hung equipment, flags, inflatables, trailers, stakes without a tested "
       "holding value, the roof's sideways push as a tilting force",
       "the maker's limit first; the venue, the authority and a competent person", check_canopy_ballast},
      {"canopy-sliding", "whether a canopy slides on its ground before it lifts",
       "0.2 x (0.9 x weight - 1.5 x uplift) against 1.5 x sideways force",
       "statics; EN 1990 Table A1.2(A); friction from memory, after EN 13814:2004 clause 5.5", "2002+A1:2005",
       "grass and anything wet (no friction is published), slopes, rubber feet",
       "a pull test on the day, and a competent person", check_canopy_sliding},
      {"tower-tip", "overturning of towers, light stands, banners and screens in the forecast gust",
       "1.5 x (q x coefficient x area x height) against 0.9 x weight x distance to the nearest tipping line",
       "EN 1991-1-4 clauses 4.5 and 7.4.3; EN 1990 Table A1.2(A)", "2005+A1:2010; 2002+A1:2005",
       "sliding, ground that gives way, people who climb or pull, guys, bending of the mast",
       "the maker's limit first; the venue and a competent person", check_tower_tip},
      {"tower-load", "load on a tower or stand against its rating",
       "mass carried against the maker's rated load", "the maker's plate", "as typed",
       "fittings and cable that the show does not list, shock, loads off the middle",
       "the maker's plate and a competent person", check_tower_load},
  };
  return table;
}

const Rule* rule(std::string_view name) {
  for (const Rule& r : rules())
    if (r.name == name) return &r;
  return nullptr;
}

Findings check_all(const Catalogue& catalogue, const Show& show, const Plan& plan) {
  Findings findings;
  for (const Rule& r : rules()) r.check(catalogue, show, plan, findings);
  return findings;
}

}  // namespace dunnage
