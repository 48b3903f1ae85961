// SPDX-License-Identifier: MIT
#include "plan/senders.h"

#include <algorithm>

#include "plan/counts.h"

namespace dunnage {

namespace {

std::pair<int, int> units_named(const Catalogue& c, const std::string& code) {
  if (const int k = c.case_index(code); k >= 0) return c.units_of[static_cast<std::size_t>(k)];
  const int u = c.unit_index(code);
  return u < 0 ? std::pair(0, 0) : std::pair(u, u + 1);
}

/// How many units of one case its rules send, or nothing; and the reasons.
int ruled(const Draft& draft, const Case& box, std::vector<Reason>& reasons) {
  const auto why = holds(draft.catalogue, draft.show, box.goes);
  const bool conditioned = box.goes.kind == Goes::Kind::when || box.goes.kind == Goes::Kind::always;
  if (conditioned && !why) return 0;
  if (box.per.empty()) {
    if (!why) return 0;
    reasons.push_back({Why::rule, *why, box.goes.place});
    return box.count;
  }
  int total = 0;
  for (const Per& per : box.per) {
    const int n = sent(draft.catalogue, draft.show, per);
    const Sentence counted = words(draft.catalogue, draft.show, per);
    const bool also_when = conditioned && box.goes.kind == Goes::Kind::when;
    if (n > 0) reasons.push_back({Why::per, also_when ? said("{}, as {}", counted, *why) : counted, per.place});
    total += n;
  }
  return total;
}

void take_part(Draft& draft, const std::string& code, int count, const Reason& reason, bool carried = false) {
  if (const int k = draft.catalogue.case_index(code); k >= 0) {
    for (const int u : draft.take(k, count, reason))
      if (carried) draft.carry(u);
    return;
  }
  if (const int u = draft.catalogue.unit_index(code); u >= 0) {
    if (draft.available(u))
      draft.take_unit(u, reason);
    else
      draft.run_short(code, 1, 1, reason);
    if (carried) draft.carry(u);
    return;
  }
  Demand d;
  d.what = code;
  d.count = count;
  d.because = reason.text;
  d.place = reason.place;
  draft.demands.push_back(std::move(d));
}

std::vector<int> take_weights(Draft& draft, const BallastLine& line, int count, const Reason& reason) {
  const std::string& code = line.code.value;
  if (const int k = draft.catalogue.case_index(code); k >= 0) return draft.take(k, count, reason);
  const int u = draft.catalogue.unit_index(code);
  if (u < 0) return {};
  if (!draft.available(u)) {
    draft.run_short(code, 1, 1, reason);
    return {};
  }
  draft.take_unit(u, reason);
  return {u};
}

/// Legs that a line of ballast names, as indices; one of -1 for ballast placed by `at`.
std::vector<int> legs_of(const BallastLine& line, const Structure& structure) {
  if (line.at) return {-1};
  std::vector<int> out;
  for (std::size_t leg = 0; leg < structure.legs.size(); ++leg) {
    const bool named = std::any_of(line.legs.begin(), line.legs.end(),
                                   [&](const Text& t) { return t.value == structure.legs[leg].value; });
    if (line.each_leg || named) out.push_back(static_cast<int>(leg));
  }
  return out;
}

void take_ballast(Draft& draft, int use_index, const Structure& structure) {
  const Use& use = draft.show.uses[static_cast<std::size_t>(use_index)];
  for (const BallastLine& line : use.ballast) {
    const std::vector<int> legs = legs_of(line, structure);
    const Reason reason{Why::ballast, said("it is ballast of {}", use.as.value), line.place};
    const std::vector<int> units = take_weights(draft, line, line.count * static_cast<int>(legs.size()), reason);
    // Dealt round, so that what is short is short by the same on each leg.
    for (std::size_t i = 0; i < units.size(); ++i) {
      BallastPiece piece;
      piece.use = use_index;
      piece.leg = legs[i % legs.size()];
      if (line.at) piece.at = *line.at;
      piece.unit = units[i];
      piece.place = line.place;
      draft.ballast.push_back(piece);
      if (piece.leg < 0) continue;
      Sentence& why = draft.rows[static_cast<std::size_t>(piece.unit)].reasons.back().text;
      why = said("{}, leg {}", why, structure.legs[static_cast<std::size_t>(piece.leg)].value);
    }
  }
}

bool serves_as(const Catalogue& c, const Case& box, const std::string& kind) {
  const auto is_kind = [&](const Text& t) { return t.value == kind; };
  if (box.code.value == kind || std::any_of(box.serves.begin(), box.serves.end(), is_kind)) return true;
  return std::any_of(box.holds.begin(), box.holds.end(), [&](const Content& content) {
    const Item* item = c.item(content.item.value);
    return content.item.value == kind || (item && std::any_of(item->serves.begin(), item->serves.end(), is_kind));
  });
}

/// The units in use that serve as a kind.
std::vector<std::string> in_use(const Draft& draft, const std::string& kind) {
  std::vector<std::string> out;
  for (const PlanRow& row : draft.rows)
    if (row.goes && !row.spare && serves_as(draft.catalogue, draft.catalogue.case_at(row.unit), kind))
      out.push_back(draft.catalogue.units[static_cast<std::size_t>(row.unit)].code);
  return out;
}

/// "SB-1 and SB-2", "MIC-1 and 4 others".
Sentence and_others(const std::vector<std::string>& codes) {
  if (codes.size() == 1) return codes.front();
  if (codes.size() == 2) return said("{} and {}", codes.front(), codes.back());
  return said("{} and {} others", codes.front(), codes.size() - 1);
}

}  // namespace

void send_brought(Draft& draft) {
  for (const Override& bring : draft.show.bring) {
    const auto [first, last] = units_named(draft.catalogue, bring.code.value);
    const int wanted = bring.count > 0 ? bring.count : last - first;
    const Reason reason{Why::bring, said("the show brings it: {}", bring.because), bring.place};
    int have = 0;
    for (int u = first; u < last && have < wanted; ++u)
      if (draft.available(u)) {
        draft.send(u, reason);
        ++have;
      }
    if (have < wanted) draft.run_short(bring.code.value, wanted, wanted - have, reason);
  }
}

void send_ruled(Draft& draft) {
  for (std::size_t k = 0; k < draft.catalogue.kit.cases.size(); ++k) {
    const Case& box = draft.catalogue.kit.cases[k];
    std::vector<Reason> reasons;
    const int wanted = ruled(draft, box, reasons);
    if (wanted <= 0 || box.spare_for) continue;
    const auto [first, last] = draft.catalogue.units_of[k];
    int have = 0, left = 0;
    for (int u = first; u < last && have < wanted; ++u) {
      if (!draft.available(u)) {
        left += draft.left_by_show(u);
        continue;
      }
      for (const Reason& reason : reasons) draft.send(u, reason);
      ++have;
    }
    // A rule without `per` sends all there are, and is short where there are none; what the show leaves on purpose is
    // not.
    const int missing = wanted - have - left;
    if (missing > 0 && (!box.per.empty() || have + left == 0))
      draft.run_short(box.code.value, wanted, missing, reasons.front());
  }
}

void send_structures(Draft& draft) {
  for (std::size_t i = 0; i < draft.show.uses.size(); ++i) {
    const Use& use = draft.show.uses[i];
    const Structure* structure = draft.catalogue.structure(use.structure.value);
    if (!structure) continue;
    for (const Part& part : structure->made_of)
      take_part(draft, part.code.value, part.count,
                {Why::structure, said("it is part of {}", use.as.value), use.place});
    for (const Carried& carried : use.carries)
      take_part(draft, carried.code.value, carried.count,
                {Why::structure, said("{} carries it", use.as.value), carried.place}, true);
    take_ballast(draft, static_cast<int>(i), *structure);
  }
}

std::vector<SpareCall> spares_wanted(const Draft& draft) {
  std::vector<SpareCall> out;
  std::vector<std::string> served;
  for (std::size_t k = 0; k < draft.catalogue.kit.cases.size(); ++k) {
    const Case& box = draft.catalogue.kit.cases[k];
    if (!box.spare_for) continue;
    const std::vector<std::string> used = in_use(draft, box.spare_for->value);
    const int count = static_cast<int>(used.size());
    if (used.empty()) continue;
    const int wanted = box.spare_each > 0 ? (count + box.spare_each - 1) / box.spare_each : 1;
    if (box.spare_each == 0) {
      if (std::find(served.begin(), served.end(), box.spare_for->value) != served.end()) continue;
      const auto [first, last] = draft.catalogue.units_of[k];
      bool any = false;
      for (int u = first; u < last; ++u) any = any || draft.available(u);
      if (any) served.push_back(box.spare_for->value);  // else another case may stand by for the kind
    }
    out.push_back({static_cast<int>(k), wanted, and_others(used)});
  }
  return out;
}

void send_spares(Draft& draft, const std::vector<SpareCall>& wanted) {
  for (const auto& [k, count, used] : wanted) {
    const Case& box = draft.catalogue.kit.cases[static_cast<std::size_t>(k)];
    const Reason reason{Why::spare, said("it stands by for {} ({})", used, box.spare_for->value), box.spare_for->place};
    const auto [first, last] = draft.catalogue.units_of[static_cast<std::size_t>(k)];
    int have = 0;
    for (int u = first; u < last && have < count; ++u) {
      if (!draft.available(u) || (draft.goes(u) && !draft.spare(u) && draft.taken(u))) continue;
      draft.rows[static_cast<std::size_t>(u)].spare = true;
      draft.send(u, reason);
      ++have;
    }
    if (have < count) draft.run_short(box.code.value, count, count - have, reason);
  }
}

}  // namespace dunnage
