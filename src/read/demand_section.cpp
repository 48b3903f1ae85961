// SPDX-License-Identifier: MIT
// What the show asks for: [[want]], [[input]], [[mix]], [[run]].
#include <algorithm>

#include "read/show_sections.h"

namespace dunnage {
namespace {

std::optional<Sourced<int>> read_socket(TableReader& section) { return section.maybe_count("socket", 1, most_count); }

Radio read_radio(TableReader& entry) {
  Radio radio;
  radio.frequency = entry.quantity<Frequency>("frequency", range::frequency);
  entry.needs("frequency");
  if (!entry.has("frequency"))
    entry.error(entry.place(), "\"radio\" has no \"frequency\"", "add frequency = \"540.125 MHz\"");
  radio.cells = entry.count("cells", 0, 100, 0);
  radio.cell = entry.text_or("cell").value;
  return radio;
}

Input read_input(TableReader& section) {
  Input input;
  input.place = section.place();
  input.channel = section.needed_count("channel", 1, most_count);
  input.performer = section.text_or("performer").value;
  input.source = section.text("source");
  input.pickup = section.maybe_text("pickup");
  input.stand = section.maybe_text("stand");
  input.phantom = section.maybe_flag("phantom");
  input.pad = section.maybe_text("pad");
  input.level = section.quantity<Line>("level", range::level);
  input.box = section.maybe_text("box");
  input.socket = read_socket(section);
  input.cable = section.quantity<Length>("cable", range::run_length);
  const Text at = section.text_or("at");
  input.at_place = at.value;
  input.at_place_typed = at.place;
  input.note = section.text_or("note").value;
  section.table("radio", "\"radio\"", [&](TableReader& entry) { input.radio = read_radio(entry); });
  return input;
}

Mix read_mix(TableReader& section) {
  Mix mix;
  mix.place = section.place();
  mix.output = section.text("output");
  mix.who = section.text("who").value;
  mix.wedge = section.maybe_text("wedge");
  mix.pack = section.maybe_text("pack");
  mix.speaker = section.maybe_text("speaker");
  mix.prop = section.maybe_text("prop");
  mix.count = section.count("count", 1, most_count, 1);
  mix.box = section.maybe_text("box");
  mix.socket = read_socket(section);
  mix.cable = section.quantity<Length>("cable", range::run_length);
  mix.note = section.text_or("note").value;
  return mix;
}

Crossing read_crossing(TableReader& entry) {
  Crossing crossing;
  crossing.place = entry.place();
  crossing.floor = entry.maybe_text("floor");
  crossing.length = entry.quantity<Length>("length", range::run_length);
  if (const auto by = entry.word<std::string>("crossed_by", {{"feet", "feet"}, {"wheels", "wheels"}}))
    crossing.crossed_by = *by;
  crossing.crossing = entry.quantity<Length>("crossing", range::run_length);
  crossing.wheel = entry.quantity<Mass>("wheel", range::weight_hold);
  crossing.rise = entry.quantity<Length>("rise", range::height);
  if (crossing.crossing && crossing.length && crossing.crossing->value > crossing.length->value)
    entry.error(crossing.crossing->place, "more is crossed than there is of the run",
                "\"crossing\" is a part of \"length\"");
  return crossing;
}

Run read_run(TableReader& section) {
  Run run;
  run.place = section.place();
  run.from = section.text("from").value;
  run.to = section.text("to").value;
  run.cable = section.text("cable");
  run.length = section.quantity<Length>("length", range::run_length);
  run.count = section.count("count", 1, most_count, 1);
  section.entries("over", [&](TableReader& entry) { run.over.push_back(read_crossing(entry)); });
  const bool summed = !run.over.empty() && std::all_of(run.over.begin(), run.over.end(),
                                                       [](const Crossing& part) { return part.length.has_value(); });
  if (!section.has("length") && !summed)
    section.error(section.place(), "[[run]] has no \"length\"",
                  "add length = \"50 ft\", or a length to every part of \"over\"");
  return run;
}

}  // namespace

void read_demand_sections(TableReader& top, Show& show) {
  top.tables("want", "[[want]]", [&](TableReader& section) {
    Want want;
    want.place = section.place();
    want.what = section.text("what");
    want.count = section.count("count", 1, 100000, 1);
    want.length = section.quantity<Length>("length", range::piece_length);
    want.because = section.text_or("because").value;
    if (!want.what.value.empty()) show.wants.push_back(std::move(want));
  });
  top.tables("input", "[[input]]", [&](TableReader& section) { show.inputs.push_back(read_input(section)); });
  top.tables("mix", "[[mix]]", [&](TableReader& section) { show.mixes.push_back(read_mix(section)); });
  top.tables("run", "[[run]]", [&](TableReader& section) { show.runs.push_back(read_run(section)); });
}

}  // namespace dunnage
