// SPDX-License-Identifier: MIT
#include "document/contents_card.h"

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

/// "110 m of 150 m": what is left over all pieces, and what full ones hold. Empty for what is not used up.
std::string left_words(const Context& context, const Content& content, const Item* item) {
  if (!item || !item->used_up) return {};
  std::string left, full;
  if (item->each) full = print(item->each->value * content.count, context.units, Rounding::nearest).text();
  if (item->each_volume)
    full = print(item->each_volume->value * content.count, context.units, Rounding::nearest).text();
  if (content.left) left = print(content.left->value, context.units, Rounding::down).text();
  if (content.left_volume) left = print(content.left_volume->value, context.units, Rounding::down).text();
  if (full.empty()) return context.words("card.used-up");
  return left.empty() ? full : context.words.say("card.left-of", {{"left", left}, {"full", full}});
}

block::Table card_table(const Context& context, const Case& box) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"before", "card.before"},
                                          {"count", "card.count"},
                                          {"name", "card.item"},
                                          {"left", "card.left"},
                                          {"rest", "card.rest"},
                                          {"after", "card.after"}});
  Group group;
  bool any_used_up = false;
  for (const Content& content : box.holds) {
    const Item* item = context.catalogue.item(content.item.value);
    const bool used_up = item && item->used_up;
    any_used_up = any_used_up || used_up;
    group.rows.push_back(
        {{tick_cell(), text_cell(std::to_string(content.count)),
          text_cell(item ? name_in(*item, words.language) : content.item.value),
          text_cell(left_words(context, content, item)), used_up ? blank_cell() : text_cell({}), tick_cell()}});
  }
  table.groups.push_back(std::move(group));
  if (!any_used_up) drop_empty_columns(table, {"left", "rest"});
  return table;
}

Section card_section(const Context& context, const PlanRow& row) {
  const Words& words = context.words;
  const Case& box = context.catalogue.case_at(row.unit);
  const std::string& code = code_of(context.catalogue, row);
  const House& house = context.catalogue.kit.house;
  int pieces = 0;
  for (const Content& content : box.holds) pieces += content.count;
  Section section{code, {}};
  add(section, "code", block::Heading{code});
  add(section, "name", block::Heading{name_in(box, words.language)});
  block::Facts facts;
  add_fact(facts, words("card.looks"), box.looks);
  add_fact(facts, words("unit.home"), row.home);
  add_fact(facts, words("card.pieces"), std::to_string(pieces));
  add_fact(facts, words("unit.mass"), mass_words(words, row, context.units));
  add_facts(section, "facts", std::move(facts));
  add(section, "rows", card_table(context, box));
  add(section, "note", block::Paragraph{words("card.note")});
  add(section, "end", block::Signature{words("card.complete"), {words("card.packed-by"), words("sign.time")}});
  add(section, "qr", block::Qr{code + "  " + name_in(box, words.language), words("page.more")});
  add(section, "owner", block::Paragraph{joined({house.name.value, house.phone.value}, ", ")});
  return section;
}

}  // namespace

Made contents_card(const Context& context) {
  Document document = begin_document(context, "contents-card", "card.title");
  for (const PlanRow* row : rows_to_pull(context))
    if (!context.catalogue.case_at(row->unit).holds.empty()) document.sections.push_back(card_section(context, *row));
  if (document.sections.empty()) return Skipped{document.title, context.words("skip.nothing-held")};
  return document;
}

}  // namespace dunnage
