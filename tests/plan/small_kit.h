// SPDX-License-Identifier: MIT
// Kits and shows of a few lines, built without files, so that a test shows all that it is about.
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "model/catalogue.h"
#include "model/plan.h"
#include "plan/plan_show.h"

namespace dunnage::small {

inline Text text(std::string s) { return {std::move(s), {}}; }

inline Case& add_case(Kit& kit, const std::string& code, double kg,
                      std::vector<std::pair<std::string, int>> holds = {}) {
  Case box;
  box.code = text(code);
  box.name = text(code);
  box.weighed = Sourced<Mass>{kg * unit::kilogram, {}};
  for (auto& [item, count] : holds) {
    Content content;
    content.item = text(item);
    content.count = count;
    box.holds.push_back(content);
  }
  kit.cases.push_back(std::move(box));
  return kit.cases.back();
}

inline Item& add_item(Kit& kit, const std::string& code, std::vector<std::string> serves = {}, double metres = 0,
                      const std::string& joins = "") {
  Item item;
  item.code = text(code);
  item.name = text(code);
  for (auto& word : serves) item.serves.push_back(text(word));
  if (metres > 0) item.length = Sourced<Length>{metres * unit::metre, {}};
  if (!joins.empty()) item.joins = Sourced<std::string>{joins, {}};
  kit.items.push_back(std::move(item));
  return kit.items.back();
}

inline void want(Show& show, const std::string& what, int count, double metres = 0) {
  Want w;
  w.what = text(what);
  w.count = count;
  if (metres > 0) w.length = Sourced<Length>{metres * unit::metre, {}};
  show.wants.push_back(w);
}

inline Goes when(const std::string& fact, std::vector<std::variant<bool, double, std::string>> values,
                 Condition::Kind kind = Condition::Kind::any_of) {
  Goes goes;
  goes.kind = Goes::Kind::when;
  goes.any.push_back({{Condition{fact, kind, std::move(values), {}}}, {}});
  return goes;
}
inline Goes always() {
  Goes goes;
  goes.kind = Goes::Kind::always;
  return goes;
}

/// Codes of the units that go, "+"-joined in order.
inline std::string pulled(const Catalogue& c, const Plan& plan) {
  std::string out;
  for (const int u : plan.pulled()) out += (out.empty() ? "" : " ") + c.units[static_cast<std::size_t>(u)].code;
  return out;
}
inline std::string pulled(const Kit& kit, const Show& show) {
  const Catalogue c = make_catalogue(kit);
  return pulled(c, plan_show(c, show));
}

}  // namespace dunnage::small
