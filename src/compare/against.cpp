// SPDX-License-Identifier: MIT
#include "compare/against.h"

#include <map>

namespace dunnage {

namespace {

struct Count {
  std::string name;
  int units = 0;
};

/// Units pulled by case code; the order of first sight is kept in `order`.
std::map<std::string, Count> count(const Planned& p, std::vector<std::string>& order) {
  std::map<std::string, Count> out;
  for (const int u : p.plan->pulled()) {
    const Case& box = p.catalogue->case_at(u);
    auto [at, fresh] = out.try_emplace(box.code.value, Count{box.name.value, 0});
    if (fresh) order.push_back(box.code.value);
    ++at->second.units;
  }
  return out;
}

}  // namespace

Change change_of(const Planned& before, const Planned& now) {
  Change change;
  std::vector<std::string> order;
  const auto is = count(now, order);
  const auto was = count(before, order);
  std::map<std::string, bool> told;
  for (const std::string& code : order) {
    if (told[code]) continue;
    told[code] = true;
    const auto a = was.find(code), b = is.find(code);
    const int old_units = a == was.end() ? 0 : a->second.units;
    const int new_units = b == is.end() ? 0 : b->second.units;
    if (old_units == new_units) continue;
    change.lines.push_back({code, b == is.end() ? a->second.name : b->second.name, old_units, new_units});
  }
  return change;
}

}  // namespace dunnage
