// SPDX-License-Identifier: MIT
// Temperatures do not add up.
#include "base/quantity.h"
using namespace dunnage;
auto wrong() { return Temperature::celsius(20) + Temperature::celsius(20); }
