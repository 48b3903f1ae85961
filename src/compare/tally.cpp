// SPDX-License-Identifier: MIT
#include "compare/tally.h"

#include <algorithm>
#include <map>
#include <set>

#include "base/nearest.h"
#include "base/utf8.h"

namespace dunnage {

namespace {

using ByUnit = std::map<int, std::vector<const Scan*>>;

Seen seen(const Scan& scan) { return {scan.stage, scan.list, scan.time, scan.place}; }

/// The latest stage at which a unit was seen, the last list of that stage.
std::optional<Seen> last_seen(const std::vector<const Scan*>& scans) {
  const Scan* last = nullptr;
  for (const Scan* scan : scans)
    if (!last || scan->stage >= last->stage) last = scan;
  return last ? std::optional<Seen>(seen(*last)) : std::nullopt;
}

std::string pulled_by(const std::vector<const Scan*>& scans, const PlanRow& row) {
  for (const Scan* scan : scans)
    if (scan->stage == Stage::out) return scan->list;
  return row.team;
}

void find_twice(const ByUnit& by_unit, Tally& out) {
  for (const auto& [unit, scans] : by_unit)
    for (const Stage stage : {Stage::out, Stage::loaded, Stage::back}) {
      std::vector<Seen> places;
      for (const Scan* scan : scans) {
        const auto same = [&](const Seen& one) { return one.list == scan->list; };
        if (scan->stage == stage && std::none_of(places.begin(), places.end(), same)) places.push_back(seen(*scan));
      }
      if (places.size() > 1) out.twice.emplace_back(unit, std::move(places));
    }
}

/// Hands often take the next one of several alike.
void find_swapped(const Catalogue& c, Tally& out) {
  std::set<int> free(out.extra.begin(), out.extra.end());
  for (MissingUnit& one : out.missing) {
    if (one.last) continue;
    const auto alike = [&](int unit) { return &c.case_at(unit) == &c.case_at(one.unit); };
    const auto at = std::find_if(free.begin(), free.end(), alike);
    if (at == free.end()) continue;
    one.like = *at;
    free.erase(at);
  }
}

std::vector<std::string> codes_of(const Catalogue& c) {
  std::vector<std::string> out;
  for (const CaseUnit& unit : c.units) out.push_back(unit.code);
  return out;
}

/// Codes of the units of each case, by its own code in small letters.
std::map<std::string, std::vector<std::string>> units_by_case(const Catalogue& c) {
  std::map<std::string, std::vector<std::string>> out;
  for (const CaseUnit& unit : c.units)
    out[utf8::lower(c.kit.cases[static_cast<std::size_t>(unit.case_index)].code.value)].push_back(unit.code);
  return out;
}

void sort_out_unknown(const Catalogue& c, const std::vector<Scan>& scans, Tally& out) {
  const NearestOf nearest_code(codes_of(c));
  const auto by_case = units_by_case(c);
  std::set<std::string> told;
  for (const Scan& scan : scans) {
    const std::string low = utf8::lower(scan.typed);
    if (scan.unit >= 0 || !told.insert(low).second) continue;
    const auto units = by_case.find(low);
    UnknownCode unknown{scan.typed, nearest_code(scan.typed),
                        units == by_case.end() ? std::vector<std::string>() : units->second, scan.place};
    (unknown.nearest.empty() && unknown.units.empty() ? out.not_ours : out.unclear).push_back(std::move(unknown));
  }
}

}  // namespace

Tally tally(const Catalogue& c, const Plan& plan, const std::vector<Scan>& scans, const std::vector<Stage>& stages) {
  Tally out;
  out.scans = scans.size();
  for (const Stage stage : stages) out.stage = std::max(out.stage, stage);
  ByUnit by_unit;
  std::set<int> expected, present;
  for (const int unit : plan.pulled()) expected.insert(unit);
  const std::set<int> sent = expected;
  for (const Scan& scan : scans) {
    if (!scan.note.empty()) out.notes.push_back(scan);
    if (scan.unit < 0) continue;
    by_unit[scan.unit].push_back(&scan);
    if (scan.stage == out.stage)
      present.insert(scan.unit);
    else
      expected.insert(scan.unit);
  }
  out.expected.assign(expected.begin(), expected.end());
  out.present.assign(present.begin(), present.end());
  for (const int unit : expected)
    if (present.count(unit) == 0)
      out.missing.push_back(
          {unit, last_seen(by_unit[unit]), pulled_by(by_unit[unit], plan.rows[static_cast<std::size_t>(unit)]), -1});
  for (const auto& [unit, seen_here] : by_unit)
    if (sent.count(unit) == 0 && !seen_here.empty()) {
      out.extra.push_back(unit);
      out.extra_seen.push_back(*last_seen(seen_here));
    }
  find_swapped(c, out);
  find_twice(by_unit, out);
  sort_out_unknown(c, scans, out);
  return out;
}

}  // namespace dunnage
