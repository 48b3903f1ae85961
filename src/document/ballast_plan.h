// SPDX-License-Identifier: MIT
// A structure in pictures: from above with its weights, and its margin against the gust.
#pragma once

#include <optional>
#include <string>
#include <utility>

#include "document/wind_use.h"

namespace dunnage {

/// "14 in ahead", "in the middle": a place on the plan, from its middle. Never "up", which a builder reads as
/// a height.
std::string spot_words(const Context& context, const std::pair<Length, Length>& at);
/// The plan: legs where their names say (N, NE ...), else around the edge in the order typed; weights of
/// towers where they were typed.
picture::PlanView plan_picture(const Context& context, const WindUse& wind);
/// The chart; nothing where the checks give no curve.
std::optional<picture::Chart> chart_picture(const Context& context, const WindUse& wind);

}  // namespace dunnage
