// SPDX-License-Identifier: MIT
// A text of the program is no name: no language could say it otherwise.
#include "base/sentence.h"

dunnage::Sentence says = "Leave it down.";
