// SPDX-License-Identifier: MIT
// Rule lightning: how far off a storm still is when clearing must begin.
#include "check/storm_plan.h"

#include "check/say.h"
#include "check/standing_site.h"
#include "formula/lightning.h"

namespace dunnage {
namespace {

/// Storms mostly move slower; a fast one leaves the least time. Common practice, no source.
constexpr Speed assumed_storm = 50 * unit::mile_per_hour;

Sentence far(Length distance, UnitSystem units) {
  const bool us = units == UnitSystem::us;
  const std::string count = plain(steps_up(distance / (us ? unit::mile : unit::kilometre)), 0);
  return us ? said("{} miles", count) : Sentence(count + " km");
}

LightningDetail begin_detail(const Site& site) {
  LightningDetail d;
  d.shelter_by = shelter_distance;
  d.count = shelter_count;
  d.wait = wait_after_last;
  if (site.clear) d.time_to_clear = site.clear->value;
  if (site.shelter) d.shelter = site.shelter->value;
  return d;
}

void judge(Finding& f, LightningDetail& d, const Show& show, UnitSystem units) {
  const bool typed = show.forecast && show.forecast->storm;
  d.storm = typed ? show.forecast->storm->value : assumed_storm;
  d.clear_from = clearing_distance(*d.storm, *d.time_to_clear);
  f.measured = *d.time_to_clear;
  f.outcome = Outcome::within;
  f.says = said(
      "Begin to clear when lightning is {} away: all in shelter ({}) before it is {} away. Again {} minutes "
      "after the last.",
      far(*d.clear_from, units), d.shelter, far(d.shelter_by, units), plain(d.wait / unit::minute, 0));
  if (!typed) assume(f, said("a storm that moves at 50 mph (80 km/h), common practice, no source"));
}

}  // namespace

void check_lightning(const Catalogue& catalogue, const Show& show, const Plan&, Findings& findings) {
  Finding f =
      begin_finding(RuleName::lightning, {}, said("site"), show.site.place.known() ? show.site.place : show.show_place);
  f.sources = {as_is("NWS"), said("NCAA guideline 1.E as cited in 2016 (8 miles, 30 minutes)")};
  f.caution = said(
      "Thunder is heard too late for a crowd: somebody watches a lightning service. Canopies and stages are "
      "no shelter.");
  LightningDetail d = begin_detail(show.site);
  std::vector<Sentence> missing;
  if (!show.site.clear) missing.push_back(said("how long it takes to clear the site"));
  if (!show.site.shelter) missing.push_back(said("the shelter"));
  if (is_indoor(show)) {
    say_does_not_apply(f, setting_place(show), said("Indoors: in shelter already."));
  } else if (!missing.empty()) {
    say_not_given(f, missing,
                  said("Walk it, agree it with the site, and type it; until then stop at the first thunder."));
    f.detail = d;
  } else {
    judge(f, d, show, catalogue.kit.house.units);
    f.detail = d;
  }
  findings.list.push_back(f);
}

}  // namespace dunnage
