// SPDX-License-Identifier: MIT
#include "check/slide.h"

#include <fmt/format.h>

#include "check/meter.h"

namespace dunnage {

void begin_slide(Finding& finding, std::string_view what) {
  finding.source = "statics; EN 1990 A1.2(A)";
  finding.caution = fmt::format(
      "Grass and wet ground act as a lubricant. Watch the feet: a {} that walks must come down.", what);
}

void assume_friction(Finding& finding) {
  finding.assumption =
      "friction 0.2, the least listed for a steel foot (from memory, after EN 13814); factors 0.9 and 1.5";
}

void say_no_friction(Finding& finding, std::string_view ground) {
  finding.says = fmt::format("No friction is published for {}: pull each foot, or stake and guy it.", ground);
}

void judge_slide(Finding& finding, Speed slides, std::optional<Speed> forecast, std::string_view meter) {
  finding.limit = slides;
  const std::string at = gust_words(slides, meter);
  if (!forecast) {
    finding.says = fmt::format("No forecast gust. It may slide from {} gust.", at);
    return;
  }
  finding.measured = *forecast;
  finding.outcome = *forecast <= slides * (1 + 1e-9) ? Outcome::within : Outcome::over;
  finding.says =
      fmt::format("It may slide from {} gust; the forecast gust is {}.", at, forecast_words(*forecast, meter));
}

}  // namespace dunnage
