// SPDX-License-Identifier: MIT
// A show: one file that names its kit.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "model/key.h"
#include "model/show.h"

namespace dunnage {

/// The show of a file. Mistakes of meaning are collected and the show is still returned, with what was wrong
/// left out, so that a run can go on to find more; the caller stops when `diagnostics` has errors. Nothing is
/// returned when the file cannot be read as TOML.
std::optional<Show> read_show(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics);

/// The same from text.
std::optional<Show> read_show_text(const std::string& name, std::string text, Sources& sources,
                                   Diagnostics& diagnostics);

/// The folder of the show's kit: as typed, from the folder in which the show file lies.
std::filesystem::path kit_folder_of(const Show& show, const std::filesystem::path& show_path);

/// Every key that a show may have, as the reader asks for it.
std::vector<Key> keys_of_a_show();

}  // namespace dunnage
