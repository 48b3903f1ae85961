// SPDX-License-Identifier: MIT
#include "compare/clash.h"

#include <algorithm>
#include <set>

namespace dunnage {

namespace {

std::set<std::string> codes_pulled(const Planned& p) {
  std::set<std::string> out;
  for (const int u : p.plan->pulled()) out.insert(p.catalogue->units[static_cast<std::size_t>(u)].code);
  return out;
}

/// What the unit does for its show: the words that demands get from it, its pieces as item codes.
std::set<std::string> services(const Planned& p, int unit) {
  std::set<std::string> out;
  for (const Demand& demand : p.plan->demands)
    for (const Demand::By& by : demand.by)
      if (by.unit == unit) out.insert(demand.what);
  return out;
}

bool offers(const Catalogue& c, int unit, const std::string& word) {
  const Case& box = c.case_at(unit);
  const int index = c.units[static_cast<std::size_t>(unit)].case_index;
  const auto& cases = c.cases_serving(word);
  if (std::find(cases.begin(), cases.end(), index) != cases.end()) return true;
  return std::any_of(box.holds.begin(), box.holds.end(), [&](const Content& content) {
    const auto& items = c.items_serving(word);
    return std::find(items.begin(), items.end(), c.item_index(content.item.value)) != items.end();
  });
}

/// Units of one case hold the same; another case will do when it offers all that the unit was asked for.
bool would_do(const Planned& p, int unit, int other) {
  const Catalogue& c = *p.catalogue;
  if (c.units[static_cast<std::size_t>(other)].case_index == c.units[static_cast<std::size_t>(unit)].case_index)
    return true;
  const auto wanted = services(p, unit);
  return !wanted.empty() &&
         std::all_of(wanted.begin(), wanted.end(), [&](const std::string& word) { return offers(c, other, word); });
}

Date date_of(long days) {
  // Days to a civil date, by H. Hinnant's public domain algorithm "days_from_civil" turned round.
  days += 719468;
  const long era = (days >= 0 ? days : days - 146096) / 146097;
  const long of_era = days - era * 146097;
  const long year_of_era = (of_era - of_era / 1460 + of_era / 36524 - of_era / 146096) / 365;
  const long of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const long month = (5 * of_year + 2) / 153;
  Date out;
  out.day = static_cast<int>(of_year - (153 * month + 2) / 5 + 1);
  out.month = static_cast<int>(month < 10 ? month + 3 : month - 9);
  out.year = static_cast<int>(year_of_era + era * 400 + (out.month <= 2 ? 1 : 0));
  return out;
}

/// A unit for the second show that no show at those days has; each is offered once.
std::string replacement(const Planned& second, int unit, const std::set<std::string>& busy,
                        std::set<std::string>& offered) {
  const Catalogue& c = *second.catalogue;
  for (int other = 0; other < static_cast<int>(c.units.size()); ++other) {
    const CaseUnit& candidate = c.units[static_cast<std::size_t>(other)];
    if (candidate.out_of_service || busy.count(candidate.code) || offered.count(candidate.code)) continue;
    if (!would_do(second, unit, other)) continue;
    offered.insert(candidate.code);
    return candidate.code;
  }
  return {};
}

}  // namespace

std::pair<long, long> days_of(const Show& show) {
  const long day = show.date->value.days();
  return {day - show.travel_days - show.preparation_days, day + show.travel_days};
}

std::vector<Clash> clashes(const std::vector<Planned>& shows) {
  std::vector<Clash> out;
  std::vector<std::set<std::string>> codes;
  for (const Planned& show : shows) codes.push_back(codes_pulled(show));
  for (std::size_t a = 0; a < shows.size(); ++a)
    for (std::size_t b = a + 1; b < shows.size(); ++b) {
      const auto [first_a, last_a] = days_of(*shows[a].show);
      const auto [first_b, last_b] = days_of(*shows[b].show);
      const long from = std::max(first_a, first_b), to = std::min(last_a, last_b);
      if (from > to) continue;
      std::set<std::string> busy, offered;
      for (std::size_t s = 0; s < shows.size(); ++s)  // whoever has it on any of those days
        if (const auto [first, last] = days_of(*shows[s].show); first <= last_b && last >= first_b)
          busy.insert(codes[s].begin(), codes[s].end());
      for (const int u : shows[b].plan->pulled()) {
        const CaseUnit& unit = shows[b].catalogue->units[static_cast<std::size_t>(u)];
        if (codes[a].count(unit.code) == 0) continue;
        out.push_back({unit.code, shows[b].catalogue->case_at(u).name.value, a, b, date_of(from), date_of(to),
                       replacement(shows[b], u, busy, offered)});
      }
    }
  return out;
}

}  // namespace dunnage
