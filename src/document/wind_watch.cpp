// SPDX-License-Identifier: MIT
#include "document/wind_watch.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/wind_signs.h"

namespace dunnage {
namespace {

constexpr std::size_t most_rows = 6;  // of structures, so that the card stays on one page
constexpr std::size_t most_signs = 4;
constexpr std::size_t most_name = 26;  // beside a level; a longer one is its letter only

bool alike(const WatchRow& row, const WindUse& wind) {
  const WindCard& first = row.uses.front()->card;
  return row.ready == wind.card.ready && row.start == wind.card.start && row.down == down_of(wind) &&
         first.strike == wind.card.strike && first.people == wind.card.people &&
         row.uses.front()->use->walls.empty() == wind.use->walls.empty() &&
         row.uses.front()->use->hung.empty() == wind.use->hung.empty();
}

std::string number_of(const Context& context, const std::optional<Speed>& level) {
  return level ? print(*level, context.meter, Rounding::down).number() : context.words("weather.no-level");
}

/// Of each structure of the row: "2 x 3" for two, so that the column adds up.
std::string minutes_of(const Context& context, const WatchRow& row) {
  const std::optional<Duration>& strike = row.uses.front()->card.strike;
  if (!strike) return context.words("weather.no-level");
  const std::string minutes = plain(steps_up(*strike / unit::minute), 0);
  return row.uses.size() == 1
             ? minutes
             : context.words.say("thing.count", {{"n", std::to_string(row.uses.size())}, {"name", minutes}});
}

std::string people_of(const Context& context, const WatchRow& row) {
  const std::optional<int>& people = row.uses.front()->card.people;
  return people ? std::to_string(*people) : context.words("weather.no-level");
}

/// What comes off before the structure itself.
std::string first_words(const Context& context, const WatchRow& row) {
  const Words& words = context.words;
  std::vector<std::string> parts;
  for (const WindUse* wind : row.uses) {
    if (!wind->use->walls.empty())
      parts.push_back(wind->card.walls_off
                          ? words.say("weather.walls-then", {{"gust", level_words(context, wind->card.walls_off)}})
                          : words("weather.walls"));
    for (const Hung& hung : wind->use->hung) parts.push_back(hung.what.value);
  }
  return joined(parts, ", ");
}

picture::Level level(const Context& context, picture::Level::Shape shape, const char* word,
                     const std::optional<Speed>& at, std::vector<std::string> actions) {
  picture::Level out;
  out.shape = shape;
  out.word = context.words(word);
  out.figure = level_words(context, at);
  out.actions = std::move(actions);
  return out;
}

/// "A", "AB", "A-D" where more than two follow each other.
std::string run_of(const std::vector<std::string>& letters) {
  const bool follow =
      letters.size() > 2 && letters.back()[0] - letters.front()[0] + 1 == static_cast<int>(letters.size());
  return follow ? letters.front() + "-" + letters.back() : joined(letters, "");
}

/// Whether a gust, as printed, reaches a level as printed: whoever reads the card sees no more of them.
bool reaches(const Context& context, double gust, const std::optional<Speed>& level) {
  return level && print(*level, context.meter, Rounding::down).value <= gust + 1e-9;
}

/// "DOWN A, START B": what a printed gust asks, the two worst levels; each structure under its worst only.
std::string asks(const Context& context, const std::vector<WatchRow>& rows, double gust) {
  std::vector<std::string> parts;
  const std::pair<const char*, std::optional<Speed> WatchRow::*> kinds[] = {
      {"weather.down", &WatchRow::down}, {"weather.start", &WatchRow::start}, {"weather.ready", &WatchRow::ready}};
  std::vector<const WatchRow*> told;
  for (const auto& [word, member] : kinds) {
    std::vector<std::string> letters;
    for (const WatchRow& row : rows) {
      if (!reaches(context, gust, row.*member) || std::find(told.begin(), told.end(), &row) != told.end()) continue;
      letters.push_back(row.letter);
      told.push_back(&row);
    }
    if (!letters.empty() && parts.size() < 2) parts.push_back(context.words(word) + " " + run_of(letters));
  }
  return joined(parts, ", ");
}

}  // namespace

std::vector<WatchRow> watch_rows(const std::vector<WindUse>& uses) {
  std::vector<WatchRow> rows;
  for (const WindUse& wind : uses) {
    auto row = std::find_if(rows.begin(), rows.end(), [&](const WatchRow& r) { return alike(r, wind); });
    if (row == rows.end()) row = rows.insert(row, {{}, {}, {}, wind.card.ready, wind.card.start, down_of(wind)});
    row->names.push_back(wind.use->as.value);
    row->uses.push_back(&wind);
  }
  std::stable_sort(rows.begin(), rows.end(), [](const WatchRow& a, const WatchRow& b) {
    return a.down && b.down ? *a.down < *b.down : a.down.has_value() && !b.down.has_value();
  });
  for (std::size_t i = 0; i < rows.size() && i < 26; ++i) rows[i].letter = std::string(1, static_cast<char>('A' + i));
  return rows;
}

picture::Levels watch_levels(const Context& context, const std::vector<WatchRow>& rows) {
  const Words& words = context.words;
  picture::Levels levels;
  if (rows.empty() || !rows.front().down) return levels;
  const WatchRow& weakest = rows.front();
  const std::string who = context.show.stop_person ? context.show.stop_person->value : words("weather.nobody");
  using Shape = picture::Level::Shape;
  levels.levels = {
      level(context, Shape::octagon, "weather.down", weakest.down,
            {words("weather.down-1"), words("weather.down-2"), words.say("weather.down-3", {{"who", who}})}),
      level(context, Shape::diamond, "weather.start", weakest.start,
            {words("weather.start-1"), words("weather.start-2")}),
      level(context, Shape::disc, "weather.ready", weakest.ready,
            {words("weather.ready-1"), words("weather.ready-2")})};
  const std::string name = joined(weakest.names, ", ");
  for (picture::Level& one : levels.levels)
    one.note = name.size() > most_name ? words("weather.gust-a") : words.say("weather.gust-of", {{"name", name}});
  return levels;
}

block::Table watch_table(const Context& context, const std::vector<WatchRow>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(words, {{"letter", ""},
                                          {"what", ""},
                                          {"down", "weather.down"},
                                          {"start", "weather.start"},
                                          {"ready", "weather.ready"},
                                          {"minutes", "weather.minutes"},
                                          {"people", "weather.people"},
                                          {"first", "weather.first"}});
  table.heads["what"] = words.say("weather.what", {{"meter", context.meter}});
  Group group;
  for (std::size_t i = 0; i < rows.size() && i < most_rows; ++i) {
    const WatchRow& row = rows[i];
    group.rows.push_back({{strong_cell(row.letter), text_cell(joined(row.names, ", ")),
                           strong_cell(number_of(context, row.down)), strong_cell(number_of(context, row.start)),
                           strong_cell(number_of(context, row.ready)), text_cell(minutes_of(context, row)),
                           text_cell(people_of(context, row)), text_cell(first_words(context, row))}});
  }
  table.groups.push_back(std::move(group));
  return table;
}

std::string in_all_words(const Context& context, const std::vector<WatchRow>& rows) {
  const Words& words = context.words;
  Duration minutes;
  int people = 0;
  std::vector<std::string> unknown, unlisted;
  for (std::size_t i = 0; i < rows.size(); ++i)
    for (const WindUse* wind : rows[i].uses) {
      if (wind->card.strike && wind->card.people) {
        minutes += *wind->card.strike;
        people = std::max(people, *wind->card.people);
      } else {
        unknown.push_back(wind->use->as.value);
      }
      if (i >= most_rows) unlisted.push_back(wind->use->as.value);
    }
  std::vector<std::string> parts;
  if (people > 0)
    parts.push_back(words.say("weather.in-all", {{"minutes", plain(steps_up(minutes / unit::minute), 0)},
                                                 {"people", std::to_string(people)}}));
  if (!unknown.empty()) parts.push_back(words.say("weather.not-timed", {{"names", joined(unknown, ", ")}}));
  if (!unlisted.empty()) parts.push_back(words.say("weather.unlisted", {{"names", joined(unlisted, ", ")}}));
  return joined(parts, " ");
}

std::vector<std::string> meter_lines(const Context& context, const std::vector<WatchRow>& rows) {
  const Words& words = context.words;
  std::vector<std::string> lines = {words.say("weather.meter-gust", {{"meter", context.meter}}),
                                    words("weather.meter-hold"), words("weather.meter-height")};
  const std::string forecast = forecast_gust_words(context);
  if (forecast.empty()) {
    lines.push_back(words("weather.no-forecast"));
    return lines;
  }
  const std::string reached = asks(context, rows, forecast_figure(context.show.forecast->gust->value, context.meter));
  lines.push_back(reached.empty() ? words.say("weather.forecast", {{"gust", forecast}})
                                  : words.say("weather.forecast-asks", {{"gust", forecast}, {"asks", reached}}));
  return lines;
}

block::Table sign_table(const Context& context, const std::vector<WatchRow>& rows) {
  const Words& words = context.words;
  block::Table table = make_table(
      words, {{"sign", ""}, {"mean", "weather.sign-mean"}, {"gusts", "weather.sign-gusts"}, {"then", "weather.then"}});
  table.heads["sign"] = words.say("weather.sign", {{"meter", context.meter}});
  Group group;
  for (const WindSign& sign : wind_signs()) {
    const Printed gusts = print(sign.gusts(), context.meter, Rounding::up);
    const std::string then = asks(context, rows, gusts.value);
    if (then.empty() || group.rows.size() == most_signs) continue;
    const std::string mean = print(sign.from, context.meter, Rounding::nearest).number() + "\u2013" +
                             print(sign.to, context.meter, Rounding::nearest).number();
    group.rows.push_back(
        {{text_cell(words(sign.words)), text_cell(mean), text_cell(gusts.number()), strong_cell(then)}});
  }
  if (!group.rows.empty()) table.groups.push_back(std::move(group));
  return table;
}

}  // namespace dunnage
