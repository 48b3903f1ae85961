// SPDX-License-Identifier: MIT
// Kits, shows and layouts that the benchmarks are run on: as large as asked for, the same every time.
#pragma once

#include <filesystem>

namespace dunnage::bench {

/// `cases` cases of `count` units that all go, a compact pull sheet of 32 rows and 8 columns a page, and show.toml. The
/// same words are drawn by floor_sheets.cpp.
void write_sheet_world(const std::filesystem::path& folder, int cases, int count);

/// `labels` cases of one unit with 12 contents lines, a label that shows them all, and show.toml. The same words are
/// drawn by floor_labels.cpp.
void write_label_world(const std::filesystem::path& folder, int labels);

/// A show of `inputs` inputs, each with a microphone, a stand and a cable out of trunks that always go: nothing is left
/// for the cover to choose.
void write_input_world(const std::filesystem::path& folder, int inputs);

}  // namespace dunnage::bench
