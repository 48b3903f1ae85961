// SPDX-License-Identifier: MIT
// A mass is not a weight.
#include "base/quantity.h"
using namespace dunnage;
auto wrong() { return 3 * unit::kilogram + 3 * unit::newton; }
