// SPDX-License-Identifier: MIT
// The control: right mixes compile, so that the others fail for their own reason and no other.
#include "base/quantity.h"
#include "base/sentence.h"
using namespace dunnage;
Force weight() { return 3 * unit::kilogram * standard_gravity; }
bool longer() { return 3 * unit::foot > 1 * unit::metre; }
Sentence says = said("Each leg needs {} at {} gust.", 5, 6);
