// SPDX-License-Identifier: MIT
// Rule stop-person: a role is named, and somebody bears it.
#include "check/stop_role.h"

#include <algorithm>

#include "check/say.h"
#include "check/standing_site.h"

namespace dunnage {

void check_stop_person(const Catalogue&, const Show& show, const Plan&, Findings& findings) {
  Finding f = begin_finding(RuleName::stop_person, {}, said("show"), show.show_place);
  f.sources = {said("common practice, no source")};
  f.caution = said("Anyone may call a stop. Only the person named calls the restart.");
  if (show.stop_person) {
    const std::string& role = show.stop_person->value;
    f.place = show.stop_person->place;
    f.outcome = Outcome::within;
    f.says = said("{} may stop the show, and alone restarts it.", role);
    const auto bears = [&](const Contact& contact) { return contact.role.value == role; };
    if (std::none_of(show.site.contacts.begin(), show.site.contacts.end(), bears))
      assume(f, said("no contact of that role is listed"));
  } else if (is_indoor(show)) {
    say_does_not_apply(f, setting_place(show), said("Indoors: no stop for weather. Name one all the same."));
  } else {
    say_not_given(f, {said("who may stop the show (stop_person)")}, said("Name somebody before doors."));
  }
  findings.list.push_back(f);
}

}  // namespace dunnage
