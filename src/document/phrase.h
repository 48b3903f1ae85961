// SPDX-License-Identifier: MIT
// How things are said on every sheet, once: masses, handling, places, dates. Two sheets that name one thing say
// the same words.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "document/context.h"

namespace dunnage {

/// `one` where n is 1, else `many`; {n} is filled. Keys of words.
std::string count_words(const Words& words, const std::string& one, const std::string& many, long n);

/// "83 lb", "83 lb est.", or "not weighed". A load: rounded up.
std::string mass_words(const Words& words, Mass mass, bool known, bool estimated, UnitSystem units);
std::string mass_words(const Words& words, const PlanRow& row, UnitSystem units);

/// Adds masses as they are printed, so that a total on paper is the sum of the lines above it.
class PrintedSum {
 public:
  explicit PrintedSum(UnitSystem units) : units_(units) {}
  void add(Mass mass, bool known, bool estimated);
  void add(const PlanRow& row) { add(row.mass, row.mass_known, row.estimated); }
  /// "412 lb", "412 lb est." where a part is estimated, "412 lb + 3 not weighed".
  std::string text(const Words& words) const;
  /// The sum printed, in its unit.
  double value() const { return value_; }
  int unknown() const { return unknown_; }
  int estimated() const { return estimated_; }

 private:
  UnitSystem units_;
  double value_ = 0;
  int unknown_ = 0, estimated_ = 0;
};

/// Whether nobody may carry it and it has no wheels of its own.
bool goes_by_aid(const Handling& handling);
/// "roll", "roll, 2 on a ramp", "carry", or "by hand truck" where nobody may carry it.
std::string move_words(const Words& words, const Handling& handling);
/// "1 person", "3 people", the house's aid, or "weigh first".
std::string lift_words(const Words& words, const Handling& handling);
/// What stands on a leg: "2 x BAG", or that nothing does.
std::string stands_words(const Words& words, const LegRow& leg);
/// The handling of one unit; nothing known where the findings do not have it.
Handling handling_of(const std::vector<Handling>& by_unit, int unit);

/// A name in the language printed, where the kit gives one.
template <class Named>
std::string name_in(const Named& thing, const std::string& language) {
  const auto found = thing.names.find(language);
  return found == thing.names.end() ? thing.name.value : found->second.value;
}
/// "3 of 8", or empty where there is but one.
std::string of_words(const Context& context, int unit);
/// The name of a place at the show up to its first comma, short enough for a tag; its code where it has none. The crew
/// sheet has the whole name.
std::string place_words(const Show& show, const std::string& code);
/// A serves word as it is; an item, case or structure as "Name (CODE)".
std::string what_words(const Catalogue& catalogue, const std::string& what, const std::string& language);
/// The vehicle's name, or its code.
std::string vehicle_words(const Catalogue& catalogue, const std::string& code);
/// "Sat 2027-06-19".
std::string date_words(const Words& words, const Date& date);
/// A figure of any measure with its unit; empty where there is none. Loads up, capacities down.
std::string figure_words(const Figure& figure, const Context& context, Rounding way);
/// "gust 16 mph, mean wind 9 mph, 71 °F; regional office, 18:00", or that none is given.
std::string forecast_words(const Context& context);
/// "within limit", "over limit", "not checked", "does not apply". Never "pass" or "safe".
const std::string& outcome_words(const Words& words, Outcome outcome);
/// Where help is sent to, or that nobody has given an address.
std::string help_words(const Context& context);
/// "NAME, PHONE" of the first contact with that role; empty where there is none.
std::string contact_words(const Show& show, std::string_view role);
std::string contact_words(const Contact& contact);

/// A step of 1, 2 or 5 and noughts that gives an axis to `end` at most eight figures.
double round_step(double end);

/// Parts with the separator between; empty parts left out.
std::string joined(const std::vector<std::string>& parts, std::string_view separator);
/// Order of a shelf walk: digits compare as numbers, so that Rack 2 comes before Rack 10. ASCII case is ignored.
bool walks_before(std::string_view a, std::string_view b);

}  // namespace dunnage
