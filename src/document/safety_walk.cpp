// SPDX-License-Identifier: MIT
#include "document/safety_walk.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/walk_stops.h"

namespace dunnage {
namespace {

constexpr std::size_t lines_a_notice = 4;  // at most, so that the walk stays on two pages
constexpr int remark_lines = 3;

block::Facts walk_facts(const Context& context) {
  const Words& words = context.words;
  block::Facts facts;
  add_fact(facts, words("fact.address"), context.show.site.address);
  if (!context.show.forecast) {
    add_fact(facts, words("fact.forecast"), words("walk.not-given"));
    return facts;
  }
  const Forecast& forecast = *context.show.forecast;
  const auto speed = [&](const Maybe<Speed>& value) {
    return value ? print(value->value, context.meter, Rounding::up).text() : std::string();
  };
  const auto per_cent = [](const Maybe<double>& value) {
    return value ? plain(value->value, 0) + " %" : std::string();
  };
  add_fact(facts, words("fact.gust"), speed(forecast.gust));
  add_fact(facts, words("fact.wind"), speed(forecast.wind));
  if (forecast.temperature)
    add_fact(facts, words("fact.temperature"),
             print(forecast.temperature->value, context.units, Rounding::nearest).text());
  add_fact(facts, words("fact.humidity"), per_cent(forecast.humidity));
  add_fact(facts, words("fact.rain"), per_cent(forecast.rain));
  add_fact(facts, words("fact.forecast"), joined({forecast.issued_by, forecast.issued_at}, ", "));
  return facts;
}

/// At most three things that stop the job.
std::vector<std::string> stop_lines(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> canopies;
  for (const Finding& finding : context.findings.list) {
    const CanopyDetail* detail = std::get_if<CanopyDetail>(&finding.detail);
    if (!detail) continue;
    canopies.push_back(finding.subject + " " +
                       (detail->down_at ? print(*detail->down_at, context.meter, Rounding::down).text()
                                        : words("outcome.not-checked")));
  }
  std::vector<std::string> lines;
  if (!canopies.empty()) lines.push_back(words.say("walk.stop-gust", {{"uses", joined(canopies, "; ")}}));
  if (!context.show.setting || context.show.setting->value == "outdoor") lines.push_back(words("walk.stop-thunder"));
  lines.push_back(words("walk.stop-mains"));
  return lines;
}

/// Each sentence once, of the findings that the walk prints.
std::vector<std::string> cautions(const Context& context) {
  std::vector<std::string> lines;
  const auto once = [&](const std::string& text) {
    if (!text.empty() && std::find(lines.begin(), lines.end(), text) == lines.end()) lines.push_back(text);
  };
  for (const Finding* finding : findings_on_walk(context)) {
    once(finding->assumption);
    once(finding->caution);
    if (const CanopyDetail* detail = std::get_if<CanopyDetail>(&finding->detail)) once(detail->assumption);
  }
  return lines;
}

std::string sources(const Context& context) {
  std::vector<std::string> names;
  for (const Finding* finding : findings_on_walk(context))
    if (std::find(names.begin(), names.end(), finding->source) == names.end()) names.push_back(finding->source);
  return joined(names, "; ");
}

}  // namespace

Made safety_walk(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "safety-walk", "walk.title");
  const auto lines = [&](Outcome outcome) {
    return first_lines(said_lines(context.findings, outcome), lines_a_notice, words);
  };
  Section section;
  add_facts(section, "facts", walk_facts(context));
  add_notice(section, "stop", words("walk.stop-word"), stop_lines(context));
  add_notice(section, "over", words("notice.over"), lines(Outcome::over));
  add_notice(section, "unchecked", words("notice.unchecked"), lines(Outcome::not_checked));
  add(section, "stops", walk_table(context));
  add_listing(section, "cautions", words("walk.cautions"), cautions(context));
  add(section, "decide", block::Paragraph{who_decides(context)});
  add(section, "remarks", block::Fill{std::vector<std::string>(remark_lines, words("walk.remark"))});
  add(section, "end", block::Signature{words("walk.complete"),
                                       {words("sign.name"), words("sign.signature"), words("sign.time")}});
  const std::string names = sources(context);
  if (!names.empty()) add(section, "sources", block::Paragraph{words.say("walk.sources", {{"sources", names}})});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
