// SPDX-License-Identifier: MIT
// Every structure that stands in the wind with what the checks found for it: the one reading of their details
// that the ballast sheet, the weather card and the safety walk share.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "document/context.h"

namespace dunnage {

struct WindUse {
  const Use* use = nullptr;
  const Structure* structure = nullptr;  ///< null where the kit has none of that code
  std::vector<const Finding*> findings;  ///< that apply, in the order of the rules
  const CanopyDetail* canopy = nullptr;
  const TowerDetail* tower = nullptr;
  WindCard card;  ///< levels absent: not worked out
};

/// In the show's order; a structure that no rule of the wind applies to is left out. One that no rule looked
/// at stays: it is not checked.
std::vector<WindUse> wind_uses(const Context& context);

/// The gust at which it must be down, as the checks found it; absent: not checked.
std::optional<Speed> down_of(const WindUse& use);

/// "14 mph", whole units of the meter, rounded down; "NOT CHECKED" where there is none.
std::string level_words(const Context& context, const std::optional<Speed>& level);
/// A forecast gust, rounded up; empty where there is none.
std::string forecast_gust_words(const Context& context);

/// Within, over or not checked: the worst of its findings.
Outcome worst_outcome(const WindUse& use);
/// The sentences of findings that came out like that, each once.
std::vector<std::string> sentences_of(const Context& context, const WindUse& use, Outcome outcome);

}  // namespace dunnage
