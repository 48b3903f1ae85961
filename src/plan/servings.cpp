// SPDX-License-Identifier: MIT
#include "plan/servings.h"

#include <algorithm>
#include <set>
#include <tuple>

namespace dunnage {

namespace {

/// More joints than this in one run is bad practice (common practice, no source).
constexpr int most_joined = 4;
/// More sets of joined pieces than this are a chain: the model then grows with the lengths, not with their sets.
constexpr std::size_t most_named = 300;

const Item& item_at(const Catalogue& c, int i) { return c.kit.items[static_cast<std::size_t>(i)]; }

bool reaches(Length sum, Length reach) { return sum.si() >= reach.si() - 1e-9; }

/// Grows sets of items (longest first) that join in the same way until they reach; a set that would reach
/// without its last piece is never made, since growth stops at the first that reaches.
class Joiner {
 public:
  Joiner(const Catalogue& c, int joint, const std::vector<int>& items, Length reach)
      : c_(c), joint_(joint), items_(items), reach_(reach) {}

  /// The smallest sets that reach; empty-handed where they are too many.
  bool all(std::vector<Option>& out) {
    std::vector<int> set;
    grow(0, set, Length());
    if (sets_.size() > most_named) return false;
    out.insert(out.end(), sets_.begin(), sets_.end());
    return true;
  }

 private:
  void grow(std::size_t from, std::vector<int>& set, Length sum) {
    if (sets_.size() > most_named) return;
    if (set.size() > 1 && reaches(sum, reach_)) {
      keep(set, sum);
      return;
    }
    if (static_cast<int>(set.size()) == most_joined || reaches(sum, reach_)) return;
    for (std::size_t i = from; i < items_.size(); ++i) {
      const Length piece = item_at(c_, items_[i]).length->value;
      if (!reaches(sum + (most_joined - static_cast<int>(set.size())) * piece, reach_)) return;  // nor any shorter
      set.push_back(items_[i]);
      grow(i, set, sum + piece);
      set.pop_back();
    }
  }

  void keep(const std::vector<int>& set, Length sum) {
    Option option;
    option.waste = sum - reach_;
    for (const int i : set) {
      if (!option.pieces.empty() && option.pieces.back().first == i)
        ++option.pieces.back().second;
      else
        option.pieces.emplace_back(i, 1);
    }
    if (joint_ >= 0) option.pieces.emplace_back(joint_, static_cast<int>(set.size()) - 1);
    sets_.push_back(std::move(option));
  }
  const Catalogue& c_;
  int joint_;
  const std::vector<int>& items_;
  Length reach_;
  std::vector<Option> sets_;
};

/// Items too short by themselves that join in one way, the longest first.
std::vector<int> joined_alike(const Catalogue& c, const std::vector<int>& serving, const std::string& way,
                              Length reach) {
  std::vector<int> alike;
  for (const int i : serving) {
    const Item& item = item_at(c, i);
    if (item.length && item.joins && item.joins->value == way && item.length->value < reach) alike.push_back(i);
  }
  std::sort(alike.begin(), alike.end(), [&](int a, int b) {
    return std::tuple(-item_at(c, a).length->value.si(), item_at(c, a).code.value) <
           std::tuple(-item_at(c, b).length->value.si(), item_at(c, b).code.value);
  });
  return alike;
}

void add_joined(const Catalogue& c, const std::vector<int>& serving, Length reach, Servings& out) {
  std::set<std::string> ways;
  for (const int i : serving)
    if (const Item& item = item_at(c, i); item.length && item.joins) ways.insert(item.joins->value);
  for (const std::string& way : ways) {
    const std::vector<int> alike = joined_alike(c, serving, way, reach);
    const int joint = way == "itself" ? -1 : c.item_index(way);
    if (alike.empty() || (way != "itself" && joint < 0)) continue;
    if (Joiner(c, joint, alike, reach).all(out.options)) continue;
    Chain chain;
    for (const int i : alike) chain.kinds.push_back({i, -1, item_at(c, i).length->value});
    chain.most = most_joined;
    chain.joint = joint;
    out.chains.push_back(std::move(chain));
  }
}

int count(const Option& o) {
  int n = 0;
  for (const auto& unit : o.units) n += unit.second;
  for (const auto& piece : o.pieces) n += piece.second;
  return n;
}

std::string key(const Catalogue& c, const Option& o) {
  std::string out;
  for (const auto& unit : o.units) out += c.kit.cases[static_cast<std::size_t>(unit.first)].code.value + " ";
  for (const auto& piece : o.pieces) out += item_at(c, piece.first).code.value + " ";
  return out;
}

Servings laid(const Catalogue& c, const Asked& asked) {
  Chain chain;
  auto bears = [&](const Maybe<Mass>& rating) {
    return !asked.bears || (rating && rating->value >= asked.bears->value);
  };
  for (const int i : c.items_serving(asked.what))
    if (const Item& item = item_at(c, i); item.length && bears(item.rating))
      chain.kinds.push_back({i, -1, item.length->value});
  for (const int k : c.cases_serving(asked.what))
    if (const Case& box = c.kit.cases[static_cast<std::size_t>(k)]; box.length && !box.spare_for && bears(box.rating))
      chain.kinds.push_back({-1, k, box.length->value});
  if (chain.kinds.empty()) return {};
  return {{}, {chain}};
}

Servings measured(const Catalogue& c, const Asked& asked) {
  Servings out;
  for (const int i : c.items_serving(asked.what)) {
    const Item& item = item_at(c, i);
    if (asked.unit == "l" ? item.each_volume.has_value() : item.each.has_value())
      out.options.push_back({{}, {{i, 1}}, {}});
  }
  return out;
}

Servings single_or_joined(const Catalogue& c, const Asked& asked) {
  Servings out;
  auto serves = [&](const Maybe<Length>& own) {
    return !asked.length || (own && reaches(own->value, asked.length->value));
  };
  auto waste = [&](const Maybe<Length>& own) {
    return asked.length && own ? own->value - asked.length->value : Length();
  };
  for (const int i : c.items_serving(asked.what))
    if (serves(item_at(c, i).length)) out.options.push_back({{}, {{i, 1}}, waste(item_at(c, i).length)});
  for (const int k : c.cases_serving(asked.what)) {
    const Case& box = c.kit.cases[static_cast<std::size_t>(k)];
    if (!box.spare_for && serves(box.length)) out.options.push_back({{{k, 1}}, {}, waste(box.length)});
  }
  if (asked.length) add_joined(c, c.items_serving(asked.what), asked.length->value, out);
  return out;
}

}  // namespace

Servings servings_of(const Catalogue& catalogue, const Asked& asked) {
  Servings out = asked.way == Way::laid       ? laid(catalogue, asked)
                 : asked.way == Way::measured ? measured(catalogue, asked)
                                              : single_or_joined(catalogue, asked);
  std::sort(out.options.begin(), out.options.end(), [&](const Option& a, const Option& b) {
    return std::tuple(a.waste.si(), count(a), key(catalogue, a)) <
           std::tuple(b.waste.si(), count(b), key(catalogue, b));
  });
  return out;
}

double measure_left(const Item& item, const Content& content) {
  if (item.each_volume) {
    const Volume full = item.each_volume->value * content.count;
    return steps_down((content.left_volume ? content.left_volume->value : full) / unit::litre);
  }
  if (!item.each) return 0;
  const Length full = item.each->value * content.count;
  return steps_down((content.left ? content.left->value : full) / unit::metre);
}

}  // namespace dunnage
