// SPDX-License-Identifier: MIT
// The revised lifting equation of NIOSH, in either of the manual's two sets of constants.
#include "formula/niosh.h"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "base/slack.h"

namespace dunnage {
namespace {

using namespace unit;

/// The constants of one set, lengths in its own unit.
struct Constants {
  Unit<Length> length;
  double reach, reach_most;             // H
  double knuckle, per_length, up_most;  // V
  double distance_least, distance_most, distance_term;
  double column_height;                 // Tables 5 and 7
  double low_hands, box_low, box_high;  // H from the depth
};

const Constants& constants_of(LiftConstants which) {
  static const Constants metric{centimetre, 25, 63, 75, 0.003, 175, 25, 175, 4.5, 75, 25, 25, 20};
  static const Constants us{inch, 10, 25, 30, 0.0075, 70, 10, 70, 1.8, 30, 10, 10, 8};
  return which == LiftConstants::metric ? metric : us;
}

struct FrequencyRow {
  double per_minute;
  std::array<double, 6> factor;  // by span, low column then high column
};
constexpr std::array<FrequencyRow, 18> kTable5{{
    {0.2, {1.00, 1.00, .95, .95, .85, .85}},
    {0.5, {.97, .97, .92, .92, .81, .81}},
    {1, {.94, .94, .88, .88, .75, .75}},
    {2, {.91, .91, .84, .84, .65, .65}},
    {3, {.88, .88, .79, .79, .55, .55}},
    {4, {.84, .84, .72, .72, .45, .45}},
    {5, {.80, .80, .60, .60, .35, .35}},
    {6, {.75, .75, .50, .50, .27, .27}},
    {7, {.70, .70, .42, .42, .22, .22}},
    {8, {.60, .60, .35, .35, .18, .18}},
    {9, {.52, .52, .30, .30, .00, .15}},
    {10, {.45, .45, .26, .26, .00, .13}},
    {11, {.41, .41, .00, .23, .00, .00}},
    {12, {.37, .37, .00, .21, .00, .00}},
    {13, {.00, .34, .00, .00, .00, .00}},
    {14, {.00, .31, .00, .00, .00, .00}},
    {15, {.00, .28, .00, .00, .00, .00}},
    {15.0000001, {.00, .00, .00, .00, .00, .00}},
}};

double above(double value, double most, double factor) { return exceeds(value, most) ? 0.0 : factor; }

}  // namespace

Mass load_constant(LiftConstants constants) { return constants == LiftConstants::metric ? 23 * kilogram : 51 * pound; }

double frequency_factor(double per_minute, Length up_at_origin, WorkSpan span, LiftConstants which) {
  const Constants& c = constants_of(which);
  const bool high = !falls_short(up_at_origin / c.length, c.column_height);
  const std::size_t column = static_cast<std::size_t>(span) * 2 + (high ? 1 : 0);
  if (per_minute <= kTable5.front().per_minute) return kTable5.front().factor[column];
  for (std::size_t i = 1; i < kTable5.size(); ++i) {
    const FrequencyRow &a = kTable5[i - 1], &b = kTable5[i];
    if (per_minute > b.per_minute) continue;
    const double share = (per_minute - a.per_minute) / (b.per_minute - a.per_minute);
    return a.factor[column] + share * (b.factor[column] - a.factor[column]);
  }
  return 0;
}

double coupling_factor(Coupling coupling, Length up, LiftConstants which) {
  const Constants& c = constants_of(which);
  if (coupling == Coupling::poor) return 0.90;
  if (coupling == Coupling::fair && falls_short(up / c.length, c.column_height)) return 0.95;
  return 1.00;
}

LiftFactors lift_factors(const LiftPoint& point, LiftConstants which) {
  const Constants& c = constants_of(which);
  const double h = std::max(point.out / c.length, c.reach);
  const double v = point.up / c.length;
  const double d = std::max(point.travel / c.length, c.distance_least);
  LiftFactors f;
  f.horizontal = above(h, c.reach_most, c.reach / h);
  f.vertical = v < 0 ? 0.0 : above(v, c.up_most, 1 - c.per_length * std::abs(v - c.knuckle));
  f.distance = above(d, c.distance_most, 0.82 + c.distance_term / d);
  f.asymmetry = above(std::abs(point.turn), 135, 1 - 0.0032 * std::abs(point.turn));
  f.frequency = frequency_factor(point.per_minute, point.up_at_origin, point.span, which);
  f.coupling = coupling_factor(point.coupling, point.up, which);
  return f;
}

Mass recommended_weight(const LiftFactors& factors, LiftConstants constants) {
  return load_constant(constants) * factors.product();
}

std::optional<double> lifting_index(Mass load, Mass limit) {
  if (limit <= Mass{}) return std::nullopt;
  return load / limit;
}

Length hands_out(Length depth, Length up, LiftConstants which) {
  const Constants& c = constants_of(which);
  const double add = falls_short(up / c.length, c.low_hands) ? c.box_low : c.box_high;
  return add * c.length + depth / 2.0;
}

std::optional<WorkSpan> work_span(const std::vector<std::pair<Duration, Duration>>& stretches) {
  // Work is added up until a recovery is long enough for what has been done since the last such one.
  // What follows the last stretch does not matter.
  Duration since;
  WorkSpan span = WorkSpan::one_hour;
  for (const auto& [work, recovery] : stretches) {
    since += work;
    const bool rested = (since <= 1.0 * hour && recovery >= since) ||
                        (since > 1.0 * hour && since <= 2.0 * hour && recovery >= 0.3 * since);
    if (since > 8.0 * hour) return std::nullopt;
    if (rested) {
      span = std::max(span, since <= 1.0 * hour ? WorkSpan::one_hour : WorkSpan::two_hours);
      since = Duration{};
    } else if (since > 2.0 * hour) {
      span = WorkSpan::eight_hours;
    }
  }
  if (since > 2.0 * hour) return WorkSpan::eight_hours;
  if (since > 1.0 * hour) return std::max(span, WorkSpan::two_hours);
  return span;
}

double spread_frequency(double per_minute, double minutes) {
  assert(minutes >= 0 && minutes <= 15);
  return per_minute * minutes / 15;
}

std::optional<double> composite_lifting_index(const std::vector<LiftTask>& tasks, LiftConstants which) {
  struct Figures {
    double heaviest_index, average_index, per_minute;  // FILI, STLI, F
    const LiftTask* task;
  };
  std::vector<Figures> all;
  for (const LiftTask& task : tasks) {
    LiftFactors factors = lift_factors(task.point, which);
    const double frequency = factors.frequency;
    factors.frequency = 1;
    const Mass free_limit = recommended_weight(factors, which);
    const auto heaviest = lifting_index(task.heaviest, free_limit);
    const auto average = lifting_index(task.average, free_limit * frequency);
    if (!heaviest || !average) return std::nullopt;
    all.push_back({*heaviest, *average, task.point.per_minute, &task});
  }
  if (all.empty()) return std::nullopt;
  std::stable_sort(all.begin(), all.end(),
                   [](const Figures& a, const Figures& b) { return a.average_index > b.average_index; });
  double index = all.front().average_index;
  double per_minute = all.front().per_minute;
  for (std::size_t k = 1; k < all.size(); ++k) {
    const LiftPoint& point = all[k].task->point;
    const double before = frequency_factor(per_minute, point.up_at_origin, point.span, which);
    per_minute += all[k].per_minute;
    const double after = frequency_factor(per_minute, point.up_at_origin, point.span, which);
    if (before <= 0 || after <= 0) return std::nullopt;
    index += all[k].heaviest_index * (1 / after - 1 / before);
  }
  return index;
}

}  // namespace dunnage
