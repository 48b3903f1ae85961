// SPDX-License-Identifier: MIT
// How this house prints: words, layouts and faces, its own layouts before ours.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "layout/layout_problem.h"
#include "model/document.h"
#include "model/kit.h"
#include "model/sheet.h"

namespace dunnage {

/// The words of the languages asked for, else of the house's: one, or two that stand on one sheet. A word that a
/// language lacks is said in English. Throws UsageError for a language that no words file has, and for more than two.
std::vector<Words> load_words_for(const std::filesystem::path& share, const std::vector<std::string>& asked,
                                  const House& house, Sources& sources, Diagnostics& diagnostics);
/// "en", or "en, es".
std::string names_of(const std::vector<Words>& languages);

/// The layout of a document: <kit>/layouts/NAME.toml where the house has one, else ours. Mistakes in
/// `diagnostics`; an empty layout then.
Layout load_layout_for(const std::filesystem::path& share, const std::string& kit_folder, const std::string& name,
                       Sources& sources, Diagnostics& diagnostics);

/// Throws UsageError with the nearest name when there is no such stock.
Stock load_stock_for(const std::filesystem::path& share, const std::string& name, Sources& sources,
                     Diagnostics& diagnostics);

/// Names of the .toml files of a folder, without the ending, sorted.
std::vector<std::string> names_in(const std::filesystem::path& folder);

/// A short mark of everything that shaped the paper: FNV-1a of all texts read, the version and `options`.
std::string revision_of(const Sources& sources, const std::string& options, const std::string& letter);

/// Width and height of a sheet, upright.
std::pair<Paper, Paper> sides(PaperSize paper);

/// Layout problems as mistakes of the layout they come from.
void tell(const std::vector<LayoutProblem>& problems, Diagnostics& diagnostics);

}  // namespace dunnage
