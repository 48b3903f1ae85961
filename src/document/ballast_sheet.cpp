// SPDX-License-Identifier: MIT
#include "document/ballast_sheet.h"

#include <algorithm>

#include "document/ballast_plan.h"
#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/use_line.h"

namespace dunnage {
namespace {

/// The levels side by side, the worst first, with what sets them.
block::Facts level_facts(const Context& context, const WindUse& wind) {
  const Words& words = context.words;
  block::Facts facts;
  add_fact(facts, words("ballast.down"), level_words(context, down_of(wind)));
  add_fact(facts, words("ballast.start"), level_words(context, wind.card.start));
  add_fact(facts, words("ballast.ready"), level_words(context, wind.card.ready));
  return facts;
}

/// "1 x BAG", and what was typed for the leg where that is more.
std::string stands_beside_typed(const Context& context, const Use& use, const LegRow& row) {
  const std::string stands = stands_words(context.words, row), typed = typed_for_leg(context, use, row.leg);
  return typed.empty() ? stands : context.words.say("ballast.of-typed", {{"stands", stands}, {"typed", typed}});
}

/// Leg by leg: what stands, what it has and needs, how many more.
block::Table leg_table(const Context& context, const Use& use, const CanopyDetail& canopy) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"leg", "ballast.leg"},
                                          {"stands", "ballast.stands"},
                                          {"has", "ballast.has-head"},
                                          {"needs", "ballast.needs-head"},
                                          {"state", ""},
                                          {"set", "ballast.set"},
                                          {"tied", "ballast.tied"}});
  if (const std::string gust = forecast_gust_words(context); !gust.empty())
    table.heads["needs"] = words.say("ballast.needs-at", {{"gust", gust}});
  Group group;
  for (const LegRow& row : canopy.legs) {
    const bool enough = row.actual * (1 + 1e-9) >= row.required;
    std::string state = words(!row.required_known ? "outcome.not-checked"
                              : enough            ? "ballast.enough"
                                                  : "ballast.lacking");
    if (row.required_known && !enough && row.more > 0)
      state = words.say("ballast.more", {{"n", std::to_string(row.more)}, {"code", row.more_of}});
    group.rows.push_back({{strong_cell(row.leg),
                           text_cell(stands_beside_typed(context, use, row)),
                           text_cell(print(row.actual, context.units, Rounding::down).text()),
                           text_cell(row.required_known ? print(row.required, context.units, Rounding::up).text()
                                                        : words("outcome.not-checked")),
                           {Cell::Kind::text, std::move(state), !enough || !row.required_known},
                           tick_cell(),
                           tick_cell()}});
  }
  table.groups.push_back(std::move(group));
  return table;
}

/// Weights as typed, where they are not placed by legs.
block::Table weight_table(const Context& context, const Use& use) {
  const Words& words = context.words;
  block::Table table = make_table(
      words,
      {{"leg", "ballast.where"}, {"stands", "ballast.stands"}, {"set", "ballast.set"}, {"tied", "ballast.tied"}});
  Group group;
  for (const BallastLine& line : use.ballast) {
    std::vector<std::string> legs;
    for (const Text& leg : line.legs) legs.push_back(leg.value);
    std::string where = line.each_leg ? words("ballast.each-leg") : joined(legs, ", ");
    if (line.at) where = spot_words(context, *line.at);
    const std::string stands = words.say("thing.count", {{"n", std::to_string(line.count)}, {"name", line.code.value}});
    group.rows.push_back({{strong_cell(where), text_cell(stands), tick_cell(), tick_cell()}});
  }
  if (group.rows.empty())
    group.rows.push_back(
        {{text_cell(words("ballast.no-ballast")), strong_cell(words("use.nothing")), tick_cell(), tick_cell()}});
  table.groups.push_back(std::move(group));
  return table;
}

std::string strike_words(const Context& context, const WindUse& wind) {
  const Words& words = context.words;
  if (!wind.card.strike && !wind.card.people) return words("ballast.strike-unknown");
  const std::string minutes =
      wind.card.strike ? plain(steps_up(*wind.card.strike / unit::minute), 0) : std::string("?");
  return words.say(
      "ballast.strike",
      {{"minutes", minutes}, {"people", wind.card.people ? std::to_string(*wind.card.people) : std::string("?")}});
}

