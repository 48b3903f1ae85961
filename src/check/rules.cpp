// SPDX-License-Identifier: MIT
// A new rule: its file, and one row here.
#include "check/rules.h"

#include "check/canopy_ballast.h"
#include "check/circuit_load.h"
#include "check/cold_work.h"
#include "check/crew_noise.h"
#include "check/crew_water.h"
#include "check/fire_points.h"
#include "check/heat_work.h"
#include "check/inspections.h"
#include "check/level_ways.h"
#include "check/lifting.h"
#include "check/load_plan_rule.h"
#include "check/rain_cover.h"
#include "check/sliding.h"
#include "check/stop_role.h"
#include "check/storm_plan.h"
#include "check/supply_load.h"
#include "check/tower_load.h"
#include "check/tower_tip.h"
#include "check/vehicle_mass.h"

namespace dunnage {

const std::vector<Rule>& rules() {
  static const std::vector<Rule> table = {
      {RuleName::lifting, "how many people lift each case that goes",
       "best zone of the filter (25 kg crew, 16 kg volunteers); two people 2/3 of the sum, three 1/2; four "
       "only by a house figure; never more people than grips; beside it, one person into the vehicle by the "
       "filter's zones and by the lifting index",
       "HSE, Manual handling at work, INDG143; L23 Appendix 1; NIOSH 94-110", "leaflet of 2020; rev. 9/2021",
       "lifts away from the body, above the elbow or below the knuckles, twisting, steps, slopes, wet "
       "ground, repeated lifts, anyone pregnant, injured or under 18",
       "the crew chief, and each person for themselves", check_lifting},
      {RuleName::canopy_ballast,
       "weight on each leg of a canopy against the forecast gust, and the gust at which to take it down",
       "q = 1/2 rho v^2, rho 1.25; uplift = q x coefficient x plan; ballast a leg = (1.5 x pull / g - 0.9 x "
       "own share) / 0.9, the pull with what walls and slopes tilt; down level = the gust so held, or the maker's "
       "limit if that is less",
       "EN 1991-1-4 clauses 4.5, 7.3, Tables 7.6 and 7.7; ASCE 7-22 Figures 27.3-4, 27.3-5 and 27.3-7; EN 1990 "
       "Table A1.2(A)",
       "2005+A1:2010; 2022; 2002+A1:2005",
       "strength of frame and fabric, flags, inflatables, trailers, stakes without a tested hold, soft ground",
       "the maker's limit first; the venue, the authority and a competent person", check_canopy_ballast},
      {RuleName::canopy_sliding, "whether a canopy slides on its ground before it lifts",
       "friction x (0.9 x weight - 1.5 x uplift) against 1.5 x sideways force; friction 0.2, or half of what the "
       "house tested on that ground",
       "statics; EN 1990 Table A1.2(A); friction from memory, after EN 13814:2004 clause 5.5", "2002+A1:2005",
       "grass and anything wet without a test of the house's own (no friction is published), slopes, rubber feet",
       "a pull test on the day, and a competent person", check_canopy_sliding},
      {RuleName::tower_tip, "overturning of towers, light stands, banners and screens in the forecast gust",
       "1.5 x (q x coefficient x area x height) against 0.9 x weight x distance to the nearest tipping line",
       "EN 1991-1-4 clauses 4.5 and 7.4.3; EN 1990 Table A1.2(A)", "2005+A1:2010; 2002+A1:2005",
       "ground that gives way, people who climb or pull, guys, bending of the mast",
       "the maker's limit first; the venue and a competent person", check_tower_tip},
      {RuleName::tower_sliding, "whether a tower, stand, banner or screen slides on its ground before it tips",
       "friction x 0.9 x weight against 1.5 x sideways force; friction 0.2, or half of what the house tested on "
       "that ground",
       "statics; EN 1990 Table A1.2(A); friction from memory, after EN 13814:2004 clause 5.5", "2002+A1:2005",
       "grass and anything wet without a test of the house's own (no friction is published), slopes, rubber feet",
       "a pull test on the day, and a competent person", check_tower_sliding},
      {RuleName::tower_load, "load on a tower, stand or canopy against its rating",
       "mass carried against the maker's rated load", "the maker's plate", "as typed",
       "fittings and cable where their mass is not typed, shock, loads off the middle",
       "the maker's plate and a competent person", check_tower_load},
      {RuleName::circuit, "each circuit against its protection, its cable, and the voltage lost at its farthest outlet",
       "current = power / (voltage x power factor), counted 1.25 when on for three hours or more; voltage "
       "drop "
       "2 x I x R x L (root 3 for three phases) over all segments, 5 % at most, or by cross-section",
       "NEC 210.19(A)(1), 210.20(A), Tables 400.5(A)(1) and 8; IEC 60364-5-52 Annex G",
       "NEC as copied, edition not seen; IEC 60364-5-52:2009",
       "coiled, bundled or hot cable, metric ampacity that the maker does not give, neutral currents, "
       "earthing",
       "a licensed electrician and the inspector", check_circuits},
      {RuleName::supply,
       "each power source against its rating, leg by leg, and a generator with height, heat and starting",
       "sum of power / power factor + the largest starting load, against the rating; a leg against its equal "
       "share; "
       "generator 3 % less each 500 m above 1000 m and each 5 C above 40 C; 20 ft from tents, doors and "
       "windows, its fuel 50 ft from tents",
       "the plate as typed; height and heat: common practice, no source; City of Fort Worth (Texas), tent permit page",
       "year not seen", "earthing and the neutral's bond, harmonics, a limit on imbalance (none is published)",
       "the set's own manual; a licensed electrician", check_supplies},
      {RuleName::heat, "how hot the day is for people at work",
       "heat index + 15 F for full sun, below 103 F; with a WBGT reading: 25 C for moderate work all of the "
       "hour",
       "NWS SR 90-23 (Rothfusz); OSHA Technical Manual III:4; OSHA proposed rule of 2024",
       "1990; manual as read; not final when read",
       "heavy clothes and heavy work, people who are ill, a day hotter than its forecast",
       "the crew chief, and each person for themselves", check_heat},
      {RuleName::water, "drinking water for crew and volunteers on a warm day",
       "people x hours x 0.71 l against what goes, from a heat index in full sun of 80 F on",
       "8 oz every 20 minutes: from memory, after OSHA and NIOSH; OSHA proposed rule of 2024", "not final when read",
       "the audience, water that is spilt, salt after two hours of sweat", "the crew chief", check_water},
      {RuleName::cold, "how cold the wind makes the day at 10 C (50 F) and below",
       "13.12 + 0.6215 T - 11.37 V^0.16 + 0.3965 T V^0.16, above -27 C", "Environment Canada and NWS, wind chill",
       "2001", "wet clothes, wet hands, metal, people who are ill", "the crew chief, and each person for themselves",
       check_cold},
      {RuleName::rain, "covers for what draws power in the open",
       "covers that go against pieces that draw power at places without a canopy", "common practice, no source", "none",
       "rain that blows in, ground that floods, connectors on the ground",
       "the person named to stop the show; the electrician", check_rain},
      {RuleName::lightning, "how far off a storm is when clearing must begin",
       "8 miles + storm speed x time to clear; again 30 minutes after the last", "NWS; NCAA guideline 1.E",
       "as cited in 2016", "a storm that forms overhead, panic, people who do not hear",
       "the person named to stop the show", check_lightning},
      {RuleName::stop_person, "somebody by role who may stop the show and alone restarts it", "a role is typed",
       "common practice, no source", "none", "whether that person is there and listened to", "who runs the show",
       check_stop_person},
      {RuleName::noise, "the crew's noise dose",
       "100 x sum of C / T, T = 8 h / 2^((L - 85) / 3), at most 100 %; OSHA's beside it: 8 h / 2^((L - 90) / "
       "5)",
       "NIOSH 98-126; OSHA 29 CFR 1910.95 Appendix A", "1998; as read",
       "the audience, single loud bangs, levels that nobody measured", "the employer; the licence for the audience",
       check_noise},
      {RuleName::ways, "steps, ramps and cables that people walk and roll over",
       "up to 1/4 in nothing, up to 1/2 in a bevel, above that a ramp of 12 x rise; 36 in wide",
       "ADA Standards 303 and 405", "2010", "light, slope of the ground, crowds, escape routes and their widths",
       "the venue and the fire marshal", check_ways},
      {RuleName::extinguishers, "extinguishers for the canopies that stand",
       "one for each 3000 ft2 or part; the longest walk to one, where it is typed, 75 ft",
       "City of Fort Worth (Texas), tent permit page; 29 CFR 1910.157(d)", "year not seen; as read",
       "their kind and charge, fuel on site (50 ft class B), cooking", "the fire marshal", check_extinguishers},
      {RuleName::vehicle, "what each vehicle and trailer carries against its plates",
       "load + people against payload; empty + load + people against gross; with its trailer against the "
       "train; "
       "axles and tongue by moments where positions are typed or planned; tie-downs by number, and limits of half the "
       "load",
       "statics; 49 CFR 393.106, 393.110; steered axle after DGUV rule 70", "as read",
       "tyres, brakes, how high the load stands, axles and tongue without positions, unloading on the way",
       "the plate, the tyre placard, the hitch plate; the driver", check_vehicles},
      {RuleName::loading, "what stands where in each vehicle, and its axles and tongue after every stop",
       "a plan of boxes judged by a checker of its own: nothing in one place, whole bases borne, this way up, wheels "
       "down, "
       "nothing on the fragile or on the lighter, mass on top within its limit, within reach of hands, through a door, "
       "out at "
       "its stop past what stays; moments at departure and after each stop against the plates, the tongue's window and "
       "a fifth on the steered "
       "axle; sides apart by more than 10 % (our choice)",
       "statics; 49 CFR 393.106, 393.110; steered axle after DGUV rule 70", "as read",
       "what bends or is squeezed, posts beside a narrow door, straps against braking above working loads, tyres, what "
       "nobody typed a size for",
       "the plate and a scale; the driver", check_loading},
      {RuleName::inspection, "things whose inspection date runs out before the show",
       "inspect_by against the show's date", "the date in the kit", "as typed",
       "what nobody gave a date, and what broke since", "who inspects it", check_inspections},
  };
  return table;
}

Findings check_all(const Catalogue& catalogue, const Show& show, const Plan& plan) {
  Findings findings;
  for (const Rule& r : rules()) r.check(catalogue, show, plan, findings);
  return findings;
}

}  // namespace dunnage
