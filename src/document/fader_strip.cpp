// SPDX-License-Identifier: MIT
#include "document/fader_strip.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/plugging.h"

namespace dunnage {
namespace {

constexpr int usual_bank = 8;
constexpr int most_cells = 128;  // of one console; a higher channel number is a matrix or a typing slip

/// The source's name; two of one name are told apart by their performers.
std::string cell_name(const std::vector<const Input*>& inputs, const Input& input) {
  const auto same = [&](const Input* other) { return other->source.value == input.source.value; };
  if (std::count_if(inputs.begin(), inputs.end(), same) < 2) return input.source.value;
  return joined({input.source.value, input.performer}, "\n");
}

/// Pitch and bank as the show says, else as the console that goes does, else as any of its kind.
void add_faders(const Context& context, picture::FaderStrips& strips) {
  const Show& show = context.show;
  if (show.fader_pitch) strips.pitch = show.fader_pitch->value;
  if (show.fader_bank) strips.per_bank = show.fader_bank->value;
  if (!show.console) return;
  for (const bool going : {true, false})
    for (const int box : context.catalogue.cases_serving(show.console->value)) {
      const Case& console = context.catalogue.kit.cases[static_cast<std::size_t>(box)];
      const auto [first, last] = context.catalogue.units_of[static_cast<std::size_t>(box)];
      bool goes = false;
      for (const PlanRow& row : context.plan.rows) goes = goes || (row.goes && row.unit >= first && row.unit < last);
      if (going && !goes) continue;
      if (!strips.pitch && console.fader_pitch) strips.pitch = console.fader_pitch->value;
      if (!strips.per_bank && console.fader_bank) strips.per_bank = console.fader_bank->value;
    }
}

/// Every channel from 1 to the last, so that each cell stands over its own fader.
picture::FaderStrips channel_strips(const Context& context) {
  const Words& words = context.words;
  picture::FaderStrips strips;
  strips.bank = words("strip.bank");
  strips.check = words("strip.check");
  add_faders(context, strips);
  const std::vector<const Input*> inputs = by_channel(context.show);
  for (const Input* input : inputs) {
    const int channel = input->channel.value;
    if (channel < 1 || channel > most_cells) continue;
    while (static_cast<int>(strips.cells.size()) < channel)
      strips.cells.push_back({std::to_string(strips.cells.size() + 1), {}});
    std::string& name = strips.cells[static_cast<std::size_t>(channel - 1)].name;
    name = joined({name, cell_name(inputs, *input)}, "\n");
  }
  const auto bank = static_cast<std::size_t>(strips.per_bank.value_or(usual_bank));
  while (strips.cells.size() % bank != 0)  // the last bank is numbered to its end, for late changes
    strips.cells.push_back({std::to_string(strips.cells.size() + 1), {}});
  return strips;
}

}  // namespace

Made fader_strip(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "fader-strip", "strip.title");
  if (context.show.inputs.empty()) return Skipped{document.title, words("skip.no-inputs")};
  Section section;
  add(section, "note", block::Paragraph{words("strip.note")});
  add(section, "strips", block::Picture{channel_strips(context)});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
