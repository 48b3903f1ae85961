// SPDX-License-Identifier: MIT
// A bare number has no unit.
#include "base/quantity.h"
using namespace dunnage;
Mass wrong() { return 3.0; }
