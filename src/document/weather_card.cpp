// SPDX-License-Identifier: MIT
#include "document/weather_card.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/wind_watch.h"

namespace dunnage {
namespace {

constexpr int log_rows = 4;

/// Who stops and who alone restarts.
std::string who_words(const Context& context) {
  const Words& words = context.words;
  if (!context.show.stop_person) return words("weather.stop-unnamed");
  const std::string& role = context.show.stop_person->value;
  return words.say("weather.stop", {{"who", joined({role, contact_words(context.show, role)}, ", ")}});
}

const Finding* finding_of(const Context& context, RuleName rule) {
  for (const Finding& finding : context.findings.list)
    if (finding.rule == rule) return &finding;
  return nullptr;
}

std::string distance_words(Length length, UnitSystem units, Rounding way) {
  const bool us = units == UnitSystem::us;
  const double count = length / (us ? unit::mile : unit::kilometre);
  return plain(way == Rounding::up ? steps_up(count) : steps_down(count), 0) + (us ? " mi" : " km");
}

std::string minutes_words(Duration duration) { return plain(steps_up(duration / unit::minute), 0) + " min"; }

/// By count, by distance, and when again; what the site did not say stands as not checked.
std::vector<std::string> storm_lines(const Context& context) {
  const Words& words = context.words;
  const Finding* finding = finding_of(context, RuleName::lightning);
  const LightningDetail* detail = finding ? std::get_if<LightningDetail>(&finding->detail) : nullptr;
  if (!detail) return {words("weather.thunder"), words("notice.unchecked") + "  " + words("weather.no-lightning")};
  const std::string shelter = detail->shelter.empty() ? words("weather.shelter") : detail->shelter;
  std::vector<std::string> lines = {words.say(
      "weather.count", {{"seconds", plain(steps_up(detail->count / unit::second), 0)}, {"shelter", shelter}})};
  const std::string by = distance_words(detail->shelter_by, context.units, Rounding::up);
  if (detail->clear_from && detail->time_to_clear)
    lines.push_back(
        words.say("weather.distance", {{"from", distance_words(*detail->clear_from, context.units, Rounding::up)},
                                       {"by", by},
                                       {"time", minutes_words(*detail->time_to_clear)}}));
  else
    lines.push_back(words.say("weather.distance-only", {{"by", by}}));
  if (finding->outcome == Outcome::not_checked)
    lines.push_back(words("notice.unchecked") + "  " + words.say(finding->says));
  lines.push_back(words.say("weather.again", {{"wait", minutes_words(detail->wait)}}));
  return lines;
}

/// One line of heat, cold or rain: how it came out, then what to do.
void add_air(const Context& context, block::Facts& facts, const char* label, RuleName rule) {
  const Words& words = context.words;
  const Finding* finding = finding_of(context, rule);
  if (!finding || finding->outcome == Outcome::does_not_apply) return;
  std::string text;
  if (finding->outcome == Outcome::not_checked) text = words("notice.unchecked") + "  ";
  if (finding->outcome == Outcome::over) text = words("notice.over") + "  ";
  text += words.say(finding->says);
  const auto* weather = std::get_if<WeatherDetail>(&finding->detail);
  if (weather && !weather->measures.empty())
    text += " " + words.say(weather->measures.back());  // when to call for help; the crew sheet has all
  add_fact(facts, words(label), text);
}

/// Heat and cold once, whichever applies; neither given is not checked.
block::Facts air_facts(const Context& context) {
  block::Facts facts;
  add_air(context, facts, "weather.heat", RuleName::heat);
  add_air(context, facts, "weather.cold", RuleName::cold);
  if (!finding_of(context, RuleName::heat) && !finding_of(context, RuleName::cold))
    add_fact(facts, context.words("weather.heat-cold"), context.words("outcome.not-checked"));
  add_air(context, facts, "weather.rain", RuleName::rain);
  if (!finding_of(context, RuleName::rain))
    add_fact(facts, context.words("weather.rain"), context.words("outcome.not-checked"));
  return facts;
}

block::Table log_table(const Context& context) {
  block::Table table = make_table(
      context.words,
      {{"time", "sign.time"}, {"mean", ""}, {"gust", ""}, {"done", "weather.log-done"}, {"by", "weather.log-by"}});
  table.heads["mean"] = context.words.say("weather.mean-head", {{"meter", context.meter}});
  table.heads["gust"] = context.words.say("weather.log-gust", {{"meter", context.meter}});
  Group group;
  for (int i = 0; i < log_rows; ++i)
    group.rows.push_back({{blank_cell(), blank_cell(), blank_cell(), blank_cell(), blank_cell()}});
  table.groups.push_back(std::move(group));
  return table;
}

/// What the levels leave out, said before them.
std::vector<std::string> unchecked_lines(const Context& context, const std::vector<WindUse>& uses) {
  const Words& words = context.words;
  std::vector<std::string> no_level, no_maker, no_sliding, lines;
  for (const WindUse& wind : uses) {
    const std::string& name = wind.use->as.value;
    if (!down_of(wind))
      no_level.push_back(name);
    else if (!wind.card.maker_known)
      no_maker.push_back(name);
    if (down_of(wind) && !wind.card.sliding_known) no_sliding.push_back(name);
  }
  const auto tell = [&](const std::vector<std::string>& names, const char* some, const char* all) {
    if (names.empty()) return;
    lines.push_back(names.size() == uses.size() && uses.size() > 1 ? words(all)
                                                                   : words.say(some, {{"names", joined(names, ", ")}}));
  };
  if (uses.empty()) lines.push_back(words("weather.no-structures"));
  tell(no_level, "weather.no-levels", "weather.no-levels-all");
  tell(no_maker, "weather.no-maker", "weather.no-maker-all");
  tell(no_sliding, "weather.no-sliding", "weather.no-sliding-all");
  for (std::string& line : lines) line = words("notice.unchecked") + "  " + line;
  return lines;
}

}  // namespace

Made weather_card(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "weather-card", "weather.title");
  if (context.show.setting && context.show.setting->value == "indoor")
    return Skipped{document.title, words("skip.indoor")};
  const std::vector<WindUse> uses = wind_uses(context);
  const std::vector<WatchRow> rows = watch_rows(uses);
  Section section;
  picture::Levels levels = watch_levels(context, rows);
  if (!levels.levels.empty()) add(section, "levels", block::Picture{std::move(levels)});
  add(section, "who", block::Paragraph{who_words(context)});
  if (!rows.empty()) {
    add(section, "structures", watch_table(context, rows));
    add(section, "in-all", block::Paragraph{in_all_words(context, rows)});
  }
  add_notice(section, "unchecked", {}, unchecked_lines(context, uses));
  add_listing(section, "meter", words("weather.meter"), meter_lines(context, rows));
  block::Table signs = sign_table(context, rows);
  if (!signs.groups.empty()) add(section, "signs", std::move(signs));
  add_listing(section, "storm", words("weather.storm"), storm_lines(context));
  add_facts(section, "air", air_facts(context));
  add(section, "log", log_table(context));
  add(section, "sources", block::Paragraph{words("weather.sources")});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
