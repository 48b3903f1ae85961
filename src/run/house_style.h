// SPDX-License-Identifier: MIT
// How this house prints: words, layouts and faces, its own layouts before ours. Throws WorldError for what came with
// the program and cannot be used, UsageError for a folder of the house that cannot be read.
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

/// The words of the languages asked for, else of the house's: one, or two that stand on one sheet. What the house says
/// in <kit>/layouts/words/LANGUAGE.toml goes before ours; a word that a language lacks is said in English. Throws
/// UsageError for a language that no words file has, and for more than two.
std::vector<Words> load_words_for(const std::filesystem::path& share, const std::vector<std::string>& asked,
                                  const Kit& kit, Sources& sources, Diagnostics& diagnostics);
/// "en", or "en, es".
std::string names_of(const std::vector<Words>& languages);

/// The layout of a document: <kit>/layouts/NAME.toml where the house has one, else ours. Mistakes in
/// `diagnostics`; an empty layout then.
Layout load_layout_for(const std::filesystem::path& share, const std::string& kit_folder, const std::string& name,
                       Sources& sources, Diagnostics& diagnostics);

/// The same of a name that a stock gives. One that neither the house nor the program has is told at its place.
Layout load_layout_for(const std::filesystem::path& share, const std::string& kit_folder, const Text& named,
                       Sources& sources, Diagnostics& diagnostics);

/// <kit>/layouts/stock/NAME.toml where the house has one, else ours. Throws UsageError with the nearest name when there
/// is no such stock.
Stock load_stock_for(const std::filesystem::path& share, const std::string& kit_folder, const std::string& name,
                     Sources& sources, Diagnostics& diagnostics);

/// Files of the house's own layouts whose name is nearly that of ours, each with what was probably meant.
std::vector<std::string> strange_files(const std::filesystem::path& share, const std::string& kit_folder);

/// Ours and the house's own, sorted. `what`: "" for layouts, "stock" or "words". An empty kit folder has none.
std::vector<std::string> style_names(const std::filesystem::path& share, const std::string& kit_folder,
                                     const std::string& what);

/// The house's own alone; its folder need not be there.
std::vector<std::string> house_names(const std::string& kit_folder, const std::string& what);

/// A short mark of everything that shaped the paper: FNV-1a of all texts read, the version and `options`.
std::string revision_of(const Sources& sources, const std::string& options, const std::string& letter);

/// Width and height of a sheet, upright.
std::pair<Paper, Paper> sides(PaperSize paper);

/// Layout problems as mistakes of the layout they come from.
void tell(const std::vector<LayoutProblem>& problems, Diagnostics& diagnostics);

}  // namespace dunnage
