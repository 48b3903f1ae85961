// SPDX-License-Identifier: MIT
// Letters that no face has, told where they were typed, before anything is laid out.
#pragma once

#include <string>

#include "base/diagnostic.h"
#include "font/faces.h"
#include "model/catalogue.h"
#include "model/show.h"

namespace dunnage {

/// An error for each printed text of the kit, and of the show where there is one, that holds a character which the
/// faces cannot set (a script that needs shaping, or one that none of them has). `languages`: which of the names in
/// other languages are printed ("en, es"). Reads the font files.
void check_letters(const Catalogue& catalogue, const Show* show, const std::string& languages, const Faces& faces,
                   Diagnostics& diagnostics);

}  // namespace dunnage
