// SPDX-License-Identifier: MIT
#include "document/use_line.h"

#include <algorithm>

#include "base/utf8.h"
#include "document/ballast_plan.h"
#include "document/phrase.h"
#include "document/wind_use.h"

namespace dunnage {
namespace {

std::string counted(const Words& words, int count, const std::string& name) {
  return words.say("thing.count", {{"n", std::to_string(count)}, {"name", name}});
}

std::string at_height(const Context& context, const Maybe<Length>& at) {
  if (!at) return {};
  return context.words.say("use.at-height", {{"height", print(at->value, context.units, Rounding::up).text()}});
}

std::string under_words(const Words& words, Under under) {
  switch (under) {
    case Under::not_stated:
      return {};
    case Under::empty:
      return words("use.under-empty");
    case Under::half_full:
      return words("use.under-half");
    case Under::full:
      return words("use.under-full");
  }
  return {};
}

/// "each leg 2 x BAG" where all are alike, else leg by leg.
std::string leg_words(const Words& words, const std::vector<LegRow>& legs) {
  const auto same = [&](const LegRow& row) { return row.stands == legs.front().stands; };
  if (std::all_of(legs.begin(), legs.end(), same))
    return words.say("use.each-leg", {{"stands", stands_words(words, legs.front())}});
  std::vector<std::string> parts;
  for (const LegRow& row : legs) parts.push_back(row.leg + " " + stands_words(words, row));
  return joined(parts, "; ");
}

/// Weights as typed, for what has no rows by leg.
std::string typed_ballast(const Context& context, const BallastLine& line) {
  const Words& words = context.words;
  const std::string stands = counted(words, line.count, line.code.value);
  if (line.each_leg) return words.say("use.each-leg", {{"stands", stands}});
  if (line.at) return stands + " " + spot_words(context, *line.at);
  std::vector<std::string> legs;
  for (const Text& leg : line.legs) legs.push_back(leg.value);
  return joined(legs, ", ") + " " + stands;
}

std::vector<std::string> ballast_parts(const Context& context, const Use& use) {
  for (const Finding* finding : findings_about(context, use))
    if (const CanopyDetail* detail = std::get_if<CanopyDetail>(&finding->detail))
      if (!detail->legs.empty()) return {leg_words(context.words, detail->legs)};
  std::vector<std::string> parts;
  for (const BallastLine& line : use.ballast) parts.push_back(typed_ballast(context, line));
  return parts;
}

/// What a structure carries and what hangs on it.
std::vector<std::string> burden_parts(const Context& context, const Use& use) {
  const Words& words = context.words;
  std::vector<std::string> out;
  const auto measures = [&](const Maybe<Mass>& mass, const Maybe<Area>& area, const Maybe<Length>& at) {
    return joined(
        {mass ? print(mass->value, context.units, Rounding::up).text() : std::string(),
         area ? print(area->value, context.units, Rounding::up).text() : std::string(), at_height(context, at)},
        ", ");
  };
  for (const Carried& carried : use.carries)
    out.push_back(words.say("use.carries", {{"what", joined({counted(words, carried.count, carried.code.value),
                                                             measures(carried.mass, carried.area, carried.at)},
                                                            ", ")}}));
  for (const Hung& hung : use.hung)
    out.push_back(
        words.say("use.hung", {{"what", joined({hung.what.value, measures(hung.mass, hung.area, hung.at)}, ", ")}}));
  return out;
}

/// Shortages of what a use is made of, carries or stands on: each keeps the place where it was asked for.
std::vector<const Shortage*> shortages_of(const Context& context, const Use& use) {
  std::vector<Place> asked = {use.place};
  for (const Carried& carried : use.carries) asked.push_back(carried.place);
  for (const BallastLine& line : use.ballast) asked.push_back(line.place);
  std::vector<const Shortage*> out;
  for (const Shortage& shortage : context.plan.shortages)
    if (shortage.place.known() && std::find(asked.begin(), asked.end(), shortage.place) != asked.end())
      out.push_back(&shortage);
  return out;
}

int standing_of(const Context& context, const Use& use, int leg, const BallastLine& line) {
  const auto is = [&](const BallastPiece& piece) {
    return &context.show.uses[static_cast<std::size_t>(piece.use)] == &use && piece.leg == leg &&
           piece.place == line.place;
  };
  return static_cast<int>(std::count_if(context.plan.ballast.begin(), context.plan.ballast.end(), is));
}

}  // namespace

std::vector<std::string> short_lines(const Context& context, const Use& use) {
  std::vector<std::string> lines;
  for (const Shortage* shortage : shortages_of(context, use))
    lines.push_back(context.words.say("cover.short-line",
                                      {{"what", shortage->what},
                                       {"wanted", amount_words(*shortage, shortage->wanted, context.units)},
                                       {"missing", amount_words(*shortage, shortage->missing, context.units)}}));
  return lines;
}

std::vector<std::string> short_codes(const Context& context, const Use& use) {
  std::vector<std::string> codes;
  for (const Shortage* shortage : shortages_of(context, use))
    if (std::find(codes.begin(), codes.end(), shortage->what) == codes.end()) codes.push_back(shortage->what);
  return codes;
}

std::string typed_for_leg(const Context& context, const Use& use, const std::string& leg) {
  const Structure* structure = context.catalogue.structure(use.structure.value);
  if (!structure) return {};
  const auto named = [&](const Text& one) { return one.value == leg; };
  const auto at = std::find_if(structure->legs.begin(), structure->legs.end(), named);
  std::vector<std::string> typed;
  bool fewer = false;
  for (const BallastLine& line : use.ballast) {
    if (!line.each_leg && std::none_of(line.legs.begin(), line.legs.end(), named)) continue;
    typed.push_back(counted(context.words, line.count, line.code.value));
    fewer = fewer || standing_of(context, use, static_cast<int>(at - structure->legs.begin()), line) < line.count;
  }
  return fewer ? joined(typed, ", ") : std::string();
}

std::string use_words(const Context& context, const Use& use) {
  const Words& words = context.words;
  std::vector<std::string> walls, parts = ballast_parts(context, use);
  for (const Text& wall : use.walls) walls.push_back(wall.value);
  if (!walls.empty()) parts.push_back(words.say("use.walls", {{"walls", joined(walls, ", ")}}));
  parts.push_back(under_words(words, use.under));
  const Maybe<std::string>& usual = context.show.site.ground;  // said once for all
  if (use.ground && !(usual && usual->value == use.ground->value))
    parts.push_back(words.say("use.ground", {{"ground", use.ground->value}}));
  for (std::string& burden : burden_parts(context, use)) parts.push_back(std::move(burden));
  std::string place = place_words(context.show, use.at_place);
  if (utf8::lower(use.as.value).find(utf8::lower(place)) != std::string::npos) place.clear();  // said already
  const std::string head = joined({use.as.value, place}, ", ");
  return joined({head, joined(parts, "; ")}, ": ");
}

std::vector<const Finding*> findings_about(const Context& context, const Use& use) {
  const Subject subject = subject_in(context.show.uses, use, Subject::Kind::use);
  std::vector<const Finding*> found;
  for (const Finding& finding : context.findings.list)
    if (finding.subject == subject && finding.outcome != Outcome::does_not_apply) found.push_back(&finding);
  return found;
}

/// Structures whose gust stands in the frame; of more, only the lowest: the rest have it in their lines.
constexpr std::size_t most_down = 3;

std::string down_words(const Context& context) {
  std::vector<std::pair<Speed, std::string>> known;
  std::vector<std::string> unknown;
  for (const WindUse& wind : wind_uses(context)) {
    if (const std::optional<Speed> gust = down_of(wind))
      known.emplace_back(*gust, wind.use->as.value);
    else
      unknown.push_back(wind.use->as.value);
  }
  std::stable_sort(known.begin(), known.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<std::string> parts;
  std::string last;
  const bool all = known.size() + unknown.size() <= most_down;
  for (const auto& [gust, name] : known) {
    if (!all && gust > known.front().first) break;
    const std::string text = print(gust, context.meter, Rounding::down).text();
    if (text == last)
      parts.back() += ", " + name;
    else
      parts.push_back(text + " " + name);
    last = text;
  }
  if (!all)
    parts.push_back(context.words("walk.down-others"));
  else if (!unknown.empty())
    parts.push_back(context.words("outcome.not-checked") + " " + joined(unknown, ", "));
  return joined(parts, "; ");
}

std::string rule_words(const Words& words, RuleName rule) {
  static constexpr Named<RuleName> keys[] = {{RuleName::canopy_ballast, "rule.ballast"},
                                             {RuleName::canopy_sliding, "rule.sliding"},
                                             {RuleName::tower_sliding, "rule.sliding"},
                                             {RuleName::tower_tip, "rule.tipping"},
                                             {RuleName::tower_load, "rule.load"}};
  const char* key = name_in(keys, rule);
  return *key == 0 ? name(rule) : words(key);
}

}  // namespace dunnage
