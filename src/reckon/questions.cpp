// SPDX-License-Identifier: MIT
// The explicit table of questions: what each needs, one example, its formula and source.
#include "reckon/answers.h"
#include "reckon/reckon.h"

namespace dunnage {
namespace {

using K = AskedKey::Kind;

AskedKey need(std::string_view name, const Range& range, std::string_view says, std::string_view example) {
  return {name, K::quantity, true, says, example, &range};
}
AskedKey may(std::string_view name, const Range& range, std::string_view says, std::string_view example) {
  return {name, K::quantity, false, says, example, &range};
}
AskedKey number(std::string_view name, double low, double high, std::string_view says, std::string_view example) {
  return {name, K::number, false, says, example, nullptr, low, high};
}
AskedKey need_number(std::string_view name, double low, double high, std::string_view says, std::string_view example) {
  return {name, K::number, true, says, example, nullptr, low, high};
}
AskedKey whole(std::string_view name, double low, double high, std::string_view says, std::string_view example) {
  return {name, K::whole, false, says, example, nullptr, low, high};
}
AskedKey word(std::string_view name, std::vector<std::string> choices, std::string_view says) {
  return {name, K::word, false, says, {}, nullptr, 0, 0, std::move(choices)};
}
AskedKey required(AskedKey key, std::string_view example) {
  key.needed = true;
  key.example = example;
  return key;
}
AskedKey text(std::string_view name, bool needed, std::string_view says, std::string_view example) {
  return {name, K::text, needed, says, example};
}
AskedKey sides(std::string_view name, bool needed, std::string_view says, std::string_view example) {
  return {name, K::sides, needed, says, example, &range::plan_side};
}
AskedKey placed_load() {
  return {"load",
          K::pair,
          false,
          "a load and where it stands; once for each",
          "180 kg at 1.2 m",
          &range::vehicle_mass,
          0,
          0,
          {},
          "at",
          &range::distance};
}
AskedKey heard() {
  return {"heard",
          K::pair,
          true,
          "a level and for how long; once for each",
          "98 dBA for 2 h",
          &range::sound,
          0,
          0,
          {},
          "for",
          &range::minutes};
}

std::vector<AskedKey> canopy_keys(AskedKey wind_or_ballast, AskedKey other) {
  return {sides("plan", true, "the roof seen from above", "10 x 10 ft"),
          std::move(wind_or_ballast),
          std::move(other),
          may("standing", range::weight_hold, "what the canopy itself weighs", "44 lb"),
          word("roof", {"four-slope", "two-slope", "single-slope", "flat"}, "shape; four-slope where not given"),
          number("pitch", -60, 60, "slope of the roof in degrees", "20 deg"),
          may("eaves", range::height, "height of the roof's edge", "7 ft"),
          may("peak", range::height, "height of the roof's top", "10 ft"),
          word("under", {"empty", "half-full", "full"}, "what stands under it; full where not given"),
          whole("walls", 0, 4, "sides with a wall up", "1"),
          whole("legs", 1, 40, "number of legs; 4 where not given", "4"),
          may("maker", range::wind, "the maker's gust limit", "25 mph")};
}

constexpr std::string_view kCanopyFormula =
    "q = 1/2 rho v^2, rho 1.25 kg/m3; uplift = q x coefficient x plan; ballast a leg = (1.5 x pull / g - 0.9 "
    "x own "
    "share) / 0.9";
constexpr std::string_view kCanopySource =
    "EN 1991-1-4:2005+A1:2010 4.5, 7.3, Tables 7.6 and 7.7; ASCE 7-22 27.3, where larger; "
    "EN 1990:2002+A1:2005 Table A1.2(A)";
constexpr std::string_view kCanopyCaution =
    "For a canopy with nothing hung on it, ballast tied tight at each foot. The maker's limit comes first; "
    "venue, "
    "authority and a competent person decide. A forecast gust is not reduced for height.";
constexpr std::string_view kElectricCaution =
    "A licensed electrician and the inspector decide. Coiled, bundled or sun-heated cable is not in these "
    "figures.";

std::vector<Question> lifts() {
  return {{"lift",
           "what one person may lift, from where to where",
           {need("mass", range::case_mass, "what the load weighs", "27 lb"),
            need("horizontal", range::height, "hands ahead of the ankles", "15 in"),
            need("vertical", range::height, "hands above the floor where it begins", "20 in"),
            need("travel", range::height, "how far the hands rise or sink", "30 in"),
            number("turn", 0, 180, "degrees of twist; 0 where not given", "30 deg"),
            number("rate", 0, 60, "lifts a minute; 0.2 where not given", "1"),
            number("hours", 0, 8, "hours of such work; 1 where not given", "2"),
            word("coupling", {"good", "fair", "poor"}, "how it can be held; fair where not given"),
            word("placed", {"yes", "no"}, "set down with care: judged at the top of the lift too"),
            word("people", {"crew", "volunteers"}, "whose filter is told beside it")},
           "mass=\"27 lb\" horizontal=\"15 in\" vertical=\"20 in\" travel=\"30 in\"",
           "RWL = 23 kg x H x V x D x A x F x C (metric constants); index = mass / RWL",
           "Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110, rev. 9/2021",
           "The index covers one person on a dry level floor between 19 and 26 C; not carrying, pushing, one "
           "hand, "
           "kneeling, wet grass or ramps.",
           answer_lift},
          {"lift-team",
           "how many people lift a case",
           {need("mass", range::case_mass, "what the case weighs", "62 lb"),
            required(word("people", {"crew", "volunteers"}, "who lifts"), "volunteers"),
            whole("grips", 0, 8, "usable grips; 2 where not given; without any, one person may try", "2"),
            may("one", range::weight_hold, "the house's own limit for one", "16 kg"),
            may("two", range::weight_hold, "the house's own limit for two together", "30 kg"),
            may("three", range::weight_hold, "the house's own limit for three together", "40 kg"),
            may("four", range::weight_hold, "the house's own limit for four together", "50 kg")},
           "mass=\"62 lb\" people=crew grips=2",
           "one 25 kg crew, 16 kg volunteers; two 2/3 of the sum, three 1/2; four only by a house figure; "
           "never more "
           "people than grips",
           "HSE, Manual handling at work, INDG143 (2020); L23 Appendix 1 and team handling",
           "A screen for an easy lift close to the body, not a legal maximum: look again at wide, low or "
           "tall loads, "
           "slopes, steps, wet ground and anyone new, pregnant, injured or under 18.",
           answer_lift_team}};
}

std::vector<Question> winds() {
  return {{"wind-pressure",
           "how hard a gust pushes",
           {need("gust", range::wind, "the 3-second gust", "25 mph"),
            may("area", range::area, "area that it meets", "12 ft2"),
            number("coefficient", 0, 5, "force coefficient; 1.8, a flat panel, where not given", "1.8")},
           "gust=\"25 mph\" area=\"12 ft2\"",
           "q = 1/2 rho v^2, rho 1.25 kg/m3; force = q x coefficient x area",
           "EN 1991-1-4:2005 4.5(1), 7.4.3; WMO wind scale",
           "A mean wind and a gust are different numbers: a gust is about 1.5 times the hourly mean in the open.",
           answer_wind_pressure},
          {"canopy-ballast", "ballast on each leg of a canopy in a gust",
           canopy_keys(need("gust", range::wind, "the gust to stand in", "20 mph"),
                       may("ballast", range::mass_on_top, "what stands on each leg", "40 lb")),
           "plan=\"10 x 10 ft\" roof=two-slope pitch=20 gust=\"20 mph\" standing=\"44 lb\" under=half-full",
           kCanopyFormula, kCanopySource, kCanopyCaution, answer_canopy_ballast},
          {"gust-from-ballast", "the gust at which a canopy must be down",
           canopy_keys(need("ballast", range::mass_on_top, "what stands on each leg", "40 lb"),
                       may("gust", range::wind, "a gust to compare with", "20 mph")),
           "plan=\"10 x 10 ft\" roof=two-slope pitch=20 ballast=\"40 lb\" standing=\"44 lb\" under=half-full",
           kCanopyFormula, kCanopySource, kCanopyCaution, answer_gust_from_ballast},
          {"tower-tip",
           "the gust that tips a tower or a stand",
           {need("area", range::area, "area of its head", "4 ft2"),
            need("height", range::height, "height of the head's middle", "8 ft"),
            need("mass", range::weight_hold, "of the whole, ballast apart", "84 lb"),
            whole("feet", 3, 12, "feet, equally spaced", "3"),
            may("radius", range::ground_offset, "from the middle to a foot", "22 in"),
            sides("base", false, "instead of feet: the base", "30 x 30 in"),
            may("ballast", range::mass_on_top, "in the middle of the base", "60 lb"),
            may("gust", range::wind, "a gust to stand in", "25 mph"),
            may("maker", range::wind, "the maker's gust limit", "30 mph"),
            number("coefficient", 0.1, 5, "force coefficient; 1.8 where not given", "1.8")},
           "area=\"4 ft2\" height=\"8 ft\" mass=\"84 lb\" feet=3 radius=\"22 in\" gust=\"20 mph\"",
           "1.5 x (q x coefficient x area x height) = 0.9 x weight x distance to the nearest tipping line",
           "EN 1991-1-4:2005 4.5, 7.4.3; EN 1990:2002+A1:2005 Table A1.2(A)",
           "The mast's own area is not counted here. Level, outriggers locked. The maker's limit comes first.",
           answer_tower_tip},
          {"sliding",
           "the mass that keeps a canopy or screen from sliding",
           {need("gust", range::wind, "the gust to stand in", "20 mph"),
            may("roof", range::area, "roof area that lifts", "100 ft2"),
            may("wall", range::area, "upright area that it pushes on", "70 ft2"),
            number("uplift", 0, 5, "uplift coefficient; 1.3 where not given", "1.3"),
            number("friction", 0.01, 1.5, "friction, from a pull test", "0.3"),
            word("ground", {"concrete", "asphalt", "paving", "gravel", "sand", "soil", "clay", "grass"},
                 "instead of friction: the ground"),
            may("mass", range::vehicle_mass, "all that stands there now", "300 lb")},
           "gust=\"10 m/s\" roof=\"9 m2\" wall=\"6 m2\" friction=0.4",
           "friction x (0.9 x weight - 1.5 x uplift) = 1.5 x side force, wall coefficient 1.3",
           "statics; EN 1990:2002+A1:2005 Table A1.2(A); ground friction from memory, after EN 13814:2004 5.5",
           "Grass and wet ground act as a lubricant and have no published friction: pull a foot on the day.",
           answer_sliding}};
}

std::vector<Question> weather() {
  return {{"heat-index",
           "how hot it feels",
           {need("temperature", range::temperature, "air in the shade", "92 F"),
            need_number("humidity", 0, 100, "relative humidity", "60 %")},
           "temperature=\"92 F\" humidity=60",
           "NWS regression with both adjustments",
           "NWS SR 90-23 (Rothfusz 1990); bands of the newer NWS chart (103 and 125 F)",
           "In the shade with a light wind; a forecast is not a reading on site. A person who stops sweating "
           "or is "
           "confused is an emergency call.",
           answer_heat_index},
          {"wind-chill",
           "how cold the wind makes it feel",
           {need("temperature", range::temperature, "air", "25 F"),
            need("wind", range::wind, "mean wind at 10 m", "20 mph")},
           "temperature=\"25 F\" wind=\"20 mph\"",
           "13.12 + 0.6215 T - 11.37 V^0.16 + 0.3965 T V^0.16 (C, km/h)",
           "Environment Canada and NWS, 2001",
           "Wet clothes and bare metal are colder than this says.",
           answer_wind_chill},
          {"wbgt",
           "wet-bulb globe temperature, and the work it allows",
           {need("wet", range::temperature, "natural wet bulb, as read", "77 F"),
            need("globe", range::temperature, "black globe, as read", "110 F"),
            may("air", range::temperature, "air, as read; give it in the sun", "90 F"),
            word("work", {"light", "moderate", "heavy", "very-heavy"}, "how hard the work is"),
            number("share", 0, 100, "per cent of each hour that is work; 100 where not given", "75 %")},
           "wet=\"25 C\" globe=\"45 C\" air=\"32 C\" work=moderate share=50",
           "0.7 wet + 0.2 globe + 0.1 air; without sun 0.7 wet + 0.3 globe",
           "NIOSH 2016-106, 9.3.2; OSHA Technical Manual III:4, screening limits",
           "For light clothes and rested people. New people start at a fifth of the time.",
           answer_wbgt},
          {"water",
           "drinking water for a crew in the heat",
           {{"people", K::whole, true, "how many", "10", nullptr, 1, 10000},
            need("hours", range::minutes, "how long", "8 h")},
           "people=10 hours=\"8 h\"",
           "one quart a person and hour; least a cup of 8 oz each 20 minutes",
           "8 oz each 20 minutes: from memory, after OSHA and NIOSH; OSHA proposed rule of 2024 (not final when read)",
           "Drinking only: washing, cooling and the public come on top. Salt with food when work lasts.",
           answer_water},
          {"lightning",
           "how far it is, and when to begin to clear",
           {may("count", range::minutes, "seconds from flash to thunder", "20 s"),
            may("storm", range::wind, "how fast it comes", "30 mph"),
            may("clear", range::minutes, "how long the site needs to clear", "15 min")},
           "storm=\"30 mph\" clear=\"15 min\"",
           "5 s a mile; 8 miles + storm speed x time to clear",
           "NWS; NCAA guideline 1.E as cited in 2016 (8 miles, 30 minutes)",
           "Tents, canopies and stage roofs are no shelter: a closed building or a metal vehicle is. One "
           "named person "
           "restarts.",
           answer_lightning}};
}

std::vector<Question> power() {
  return {{"voltage-drop",
           "what a cable loses, US or metric",
           {need("current", range::current, "what it carries", "16 A"),
            need("length", range::run_length, "one way", "100 ft"),
            need("voltage", range::voltage, "of the supply", "120 V"), text("awg", false, "US: conductor size", "12"),
            may("section", range::cable_area, "metric: conductor section", "2.5 mm2"),
            word("phases", {"1", "3"}, "1 where not given"),
            number("factor", 0.1, 1, "power factor, metric; 0.8 where not given", "0.8")},
           "current=\"16 A\" length=\"100 ft\" voltage=\"120 V\" awg=12",
           "US: 2 (or root 3) x I x R x L; metric: b (rho L / S cos phi + lambda L sin phi) I",
           "NEC Chapter 9 Table 8; IEC 60364-5-52:2009 Annex G",
           kElectricCaution,
           answer_voltage_drop},
          {"circuit",
           "the breaker that a load asks for",
           {may("continuous", range::current, "loads of three hours or more", "12 A"),
            may("other", range::current, "the rest", "3 A"),
            may("breaker", range::current, "the breaker there is", "20 A")},
           "continuous=\"12 A\" other=\"3 A\" breaker=\"20 A\"",
           "other + 1.25 x continuous",
           "NEC 210.19(A)(1), 210.20(A)",
           kElectricCaution,
           answer_circuit},
          {"generator",
           "the generator that a load asks for",
           {need("load", range::power, "all loads together", "6 kW"),
            number("factor", 0.1, 1, "power factor; 0.8 where not given", "0.8"),
            may("starting", range::power, "extra when motors start", "2 kW"),
            may("altitude", range::distance, "of the site", "3000 ft"),
            may("temperature", range::temperature, "of the air", "95 F")},
           "load=\"6 kW\" altitude=\"3000 ft\" temperature=\"95 F\"",
           "load / factor / share; share 3 % less each 500 m above 1000 m and each 5 C above 40 C",
           "common practice, no source; the set's own figures win",
           "Twenty feet from tents, doors and windows. Neutral bonding is a question for an electrician.",
           answer_generator},
          {"noise-dose",
           "what a day of sound does to the crew",
           {heard()},
           "heard=\"98 dBA for 2 h\" heard=\"88 dBA for 4 h\"",
           "100 % x sum of time / allowed time",
           "NIOSH 98-126; OSHA 29 CFR 1910.95 Appendix A",
           "For workers. What an audience may hear is a matter of the licence.",
           answer_noise_dose}};
}

std::vector<Question> loads() {
  return {{"ramp",
           "how long a ramp must be",
           {need("rise", range::height, "the change in level", "8 in")},
           "rise=\"8 in\"",
           "rise x 12; landings of 60 in; no run above 30 in of rise",
           "ADA Standards 303, 405",
           "The venue and the fire marshal decide. Walk it with a wheel and in the dark.",
           answer_ramp},
          {"vehicle-axles",
           "axle loads of a van or truck",
           {need("front", range::vehicle_mass, "front axle as weighed, with driver and fuel", "1290 kg"),
            need("rear", range::vehicle_mass, "rear axle as weighed", "900 kg"),
            need("wheelbase", range::to_axle, "between the axles", "3.6 m"), placed_load(),
            may("tongue", range::vehicle_mass, "of a trailer", "120 kg"),
            may("hitch", range::to_hitch, "hitch behind the rear axle", "1.1 m"),
            may("limit-front", range::vehicle_mass, "front axle's limit", "1850 kg"),
            may("limit-rear", range::vehicle_mass, "rear axle's limit", "2250 kg"),
            may("gross", range::vehicle_mass, "gross limit", "3500 kg")},
           "front=\"1290 kg\" rear=\"900 kg\" wheelbase=\"3.6 m\" load=\"180 kg at 1.6 m\" limit-rear=\"2250 "
           "kg\"",
           "moments about the axles; where a load stands is measured back from the front axle",
           "statics",
           "The plate and the tyre placard win. Check again after each stop: unloading the rear can load the "
           "front.",
           answer_vehicle_axles},
          {"tongue",
           "tongue load of a trailer",
           {need("empty", range::vehicle_mass, "the trailer as weighed", "750 kg"),
            need("tongue", range::vehicle_mass, "its empty tongue as weighed", "85 kg"),
            need("axle", range::to_axle, "from coupling to axle", "3.2 m"), placed_load(),
            number("from", 0, 50, "least share on the tongue; 10 % where not given", "10 %"),
            number("to", 0, 50, "most; 15 % where not given", "15 %")},
           "empty=\"750 kg\" tongue=\"85 kg\" axle=\"3.2 m\" load=\"180 kg at 1.2 m\" load=\"160 kg at 3.55 m\"",
           "tongue = empty tongue + sum of mass x (1 - distance / axle), measured back from the coupling",
           "statics; 10 to 15 %: common practice, no source",
           "The hitch plate and the vehicle's manual win; in Europe the plated nose weight.",
           answer_tongue},
          {"tie-downs",
           "how many straps hold a load",
           {need("length", range::height, "of the load", "8 ft"),
            need("mass", range::vehicle_mass, "of the load", "900 lb"),
            word("blocked", {"yes", "no"}, "blocked in front; no where not given"),
            may("strap", range::vehicle_mass, "working load limit of one strap", "1000 lb"),
            word("route", {"over", "side"}, "over to the other side, or to the cargo or back to its side")},
           "length=\"8 ft\" mass=\"900 lb\" strap=\"500 lb\"",
           "by length; working load limits together at least half the weight; a strap to the cargo counts half",
           "49 CFR 393.106, 393.110",
           "Wheels roll: block them. Look again within 50 miles.",
           answer_tie_downs},
          {"unit",
           "one figure in another unit",
           {text("value", true, "what to change", "24 lb"), text("to", true, "into what", "kg")},
           "value=\"24 lb\" to=kg",
           "exact factors",
           "NIST SP 811 (2008), Appendix B.8",
           "Never change a rounded figure twice.",
           answer_unit}};
}

}  // namespace

const std::vector<Question>& questions() {
  static const std::vector<Question> table = [] {
    std::vector<Question> all;
    for (auto part : {lifts, winds, weather, power, loads})
      for (Question& q : part()) all.push_back(std::move(q));
    return all;
  }();
  return table;
}

}  // namespace dunnage
