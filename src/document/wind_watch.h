// SPDX-License-Identifier: MIT
// What the person with the wind meter needs: levels, which structure first, how to hold the meter, and what
// the wind looks like without one.
#pragma once

#include <string>
#include <vector>

#include "document/wind_use.h"

namespace dunnage {

/// Structures that share their levels and the work of bringing them down. The weakest is "A".
struct WatchRow {
  std::string letter;
  std::vector<std::string> names;
  std::vector<const WindUse*> uses;
  std::optional<Speed> ready, start, down;
};

/// By the level of down, the lowest first; those without levels last.
std::vector<WatchRow> watch_rows(const std::vector<WindUse>& uses);
/// Down, start and ready of the weakest structure, the worst first; empty where none has levels.
picture::Levels watch_levels(const Context& context, const std::vector<WatchRow>& rows);
/// Columns letter, what, down, start, ready, minutes, people, first.
block::Table watch_table(const Context& context, const std::vector<WatchRow>& rows);
/// "one after another: 36 min with 6 people", or what was not given.
std::string in_all_words(const Context& context, const std::vector<WatchRow>& rows);
/// How and where the meter is held, and what the forecast says of the levels.
std::vector<std::string> meter_lines(const Context& context, const std::vector<WatchRow>& rows);
/// Columns sign, mean, gusts, then: the steps of the wind scale in which a level is reached.
block::Table sign_table(const Context& context, const std::vector<WatchRow>& rows);

}  // namespace dunnage
