// SPDX-License-Identifier: MIT
// Files to nouns, the same way for every command: read, cross-check, and stop with every mistake told.
#pragma once

#include <filesystem>
#include <ostream>
#include <vector>

#include "base/diagnostic.h"
#include "model/catalogue.h"
#include "model/finding.h"
#include "model/plan.h"
#include "model/show.h"
#include "read/kit_file.h"

namespace dunnage {

/// All that was read; places point into `sources`, so this outlives what is made from it.
struct Loaded {
  explicit Loaded(std::filesystem::path program = {}) : share(std::move(program)) {}

  std::filesystem::path share;  ///< languages and stocks that there are; empty: what the house names is not checked
  Sources sources;
  Diagnostics diagnostics;
  Catalogue catalogue;
  Show show;
};

/// A show with its kit, or the kit alone. False when there are errors; messages of every severity have been
/// written to `err` then, and notes and warnings otherwise.
bool load_show(const std::filesystem::path& file, Loaded& loaded, std::ostream& err);
bool load_kit(const std::filesystem::path& folder, Loaded& loaded, std::ostream& err);

/// Name and text of each file as it was read, in that order.
std::vector<NamedText> texts_of(const Sources& sources);

/// Of every sheet, as a kit may name them.
std::vector<std::string> document_names();

/// What goes, and what stands where in its vehicles, as judged. Whatever went in no typed vehicle is in the one where
/// it stands.
Plan plan_whole(const Catalogue& catalogue, const Show& show);

/// Exit code of a plan that was made: 2 when something is over, was not checked, or is short; else 0.
int exit_code(const Plan& plan, const Findings& findings);

}  // namespace dunnage
