// SPDX-License-Identifier: MIT
// The plan while it is being made: which units go so far, which are spoken for, and what is still to be asked.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// A plan in the making. Units go through send() alone, so that what a unit needs is never forgotten.
class Draft {
 public:
  Draft(const Catalogue& catalogue, const Show& show);

  /// True when the unit may go: neither out of service nor left at home.
  bool available(int unit) const;
  /// True when the show leaves it at home on purpose.
  bool left_by_show(int unit) const;
  /// True when the show leaves a unit of that case at home.
  bool leaves_some(int case_index) const;
  bool goes(int unit) const { return rows[static_cast<std::size_t>(unit)].goes; }
  /// True when a structure, ballast, or another unit has the unit for itself.
  bool taken(int unit) const { return taken_[static_cast<std::size_t>(unit)]; }
  /// True unless it is spoken for; what a structure carries may still serve, as a loudspeaker on a tower does.
  bool may_serve(int unit) const { return !taken(unit) || carried_[static_cast<std::size_t>(unit)]; }
  void carry(int unit) { carried_[static_cast<std::size_t>(unit)] = true; }
  bool spare(int unit) const { return rows[static_cast<std::size_t>(unit)].spare; }

  /// The unit goes, for one more reason.
  void send(int unit, Reason reason);
  /// The unit goes to cover demands; dealing gives it its reasons.
  void send_for_cover(int unit);
  /// Takes `count` whole units of a case for one purpose: those that go already first, then others in
  /// order. Returns the units taken; fewer than asked where the house has no more (a shortage is noted).
  std::vector<int> take(int case_index, int count, const Reason& reason, int not_for = -1);
  void take_unit(int unit, const Reason& reason);
  /// Like take, but sends so that `count` go in all, whoever has them.
  void send_in_all(int case_index, int count, const Reason& reason);
  void run_short(const std::string& what, int wanted, int missing, const Reason& reason);

  /// Calls what each unit that goes needs, until nothing is new. Cycles end: each unit calls once.
  void call_needs();

  const Catalogue& catalogue;
  const Show& show;
  std::vector<PlanRow> rows;
  std::vector<Demand> demands;  ///< of the show, then those that units need
  std::vector<Shortage> shortages;
  std::vector<Sentence> remarks;
  std::vector<BallastPiece> ballast;

 private:
  void call_need(int unit, const Need& need);
  std::vector<bool> taken_, carried_;
  std::vector<int> uncalled_;        ///< units that go, in order of going
  std::size_t called_ = 0;           ///< so many of them have called what they need
  std::map<int, bool> once_called_;  ///< by case: its `once` needs are called
};

/// Names of the units of a case that the house has but cannot bring, with the reason; or empty.
Sentence not_available(const Draft& draft, int case_index);

}  // namespace dunnage
