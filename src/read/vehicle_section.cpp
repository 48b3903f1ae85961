// SPDX-License-Identifier: MIT
// [[vehicle]]: room, doors, arches, masses as weighed, ratings, hitch.
#include "read/kit_sections.h"

namespace dunnage {
namespace {

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
    v.blocks.push_back(std::move(block));
  });
}

void read_masses(TableReader& section, Vehicle& v) {
  const auto mass = [&section](std::string_view key) {
    return section.quantity<Mass>(key, range::vehicle_mass);
  };
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
}

void read_hitch(TableReader& section, Vehicle& v) {
  const auto length = [&section](std::string_view key) {
    return section.quantity<Length>(key, range::ground_offset);
  };
  v.wheelbase = length("wheelbase");
  v.front_to_cargo = length("front_to_cargo");
  v.hitch_behind = length("hitch_behind");
  v.coupling_to_axle = length("coupling_to_axle");
  v.coupling_to_cargo = length("coupling_to_cargo");
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
  v.kind = section.word<Vehicle::Kind>(
      "kind", {{"van", Vehicle::Kind::van}, {"trailer", Vehicle::Kind::trailer}}, Vehicle::Kind::van);
  section.needs("kind");
  if (!section.has("kind"))
    section.error(section.place(), section.section() + " has no \"kind\"",
                  "add kind = \"van\" or kind = \"trailer\"");
  read_room(section, v);
  read_masses(section, v);
  read_hitch(section, v);
  return v;
}

}  // namespace dunnage
