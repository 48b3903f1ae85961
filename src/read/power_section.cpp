// SPDX-License-Identifier: MIT
// Where power comes from and what hangs on it, and which vehicle takes what: [[supply]], [[circuit]],
// [[load]].
#include "read/show_sections.h"

namespace dunnage {
namespace {

Supply read_supply(TableReader& section) {
  Supply supply;
  supply.place = section.place();
  supply.name = section.text("name");
  supply.kind = section.text_or("kind").value;
  supply.voltage = section.quantity<Voltage>("voltage", range::voltage);
  supply.phases = section.number("phases", 1, 3);
  supply.power = section.quantity<Power>("power", range::power);
  return supply;
}

Circuit read_circuit(TableReader& section) {
  Circuit circuit;
  circuit.place = section.place();
  circuit.name = section.text("name");
  circuit.supply = section.text_or("supply");
  circuit.protection = section.quantity<Current>("protection", range::current);
  circuit.leg = section.maybe_text("leg");
  circuit.cable = section.maybe_text("cable");
  circuit.length = section.quantity<Length>("length", range::run_length);
  circuit.continuous = section.flag("continuous", true);
  section.entries("feeds", [&](TableReader& entry) {
    CircuitLoad load;
    load.place = entry.place();
    load.code = entry.text("code");
    load.count = entry.count("count", 1, 9999, 1);
    load.draws = entry.quantity<Power>("draws", range::power);
    if (!load.code.value.empty()) circuit.feeds.push_back(std::move(load));
  });
  return circuit;
}

}  // namespace

void read_power_and_load_sections(TableReader& top, Show& show) {
  top.tables("supply", "[[supply]]",
             [&](TableReader& section) { show.supplies.push_back(read_supply(section)); });
  top.tables("circuit", "[[circuit]]",
             [&](TableReader& section) { show.circuits.push_back(read_circuit(section)); });
  top.tables("load", "[[load]]", [&](TableReader& section) {
    Load load;
    load.place = section.place();
    load.vehicle = section.text("vehicle");
    load.stops = section.texts("stops");
    load.takes = section.texts("takes");
    show.loads.push_back(std::move(load));
  });
}

}  // namespace dunnage
