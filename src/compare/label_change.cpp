// SPDX-License-Identifier: MIT
#include "compare/label_change.h"

#include <utility>

namespace dunnage {
namespace {

bool same_mass(const UnitMass& a, const UnitMass& b) {
  return a.known == b.known && a.estimated == b.estimated && (!a.known || a.mass == b.mass);
}

bool same_handling(const Handling& a, const Handling& b) {
  return a.move == b.move && a.ramp_people == b.ramp_people && a.people == b.people && a.aid == b.aid &&
         a.known == b.known;
}

/// Contents as a label lists them: how many of what, by name.
std::vector<std::string> contents(const Catalogue& c, const Case& box) {
  std::vector<std::string> out;
  if (!box.contents_on_label) return out;
  for (const Content& content : box.holds) {
    const Item* item = c.item(content.item.value);
    std::string line = std::to_string(content.count) + " x " + (item ? item->name.value : content.item.value);
    if (item)
      for (const auto& [language, name] : item->names) line += "\n" + language + " " + name.value;
    out.push_back(std::move(line));
  }
  return out;
}

/// The name in every language.
std::vector<std::string> all_names(const Case& box) {
  std::vector<std::string> out = {box.name.value};
  for (const auto& [language, name] : box.names) out.push_back(language + " " + name.value);
  return out;
}

bool same_stack(const Case& a, const Case& b) {
  return a.stack.has_value() == b.stack.has_value() && (!a.stack || a.stack->value == b.stack->value);
}

}  // namespace

std::vector<LabelChange> label_changes(const Catalogue& now, const std::vector<Handling>& handling,
                                       const Catalogue& before, const std::vector<Handling>& handling_before) {
  std::vector<LabelChange> out;
  const House &house = now.kit.house, &old_house = before.kit.house;
  const bool owner = house.name.value != old_house.name.value || house.phone.value != old_house.phone.value;
  for (int unit = 0; unit < static_cast<int>(now.units.size()); ++unit) {
    const auto u = static_cast<std::size_t>(unit);
    const int old = before.unit_index(now.units[u].code);
    if (old < 0) {
      out.push_back({unit, "new"});
      continue;
    }
    const Case &box = now.case_at(unit), &old_box = before.case_at(old);
    std::string what;
    const auto differs = [&](bool is, const char* word) {
      if (is) what += (what.empty() ? "" : ", ") + std::string(word);
    };
    differs(all_names(box) != all_names(old_box), "name");
    differs(!same_mass(now.mass_of(unit), before.mass_of(old)), "mass");
    differs(!same_handling(handling[u], handling_before[static_cast<std::size_t>(old)]), "handling");
    differs(box.marks != old_box.marks, "marks");
    differs(!same_stack(box, old_box), "what may stand on top");
    differs(contents(now, box) != contents(before, old_box), "contents");
    differs(box.revision != old_box.revision, "revision");
    differs(owner, "owner");
    if (!what.empty()) out.push_back({unit, what});
  }
  return out;
}

}  // namespace dunnage
