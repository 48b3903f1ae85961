// SPDX-License-Identifier: MIT
#include "document/patch_sheet.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/plugging.h"

namespace dunnage {
namespace {

constexpr std::ptrdiff_t enough_inputs = 6;  // fewer are found on the input list; common practice, no source

struct Plugged {
  std::string box;
  int socket;
  Row row;
};

/// Inputs and mixes that have a box, by box and socket.
std::vector<Plugged> plugged(const Context& context) {
  std::vector<Plugged> all;
  const auto length = [&](const Maybe<Length>& cable) {
    return cable ? print(cable->value, context.units, Rounding::up).text() : std::string();
  };
  const auto plug = [&](const Maybe<std::string>& box, const std::optional<Sourced<int>>& socket, std::string what,
                        std::string source, std::string performer, std::string cable) {
    if (!box) return;
    const int number = socket ? socket->value : 0;
    all.push_back(
        {box->value,
         number,
         {{text_cell(number > 0 ? std::to_string(number) : std::string()), text_cell(std::move(what)),
           text_cell(std::move(source)), text_cell(std::move(performer)), text_cell(std::move(cable)), tick_cell()}}});
  };
  for (const Input* input : by_channel(context.show))
    plug(input->box, input->socket, context.words.say("patch.channel", {{"n", std::to_string(input->channel.value)}}),
         input->source.value, input->performer, length(input->cable));
  for (const Mix& mix : context.show.mixes)
    plug(mix.box, mix.socket, context.words.say("patch.output", {{"output", mix.output.value}}), mix.who, {},
         length(mix.cable));
  std::stable_sort(all.begin(), all.end(), [](const Plugged& a, const Plugged& b) {
    return a.box != b.box ? walks_before(a.box, b.box) : a.socket < b.socket;
  });
  return all;
}

block::Table patch_table(const Context& context) {
  block::Table table = make_table(context.words, {{"socket", "patch.socket"},
                                                  {"what", "patch.what"},
                                                  {"source", "input.source"},
                                                  {"performer", "input.performer"},
                                                  {"cable", "input.cable"},
                                                  {"patched", "input.patched"}});
  for (Plugged& one : plugged(context)) {
    if (table.groups.empty() || table.groups.back().title != one.box) table.groups.push_back({one.box, {}});
    table.groups.back().rows.push_back(std::move(one.row));
  }
  drop_empty_columns(table, {"performer", "cable"});
  return table;
}

/// What to fetch for each performer, in order of the first channel.
block::Table performer_table(const Context& context) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"pulled", "pull.pulled"},
                                          {"source", "input.source"},
                                          {"pickup", "input.pickup"},
                                          {"stand", "input.stand"},
                                          {"phantom", "input.phantom"},
                                          {"place", "input.place"}});
  for (const Input* input : by_channel(context.show)) {
    if (!input->pickup && !input->stand) continue;
    const std::string title = input->performer.empty() ? words("patch.no-performer") : input->performer;
    auto group =
        std::find_if(table.groups.begin(), table.groups.end(), [&](const Group& g) { return g.title == title; });
    if (group == table.groups.end()) group = table.groups.insert(group, {title, {}});
    group->rows.push_back({{tick_cell(), text_cell(input->source.value),
                            text_cell(typed_thing(context.catalogue, input->pickup, words.language)),
                            text_cell(typed_thing(context.catalogue, input->stand, words.language)),
                            strong_cell(wants_phantom(context, *input) ? words("input.phantom-on") : std::string()),
                            text_cell(place_words(context.show, input->at_place))}});
  }
  drop_empty_columns(table, {"pickup", "stand", "phantom", "place"});
  return table;
}

/// "over asphalt 20 ft, crossed by wheels 12 ft".
std::string over_words(const Context& context, const Crossing& crossing) {
  const Words& words = context.words;
  const auto length = [&](const Maybe<Length>& value) {
    return value ? print(value->value, context.units, Rounding::up).text() : std::string();
  };
  std::string floor = joined({crossing.floor ? crossing.floor->value : std::string(), length(crossing.length)}, " ");
  std::string crossed;
  if (crossing.crossed_by)
    crossed = words.say(crossing.crossed_by->value == "wheels" ? "patch.crossed-wheels" : "patch.crossed-feet",
                        {{"length", length(crossing.crossing)}});
  return joined({floor, crossed}, ", ");
}

block::Table run_table(const Context& context) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"run", "patch.run"},
                                          {"cable", "patch.cable"},
                                          {"count", "patch.count"},
                                          {"length", "patch.length"},
                                          {"over", "patch.over"},
                                          {"laid", "patch.laid"}});
  Group group;
  for (const Run& run : context.show.runs) {
    std::vector<std::string> over;
    for (const Crossing& crossing : run.over) over.push_back(over_words(context, crossing));
    group.rows.push_back(
        {{text_cell(words.say("run.from-to", {{"from", place_words(context.show, run.from)},
                                              {"to", place_words(context.show, run.to)}})),
          text_cell(what_words(context.catalogue, run.cable.value, words.language)),
          text_cell(std::to_string(run.count)),
          text_cell(run.length ? print(run.length->value, context.units, Rounding::up).text() : std::string()),
          text_cell(joined(over, "\n")), tick_cell()}});
  }
  table.groups.push_back(std::move(group));
  drop_empty_columns(table, {"length", "over"});
  return table;
}

}  // namespace

Made patch_sheet(const Context& context) {
  const Words& words = context.words;
  const Show& show = context.show;
  Document document = begin_document(context, "patch-sheet", "patch.title");
  const auto with_box =
      std::count_if(show.inputs.begin(), show.inputs.end(), [](const Input& input) { return input.box.has_value(); });
  if (with_box < enough_inputs && show.runs.empty())
    return Skipped{document.title, words(with_box == 0 ? "skip.no-boxes" : "skip.few-inputs")};
  Section section;
  if (with_box > 0) add(section, "rows", patch_table(context));
  block::Table performers = performer_table(context);
  if (!performers.groups.empty()) {
    add(section, "performers-head", block::Heading{words("patch.performers")});
    add(section, "performers", std::move(performers));
  }
  if (!show.runs.empty()) {
    add(section, "runs-head", block::Heading{words("patch.runs")});
    add(section, "runs", run_table(context));
  }
  add(section, "end", block::Signature{words("patch.complete"), {words("sign.by"), words("sign.time")}});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
