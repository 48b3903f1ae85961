// SPDX-License-Identifier: MIT
// Rule tower-load: load on the head against the maker's rating.
#include "check/tower_load.h"

#include <fmt/format.h>

#include "check/say.h"
#include "check/tower_site.h"

namespace dunnage {
namespace {

Finding finding_of(const Catalogue& c, const Show& show, const TowerSite& site) {
  const UnitSystem units = c.kit.house.units;
  const Structure& s = *site.structure;
  Finding f = begin_finding("tower-load", site.name, show.uses[static_cast<std::size_t>(site.use)].place);
  f.source = "maker's rating";
  f.caution = "Cable and fittings count as load. Never above people without the venue's consent.";
  std::vector<std::string> missing = site.missing_load;
  if (!s.rated_load) missing.push_back("its rated load");
  if (!missing.empty()) {
    say_not_given(f, missing);
    return f;
  }
  f.measured = site.carried;
  f.limit = s.rated_load->value;
  const bool heavy = site.carried > s.rated_load->value * (1 + 1e-9);
  const bool high = s.rated_height && site.highest && *site.highest > s.rated_height->value * (1 + 1e-9);
  f.outcome = heavy || high ? Outcome::over : Outcome::within;
  f.says = fmt::format("Carries {} of {} rated.", print(site.carried, units, Rounding::up).text(),
                       print(s.rated_load->value, units, Rounding::down).text());
  if (high)
    f.says += fmt::format(" It stands above its rated height of {}.",
                          print(s.rated_height->value, units, Rounding::down).text());
  f.assumption = "only what the show lists is counted";
  return f;
}

}  // namespace

void check_tower_load(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  for (const TowerSite& site : tower_sites(catalogue, show, plan)) {
    const Use& use = show.uses[static_cast<std::size_t>(site.use)];
    if (use.carries.empty() && use.hung.empty()) continue;
    findings.list.push_back(finding_of(catalogue, show, site));
  }
}

}  // namespace dunnage
