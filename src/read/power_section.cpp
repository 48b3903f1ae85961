// SPDX-License-Identifier: MIT
// Where power comes from and what hangs on it, and which vehicle takes what: [[supply]], [[circuit]],
// [[load]].
#include "read/conductor_key.h"
#include "read/show_sections.h"

namespace dunnage {
namespace {

Supply read_supply(TableReader& section) {
  Supply supply;
  supply.place = section.place();
  supply.name = section.text("name");
  supply.kind = section.text_or("kind");
  supply.voltage = section.quantity<Voltage>("voltage", range::voltage);
  supply.phases = section.number("phases", 1, 3);
  if (supply.phases && supply.phases->value != 1 && supply.phases->value != 3)
    section.error(supply.phases->place, "\"phases\" is out of range", "write phases = 1 or phases = 3");
  supply.power = section.quantity<Power>("power", range::power);
  supply.cable = section.maybe_text("cable");
  supply.conductor = read_conductor(section);
  supply.length = section.quantity<Length>("length", range::run_length);
  supply.distance = section.quantity<Length>("distance", range::distance);
  supply.fuel = section.quantity<Length>("fuel", range::distance);
  return supply;
}

Segment read_segment(TableReader& entry) {
  Segment segment;
  segment.place = entry.place();
  segment.cable = entry.maybe_text("cable");
  segment.conductor = read_conductor(entry);
  segment.length = entry.quantity<Length>("length", range::run_length);
  segment.carries = entry.quantity<Power>("carries", range::power);
  return segment;
}

Circuit read_circuit(TableReader& section) {
  Circuit circuit;
  circuit.place = section.place();
  circuit.name = section.text("name");
  circuit.supply = section.text_or("supply");
  circuit.protection = section.quantity<Current>("protection", range::current);
  circuit.leg = section.maybe_text("leg");
  circuit.cable = section.maybe_text("cable");
  circuit.conductor = read_conductor(section);
  circuit.length = section.quantity<Length>("length", range::run_length);
  circuit.power_factor = section.number("power_factor", 0.1, 1);
  circuit.continuous = section.flag("continuous", true);
  section.entries("feeds", [&](TableReader& entry) {
    CircuitLoad load;
    load.place = entry.place();
    load.code = entry.text("code");
    load.count = entry.count("count", 1, 9999, 1);
    load.draws = entry.quantity<Power>("draws", range::power);
    load.starts = entry.quantity<Power>("starts", range::power);
    if (!load.code.value.empty()) circuit.feeds.push_back(std::move(load));
  });
  section.entries("then", [&](TableReader& entry) { circuit.then.push_back(read_segment(entry)); });
  return circuit;
}

Load read_load(TableReader& section) {
  Load load;
  load.place = section.place();
  load.vehicle = section.text("vehicle");
  load.stops = section.texts("stops");
  load.takes = section.texts("takes");
  section.entries("stands", [&](TableReader& entry) {
    StandsAt spot;
    spot.place = entry.place();
    spot.code = entry.text("code");
    const auto at = entry.quantity<Length>("from_front", range::height);
    if (!entry.has("from_front"))
      entry.error(entry.place(), "an entry of \"stands\" has no \"from_front\"",
                  "add from_front = \"40 in\": from the front end of the cargo space to its middle");
    if (at) spot.from_front = at->value;
    if (at && !spot.code.value.empty()) load.stands.push_back(std::move(spot));
  });
  section.entries("straps", [&](TableReader& entry) {
    Strap strap;
    strap.place = entry.place();
    strap.count = entry.count("count", 1, 9999, 1);
    strap.limit = entry.quantity<Mass>("limit", range::weight_hold);
    strap.over = entry.flag("over", false);
    load.straps.push_back(strap);
  });
  load.length = section.quantity<Length>("length", range::plan_side);
  load.blocked = section.flag("blocked", false);
  return load;
}

}  // namespace

void read_power_and_load_sections(TableReader& top, Show& show) {
  top.tables("supply", "[[supply]]", [&](TableReader& section) { show.supplies.push_back(read_supply(section)); });
  top.tables("circuit", "[[circuit]]", [&](TableReader& section) { show.circuits.push_back(read_circuit(section)); });
  top.tables("load", "[[load]]", [&](TableReader& section) { show.loads.push_back(read_load(section)); });
}

}  // namespace dunnage
