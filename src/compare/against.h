// SPDX-License-Identifier: MIT
// What the change of a show changed in what goes.
#pragma once

#include "model/planned.h"

namespace dunnage {

/// Cases added, gone, more and fewer. Cases are matched by code, so the two kits may differ.
Change change_of(const Planned& before, const Planned& now);

}  // namespace dunnage
