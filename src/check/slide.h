// SPDX-License-Identifier: MIT
// What every rule about sliding says alike.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "model/finding.h"
#include "model/kit.h"
#include "model/show.h"

namespace dunnage {

/// A friction that counts, and where it is from.
struct FootFriction {
  double share = 0;
  std::vector<Sentence> from;
};
/// Whether the ground may be wet: rain at 50 % or more. Common practice, no source.
bool likely_wet(const Show& show);
/// The house's own test on this ground at half, else the least published for a steel foot there, unless it may be wet.
/// Empty where there is neither, as on grass.
std::optional<FootFriction> foot_friction(const House& house, const Show& show,
                                          const std::optional<std::string>& ground);

/// Share of a tested friction that counts: a factor of 2.0 on friction is asked.
/// Source: The Concrete Society, note on friction of falsework (fingertip 833), year not seen.
inline constexpr double tested_friction_share = 0.5;

/// Source and caution.
void begin_slide(Finding& finding);
/// Whether the ground and a friction on it are known; where not, says so.
bool knows_grip(Finding& finding, const Show& show, const std::optional<std::string>& ground,
                const std::optional<FootFriction>& friction);
/// Outcome, figures and words of what may slide from `slides` on; empty: nothing pushes it. Without a forecast not
/// checked.
void judge_slide(Finding& finding, std::optional<Speed> slides, const FootFriction& friction,
                 std::optional<Speed> forecast, std::string_view meter);

}  // namespace dunnage
