// SPDX-License-Identifier: MIT
// Text from disk or memory to a TOML table, behind every guard that the TOML library lacks.
#pragma once

#include <toml++/toml.h>

#include <filesystem>
#include <optional>
#include <string>

#include "base/diagnostic.h"

namespace dunnage {

/// One parsed file. `source` lives in Sources; places point into it.
struct TomlFile {
  const SourceFile* source = nullptr;
  toml::table table;
};

/// The text of a file, kept in `sources` under `path` as given. A missing file, a folder, a device, a file
/// above 64 MiB or one that cannot be read is an error at `named_at` (where the file was named), else at the
/// file.
const SourceFile* load_text(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                            Place named_at = {});

/// Parses text that `sources` keeps under `name`. Broken UTF-8, an absurdly long dotted key and the first
/// mistake of syntax are errors at their place, and nothing is returned. A byte order mark is dropped.
std::optional<TomlFile> parse_toml(std::string name, std::string text, Sources& sources, Diagnostics& diagnostics);

/// The same of a text that `sources` has already.
std::optional<TomlFile> parse_toml(const SourceFile* source, Diagnostics& diagnostics);

/// Both.
std::optional<TomlFile> load_toml(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                  Place named_at = {});

/// Where a node or a key of a file was typed.
Place place_of(const toml::source_region& region, const SourceFile* file);

}  // namespace dunnage
