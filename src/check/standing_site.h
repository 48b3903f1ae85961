// SPDX-License-Identifier: MIT
// What the wind rules read and say alike of every structure that stands: canopies, towers, stands, banners, screens.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "check/slide.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/show.h"

namespace dunnage {

/// One structure where it stands.
struct StandingSite {
  int use = 0;
  const Structure* structure = nullptr;
  std::string name;               ///< of the use, for findings
  Place place;                    ///< of the use
  std::vector<Sentence> missing;  ///< what is not given, so that nothing can be worked out
  std::vector<Sentence> assumptions;
  std::optional<Speed> forecast, maker;
  std::optional<std::string> ground;
  std::optional<FootFriction> friction;  ///< of its feet on that ground
  bool indoor = false;
};
StandingSite standing_site(const Catalogue& catalogue, const Show& show, int use, const Structure& structure);

bool is_indoor(const Show& show);
/// "setting", as typed: what makes a wind rule not apply.
Place setting_place(const Show& show);

/// The lowest of those that are known.
std::optional<Speed> lowest(std::initializer_list<std::optional<Speed>> gusts);
/// What the down level comes from: "maker's limit", "sliding", or what else holds it.
Sentence governs_of(const StandingSite& site, Speed holds, const std::optional<Speed>& slides, Sentence otherwise);

Finding begin_standing(RuleName rule, const StandingSite& site);
/// Whether the wind meets it and all is given; where not, says so, and `next` what to do.
bool is_worked_out(Finding& finding, const Show& show, const StandingSite& site, const std::vector<Sentence>& missing,
                   const Sentence& next);
/// What every figure of ballast takes for granted.
void assume_of_standing(Finding& finding, const StandingSite& site);
/// Whether a forecast gust is known and within the maker's limit; where not, says so. `holds`: without sliding, which
/// has a finding of its own.
bool is_for_ballast(Finding& finding, const StandingSite& site, const std::optional<Speed>& holds,
                    const std::string& down, std::string_view meter);

}  // namespace dunnage
