// SPDX-License-Identifier: MIT
// Codes are taken in order of the files, and units' codes (CODE-1 ... CODE-n) after all that were typed.
#include "read/kit_codes.h"

#include <map>
#include <string>

#include "base/utf8.h"

namespace dunnage {
namespace {

struct Holder {
  std::string code;
  Place place;
  std::string what;  ///< "an item", "a case"
};
/// By the code in small letters: nobody hears or scans the difference between DESK and desk.
using Taken = std::map<std::string, Holder>;

void tell_taken(const Text& code, const std::string& other, Place first, const std::string& note,
                Diagnostics& diagnostics) {
  diagnostics.error(code.place,
                    other == code.value ? "the code " + in_quotes(code.value) + " is given twice"
                                        : "the codes " + in_quotes(code.value) + " and " + in_quotes(other) +
                                              " differ in small and capital letters only",
                    "give one of them another code", first, note);
}

/// Takes the code, or tells that it is taken.
bool take(Taken& taken, const Text& code, const std::string& what, Diagnostics& diagnostics) {
  if (code.value.empty()) return false;
  const auto [at, fresh] = taken.emplace(utf8::lower(code.value), Holder{code.value, code.place, what});
  if (fresh) return true;
  const Holder& first = at->second;
  const bool same = first.code == code.value;
  tell_taken(code, first.code, first.place, first.what + (same ? " has it first" : " has this code"), diagnostics);
  return !same;  // what differs is kept, so that nothing else is told of it
}

template <class Thing>
void keep_once(std::vector<Thing>& things, Taken& taken, const std::string& what, Diagnostics& diagnostics) {
  std::erase_if(things, [&](const Thing& thing) { return !take(taken, thing.code, what, diagnostics); });
}

/// Tells a case of several whose unit would bear a code that something else has.
void tell_clash(const Case& box, const Taken& taken, Diagnostics& diagnostics) {
  for (int number = 1; box.count > 1 && number <= box.count; ++number) {
    const std::string code = box.code.value + "-" + std::to_string(number);
    const auto at = taken.find(utf8::lower(code));
    if (at == taken.end()) continue;
    tell_taken({at->second.code, at->second.place}, code, box.code.place,
               "one of the " + std::to_string(box.count) + " units of " + in_quotes(box.code.value) + " has it",
               diagnostics);
    return;
  }
}

void keep_units_once(Kit& kit, Diagnostics& diagnostics) {
  std::map<std::string, Place> first;
  std::erase_if(kit.changes, [&](const UnitChange& change) {
    if (change.code.value.empty()) return true;
    const auto [at, fresh] = first.emplace(change.code.value, change.code.place);
    if (!fresh)
      diagnostics.error(change.code.place, "the unit " + in_quotes(change.code.value) + " is described twice",
                        "put both under one [[unit]]", at->second, "described first here");
    return !fresh;
  });
}

}  // namespace

void keep_codes_once(Kit& kit, Diagnostics& diagnostics) {
  Taken pieces;
  keep_once(kit.items, pieces, "an item", diagnostics);
  keep_once(kit.cases, pieces, "a case", diagnostics);
  for (const Case& box : kit.cases) tell_clash(box, pieces, diagnostics);
  Taken structures, vehicles;
  keep_once(kit.structures, structures, "a structure", diagnostics);
  keep_once(kit.vehicles, vehicles, "a vehicle", diagnostics);
  keep_units_once(kit, diagnostics);
}

}  // namespace dunnage
