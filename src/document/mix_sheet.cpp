// SPDX-License-Identifier: MIT
#include "document/mix_sheet.h"

#include "document/form.h"
#include "document/phrase.h"
#include "document/plugging.h"

namespace dunnage {
namespace {

constexpr std::size_t enough_mixes = 3;  // fewer stand on the input list; common practice, no source

/// "2 x Floor wedge": what the mix is heard from.
std::string heard_from(const Context& context, const Mix& mix) {
  const std::string& language = context.words.language;
  const std::string thing =
      joined({typed_thing(context.catalogue, mix.wedge, language), typed_thing(context.catalogue, mix.pack, language),
              typed_thing(context.catalogue, mix.speaker, language)},
             ", ");
  std::string all = thing;
  if (!thing.empty() && mix.count > 1)
    all = context.words.say("thing.count", {{"n", std::to_string(mix.count)}, {"name", thing}});
  const std::string prop = typed_thing(context.catalogue, mix.prop, language);
  return joined({all, prop.empty() ? prop : context.words.say("mix.prop", {{"prop", prop}})}, ", ");
}

}  // namespace

bool few_mixes(const Show& show) { return show.mixes.size() < enough_mixes; }

block::Table mix_table(const Context& context) {
  block::Table table = make_table(context.words, {{"output", "mix.output"},
                                                  {"who", "mix.who"},
                                                  {"from", "mix.from"},
                                                  {"socket", "input.socket"},
                                                  {"cable", "input.cable"},
                                                  {"checked", "input.checked"},
                                                  {"note", "input.note"}});
  Group group;
  for (const Mix& mix : context.show.mixes)
    group.rows.push_back(
        {{text_cell(mix.output.value), text_cell(mix.who), text_cell(heard_from(context, mix)),
          text_cell(socket_words(mix.box, mix.socket)),
          text_cell(mix.cable ? print(mix.cable->value, context.units, Rounding::up).text() : std::string()),
          tick_cell(), text_cell(mix.note)}});
  table.groups.push_back(std::move(group));
  drop_empty_columns(table, {"socket", "cable"});
  return table;
}

Made mix_sheet(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "mix-sheet", "mix.title");
  if (few_mixes(context.show))
    return Skipped{document.title, words(context.show.mixes.empty() ? "skip.no-mixes" : "skip.few-mixes")};
  Section section;
  add(section, "rows", mix_table(context));
  add(section, "end", block::Signature{words("mix.complete"), {words("sign.by"), words("sign.time")}});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
