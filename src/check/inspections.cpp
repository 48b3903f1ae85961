// SPDX-License-Identifier: MIT
// Rule inspection: dates that run out before the show.
#include "check/inspections.h"

#include "check/say.h"

namespace dunnage {

void check_inspections(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (std::size_t i = 0; i < catalogue.kit.cases.size(); ++i) {
    const Case& box = catalogue.kit.cases[i];
    if (!box.inspect_by) continue;
    int going = 0;
    for (int unit = catalogue.units_of[i].first; unit < catalogue.units_of[i].second; ++unit) going += goes(plan, unit);
    if (going == 0) continue;
    Finding f = begin_finding(RuleName::inspection, {Subject::Kind::box, static_cast<int>(i)}, box.code.value,
                              box.inspect_by->place);
    f.sources = {said("the date in the kit")};
    f.caution = said("A date is no inspection: look at it as well.");
    if (!show.date) {
      say_not_given(f, {said("the show's date")}, said("Type it under [show]."));
    } else {
      const bool late = box.inspect_by->value < show.date->value;
      f.outcome = late ? Outcome::over : Outcome::within;
      const std::string by = box.inspect_by->value.iso(), day = show.date->value.iso();
      f.says = late ? said("To be inspected by {}; the show is on {}: have it inspected, or leave it at home.", by, day)
                    : said("To be inspected by {}; the show is on {}.", by, day);
    }
    findings.list.push_back(f);
  }
}

}  // namespace dunnage
