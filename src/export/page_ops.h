// SPDX-License-Identifier: MIT
// One page as PDF drawing operators (ISO 32000-1, 8.5 and 9.4): our own numbers, absolute places, nothing
// that depends on what was drawn before.
#pragma once

#include <functional>
#include <string>

#include "model/page.h"

namespace dunnage {

/// The content stream of a page. `font_name` gives the page's resource name of a face ("F1").
/// Asserts that every measure is finite and within 5 m.
std::string page_operators(const Page& page, const std::function<std::string(int face)>& font_name);

}  // namespace dunnage
