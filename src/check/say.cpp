// SPDX-License-Identifier: MIT
// Words and counts that several rules share.
#include "check/say.h"

#include <algorithm>

namespace dunnage {
namespace {

std::string tenths_up(double value, std::string_view unit) {
  return plain(steps_up(value * 10) / 10, 1) + " " + std::string(unit);
}

bool serves(const std::vector<Text>& words, std::string_view word) {
  return std::any_of(words.begin(), words.end(), [&](const Text& one) { return one.value == word; });
}

}  // namespace

Finding begin_finding(RuleName rule, Subject subject, Sentence called, Place place) {
  Finding f;
  f.rule = rule;
  f.subject = subject;
  f.called = std::move(called);
  f.place = std::move(place);
  return f;
}

void say_not_given(Finding& finding, const std::vector<Sentence>& missing, const Sentence& next) {
  finding.outcome = Outcome::not_checked;
  finding.says = said("Not given: {}.", strung(missing, ", ")).then(next);
}

void say_does_not_apply(Finding& finding, const Place& place, Sentence says) {
  finding.outcome = Outcome::does_not_apply;
  finding.place = place;
  finding.says = std::move(says);
}

void assume(Finding& finding, Sentence assumption) { finding.assumptions.push_back(std::move(assumption)); }

std::string amps_up(Current current) { return tenths_up(current / unit::ampere, "A"); }
std::string amps_down(Current current) { return plain(steps_down(current / unit::ampere * 10) / 10, 1) + " A"; }
std::string volts_up(Voltage voltage) { return tenths_up(voltage / unit::volt, "V"); }
std::string watts_up(Power power) { return plain(steps_up(power / unit::watt), 0) + " W"; }
std::string watts_down(Power power) { return plain(steps_down(power / unit::watt), 0) + " W"; }
std::string percent_up(double share) { return tenths_up(share * 100, "%"); }

bool goes(const Plan& plan, int unit) {
  const auto at = static_cast<std::size_t>(unit);
  return at < plan.rows.size() && plan.rows[at].goes;
}

std::optional<Power> draws_of(const Catalogue& catalogue, int case_index) {
  const Case& box = catalogue.kit.cases[static_cast<std::size_t>(case_index)];
  if (box.draws) return box.draws->value;
  std::optional<Power> sum;
  for (const Content& content : box.holds)
    if (const Item* item = catalogue.item(content.item.value); item && item->draws)
      sum = sum.value_or(Power{}) + item->draws->value * content.count;
  return sum;
}

int going_that_serve(const Catalogue& catalogue, const Plan& plan, std::string_view word) {
  int count = 0;
  for (int unit = 0; unit < static_cast<int>(catalogue.units.size()); ++unit) {
    if (!goes(plan, unit)) continue;
    const Case& box = catalogue.case_at(unit);
    if (serves(box.serves, word) || box.code.value == word) ++count;
    for (const Content& content : box.holds)
      if (const Item* item = catalogue.item(content.item.value); item && serves(item->serves, word))
        count += content.count;
  }
  return count;
}

}  // namespace dunnage
