// SPDX-License-Identifier: MIT
// Problems told once, with the section and the block they arose in.
#include "layout/setting.h"

namespace dunnage {

void Setting::at_section(const std::string& recipient) {
  section_ = recipient;
  told_.clear();
}

void Setting::at_block(const std::string& id, Place place) {
  if (id != block_) told_.clear();
  block_ = id;
  place_ = place;
}

void Setting::problem(std::string text, std::string cause) {
  if (!told_.emplace(text, cause).second) return;
  problems_.push_back({document.name, section_, block_, std::move(text), std::move(cause), place_});
}

int Setting::face(const std::string& role) {
  if (const auto found = faces.find(role)) return *found;
  std::string known;
  for (const std::string& each : faces.roles()) known += (known.empty() ? "" : ", ") + each;
  problem(role, "is no face; the faces are " + known);
  return 0;
}

std::string Setting::bold(const std::string& role) const {
  const std::string partner = role + "-bold";
  return faces.find(partner) ? partner : role;
}

std::string Setting::plain_cut(const std::string& role) const {
  static const std::string ending = "-bold";
  if (!role.ends_with(ending)) return role;
  const std::string partner = role.substr(0, role.size() - ending.size());
  return faces.find(partner) ? partner : role;
}

}  // namespace dunnage
