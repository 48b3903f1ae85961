// SPDX-License-Identifier: MIT
// layouts/words/*.toml: the printed words of one language.
#pragma once

#include <filesystem>
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "base/source.h"
#include "model/document.h"

namespace dunnage {

/// The words that a text says: `language`, [words] with keys that may be nested ("pull.title"), and [sentences] by
/// their English text. Mistakes are told in `diagnostics`; nothing is returned when there is one.
std::optional<Words> read_words(std::string file, std::string text, Sources& sources, Diagnostics& diagnostics);

/// The same from a file.
std::optional<Words> load_words(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                Place named_at = {});

/// A house's own words laid over `base`, ours in that language: it may say few keys, and only those that ours have with
/// only their {braces}. What it leaves out stays as it is, `read_by_native` too. Nothing is returned on a mistake.
std::optional<Words> load_own_words(Words base, const std::filesystem::path& path, Sources& sources,
                                    Diagnostics& diagnostics);

}  // namespace dunnage
