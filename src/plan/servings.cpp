// SPDX-License-Identifier: MIT
#include "plan/servings.h"

#include <algorithm>
#include <tuple>

namespace dunnage {

namespace {

/// More joints than this in one run is bad practice (common practice, no source).
constexpr int most_joined = 4;
/// Beyond so many ways the rest only repeats longer and more wasteful ones.
constexpr std::size_t most_options = 120;

const Item& item_at(const Catalogue& c, int i) { return c.kit.items[static_cast<std::size_t>(i)]; }

/// Grows sets of items (longest first) that join in the same way until they reach; a set that would reach
/// without its last piece is never made, since growth stops at the first that reaches.
class Joiner {
 public:
  Joiner(const Catalogue& c, const std::string& joins, std::vector<int> items, Length reach, std::vector<Option>& out)
      : c_(c), joins_(joins), items_(std::move(items)), reach_(reach), out_(out) {}

  void grow(std::size_t from, std::vector<int>& set, Length sum) {
    if (set.size() > 1 && sum.si() >= reach_.si() - 1e-9) {
      keep(set, sum);
      return;
    }
    if (static_cast<int>(set.size()) == most_joined || sum.si() >= reach_.si() - 1e-9) return;
    for (std::size_t i = from; i < items_.size(); ++i) {
      set.push_back(items_[i]);
      grow(i, set, sum + item_at(c_, items_[i]).length->value);
      set.pop_back();
    }
  }

 private:
  void keep(const std::vector<int>& set, Length sum) {
    Option option;
    option.waste = sum - reach_;
    for (const int i : set) {
      if (!option.pieces.empty() && option.pieces.back().first == i)
        ++option.pieces.back().second;
      else
        option.pieces.emplace_back(i, 1);
    }
    if (joins_ != "itself") {
      const int joint = c_.item_index(joins_);
      if (joint < 0) return;
      option.pieces.emplace_back(joint, static_cast<int>(set.size()) - 1);
    }
    out_.push_back(std::move(option));
  }
  const Catalogue& c_;
  const std::string& joins_;
  std::vector<int> items_;
  Length reach_;
  std::vector<Option>& out_;
};

void add_joined(const Catalogue& c, const std::vector<int>& serving, Length reach, std::vector<Option>& out) {
  std::vector<std::string> ways;
  for (const int i : serving) {
    const Item& item = item_at(c, i);
    if (item.length && item.joins && std::find(ways.begin(), ways.end(), item.joins->value) == ways.end())
      ways.push_back(item.joins->value);
  }
  std::sort(ways.begin(), ways.end());
  for (const std::string& way : ways) {
    std::vector<int> alike;
    for (const int i : serving) {
      const Item& item = item_at(c, i);
      if (item.length && item.joins && item.joins->value == way && item.length->value < reach) alike.push_back(i);
    }
    std::sort(alike.begin(), alike.end(), [&](int a, int b) {
      return std::tuple(-item_at(c, a).length->value.si(), item_at(c, a).code.value) <
             std::tuple(-item_at(c, b).length->value.si(), item_at(c, b).code.value);
    });
    std::vector<int> set;
    Joiner(c, way, alike, reach, out).grow(0, set, Length());
  }
}

int count(const Option& o) {
  int n = o.case_index >= 0 ? 1 : 0;
  for (const auto& piece : o.pieces) n += piece.second;
  return n;
}

std::string key(const Catalogue& c, const Option& o) {
  if (o.case_index >= 0) return c.kit.cases[static_cast<std::size_t>(o.case_index)].code.value;
  std::string out;
  for (const auto& piece : o.pieces) out += item_at(c, piece.first).code.value + " ";
  return out;
}

}  // namespace

std::vector<Option> options_for(const Catalogue& catalogue, const std::string& what, const Maybe<Length>& length) {
  std::vector<Option> out;
  auto reaches = [&](const Maybe<Length>& own) {
    return !length || (own && own->value.si() >= length->value.si() - 1e-9);
  };
  auto waste = [&](const Maybe<Length>& own) { return length && own ? own->value - length->value : Length(); };
  for (const int i : catalogue.items_serving(what))
    if (reaches(item_at(catalogue, i).length)) out.push_back({-1, {{i, 1}}, waste(item_at(catalogue, i).length)});
  for (const int k : catalogue.cases_serving(what)) {
    const Case& box = catalogue.kit.cases[static_cast<std::size_t>(k)];
    if (!box.spare_for && reaches(box.length)) out.push_back({k, {}, waste(box.length)});
  }
  if (length) add_joined(catalogue, catalogue.items_serving(what), length->value, out);
  std::sort(out.begin(), out.end(), [&](const Option& a, const Option& b) {
    return std::tuple(a.waste.si(), count(a), key(catalogue, a)) < std::tuple(b.waste.si(), count(b), key(catalogue, b));
  });
  if (out.size() > most_options) out.resize(most_options);
  return out;
}

}  // namespace dunnage
