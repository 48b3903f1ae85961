// SPDX-License-Identifier: MIT
#include "run/check_letters.h"

#include <fmt/format.h>

#include <algorithm>

#include "base/utf8.h"

namespace dunnage {

namespace {

/// The text where it was typed: on the first line from its table's on that holds it, else the table itself.
Place place_of(const std::string& text, Place table) {
  if (!table.known()) return table;
  for (std::uint32_t line = table.line; line < table.line + 400; ++line) {
    const std::string_view typed = table.file->line(line);
    const std::size_t at = typed.find(text);
    if (at == std::string_view::npos) continue;
    return {table.file, line, static_cast<std::uint32_t>(utf8::length(typed.substr(0, at))) + 1,
            static_cast<std::uint32_t>(utf8::length(text))};
  }
  return table;
}

class Letters {
 public:
  Letters(const std::string& languages, const Faces& faces, Diagnostics& diagnostics)
      : languages_(languages), faces_(faces), face_(faces.at("text")), diagnostics_(diagnostics) {}

  void look(const Text& text) { look(text.value, text.place); }
  void look(const Maybe<std::string>& text) {
    if (text) look(text->value, text->place);
  }
  void look(const std::vector<Text>& texts) {
    for (const Text& text : texts) look(text);
  }
  /// A text that kept no place of its own; `table` holds it.
  void look_in(const std::string& text, Place table) {
    if (!missing(text).empty()) look(text, place_of(text, table));
  }
  /// Names in the languages that are printed.
  void look(const std::map<std::string, Text>& names) {
    for (const auto& [language, name] : names)
      if (languages_.find(language) != std::string::npos) look(name);
  }

 private:
  std::vector<char32_t> missing(const std::string& text) const {
    std::vector<char32_t> out;
    std::size_t from = 0;
    while (from <= text.size()) {  // the ends of lines are no letters
      const std::size_t end = std::min(text.find('\n', from), text.size());
      for (const char32_t c : faces_.pieces(face_, text.substr(from, end - from)).missing)
        if (std::find(out.begin(), out.end(), c) == out.end()) out.push_back(c);
      from = end + 1;
    }
    return out;
  }

  void look(const std::string& text, Place place) {
    const std::vector<char32_t> letters = missing(text);
    if (letters.empty()) return;
    std::string which;
    for (const char32_t c : letters)
      which += fmt::format("{}{} (U+{:04X})", which.empty() ? "" : ", ", utf8::encode(c), static_cast<unsigned>(c));
    diagnostics_.error(place, "this cannot be printed: no face sets " + which,
                       "write it in Latin, Greek or Cyrillic letters");
  }

  const std::string& languages_;
  const Faces& faces_;
  const int face_;
  Diagnostics& diagnostics_;
};

void look_at_kit(Letters& letters, const Kit& kit) {
  letters.look(kit.house.name);
  letters.look(kit.house.phone);
  letters.look_in(kit.house.lift.aid, kit.house.lift.place);
  for (const Item& item : kit.items) {
    letters.look(item.name);
    letters.look(item.names);
  }
  for (const Case& box : kit.cases) {
    letters.look(box.code);
    letters.look(box.name);
    letters.look(box.names);
    for (const std::string& text : {box.looks, box.home, box.place_word, box.vehicle, box.revision})
      letters.look_in(text, box.place);
  }
  for (const UnitChange& change : kit.changes) {
    letters.look(change.out_of_service);
    letters.look(change.home);
  }
  for (const Structure& structure : kit.structures) {
    letters.look(structure.name);
    letters.look(structure.legs);
  }
  for (const Vehicle& vehicle : kit.vehicles) letters.look(vehicle.name);
}

void look_at_site(Letters& letters, const Site& site) {
  for (const std::string& text :
       {site.address, site.gate, site.emergency_address, site.hospital, site.radio_channel, site.curfew})
    letters.look_in(text, site.place);
  letters.look(site.permits);
  letters.look(site.ground);
  for (const Contact& contact : site.contacts) {
    letters.look(contact.role);
    letters.look(contact.name);
    letters.look(contact.phone);
  }
  for (const SiteHas& has : site.has) {
    letters.look(has.what);
    letters.look_in(has.from, has.place);
  }
}

void look_at_stage(Letters& letters, const Show& show) {
  for (const Input& input : show.inputs) {
    letters.look(input.source);
    for (const Maybe<std::string>* text : {&input.pickup, &input.stand, &input.pad, &input.box}) letters.look(*text);
    for (const std::string& text : {input.performer, input.at_place, input.note}) letters.look_in(text, input.place);
    if (input.radio) letters.look_in(input.radio->cell, input.place);
  }
  for (const Mix& mix : show.mixes) {
    letters.look(mix.output);
    for (const Maybe<std::string>* text : {&mix.wedge, &mix.pack, &mix.speaker, &mix.prop, &mix.box})
      letters.look(*text);
    for (const std::string& text : {mix.who, mix.note}) letters.look_in(text, mix.place);
  }
  for (const Run& run : show.runs) {
    letters.look_in(run.from, run.place);
    letters.look_in(run.to, run.place);
    letters.look(run.cable);
    for (const Crossing& crossing : run.over) letters.look(crossing.floor);
  }
  for (const Supply& supply : show.supplies) letters.look(supply.name);
  for (const Circuit& circuit : show.circuits) letters.look(circuit.name);
}

void look_at_show(Letters& letters, const Show& show) {
  letters.look(show.title);
  letters.look(show.floor);
  letters.look(show.revision);
  letters.look(show.stop_person);
  letters.look(show.with);
  look_at_site(letters, show.site);
  for (const ClockTime& time : show.times) letters.look(time.what);
  if (show.forecast)
    for (const std::string& text : {show.forecast->issued_by, show.forecast->issued_at})
      letters.look_in(text, show.forecast->place);
  for (const ShowPlace& place : show.places) {
    letters.look(place.code);
    letters.look_in(place.name, place.place);
  }
  for (const Team& team : show.teams) letters.look(team.name);
  for (const Want& want : show.wants) {
    letters.look(want.what);
    letters.look_in(want.because, want.place);
  }
  for (const Use& use : show.uses) {
    letters.look(use.as);
    letters.look(use.walls);
    letters.look(use.ground);
    for (const Hung& hung : use.hung) letters.look(hung.what);
  }
  look_at_stage(letters, show);
  for (const auto* list : {&show.bring, &show.leave})
    for (const Override& typed : *list) letters.look_in(typed.because, typed.place);
}

}  // namespace

void check_letters(const Catalogue& catalogue, const Show* show, const std::string& languages, const Faces& faces,
                   Diagnostics& diagnostics) {
  Letters letters(languages, faces, diagnostics);
  look_at_kit(letters, catalogue.kit);
  if (show) look_at_show(letters, *show);
}

}  // namespace dunnage
