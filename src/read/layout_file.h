// SPDX-License-Identifier: MIT
// layouts/*.toml: where things stand on a sheet and how large.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/source.h"
#include "model/key.h"
#include "model/sheet.h"

namespace dunnage {

/// The layout that a text says; `name` is the layout's, as documents call it. Mistakes are told in
/// `diagnostics`, with places in the text that `sources` keeps under `file`; nothing is returned when there
/// is one.
std::optional<Layout> read_layout(std::string name, std::string file, std::string text, Sources& sources,
                                  Diagnostics& diagnostics);

/// The same from a file; the layout's name is the file's without ".toml". A missing file is an error at
/// `named_at`.
std::optional<Layout> load_layout(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                  Place named_at = {});

/// Every key that a layout may have, as its reader asks for them.
std::vector<Key> keys_of_a_layout();

}  // namespace dunnage
