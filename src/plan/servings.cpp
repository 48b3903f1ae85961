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

/// One thing that can be laid: a piece of an item, or a whole unit of a case.
struct Layable {
  int item, case_index;
  Length length;
};

std::vector<Layable> layables(const Catalogue& c, const Asked& asked) {
  std::vector<Layable> out;
  auto bears = [&](const Maybe<Mass>& rating) {
    return !asked.bears || (rating && rating->value >= asked.bears->value);
  };
  for (const int i : c.items_serving(asked.what))
    if (const Item& item = item_at(c, i); item.length && bears(item.rating)) out.push_back({i, -1, item.length->value});
  for (const int k : c.cases_serving(asked.what))
    if (const Case& box = c.kit.cases[static_cast<std::size_t>(k)]; box.length && !box.spare_for && bears(box.rating))
      out.push_back({-1, k, box.length->value});
  return out;
}

void add(Option& option, const Layable& piece, int n) {
  if (n <= 0) return;
  if (piece.item >= 0)
    option.pieces.emplace_back(piece.item, n);
  else
    option.units.emplace_back(piece.case_index, n);
}

int pieces_for(Length rest, Length piece) { return rest.si() <= 1e-9 ? 0 : static_cast<int>(steps_up(rest / piece)); }

/// One kind alone, or `n` of one kind and as many of another as the rest takes.
std::vector<Option> laid(const Catalogue& c, const Asked& asked) {
  std::vector<Option> out;
  const Length reach = asked.length ? asked.length->value : Length();
  const std::vector<Layable> all = layables(c, asked);
  for (std::size_t a = 0; a < all.size(); ++a) {
    const int alone = pieces_for(reach, all[a].length);
    for (std::size_t b = a; b < all.size(); ++b)
      for (int n = b == a ? alone : 1; n <= (b == a ? alone : alone - 1); ++n) {
        const int rest = b == a ? 0 : pieces_for(reach - n * all[a].length, all[b].length);
        Option option;
        add(option, all[a], n);
        add(option, all[b], rest);
        option.waste = n * all[a].length + rest * all[b].length - reach;
        out.push_back(std::move(option));
      }
  }
  return out;
}

std::vector<Option> measured(const Catalogue& c, const Asked& asked) {
  std::vector<Option> out;
  for (const int i : c.items_serving(asked.what)) {
    const Item& item = item_at(c, i);
    if (asked.unit == "l" ? item.each_volume.has_value() : item.each.has_value()) out.push_back({{}, {{i, 1}}, {}});
  }
  return out;
}

std::vector<Option> single_or_joined(const Catalogue& c, const Asked& asked) {
  std::vector<Option> out;
  auto reaches = [&](const Maybe<Length>& own) {
    return !asked.length || (own && own->value.si() >= asked.length->value.si() - 1e-9);
  };
  auto waste = [&](const Maybe<Length>& own) {
    return asked.length && own ? own->value - asked.length->value : Length();
  };
  for (const int i : c.items_serving(asked.what))
    if (reaches(item_at(c, i).length)) out.push_back({{}, {{i, 1}}, waste(item_at(c, i).length)});
  for (const int k : c.cases_serving(asked.what)) {
    const Case& box = c.kit.cases[static_cast<std::size_t>(k)];
    if (!box.spare_for && reaches(box.length)) out.push_back({{{k, 1}}, {}, waste(box.length)});
  }
  if (asked.length) add_joined(c, c.items_serving(asked.what), asked.length->value, out);
  return out;
}

}  // namespace

std::vector<Option> options_for(const Catalogue& catalogue, const Asked& asked) {
  std::vector<Option> out = asked.way == Way::laid       ? laid(catalogue, asked)
                            : asked.way == Way::measured ? measured(catalogue, asked)
                                                         : single_or_joined(catalogue, asked);
  std::sort(out.begin(), out.end(), [&](const Option& a, const Option& b) {
    return std::tuple(a.waste.si(), count(a), key(catalogue, a)) <
           std::tuple(b.waste.si(), count(b), key(catalogue, b));
  });
  if (out.size() > most_options) out.resize(most_options);
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
