// SPDX-License-Identifier: MIT
#include "document/safety_walk.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/use_line.h"
#include "document/walk_stops.h"

namespace dunnage {
namespace {

constexpr std::size_t lines_a_notice = 4;  // at most, so that the walk stays on two pages
constexpr int remark_lines = 3;

/// "gust 16 mph, wind 9 mph, 71 F ...; regional office, 18:00": the forecast that the limits were set against.
std::string forecast_words(const Context& context) {
  const Words& words = context.words;
  if (!context.show.forecast) return words("walk.not-given");
  const Forecast& forecast = *context.show.forecast;
  const auto speed = [&](const char* key, const Maybe<Speed>& value) {
    return value ? words(key) + " " + print(value->value, context.meter, Rounding::up).text() : std::string();
  };
  const auto per_cent = [&](const char* key, const Maybe<double>& value) {
    return value ? words(key) + " " + plain(value->value, 0) + " %" : std::string();
  };
  const std::string temperature =
      forecast.temperature ? print(forecast.temperature->value, context.units, Rounding::nearest).text() : std::string();
  return joined({joined({speed("walk.gust", forecast.gust), speed("walk.wind", forecast.wind), temperature,
                         per_cent("fact.humidity", forecast.humidity), per_cent("fact.rain", forecast.rain)}, ", "),
                 joined({forecast.issued_by, forecast.issued_at}, ", ")}, "; ");
}

block::Facts walk_facts(const Context& context) {
  block::Facts facts;
  add_fact(facts, context.words("fact.forecast"), forecast_words(context));
  if (context.show.site.ground) add_fact(facts, context.words("fact.ground"), context.show.site.ground->value);
  return facts;
}

/// At most three things that stop the job.
std::vector<std::string> stop_lines(const Context& context) {
  const Words& words = context.words;
  const std::string down = down_words(context);
  std::vector<std::string> lines;
  if (!down.empty()) lines.push_back(words.say("walk.stop-gust", {{"uses", down}}));
  if (!context.show.setting || context.show.setting->value == "outdoor") lines.push_back(words("walk.stop-thunder"));
  lines.push_back(words("walk.stop-mains"));
  return lines;
}

/// Parts of `text` between semicolons, each once.
void add_once(std::vector<std::string>& parts, const std::string& text) {
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = std::min(text.find("; ", begin), text.size());
    const std::string part = text.substr(begin, end - begin);
    if (std::find(parts.begin(), parts.end(), part) == parts.end()) parts.push_back(part);
    begin = end + 2;
  }
}

/// What the findings on the walk assume and leave out, each once.
std::string cautions(const Context& context) {
  std::vector<std::string> assumed, cautioned;
  for (const Finding* finding : findings_on_walk(context)) {
    add_once(assumed, finding->assumption);
    if (std::find(cautioned.begin(), cautioned.end(), finding->caution) == cautioned.end())
      cautioned.push_back(finding->caution);
  }
  const std::string told = joined(cautioned, " ");
  if (assumed.empty()) return told;
  return joined({told, context.words.say("walk.assumed", {{"assumed", joined(assumed, "; ")}})}, "\n");
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
  block::Table lifts = lift_table(context);
  if (!lifts.groups.empty()) {
    add(section, "lifts-head", block::Heading{words("walk.lifts")});
    add(section, "lifts", std::move(lifts));
  }
  const std::string left_out = cautions(context);
  if (!left_out.empty()) add(section, "cautions", block::Paragraph{left_out});
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
