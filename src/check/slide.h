// SPDX-License-Identifier: MIT
// What both rules of sliding say: the ground, the friction assumed, and the gust from which a structure may walk.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/quantity.h"
#include "model/finding.h"

namespace dunnage {

/// Begins the words of a sliding rule: source, and the caution for `what` ("canopy").
void begin_slide(Finding& finding, std::string_view what);
/// The friction and factors that the figure rests on.
void assume_friction(Finding& finding);
/// No friction is published for this ground. Not checked.
void say_no_friction(Finding& finding, std::string_view ground);
/// Holds the gust from which it may slide against the forecast; not checked where there is none.
void judge_slide(Finding& finding, Speed slides, std::optional<Speed> forecast, std::string_view meter);

}  // namespace dunnage
