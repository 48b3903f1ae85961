// SPDX-License-Identifier: MIT
// layouts/stock/*.toml: a stock of labels as geometry.
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

/// The stock that a text says. Labels must lie on the page and not on each other. Mistakes are told in
/// `diagnostics`; nothing is returned when there is one.
std::optional<Stock> read_stock(std::string name, std::string file, std::string text, Sources& sources,
                                Diagnostics& diagnostics);

/// The same from a file; the stock's name is the file's without ".toml".
std::optional<Stock> load_stock(const std::filesystem::path& path, Sources& sources, Diagnostics& diagnostics,
                                Place named_at = {});

/// Every key that a stock may have, as its reader asks for them.
std::vector<Key> keys_of_a_stock();

}  // namespace dunnage
