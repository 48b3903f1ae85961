// SPDX-License-Identifier: MIT
// [house] and [house.lift].
#include "read/kit_sections.h"

namespace dunnage {
namespace {

HouseLift read_lift(TableReader& section) {
  HouseLift lift;
  lift.place = section.place();
  lift.people =
      section.word<People>("people", {{"crew", People::crew}, {"volunteers", People::volunteers}}, People::volunteers);
  lift.deck = section.quantity<Length>("deck", range::height);
  lift.aid = section.text_or("aid", lift.aid).value;
  lift.one = section.quantity<Mass>("one", range::case_mass);
  lift.two = section.quantity<Mass>("two", range::case_mass);
  lift.three = section.quantity<Mass>("three", range::case_mass);
  lift.four = section.quantity<Mass>("four", range::case_mass);
  return lift;
}

/// Counts only with all three: a hold that nobody pulled is no hold.
std::optional<TestedStake> read_stake(TableReader& section) {
  TestedStake stake;
  stake.place = section.place();
  const auto holds = section.quantity<Mass>("holds", range::weight_hold);
  if (!section.has("holds"))
    section.error(section.place(), section.section() + " has no \"holds\"",
                  "add holds = \"150 lb\": what one stake held when pulled straight up");
  stake.ground = section.text("ground").value;
  stake.tested = section.text("tested").value;
  if (!holds) return std::nullopt;
  stake.holds = holds->value;
  return stake;
}

/// Counts only with all three, as a stake does.
void read_friction(TableReader& entry, House& house) {
  TestedFriction friction;
  friction.place = entry.place();
  const auto share = entry.number("share", 0.02, 2);
  if (!entry.has("share"))
    entry.error(entry.place(), "an entry of \"friction\" has no \"share\"",
                "add share = 0.4: the pull that slid a loaded foot, over the weight on it; the least of three");
  friction.ground = entry.text("ground").value;
  friction.tested = entry.text("tested").value;
  if (!share) return;
  friction.share = share->value;
  house.friction.push_back(std::move(friction));
}

}  // namespace

House read_house(TableReader& section) {
  House house;
  house.place = section.place();
  house.name = section.text("name");
  house.phone = section.text_or("phone");
  house.units =
      section.word<UnitSystem>("units", {{"us", UnitSystem::us}, {"metric", UnitSystem::metric}}, UnitSystem::metric);
  const bool us = house.units == UnitSystem::us;
  house.paper = section.word<PaperSize>("paper", {{"letter", PaperSize::letter}, {"a4", PaperSize::a4}},
                                        us ? PaperSize::letter : PaperSize::a4);
  house.label_stock = section.text_or("label_stock");
  if (const auto languages = section.texts("languages"); !languages.empty()) house.languages = languages;
  house.meter = section.word<std::string>(
      "meter", {{"mph", "mph"}, {"km/h", "km/h"}, {"m/s", "m/s"}, {"knots", "knots"}}, us ? "mph" : "m/s");
  house.packet = section.texts("packet");
  house.lightest = section.word<std::string>("lightest", {{"mass", "mass"}, {"units", "units"}}, "mass");
  house.words = section.texts("words");
  section.table("stake", "[house.stake]", [&](TableReader& stake) { house.stake = read_stake(stake); });
  section.entries("friction", [&](TableReader& entry) { read_friction(entry, house); });
  section.table("lift", "[house.lift]", [&](TableReader& lift) { house.lift = read_lift(lift); });
  return house;
}

}  // namespace dunnage
