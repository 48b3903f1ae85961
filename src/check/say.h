// SPDX-License-Identifier: MIT
// How a finding begins and what every rule says alike: what was not given, and figures rounded aloud.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/quantity.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// A finding of a rule about a subject, not checked until somebody judges it.
Finding begin_finding(RuleName rule, Subject subject, Sentence called, Place place);
/// "Not given: payload, the mass of 2 pieces. Weigh it and type it." Not checked; `next`: what to do about it.
void say_not_given(Finding& finding, const std::vector<Sentence>& missing, const Sentence& next);
/// Does not apply, by the line typed at `place`.
void say_does_not_apply(Finding& finding, const Place& place, Sentence says);
/// One more assumption.
void assume(Finding& finding, Sentence assumption);

// Figures to tenths with their unit: loads round up, capacities down.
std::string amps_up(Current);
std::string amps_down(Current);
std::string volts_up(Voltage);
std::string watts_up(Power);  ///< whole watts
std::string watts_down(Power);
std::string percent_up(double share);  ///< of 1, to tenths: "2.1 %"

/// Units of the catalogue that go.
bool goes(const Plan& plan, int unit);
/// What a case draws itself, else what the things in it draw together; empty where nothing is given.
std::optional<Power> draws_of(const Catalogue& catalogue, int case_index);
/// How many of what goes serve as `word`: pieces in cases, and cases that serve by themselves.
int going_that_serve(const Catalogue& catalogue, const Plan& plan, std::string_view word);

}  // namespace dunnage
