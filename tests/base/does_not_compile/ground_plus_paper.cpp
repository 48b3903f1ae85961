// SPDX-License-Identifier: MIT
// A length on the ground is not a length on paper.
#include "base/quantity.h"
using namespace dunnage;
auto wrong() { return 3 * unit::inch + 3 * unit::paper_in; }
