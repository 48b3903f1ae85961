// SPDX-License-Identifier: MIT
// What goes, why, and what it serves. One row a unit of the catalogue.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/sentence.h"
#include "model/catalogue.h"
#include "model/loading.h"
#include "model/show.h"

namespace dunnage {

enum class Why { rule, per, structure, ballast, need, spare, demand, bring };

/// One reason that a unit goes, as a sentence's tail: "because " + text.
struct Reason {
  Why why = Why::rule;
  Sentence text;
  Place place;
  std::string asks = {};  ///< of a demand: what is asked for
};

struct PlanRow {
  int unit = 0;
  bool goes = false;
  std::vector<Reason> reasons;  ///< why it goes
  std::vector<Reason> stays;    ///< why not: left, out of service, spare not wanted, or nothing asks
  bool spare = false;
  Mass mass;  ///< as it travels
  bool mass_known = false, estimated = false;
  std::string home;
  std::string place;    ///< place code at the show, or empty
  std::string team;     ///< empty: no team
  std::string vehicle;  ///< empty: none
};

/// How owned pieces serve a demand: one for each; laid end to end until they cover a length; or measured off
/// what is used up, whole metres or litres.
enum class Way { each, laid, measured };

/// One thing the show asks for.
struct Demand {
  std::string what;  ///< a serves word, item or case code
  int count = 0;
  Way way = Way::each;
  Maybe<Length> length;  ///< each must reach this far; laid pieces must cover it
  Maybe<Mass> bears;     ///< laid pieces must be rated for it
  std::string unit;      ///< of what is measured: "m" or "l"; `count` counts these then
  Sentence because;      ///< who asks: "input 4 (Ana, voice)"
  Sentence reason;       ///< as typed with a want; may be empty
  Place place;
  int from_site = 0;  ///< lowered by what the site has
  int covered = 0;
  struct By {
    int unit;
    int item;
    int count;
  };  ///< item -1: the case itself serves
  std::vector<By> by;
};

struct Shortage {
  std::string what;
  std::string unit;      ///< "m" or "l" where metres or litres are short, else empty
  Maybe<Length> length;  ///< that each should have reached
  int wanted = 0, missing = 0;
  Sentence because;
  Sentence nearest;           ///< what is owned that would come nearest, or empty
  bool left_at_home = false;  ///< the show leaves some of it
  Place place;
};

/// So much of what is short: "3", or "62.5 gal" and "40 ft" of what is measured. Rounded up.
std::string amount_words(const Shortage& shortage, int count, UnitSystem units);

struct CoverReport {
  Mass mass;            ///< of the units sent only to cover demands, as far as it is known
  bool proved = false;  ///< nothing that covers as much is less, by mass or, `by_units`, in number
  Mass bound;           ///< nothing that covers as much, with as few units that are not weighed, can be lighter
  long nodes = 0;
  int units = 0;             ///< that were sent only to cover demands
  int unweighed = 0;         ///< of these, whose mass is not known
  int unweighed_left = 0;    ///< that could have had a part, and whose mass is not known
  bool by_units = false;     ///< the fewest units, and of these the lightest
  int units_bound = 0;       ///< no fewer can cover as much
  bool short_proved = true;  ///< no cover leaves less missing
};

/// Ballast of one use, resolved to units. leg -1: placed by `at`.
struct BallastPiece {
  int use;
  int leg;
  std::pair<Length, Length> at;
  int unit;
  Place place;
};

/// What one input needs that was not typed.
struct InputNeeds {
  double pad = 0;        ///< dB by which its level is more than the console takes; 0: none
  bool phantom = false;  ///< the pickup that serves it needs phantom power
};

struct Plan {
  std::vector<PlanRow> rows;  ///< by unit index
  std::vector<Demand> demands;
  std::vector<Shortage> shortages;
  CoverReport cover;
  std::vector<BallastPiece> ballast;
  std::vector<InputNeeds> inputs;    ///< by index of the show's inputs
  std::vector<Sentence> remarks;     ///< overrides that bite: "left X, which Y needs"
  std::optional<Loading> loading{};  ///< what stands where in the vehicles, as judged; absent: nobody planned it
  std::vector<int> pulled() const;   ///< unit indices that go, in order
};

}  // namespace dunnage
