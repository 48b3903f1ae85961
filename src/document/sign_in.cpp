// SPDX-License-Identifier: MIT
#include "document/sign_in.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"

namespace dunnage {
namespace {

constexpr int least_rows = 14, spare_rows = 4;  // common practice, no source

int people(const Show& show) {
  return (show.crew ? show.crew->value : 0) + (show.volunteers ? show.volunteers->value : 0);
}

std::vector<std::string> briefing_lines(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  std::vector<std::string> lines = {who_decides(context), help_words(context)};
  if (!site.radio_channel.empty()) lines.push_back(words.say("crew.radio", {{"channel", site.radio_channel}}));
  lines.push_back(words("sign.lifting"));
  return lines;
}

}  // namespace

Made sign_in(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "sign-in", "sign.title");
  Section section;
  add_listing(section, "briefing", words("sign.briefing"), briefing_lines(context));
  block::Table table = make_table(words, {{"number", "sign.number"},
                                          {"name", "sign.name"},
                                          {"phone", "crew.phone"},
                                          {"in", "sign.in"},
                                          {"briefed", "sign.briefed"},
                                          {"signature", "sign.signature"},
                                          {"out", "sign.out"}});
  Group group;
  const int rows = std::max(least_rows, people(context.show) + spare_rows);
  for (int number = 1; number <= rows; ++number)
    group.rows.push_back({{text_cell(std::to_string(number)), blank_cell(), blank_cell(), blank_cell(), tick_cell(),
                           blank_cell(), blank_cell()}});
  table.groups.push_back(std::move(group));
  add(section, "rows", std::move(table));
  add(section, "end", block::Signature{words("sign.complete"), {words("sign.by"), words("sign.time")}});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
