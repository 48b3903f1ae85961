// SPDX-License-Identifier: MIT
// A mass is compared with a mass.
#include "base/quantity.h"
using namespace dunnage;
bool wrong() { return 3 * unit::kilogram > 2; }
