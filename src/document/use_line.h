// SPDX-License-Identifier: MIT
// A structure in use in one line: where it stands, what holds it down, what it carries, and when it must come down.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "document/context.h"

namespace dunnage {

/// "monitor canopy, Stage: NW 2 x BAG; SW 1 x BAG; walls N; half full under the roof; carries 1 x SPK, at 8 ft".
/// All that was typed of the use; its ground where it differs from the site's.
std::string use_words(const Context& context, const Use& use);
/// What a use asks for and the plan does not have, each as "TENT: 2 wanted, 1 missing"; and the codes alone.
std::vector<std::string> short_lines(const Context& context, const Use& use);
std::vector<std::string> short_codes(const Context& context, const Use& use);
/// "2 x BAG" that was typed for a leg, where fewer stand there; empty else.
std::string typed_for_leg(const Context& context, const Use& use, const std::string& leg);
/// The findings about one use that apply.
std::vector<const Finding*> findings_about(const Context& context, const Use& use);
/// "14 mph monitor canopy; 25 mph stage canopy": the gust at which each must be down, the lowest first; those
/// without one last, as not checked. Empty where nothing stands in the wind.
std::string down_words(const Context& context);
/// A rule in a word or two: "sliding".
std::string rule_words(const Words& words, RuleName rule);

}  // namespace dunnage
