// SPDX-License-Identifier: MIT
// The list of the rooms that look across tables.
#include "read/cross_check.h"

#include "read/cross_rooms.h"

namespace dunnage {

void cross_check(const Catalogue& catalogue, const Show* show, Diagnostics& diagnostics, const Surroundings& around) {
  const References refer(catalogue, diagnostics);
  check_kit(refer, around);
  check_free_words(refer, show, around.languages);
  if (!show) return;
  check_show_words(refer, *show);
  check_facts(refer, *show);
  check_standing(refer, *show);
  check_loads(refer, *show);
}

}  // namespace dunnage