/// What does better for least, what the walls cost, and what was taken for granted.
block::Facts improvement_facts(const Context& context, const WindUse& wind) {
  const Words& words = context.words;
  block::Facts facts;
  add_fact(facts, words("ballast.this"), use_words(context, *wind.use));
  if (wind.tower) {
    std::string all = print(wind.tower->ballast, context.units, Rounding::down).text();
    if (wind.tower->more > Mass{})
      all += words.say("ballast.lacks", {{"mass", print(wind.tower->more, context.units, Rounding::up).text()}});
    add_fact(facts, words("ballast.in-all"), all);
    if (wind.tower->required)
      add_fact(
          facts, words("ballast.needs-head"),
          words.say("ballast.tower-needs", {{"mass", print(*wind.tower->required, context.units, Rounding::up).text()},
                                            {"gust", forecast_gust_words(context)}}));
    add_fact(facts, words("ballast.improve"), words.say(wind.tower->improvement));
  }
  if (wind.canopy) {
    add_fact(facts, words("ballast.improve"), words.say(wind.canopy->improvement));
    add_fact(facts, words("ballast.presses"),
             wind.canopy->pressed
                 ? words.say("ballast.presses-leg",
                             {{"mass", print(*wind.canopy->pressed, context.units, Rounding::up).text()},
                              {"gust", forecast_gust_words(context)}})
                 : words("outcome.not-checked"));
  }
  add_fact(facts, words("ballast.governs"), words.say(wind.card.governs));
  add_fact(facts, words("ballast.to-strike"), strike_words(context, wind));
  return facts;
}

std::vector<std::string> unchecked_lines(const Context& context, const WindUse& wind) {
  std::vector<std::string> lines = sentences_of(context, wind, Outcome::not_checked);
  if (wind.findings.empty()) lines.push_back(context.words("ballast.no-check"));
  const bool levels = down_of(wind).has_value();
  if (levels && !wind.card.maker_known) lines.push_back(context.words("ballast.no-maker"));
  for (std::string& line : lines) line = context.words("notice.unchecked") + "  " + line;
  return lines;
}

/// What is over a limit and what is short, in one frame on top: its word where there is one kind, else one a line.
void add_stops(const Context& context, const WindUse& wind, Section& section) {
  const Words& words = context.words;
  std::vector<std::string> over = sentences_of(context, wind, Outcome::over), lacking = short_lines(context, *wind.use);
  const bool both = !over.empty() && !lacking.empty();
  for (std::string& line : lacking) over.push_back(both ? words("notice.short") + "  " + line : std::move(line));
  const bool only_short = !both && !lacking.empty();
  add_notice(section, "over", words(only_short ? "notice.short" : "notice.over"), std::move(over));
}

Section section_of(const Context& context, const WindUse& wind) {
  const Words& words = context.words;
  Section section{wind.use->as.value, {}};
  add_stops(context, wind, section);
  add_facts(section, "levels", level_facts(context, wind));
  if (wind.structure) add(section, "plan", block::Picture{plan_picture(context, wind)});
  if (std::optional<picture::Chart> chart = chart_picture(context, wind))
    add(section, "chart", block::Picture{std::move(*chart)});
  if (wind.canopy && !wind.canopy->legs.empty())
    add(section, "legs", leg_table(context, *wind.use, *wind.canopy));
  else
    add(section, "weights", weight_table(context, *wind.use));
  add_notice(section, "unchecked", {}, unchecked_lines(context, wind));
  add_facts(section, "facts", improvement_facts(context, wind));
  const std::string cautions = caution_words(wind.findings, words),
                    assumed = list_words(wind.findings, &Finding::assumptions, words);
  if (!cautions.empty()) add(section, "cautions", block::Paragraph{cautions});
  add(section, "end",
      block::Signature{words("ballast.complete"), {words("ballast.by"), words("sign.signature"), words("sign.time")}});
  const std::string sources = list_words(wind.findings, &Finding::sources, words);
  if (!sources.empty())
    add(section, "sources",
        block::Paragraph{words.say("ballast.sources", {{"sources", sources}, {"assumed", assumed}})});
  return section;
}

}  // namespace

Made ballast_sheet(const Context& context) {
  Document document = begin_document(context, "ballast-sheet", "ballast.title");
  const std::vector<WindUse> uses = wind_uses(context);
  if (uses.empty())
    return Skipped{document.title, context.words(context.show.uses.empty() ? "skip.no-structures" : "skip.no-wind")};
  for (const WindUse& wind : uses) document.sections.push_back(section_of(context, wind));
  return document;
}

}  // namespace dunnage
