// SPDX-License-Identifier: MIT
// The show's loads against each other and against their vehicles.
#include <map>

#include "read/cross_rooms.h"

namespace dunnage {
namespace {

void check_within(const References& refer, const Load& load, const Vehicle& vehicle) {
  if (!vehicle.cargo) return;
  for (const StandsAt& spot : load.stands)
    if (spot.from_front > vehicle.cargo->value.length * (1 + 1e-9))
      refer.diagnostics().error(spot.place, in_quotes(spot.code.value) + " stands beyond the cargo space",
                                "\"from_front\" is from the bulkhead to its middle", vehicle.cargo->place,
                                "the cargo space of " + in_quotes(vehicle.code.value));
}

/// A trailer stops where its van stops, in the van's order.
void check_order(const References& refer, const Load& trailer, const Load& van) {
  std::map<std::string, const Text*> stops;
  for (const Text& stop : van.stops) stops.emplace(stop.value, &stop);
  const Text* last = nullptr;
  for (const Text& stop : trailer.stops) {
    const auto at = stops.find(stop.value);
    if (at == stops.end()) continue;
    const Text* here = at->second;
    if (last && here < last) {
      refer.diagnostics().error(stop.place,
                                in_quotes(trailer.vehicle.value) + " stops at " + in_quotes(stop.value) + " after " +
                                    in_quotes(last->value) + ", and " + in_quotes(van.vehicle.value) +
                                    ", which pulls it, before",
                                "give both the same order", here->place, "the van's order");
      return;
    }
    last = here;
  }
}

}  // namespace

void check_loads(const References& refer, const Show& show) {
  std::vector<Text> vehicles;
  for (const Load& load : show.loads) vehicles.push_back(load.vehicle);
  refer.once_each(vehicles, "load of", "put both under one [[load]]");
  for (const Load& load : show.loads) {
    refer.once_each(load.stops, "stop", "a vehicle stops once at a place: keep one of the two");
    std::vector<Text> codes;
    for (const StandsAt& spot : load.stands) codes.push_back(spot.code);
    refer.once_each(codes, "piece", "a piece stands in one place: keep one of the two");
    const Vehicle* vehicle = refer.catalogue().vehicle(load.vehicle.value);
    if (!vehicle) continue;
    check_within(refer, load, *vehicle);
    if (!vehicle->pulled_by) continue;
    for (const Load& other : show.loads)
      if (other.vehicle.value == vehicle->pulled_by->value && &other != &load) check_order(refer, load, other);
  }
}

}  // namespace dunnage
