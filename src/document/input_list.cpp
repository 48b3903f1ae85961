// SPDX-License-Identifier: MIT
#include "document/input_list.h"

#include <algorithm>
#include <cmath>

#include "document/form.h"
#include "document/mix_sheet.h"
#include "document/phrase.h"
#include "document/plugging.h"

namespace dunnage {

namespace {

constexpr int blank_rows = 4;  // common practice, no source: room for late changes

std::string radio_words(const Words& words, const Input& input) {
  if (!input.radio) return {};
  std::string frequency, cells;
  if (input.radio->frequency) frequency = plain(input.radio->frequency->value / unit::megahertz, 4) + " MHz";
  if (input.radio->cells > 0)
    cells = words.say("input.cells", {{"n", std::to_string(input.radio->cells)}, {"cell", input.radio->cell}});
  return joined({frequency, cells}, "\n");
}

/// What is typed, or the least pad that the source's level asks for.
std::string pad_words(const Words& words, const Input& input, const InputNeeds& needs) {
  if (input.pad) return input.pad->value;
  return needs.pad > 0 ? words.say("input.pad-least", {{"pad", plain(std::ceil(needs.pad * 10 - 1e-6) / 10, 1)}}) : "";
}

std::string level_words(const Input& input) {
  if (!input.level) return {};
  const double level = input.level->value / unit::decibel_u;
  return (level > 0 ? "+" : "") + plain(level, 1) + " dBu";
}

Row input_row(const Context& context, const Input& input) {
  const Words& words = context.words;
  const InputNeeds needs = needs_of(context, input);
  const auto thing = [&](const Maybe<std::string>& typed) {
    return text_cell(typed_thing(context.catalogue, typed, words.language));
  };
  return {{text_cell(std::to_string(input.channel.value)), text_cell(input.source.value), text_cell(input.performer),
           tick_cell(), tick_cell(), thing(input.pickup), thing(input.stand),
           strong_cell(wants_phantom(context, input) ? words("input.phantom-on") : std::string()),
           strong_cell(joined({pad_words(words, input, needs), level_words(input)}, "\n")),
           text_cell(socket_words(input.box, input.socket)),
           text_cell(input.cable ? print(input.cable->value, context.units, Rounding::up).text() : std::string()),
           text_cell(radio_words(words, input)), text_cell(place_words(context.show, input.at_place)),
           text_cell(input.note)}};
}

bool by_performer(const Show& show) { return show.input_order == "performer"; }

/// One group, or one a performer in order of the first channel.
void fill_groups(const Context& context, block::Table& table) {
  for (const Input* input : by_channel(context.show)) {
    const std::string title = by_performer(context.show) ? input->performer : std::string();
    auto group =
        std::find_if(table.groups.begin(), table.groups.end(), [&](const Group& g) { return g.title == title; });
    if (group == table.groups.end()) group = table.groups.insert(group, {title, {}});
    group->rows.push_back(input_row(context, *input));
  }
}

/// Rows to write late changes in; the rule under a row is the line.
void add_blank_rows(const Words& words, block::Table& table) {
  std::vector<Cell> cells;
  for (const std::string& column : table.columns)
    cells.push_back(column == "patched" || column == "checked" ? tick_cell() : text_cell({}));
  table.groups.push_back({words("input.late"), std::vector<Row>(blank_rows, Row(cells))});
}

block::Table input_table(const Context& context) {
  block::Table table = make_table(context.words, {{"channel", "input.channel"},
                                                  {"source", "input.source"},
                                                  {"performer", "input.performer"},
                                                  {"patched", "input.patched"},
                                                  {"checked", "input.checked"},
                                                  {"pickup", "input.pickup"},
                                                  {"stand", "input.stand"},
                                                  {"phantom", "input.phantom"},
                                                  {"pad", "input.pad"},
                                                  {"socket", "input.socket"},
                                                  {"cable", "input.cable"},
                                                  {"radio", "input.radio"},
                                                  {"place", "input.place"},
                                                  {"note", "input.note"}});
  fill_groups(context, table);
  if (by_performer(context.show)) drop_column(table, "performer");  // the groups' titles say it
  drop_empty_columns(table, {"pickup", "stand", "phantom", "pad", "socket", "cable", "radio", "place"});
  add_blank_rows(context.words, table);
  return table;
}

}  // namespace

Made input_list(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "input-list", "input.title");
  if (context.show.inputs.empty()) return Skipped{document.title, words("skip.no-inputs")};
  Section section;
  block::Facts facts;
  add_fact(facts, words("fact.console"), typed_thing(context.catalogue, context.show.console, words.language));
  add_fact(facts, words("input.channels"), std::to_string(context.show.inputs.size()));
  add_facts(section, "console", std::move(facts));
  add(section, "rows", input_table(context));
  if (few_mixes(context.show) && !context.show.mixes.empty()) {
    add(section, "mixes-head", block::Heading{words("mix.title")});
    add(section, "mixes", mix_table(context));
  }
  add(section, "end", block::Signature{words("input.complete"), {words("sign.by"), words("sign.time")}});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
