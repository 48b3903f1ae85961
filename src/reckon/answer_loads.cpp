// SPDX-License-Identifier: MIT
// Vehicles, tie-downs and ramps.
#include <fmt/format.h>

#include "base/slack.h"
#include "formula/access.h"
#include "formula/vehicle_load.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {
namespace {

std::vector<PlacedMass> placed(const Inputs& in) {
  std::vector<PlacedMass> load;
  for (const auto& [mass, at] : in.pairs("load")) load.push_back({Mass::from_si(mass), Length::from_si(at)});
  return load;
}

void against(Answer& out, const Inputs& in, std::string_view key, Mass actual, const std::string& what) {
  if (const auto limit = in.maybe<Mass>(key)) also(out, what, exceeds(actual, *limit) ? "over limit" : "within limit");
}

}  // namespace

void answer_ramp(const Inputs& in, Answer& out, Problems&) {
  const Length rise = in.get<Length>("rise");
  const RampFigures r = ramp(rise);
  const LevelChange change = level_change(rise);
  result(out, said(r.slope, in, Rounding::up));
  also(out, "change in level",
       change == LevelChange::none_needed ? "needs nothing"
       : change == LevelChange::bevel     ? "a bevel of 1:2 will do"
                                          : "needs a ramp");
  also(out, "runs", plain(r.runs, 0));
  also(out, "with landings, in all", said(r.total, in, Rounding::up).text());
}

void answer_vehicle_axles(const Inputs& in, Answer& out, Problems& problems) {
  if (in.get<Mass>("front") <= Mass{} || in.get<Mass>("rear") <= Mass{}) {
    problems.push_back("front and rear: each axle bears some of the vehicle, so neither weighs 0");
    return;
  }
  const AxleFigures f = axle_loads(in.get<Mass>("front"), in.get<Mass>("rear"), in.get<Length>("wheelbase"), placed(in),
                                   in.get<Mass>("tongue"), in.get<Length>("hitch"));
  result(out, said(f.rear, in, Rounding::up));
  also(out, "rear axle", said(f.rear, in, Rounding::up).text());
  also(out, "front axle", said(f.front, in, Rounding::up).text());
  also(out, "in all", said(f.total, in, Rounding::up).text());
  also(out, "on the front axle", share_words(f.front / f.total));
  against(out, in, "limit-front", f.front, "front axle's limit");
  against(out, in, "limit-rear", f.rear, "rear axle's limit");
  against(out, in, "gross", f.total, "gross limit");
  if (f.front < f.total * 0.2) also(out, "steering", "less than 20 % on the steered axle: over limit (DGUV rule 70)");
}

void answer_tongue(const Inputs& in, Answer& out, Problems& problems) {
  if (in.get<Mass>("tongue") > in.get<Mass>("empty")) {
    problems.push_back("tongue: more than the empty trailer weighs");
    return;
  }
  if (in.get<Mass>("empty") <= Mass{}) {
    problems.push_back("empty: a trailer weighs more than 0");
    return;
  }
  const TongueFigures f =
      tongue_load(in.get<Mass>("empty"), in.get<Mass>("tongue"), in.get<Length>("axle"), placed(in));
  result(out, said(f.tongue, in, Rounding::up));
  also(out, "axle or axle group", said(f.axle, in, Rounding::up).text());
  also(out, "in all", said(f.gross, in, Rounding::up).text());
  also(out, "share on the tongue", share_words(f.share));
  const double low = in.number("from", 10) / 100, high = in.number("to", 15) / 100;
  also(out, fmt::format("window {} to {}", share_words(low), share_words(high)),
       falls_short(f.share, low) ? "too light: over limit"
       : exceeds(f.share, high)  ? "too heavy: over limit"
                                 : "within limit");
}

void answer_tie_downs(const Inputs& in, Answer& out, Problems& problems) {
  const Mass mass = in.get<Mass>("mass");
  const int least = tie_downs(in.get<Length>("length"), mass, in.word("blocked", "no") == "yes");
  int number = least;
  if (in.has("strap")) {
    const std::string word = in.word("route", "over");
    const TieDownRoute route = word == "over" ? TieDownRoute::over_to_other_side : TieDownRoute::vehicle_to_cargo;
    const Mass counted = working_load_counted(in.get<Mass>("strap"), route);
    if (counted <= Mass{}) {
      problems.push_back("strap: its working load limit must be above 0");
      return;
    }
    number = std::max(least, static_cast<int>(steps_up(working_load_needed(mass) / counted)));
  }
  result(out, said(number, 0, "tie-downs", Rounding::up));
  also(out, "by length and mass", plain(least, 0));
  also(out, "working load limit in all, at least", said(working_load_needed(mass), in, Rounding::up).text());
}

}  // namespace dunnage
