// SPDX-License-Identifier: MIT
// [[vehicle]]: room, doors, arches, masses as weighed, ratings, hitch.
#include <algorithm>
#include <array>

#include "base/utf8.h"
#include "read/kit_sections.h"

namespace dunnage {
namespace {

constexpr std::array<std::string_view, 9> keys_of_van = {"empty_front",    "empty_rear",   "limit_front",
                                                         "limit_rear",     "train",        "wheelbase",
                                                         "front_to_cargo", "hitch_behind", "people_and_fuel"};
constexpr std::array<std::string_view, 8> keys_of_trailer = {"empty_axle",        "empty_tongue", "limit_axle",
                                                             "tongue_from",       "tongue_to",    "coupling_to_axle",
                                                             "coupling_to_cargo", "pulled_by"};

/// A key of the other kind would be read and never used.
void check_keys(TableReader& section, Vehicle::Kind kind) {
  const auto tell = [&](const auto& keys, const char* word) {
    for (const Text& key : section.keys())
      if (std::find(keys.begin(), keys.end(), key.value) != keys.end())
        section.error(key.place, in_quotes(key.value) + " is a key of a " + word,
                      std::string("take it away, or write kind = \"") + word + "\"");
  };
  if (kind == Vehicle::Kind::van)
    tell(keys_of_trailer, "trailer");
  else
    tell(keys_of_van, "van");
}

/// The planner and the judge look for these words: a door has one wall, or nobody knows which.
void check_wall(TableReader& entry, const DoorOpening& door) {
  if (door.where.empty()) return;
  const std::string words = utf8::lower(door.where);
  const auto says = [&](const char* word) { return words.find(word) != std::string::npos; };
  const bool rear = says("rear") || says("back");
  const int walls = (rear ? 1 : 0) + (says("left") ? 1 : 0) + (says("right") ? 1 : 0);
  if (walls != 1)
    entry.error(entry.place_of_value("where"),
                in_quotes(door.where) + (walls == 0 ? " names no wall of the cargo space" : " names two walls"),
                "write where = \"rear\", \"left side\" or \"right side\"");
  else if (rear && door.at)
    entry.error(door.at->place, "\"at\" is a key of a side door",
                "take it away: the rear door is where the cargo space ends");
}

void check_door(TableReader& entry, const DoorOpening& door, const Maybe<Size>& cargo) {
  check_wall(entry, door);
  if (!cargo || !door.at) return;
  if (door.at->value >= cargo->value.length || door.at->value + door.width <= Length{})
    entry.diagnostics().error(door.at->place, "the door is beyond the cargo space",
                              "\"at\" is from the bulkhead back to the door's nearer edge", cargo->place,
                              "the cargo space");
}

void check_block(TableReader& entry, const CargoBlock& block, const Maybe<Size>& cargo) {
  if (!cargo) return;
  const auto outside = [](Length from, Length side, Length room) { return from >= room || from + side <= Length{}; };
  if (outside(block.x, block.length, cargo->value.length) || outside(block.y, block.width, cargo->value.width) ||
      outside(block.z, block.height, cargo->value.height))
    entry.diagnostics().error(entry.place_of_value("at"), "the block lies outside the cargo space",
                              "\"at\" is back from the bulkhead x from the left wall x up from the floor", cargo->place,
                              "the cargo space");
}

void read_room(TableReader& section, Vehicle& v) {
  v.cargo = section.size("cargo", range::plan_side);
  section.entries("doors", [&](TableReader& entry) {
    DoorOpening door;
    door.place = entry.place();
    door.where = entry.text("where").value;
    const auto size = entry.lengths("size", 2, range::plan_side);
    door.at = entry.quantity<Length>("at", range::ground_offset);
    entry.needs("size");
    if (!entry.has("size"))
      entry.error(entry.place(), "a door has no \"size\"", "add size = \"48 x 60 in\": width x height");
    if (!size) return;
    door.width = size->value[0];
    door.height = size->value[1];
    check_door(entry, door, v.cargo);
    v.doors.push_back(std::move(door));
  });
  section.entries("blocks", [&](TableReader& entry) {
    CargoBlock block;
    block.place = entry.place();
    block.what = entry.text("what").value;
    const auto at = entry.lengths("at", 3, range::ground_offset);
    const auto size = entry.lengths("size", 3, range::case_side);
    entry.needs("at");
    entry.needs("size");
    if (!entry.has("at") || !entry.has("size"))
      entry.error(entry.place(), "an entry of \"blocks\" needs \"at\" and \"size\"",
                  "add at = \"50 x 0 x 0 in\", size = \"30 x 8 x 10 in\"");
    if (!at || !size) return;
    block.x = at->value[0];
    block.y = at->value[1];
    block.z = at->value[2];
    block.length = size->value[0];
    block.width = size->value[1];
    block.height = size->value[2];
    check_block(entry, block, v.cargo);
    v.blocks.push_back(std::move(block));
  });
}

void read_masses(TableReader& section, Vehicle& v) {
  const auto mass = [&section](std::string_view key) { return section.quantity<Mass>(key, range::vehicle_mass); };
  v.empty_front = mass("empty_front");
  v.empty_rear = mass("empty_rear");
  v.empty_axle = mass("empty_axle");
  v.empty_tongue = mass("empty_tongue");
  v.limit_front = mass("limit_front");
  v.limit_rear = mass("limit_rear");
  v.limit_axle = mass("limit_axle");
  v.limit_tongue = mass("limit_tongue");
  v.gross = mass("gross");
  v.train = mass("train");
  v.payload = mass("payload");
  v.people_and_fuel = mass("people_and_fuel");
  for (const auto& [key, axle] : {std::pair("empty_front", &v.empty_front), std::pair("empty_rear", &v.empty_rear),
                                  std::pair("empty_axle", &v.empty_axle)})
    if (*axle && (*axle)->value <= Mass{})
      section.error((*axle)->place, in_quotes(key) + " is nothing",
                    "each axle bears some of the empty vehicle: weigh it");
}

void read_hitch(TableReader& section, Vehicle& v) {
  v.wheelbase = section.quantity<Length>("wheelbase", range::to_axle);
  v.front_to_cargo = section.quantity<Length>("front_to_cargo", range::ground_offset);
  v.hitch_behind = section.quantity<Length>("hitch_behind", range::to_hitch);
  v.coupling_to_axle = section.quantity<Length>("coupling_to_axle", range::to_axle);
  v.coupling_to_cargo = section.quantity<Length>("coupling_to_cargo", range::ground_offset);
  // Typed in per cent, kept as a share.
  v.tongue_from = section.number("tongue_from", 0, 100);
  v.tongue_to = section.number("tongue_to", 0, 100);
  if (v.tongue_from) v.tongue_from->value /= 100;
  if (v.tongue_to) v.tongue_to->value /= 100;
  v.pulled_by = section.maybe_text("pulled_by");
}

}  // namespace

Vehicle read_vehicle(TableReader& section) {
  Vehicle v;
  v.place = section.place();
  v.code = section.code("code");
  v.name = section.text_or("name", v.code.value);
  const auto kind =
      section.word<Vehicle::Kind>("kind", {{"van", Vehicle::Kind::van}, {"trailer", Vehicle::Kind::trailer}});
  if (kind) v.kind = kind->value;
  section.needs("kind");
  if (!section.has("kind"))
    section.error(section.place(), section.section() + " has no \"kind\"", "add kind = \"van\" or kind = \"trailer\"");
  read_room(section, v);
  read_masses(section, v);
  read_hitch(section, v);
  if (kind) check_keys(section, v.kind);
  return v;
}

}  // namespace dunnage
