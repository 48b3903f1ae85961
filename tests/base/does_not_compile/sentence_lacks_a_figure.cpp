// SPDX-License-Identifier: MIT
#include "base/sentence.h"

dunnage::Sentence says = dunnage::said("Each leg needs {} at {} gust.", 5);
