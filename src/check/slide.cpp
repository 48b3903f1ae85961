// SPDX-License-Identifier: MIT
#include "check/slide.h"

#include "base/slack.h"
#include "check/meter.h"
#include "check/say.h"
#include "formula/overturning.h"

namespace dunnage {

bool likely_wet(const Show& show) { return show.forecast && show.forecast->rain && show.forecast->rain->value >= 50; }

std::optional<FootFriction> foot_friction(const House& house, const Show& show,
                                          const std::optional<std::string>& ground) {
  if (!ground) return std::nullopt;
  for (const TestedFriction& tested : house.friction)
    if (tested.ground == *ground)
      return FootFriction{tested.share * tested_friction_share,
                          {said("friction {}, half of what the house tested ({})",
                                plain(tested.share * tested_friction_share, 3), tested.tested)}};
  const auto listed = likely_wet(show) ? std::nullopt : steel_friction(*ground);
  if (!listed) return std::nullopt;
  return FootFriction{
      *listed,
      {said("friction {}, the least listed for a steel foot (from memory, after EN 13814)", plain(*listed, 3)),
       said("the ground is dry")}};
}

void begin_slide(Finding& finding) {
  finding.sources = {said("statics"), as_is("EN 1990 A1.2(A)")};
  finding.caution = said("Grass and wet ground act as a lubricant. Watch the feet: what walks must come down.");
}

bool knows_grip(Finding& finding, const Show& show, const std::optional<std::string>& ground,
                const std::optional<FootFriction>& friction) {
  if (!ground)
    say_not_given(finding, {said("what it stands on")}, said("Type ground for the site or for the use."));
  else if (!friction)
    finding.says = said(
        "Sliding: no friction is published for {}, and ballast alone is no cure. Stake and guy it, ask the maker, or "
        "test a loaded foot (house.friction).",
        likely_wet(show) ? said("{} that is wet", *ground) : Sentence(*ground));
  return ground && friction;
}

void judge_slide(Finding& finding, std::optional<Speed> slides, const FootFriction& friction,
                 std::optional<Speed> forecast, std::string_view meter) {
  if (!slides) {
    finding.says = said("Nothing that is typed pushes it sideways: watch the feet.");
    return;
  }
  for (const Sentence& from : friction.from) assume(finding, from);
  assume(finding, said("factors 0.9 and 1.5"));
  finding.limit = *slides;
  const std::string at = gust_words(*slides, meter);
  if (!forecast) {
    finding.says = said("It may slide from {} gust. No forecast gust: ask the weather office.", at);
    return;
  }
  finding.measured = *forecast;
  finding.outcome = exceeds(*forecast, *slides) ? Outcome::over : Outcome::within;
  const std::string gust = forecast_words(*forecast, meter);
  finding.says =
      finding.outcome == Outcome::within
          ? said("It may slide from {} gust; the forecast gust is {}.", at, gust)
          : said(
                "It may slide from {} gust; the forecast gust is {}: add ballast, take walls and banners off, "
                "stake and guy it, or leave it down.",
                at, gust);
}

}  // namespace dunnage
