// SPDX-License-Identifier: MIT
// A mass cannot be told in feet.
#include "base/quantity.h"
using namespace dunnage;
double wrong() { return 3 * unit::kilogram / unit::foot; }
