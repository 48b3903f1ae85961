// SPDX-License-Identifier: MIT
// What must hold in a vehicle besides room and support: what bears what, how high hands reach, what comes off first.
#pragma once

#include "load/cargo.h"

namespace dunnage {

class CargoRules : public PackRules {
 public:
  explicit CargoRules(const Cargo& cargo) : cargo_(cargo) {}
  bool allows(const std::vector<StoodBox>& standing, const std::vector<StoodBox>& fresh) const override;
  /// One more box, for the builder of rows, which asks very often.
  bool allows(const std::vector<StoodBox>& standing, const StoodBox& fresh) const;

 private:
  const CargoKind& kind(const StoodBox& b) const { return cargo_.kinds[static_cast<std::size_t>(b.box)]; }
  bool bears(const StoodBox& below, const StoodBox& above) const;
  bool comes_off(const StoodBox& a, const StoodBox& b) const;
  bool carried_within(const std::vector<const StoodBox*>& all) const;

  const Cargo& cargo_;
};

/// Shared floor of two boxes, mm2.
std::int64_t shared_base(const StoodBox& a, const StoodBox& b);
bool in_one_place(const StoodBox& a, const StoodBox& b);
/// Inside, apart from each other and from obstacles, on full support: for boxes that were moved after the search.
bool stands(const Cargo& cargo, const std::vector<StoodBox>& boxes);
/// Every box has a way out straight to the rear at its stop, past what stays; and in, in the order given.
bool ways_free(const Cargo& cargo, const std::vector<StoodBox>& boxes);
/// The order of loading: what bears and what stands deeper first, else by row.
std::vector<StoodBox> loading_order(std::vector<StoodBox> boxes);

}  // namespace dunnage
