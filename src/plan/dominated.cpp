// SPDX-License-Identifier: MIT
#include "plan/dominated.h"

#include <algorithm>
#include <string>
#include <tuple>

namespace dunnage {

namespace {

/// What a candidate brings of one item, by the family of things that serve alike.
struct Offer {
  int family;
  double length;
  int item;
  double count, measure;
};
using Offers = std::vector<Offer>;  // by family, the longest first

std::set<int> counted_items(const Build& b) {
  std::set<int> out;
  for (const DemandGroup& group : b.cover.groups)
    for (const Option& option : group.options)
      for (const auto& piece : option.pieces) out.insert(piece.first);
  for (const DemandGroup& group : b.cover.groups)
    for (const Chain& chain : group.chains) {
      for (const Chain::Kind& kind : chain.kinds)
        if (kind.item >= 0) out.insert(kind.item);
      if (chain.joint >= 0) out.insert(chain.joint);
    }
  return out;
}

/// Items of one family serve the same words in the same way and join alike, so that a longer one can stand in for a
/// shorter. What is laid, measured, or joins others has no family but itself.
std::map<int, int> families(const Build& b, const std::set<int>& items) {
  const Catalogue& c = b.draft.catalogue;
  std::map<int, std::string> mark;
  for (const int i : items) {
    const Item& item = c.kit.items[static_cast<std::size_t>(i)];
    mark[i] = item.joins ? "joins " + item.joins->value + ";" : ";";
  }
  std::set<std::pair<std::string, Way>> seen;
  for (const DemandGroup& group : b.cover.groups) {
    if (!seen.insert({group.kind.what, group.kind.way}).second) continue;
    for (const int i : c.items_serving(group.kind.what)) {
      if (mark.count(i) == 0) continue;
      mark[i] += group.kind.what + ";";
      if (group.kind.way != Way::each) mark[i] += "only " + std::to_string(i) + ";";
    }
  }
  for (const int i : items)
    if (const Item& item = c.kit.items[static_cast<std::size_t>(i)]; item.joins)
      if (const int joint = c.item_index(item.joins->value); mark.count(joint))
        mark[joint] += "only " + std::to_string(joint) + ";";
  std::map<std::string, int> number;
  std::map<int, int> out;
  for (const auto& [item, text] : mark) out[item] = number.emplace(text, static_cast<int>(number.size())).first->second;
  return out;
}

std::set<int> whole_cases(const Build& b) {
  const Catalogue& c = b.draft.catalogue;
  std::set<int> out;
  for (const DemandGroup& group : b.cover.groups)
    for (const Option& option : group.options)
      for (const auto& unit : option.units) out.insert(unit.first);
  for (const DemandGroup& group : b.cover.groups)
    for (const Chain& chain : group.chains)
      for (const Chain::Kind& kind : chain.kinds)
        if (kind.item < 0) out.insert(kind.case_index);
  for (const Candidate& candidate : b.candidates)
    for (const Need& need : c.kit.cases[static_cast<std::size_t>(candidate.case_index)].needs)
      if (const int k = c.case_index(need.code.value); k >= 0) out.insert(k);
  return out;
}

/// By case. A case that holds one item twice has two offers of it, which adds up all the same.
std::map<int, Offers> offers(const Build& b) {
  const std::set<int> items = counted_items(b);
  const std::map<int, int> family = families(b, items);
  std::map<int, Offers> out;
  for (const int item : items) {
    const auto at = b.holders.find(item);
    if (at == b.holders.end()) continue;
    const auto& length = b.draft.catalogue.kit.items[static_cast<std::size_t>(item)].length;
    for (const Holder& holder : at->second)
      out[holder.case_index].push_back({family.at(item), length ? length->value.si() : 0.0, item,
                                        static_cast<double>(holder.count), holder.measure});
  }
  for (auto& entry : out)
    std::sort(entry.second.begin(), entry.second.end(), [](const Offer& x, const Offer& y) {
      return std::tuple(x.family, -x.length, x.item) < std::tuple(y.family, -y.length, y.item);
    });
  return out;
}

/// For each offer of `less`, as many pieces of its family at least as long (of the very item where `same_items`).
bool at_least(const Offers& more, const Offers& less, bool same_items) {
  double needed = 0, measure = 0;
  for (std::size_t i = 0; i < less.size(); ++i) {
    const Offer& wanted = less[i];
    const bool goes_on =
        i > 0 && less[i - 1].family == wanted.family && (!same_items || less[i - 1].item == wanted.item);
    needed = (goes_on ? needed : 0) + wanted.count;
    measure = (goes_on ? measure : 0) + wanted.measure;
    double have = 0, have_measure = 0;
    for (const Offer& offer : more)
      if (offer.family == wanted.family && (same_items ? offer.item == wanted.item : offer.length >= wanted.length)) {
        have += offer.count;
        have_measure += offer.measure;
      }
    if (have < needed || have_measure < measure) return false;
  }
  return true;
}

/// Cases that offer anything of a family.
std::map<int, std::vector<int>> cases_by_family(const std::map<int, Offers>& offered) {
  std::map<int, std::vector<int>> out;
  for (const auto& [k, list] : offered)
    for (const Offer& offer : list) {
      auto& cases = out[offer.family];
      if (cases.empty() || cases.back() != k) cases.push_back(k);
    }
  return out;
}

}  // namespace

std::vector<int> dominated(const Build& b, const std::vector<double>& known, const std::vector<double>& cost) {
  std::vector<int> out;
  const Catalogue& c = b.draft.catalogue;
  const auto offered = offers(b);
  const auto by_family = cases_by_family(offered);
  const std::set<int> whole = whole_cases(b);
  auto column = [&](std::size_t i) { return static_cast<std::size_t>(b.candidates[i].column); };
  for (std::size_t i = 0; i < b.candidates.size(); ++i) {
    const Candidate& worse = b.candidates[i];
    if (c.kit.cases[static_cast<std::size_t>(worse.case_index)].spare_for) continue;
    const auto mine = offered.find(worse.case_index);
    if (whole.count(worse.case_index) || mine == offered.end()) continue;
    const Offer& rarest = *std::min_element(
        mine->second.begin(), mine->second.end(),
        [&](const Offer& x, const Offer& y) { return by_family.at(x.family).size() < by_family.at(y.family).size(); });
    double betters = cost[column(i)];
    for (const int k : by_family.at(rarest.family)) {
      if (betters > known[column(i)] + 0.5) break;
      const Case& box = c.kit.cases[static_cast<std::size_t>(k)];
      if (!box.needs.empty() || box.spare_for || b.by_case.count(k) == 0) continue;
      for (const std::size_t j : b.by_case.at(k)) {
        const Candidate& better = b.candidates[j];
        const bool lighter = better.burden < worse.burden, earlier = better.burden == worse.burden && j < i;
        if ((lighter || earlier) && at_least(offered.at(k), mine->second, !lighter))
          betters += cost[column(j)] * static_cast<double>(better.units.size());
      }
    }
    if (betters > known[column(i)] + 0.5) out.push_back(worse.column);
  }
  return out;
}

}  // namespace dunnage
