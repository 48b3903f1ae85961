// SPDX-License-Identifier: MIT
// Rule inspection: dates that run out before the show.
#include "check/inspections.h"

#include <fmt/format.h>

#include "check/say.h"

namespace dunnage {

void check_inspections(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (std::size_t i = 0; i < catalogue.kit.cases.size(); ++i) {
    const Case& box = catalogue.kit.cases[i];
    if (!box.inspect_by) continue;
    int going = 0;
    for (int unit = catalogue.units_of[i].first; unit < catalogue.units_of[i].second; ++unit)
      going += goes(plan, unit);
    if (going == 0) continue;
    Finding f = begin_finding("inspection", box.code.value, box.inspect_by->place);
    f.source = "the date in the kit";
    f.caution = "A date is no inspection: look at it as well.";
    if (!show.date) {
      say_not_given(f, {"the show's date"}, "Type it under [show].");
    } else {
      const bool late = box.inspect_by->value < show.date->value;
      f.outcome = late ? Outcome::over : Outcome::within;
      f.says = fmt::format("To be inspected by {}; the show is on {}{}", box.inspect_by->value.iso(),
                           show.date->value.iso(), late ? ": have it inspected, or leave it at home." : ".");
    }
    findings.list.push_back(f);
  }
}

}  // namespace dunnage
