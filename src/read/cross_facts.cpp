// SPDX-License-Identifier: MIT
// A rule that asks for what the show does not state cannot be answered: unknown is never taken as false.
#include <set>

#include "model/facts.h"
#include "read/cross_rooms.h"

namespace dunnage {
namespace {

class FactCheck {
 public:
  FactCheck(const References& refer, const Show& show) : refer_(refer), show_(show) {}

  /// Tells, once for each fact, that the rule at `place` asks for what is not stated.
  void asks(const std::string& name, const Place& place) {
    if (!asked_.insert(name).second || fact(refer_.catalogue(), show_, name)) return;
    const FactKind* kind = fact_kind(name);
    const std::string example = kind ? std::string(kind->state_it) : name;
    refer_.diagnostics().error(place, "a rule asks for " + in_quotes(name) + ", and the show does not state it",
                               "state it in " + show_.file + ": " + example, show_.show_place,
                               "the show is described here");
  }

 private:
  const References& refer_;
  const Show& show_;
  std::set<std::string> asked_;
};

/// The fact that a count needs; empty where the show always has it.
std::string fact_of(const Per& per) {
  if (per.of == "crew" || per.of == "volunteers" || per.of == "audience") return per.of;
  return per.of == "hour" ? "hours" : "";
}

}  // namespace

void check_facts(const References& refer, const Show& show) {
  FactCheck facts(refer, show);
  for (const Case& box : refer.catalogue().kit.cases) {
    for (const ConditionTable& table : box.goes.any)
      for (const Condition& condition : table.all) facts.asks(condition.fact, condition.place);
    for (const Per& per : box.per)
      if (const std::string name = fact_of(per); !name.empty()) facts.asks(name, per.place);
  }
}

}  // namespace dunnage
