// SPDX-License-Identifier: MIT
// A kit: every *.toml of one folder, read together in order of name.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/diagnostic.h"
#include "model/key.h"
#include "model/kit.h"

namespace dunnage {

/// The kit of `folder`. Mistakes of meaning are collected and the kit is still returned, with what was wrong
/// left out and each code there once, so that a run can go on to find more; the caller stops when
/// `diagnostics` has errors. Nothing is returned when the folder or a file cannot be read as TOML.
/// `named_at`: where the folder was named, for the message that it is missing.
std::optional<Kit> read_kit(const std::filesystem::path& folder, Sources& sources, Diagnostics& diagnostics,
                            Place named_at = {});

/// The same from name and text, in the order given.
using NamedText = std::pair<std::string, std::string>;
std::optional<Kit> read_kit_texts(const std::string& folder, const std::vector<NamedText>& files, Sources& sources,
                                  Diagnostics& diagnostics);

/// Name and text of each file of a kit's folder, in order of name; empty where there is no folder or no such file.
/// A folder or file that cannot be read is told.
std::vector<NamedText> load_kit_texts(const std::filesystem::path& folder, Sources& sources, Diagnostics& diagnostics);

/// Every key that any file of a kit may have, as the reader asks for it.
std::vector<Key> keys_of_a_kit();
/// Those inside one section, such as "case"; none where there is no such section.
std::vector<Key> keys_in_section(const std::string& section);

}  // namespace dunnage
