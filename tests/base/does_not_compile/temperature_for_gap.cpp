// SPDX-License-Identifier: MIT
// A temperature is not a difference of temperatures.
#include "base/quantity.h"
using namespace dunnage;
TemperatureGap wrong() { return Temperature::celsius(20); }
