// SPDX-License-Identifier: MIT
// What must hold in a vehicle besides room and support: what bears what, how high hands reach, what comes off first.
#pragma once

#include <algorithm>
#include <cstdint>

#include "load/cargo.h"

namespace dunnage {

class CargoRules : public PackRules {
 public:
  explicit CargoRules(const Cargo& cargo) : cargo_(cargo) {}
  bool allows(const std::vector<StoodBox>& standing, const std::vector<StoodBox>& fresh) const override;
  /// One more box, for the builder of rows, which asks very often.
  bool allows(const std::vector<StoodBox>& standing, const StoodBox& fresh) const;
  /// Neither it nor what stands hinders the other at its stop.
  bool comes_off(const std::vector<StoodBox>& standing, const StoodBox& fresh) const;

 private:
  const CargoKind& kind(const StoodBox& b) const { return cargo_.kinds[static_cast<std::size_t>(b.box)]; }
  bool too_high(const StoodBox& b) const;
  bool bears(const StoodBox& below, const StoodBox& above) const;
  bool comes_off(const StoodBox& a, const StoodBox& b) const;
  bool way_out(const StoodBox& first, const std::vector<const StoodBox*>& all) const;
  bool side_way_out(const SideDoor& door, const StoodBox& first, const std::vector<const StoodBox*>& all) const;
  bool all_come_off(const std::vector<const StoodBox*>& all, std::size_t fresh) const;
  bool carried_within(const std::vector<const StoodBox*>& all) const;

  const Cargo& cargo_;
};

inline bool in_one_place(const StoodBox& a, const StoodBox& b) {
  const auto cross = [&](std::size_t k) { return a.at[k] < b.at[k] + b.size[k] && b.at[k] < a.at[k] + a.size[k]; };
  return cross(0) && cross(1) && cross(2);
}
/// Shared floor of two boxes, mm2.
inline std::int64_t shared_base(const StoodBox& a, const StoodBox& b) {
  const auto along = [&](std::size_t k) {
    return std::int64_t{std::min(a.at[k] + a.size[k], b.at[k] + b.size[k]) - std::max(a.at[k], b.at[k])};
  };
  const std::int64_t x = along(0), y = along(1);
  return x > 0 && y > 0 ? x * y : 0;
}
/// Inside, apart from each other and from obstacles, on full support: for boxes that were moved after the search.
bool stands(const Cargo& cargo, const std::vector<StoodBox>& boxes);
/// Every box has a way out straight to a door at its stop, past what stays; and in, in the order given.
bool ways_free(const Cargo& cargo, const std::vector<StoodBox>& boxes);
/// The order of loading: what bears and what stands deeper first, else by row.
/// Where that order cannot be kept because of a side door, the one in which they come off, backwards.
std::vector<StoodBox> loading_order(const Cargo& cargo, std::vector<StoodBox> boxes);

}  // namespace dunnage
