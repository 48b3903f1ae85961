// SPDX-License-Identifier: MIT
#include "check/standing_site.h"

#include <algorithm>

#include "base/slack.h"
#include "check/meter.h"
#include "check/say.h"

namespace dunnage {
namespace {

/// What the feet stand on: of the use, else of the site.
std::optional<std::string> ground_of(const Show& show, const Use& use) {
  return use.ground ? value_of(use.ground) : value_of(show.site.ground);
}

}  // namespace

StandingSite standing_site(const Catalogue& catalogue, const Show& show, int use_index, const Structure& structure) {
  const Use& use = show.uses[static_cast<std::size_t>(use_index)];
  StandingSite site;
  site.use = use_index;
  site.structure = &structure;
  site.name = use.as.value.empty() ? use.structure.value : use.as.value;
  site.place = use.place;
  site.indoor = is_indoor(show);
  if (!show.setting) site.assumptions.push_back(said("setting not stated: taken as outdoors"));
  site.ground = ground_of(show, use);
  site.friction = foot_friction(catalogue.kit.house, show, site.ground);
  site.maker = value_of(structure.maker_gust);
  if (show.forecast) site.forecast = value_of(show.forecast->gust);
  return site;
}

bool is_indoor(const Show& show) { return show.setting && show.setting->value == "indoor"; }

Place setting_place(const Show& show) { return show.setting ? show.setting->place : show.show_place; }

std::optional<Speed> lowest(std::initializer_list<std::optional<Speed>> gusts) {
  std::optional<Speed> out;
  for (const std::optional<Speed>& one : gusts)
    if (one) out = out ? std::min(*out, *one) : *one;
  return out;
}

Sentence governs_of(const StandingSite& site, Speed holds, const std::optional<Speed>& slides, Sentence otherwise) {
  if (site.maker && *site.maker <= holds) return said("maker's limit");
  return slides && *slides <= holds ? said("sliding") : std::move(otherwise);
}

Finding begin_standing(RuleName rule, const StandingSite& site) {
  return begin_finding(rule, {Subject::Kind::use, site.use}, site.name, site.place);
}

bool is_worked_out(Finding& finding, const Show& show, const StandingSite& site, const std::vector<Sentence>& missing,
                   const Sentence& next) {
  if (site.indoor)
    say_does_not_apply(finding, setting_place(show), said("Indoors: no wind load."));
  else if (!missing.empty())
    say_not_given(finding, missing, next);
  return !site.indoor && missing.empty();
}

void assume_of_standing(Finding& finding, const StandingSite& site) {
  finding.assumptions = site.assumptions;
  assume(finding, said("factors 0.9 and 1.5"));
  if (!site.maker) assume(finding, said("maker's limit not given"));
  if (!site.structure->strike_minutes) assume(finding, said("minutes and people to bring it down not given"));
}

bool is_for_ballast(Finding& finding, const StandingSite& site, const std::optional<Speed>& holds,
                    const std::string& down, std::string_view meter) {
  if (const auto limit = lowest({holds, site.maker})) finding.limit = *limit;
  if (!site.forecast) {
    finding.outcome = Outcome::not_checked;
    finding.says = said(
        "No forecast gust, so the ballast asked was not worked out: ask the weather office. Down at {} gust.", down);
    return false;
  }
  finding.measured = *site.forecast;
  if (!site.maker || !exceeds(*site.forecast, *site.maker)) return true;
  finding.outcome = Outcome::over;
  finding.says = said("The forecast gust of {} is above the maker's limit of {}: leave it down, no ballast cures that.",
                      forecast_words(*site.forecast, meter), gust_words(*site.maker, meter));
  return false;
}

}  // namespace dunnage
