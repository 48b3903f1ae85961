// SPDX-License-Identifier: MIT
#include "document/wind_use.h"

#include <algorithm>

#include "document/phrase.h"

namespace dunnage {
namespace {

/// Loads on a tower are no matter of the wind: a tower that stands indoors has them too.
bool of_the_wind(const Finding& finding) { return finding.rule != RuleName::tower_load; }

void read_detail(WindUse& wind, const Finding& finding) {
  if (const auto* canopy = std::get_if<CanopyDetail>(&finding.detail); canopy && !wind.canopy) {
    wind.canopy = canopy;
    wind.card = canopy->card;
  }
  if (const auto* tower = std::get_if<TowerDetail>(&finding.detail); tower && !wind.tower) {
    wind.tower = tower;
    wind.card = tower->card;
  }
}

}  // namespace

std::vector<WindUse> wind_uses(const Context& context) {
  std::vector<WindUse> out;
  for (const Use& use : context.show.uses) {
    WindUse wind;
    wind.use = &use;
    wind.structure = context.catalogue.structure(use.structure.value);
    const Subject subject = subject_in(context.show.uses, use, Subject::Kind::use);
    bool told = false;
    for (const Finding& finding : context.findings.list) {
      if (finding.subject != subject || !of_the_wind(finding)) continue;
      told = true;
      if (finding.outcome == Outcome::does_not_apply) continue;
      wind.findings.push_back(&finding);
      read_detail(wind, finding);
    }
    if (!told || !wind.findings.empty()) out.push_back(std::move(wind));
  }
  return out;
}

std::optional<Speed> down_of(const WindUse& use) {
  if (use.canopy) return use.canopy->down_at;
  if (use.tower) return use.tower->down_at;
  return std::nullopt;
}

std::string level_words(const Context& context, const std::optional<Speed>& level) {
  return level ? print(*level, context.meter, Rounding::down).text() : context.words("outcome.not-checked");
}

std::string forecast_gust_words(const Context& context) {
  const std::optional<Forecast>& forecast = context.show.forecast;
  return forecast && forecast->gust ? forecast_words(forecast->gust->value, context.meter) : std::string();
}

Outcome worst_outcome(const WindUse& use) {
  const auto any = [&](Outcome outcome) {
    return std::any_of(use.findings.begin(), use.findings.end(),
                       [&](const Finding* f) { return f->outcome == outcome; });
  };
  if (any(Outcome::over)) return Outcome::over;
  return use.findings.empty() || any(Outcome::not_checked) ? Outcome::not_checked : Outcome::within;
}

std::vector<std::string> sentences_of(const Context& context, const WindUse& use, Outcome outcome) {
  std::vector<Sentence> told;
  std::vector<std::string> out;
  for (const Finding* finding : use.findings)
    if (finding->outcome == outcome && std::find(told.begin(), told.end(), finding->says) == told.end()) {
      told.push_back(finding->says);
      out.push_back(context.words.say(finding->says));
    }
  return out;
}

}  // namespace dunnage
