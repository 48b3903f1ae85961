// SPDX-License-Identifier: MIT
// The revised lifting equation of NIOSH: what one person may lift, how often, from where to where.
// Source of all of it: Waters, Putz-Anderson, Garg, Applications Manual for the Revised NIOSH Lifting
// Equation, DHHS (NIOSH) Publication 94-110, 1994, revised 9/2021. Page numbers are of the 2021 print.
#pragma once

#include <array>
#include <optional>
#include <utility>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

/// How the hands hold the load (p. 17).
enum class Coupling { good, fair, poor };
/// Length of the lifting work with its recovery (pp. 13-14).
enum class WorkSpan { one_hour, two_hours, eight_hours };
/// The manual prints two sets of constants that differ by up to 1.6 %. The metric set never allows more,
/// so it is what Dunnage uses; the US set is for comparison with the manual's sheets.
enum class LiftConstants { metric, us };

/// One lift, seen at its origin or at its destination.
struct LiftPoint {
  Length out;             ///< H: hands ahead of the middle of the ankles
  Length up;              ///< V: hands above the floor at the point looked at
  Length up_at_origin;    ///< V where the lift begins, which picks the column of Table 5
  Length travel;          ///< D: how far the hands rise or sink
  double turn = 0;        ///< A: degrees away from straight ahead
  double per_minute = 0;  ///< F: lifts a minute, averaged over 15 minutes
  WorkSpan span = WorkSpan::one_hour;
  Coupling coupling = Coupling::fair;
};

/// The six multipliers, each 0 to 1.
struct LiftFactors {
  double horizontal = 0, vertical = 0, distance = 0, asymmetry = 0, frequency = 0, coupling = 0;
  double product() const { return horizontal * vertical * distance * asymmetry * frequency * coupling; }
};

/// LC, the load constant: 23 kg or 51 lb (p. 7).
Mass load_constant(LiftConstants constants);
/// FM, Table 5 (p. 15), linear between rows (p. 7); 0 above the table. `per_minute` not negative.
double frequency_factor(double per_minute, Length up_at_origin, WorkSpan span, LiftConstants constants);
/// CM, Table 7 (p. 18), by the height at the point looked at.
double coupling_factor(Coupling coupling, Length up, LiftConstants constants);
/// All six (pp. 7-18). Lengths below the least count as the least; beyond the largest give 0.
LiftFactors lift_factors(const LiftPoint& point, LiftConstants constants = LiftConstants::metric);
/// RWL, the recommended weight limit for one person (p. 7). 0: not liftable by this method.
Mass recommended_weight(const LiftFactors& factors, LiftConstants constants = LiftConstants::metric);
/// LI = load / RWL (p. 19). Empty where RWL is 0: then there is no index. Above 1.0 the risk rises;
/// above 3.0 nearly all workers are at increased risk (p. 20).
std::optional<double> lifting_index(Mass load, Mass limit);
/// H where it cannot be measured, from the depth of the load away from the body (p. 8).
Length hands_out(Length depth, Length up, LiftConstants constants = LiftConstants::metric);

/// Stretches of lifting and of recovery after each -> the span (pp. 13-14: recovery at least 1.0 times
/// up to an hour's work, 0.3 times up to two hours'). Recovery that is too short is ignored and the
/// work added up. Empty above eight hours.
std::optional<WorkSpan> work_span(const std::vector<std::pair<Duration, Duration>>& work_and_recovery);
/// Lifts a minute when lifting fills only part of each 15 minutes (p. 16). `minutes` 0 to 15.
double spread_frequency(double per_minute, double minutes);

/// One task of several, for the composite index (pp. 21-24).
struct LiftTask {
  Mass heaviest, average;
  LiftPoint point;  ///< at origin, or at the destination where control is needed there
};
/// CLI (p. 24). Empty where a task is not liftable by this method.
std::optional<double> composite_lifting_index(const std::vector<LiftTask>& tasks,
                                              LiftConstants constants = LiftConstants::metric);

}  // namespace dunnage
