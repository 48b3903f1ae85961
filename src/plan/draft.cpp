// SPDX-License-Identifier: MIT
#include "plan/draft.h"

namespace dunnage {

namespace {

bool same(const Reason& a, const Reason& b) { return a.why == b.why && a.text == b.text && a.place == b.place; }

void add_once(std::vector<Reason>& list, Reason reason) {
  for (const Reason& r : list)
    if (same(r, reason)) return;
  list.push_back(std::move(reason));
}

}  // namespace

Draft::Draft(const Catalogue& c, const Show& s)
    : catalogue(c), show(s), rows(c.units.size()), taken_(c.units.size(), false), carried_(c.units.size(), false) {
  for (std::size_t u = 0; u < rows.size(); ++u) {
    rows[u].unit = static_cast<int>(u);
    const auto& out = c.units[u].out_of_service;
    if (out) rows[u].stays.push_back({Why::rule, said("it is out of service: {}", out->value), out->place});
  }
  for (const Override& leave : s.leave) {
    const int one = c.unit_index(leave.code.value);
    const int box = c.case_index(leave.code.value);
    const auto [first, last] = box >= 0 ? c.units_of[static_cast<std::size_t>(box)] : std::pair(one, one + 1);
    if (first < 0) continue;
    int left = leave.count > 0 ? leave.count : last - first;
    for (int u = last - 1; u >= first && left > 0; --u) {
      if (!available(u)) continue;
      rows[static_cast<std::size_t>(u)].stays.push_back(
          {Why::bring, said("the show leaves it: {}", leave.because), leave.place});
      --left;
    }
  }
}

bool Draft::available(int unit) const { return rows[static_cast<std::size_t>(unit)].stays.empty(); }

bool Draft::left_by_show(int unit) const {
  const auto& stays = rows[static_cast<std::size_t>(unit)].stays;
  return !stays.empty() && stays.front().why == Why::bring;
}

bool Draft::leaves_some(int case_index) const {
  const auto [first, last] = catalogue.units_of[static_cast<std::size_t>(case_index)];
  for (int u = first; u < last; ++u)
    if (left_by_show(u)) return true;
  return false;
}

void Draft::send(int unit, Reason reason) {
  send_for_cover(unit);
  add_once(rows[static_cast<std::size_t>(unit)].reasons, std::move(reason));
}

void Draft::send_for_cover(int unit) {
  PlanRow& row = rows[static_cast<std::size_t>(unit)];
  if (!row.goes) uncalled_.push_back(unit);
  row.goes = true;
}

void Draft::take_unit(int unit, const Reason& reason) {
  taken_[static_cast<std::size_t>(unit)] = true;
  send(unit, reason);
}

std::vector<int> Draft::take(int case_index, int count, const Reason& reason, int not_for) {
  const auto [first, last] = catalogue.units_of[static_cast<std::size_t>(case_index)];
  std::vector<int> out;
  for (const bool going : {true, false})
    for (int u = first; u < last && static_cast<int>(out.size()) < count; ++u) {
      if (u == not_for || taken(u) || spare(u) || goes(u) != going || !available(u)) continue;
      take_unit(u, reason);
      out.push_back(u);
    }
  const int missing = count - static_cast<int>(out.size());
  if (missing > 0)
    run_short(catalogue.kit.cases[static_cast<std::size_t>(case_index)].code.value, count, missing, reason);
  return out;
}

void Draft::send_in_all(int case_index, int count, const Reason& reason) {
  const auto [first, last] = catalogue.units_of[static_cast<std::size_t>(case_index)];
  int have = 0;
  for (int u = first; u < last && have < count; ++u)
    if (goes(u) && !spare(u)) {
      send(u, reason);
      ++have;
    }
  for (int u = first; u < last && have < count; ++u)
    if (!goes(u) && available(u)) {
      send(u, reason);
      ++have;
    }
  if (have < count)
    run_short(catalogue.kit.cases[static_cast<std::size_t>(case_index)].code.value, count, count - have, reason);
}

void Draft::run_short(const std::string& what, int wanted, int missing, const Reason& reason) {
  Shortage s;
  s.what = what;
  s.wanted = wanted;
  s.missing = missing;
  s.because = reason.text;
  s.place = reason.place;
  if (const int box = catalogue.case_index(what); box >= 0) {
    s.nearest = not_available(*this, box);
    s.left_at_home = leaves_some(box);
  }
  shortages.push_back(std::move(s));
}

void Draft::call_need(int unit, const Need& need) {
  const Case& needing = catalogue.case_at(unit);
  const std::string& code = catalogue.units[static_cast<std::size_t>(unit)].code;
  const int box = catalogue.case_index(need.code.value);
  if (box == catalogue.units[static_cast<std::size_t>(unit)].case_index) return;  // itself: it is there
  if (need.each > 0) {
    const Reason reason{Why::need, said("{} needs it", code), need.place};
    if (box >= 0) {
      take(box, need.each, reason);
    } else {
      Demand d;
      d.what = need.code.value;
      d.count = need.each;
      d.because = said("{} needs it", code);
      d.place = need.place;
      demands.push_back(std::move(d));
    }
  }
  if (need.once > 0 && !once_called_[catalogue.units[static_cast<std::size_t>(unit)].case_index]) {
    const Reason reason{Why::need, said("{} needs it", needing.code.value), need.place};
    if (box >= 0) {
      send_in_all(box, need.once, reason);
    } else {
      Demand d;
      d.what = need.code.value;
      d.count = need.once;
      d.because = said("{} needs it", needing.code.value);
      d.place = need.place;
      demands.push_back(std::move(d));
    }
  }
}

void Draft::call_needs() {
  for (; called_ < uncalled_.size(); ++called_) {
    const int unit = uncalled_[called_];
    const Case& box = catalogue.case_at(unit);
    for (const Need& need : box.needs) call_need(unit, need);
    once_called_[catalogue.units[static_cast<std::size_t>(unit)].case_index] = true;
  }
}

Sentence not_available(const Draft& draft, int case_index) {
  const auto [first, last] = draft.catalogue.units_of[static_cast<std::size_t>(case_index)];
  std::vector<Sentence> out;
  for (int u = first; u < last; ++u) {
    const PlanRow& row = draft.rows[static_cast<std::size_t>(u)];
    if (row.stays.empty()) continue;
    out.push_back(
        said("{} stays: {}", draft.catalogue.units[static_cast<std::size_t>(u)].code, row.stays.front().text));
  }
  return strung(out, "; ");
}

}  // namespace dunnage
