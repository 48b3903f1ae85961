// SPDX-License-Identifier: MIT
#include "run/house_style.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

#include "base/error.h"
#include "base/nearest.h"
#include "read/layout_file.h"
#include "read/stock_file.h"
#include "read/words_file.h"
#include "run/version.h"

namespace dunnage {

namespace fs = std::filesystem;

std::vector<std::string> names_in(const fs::path& folder) {
  std::vector<std::string> out;
  std::error_code error;
  for (const auto& entry : fs::directory_iterator(folder, error))
    if (entry.path().extension() == ".toml") out.push_back(entry.path().stem().string());
  std::sort(out.begin(), out.end());
  return out;
}

Words load_words_for(const fs::path& share, const std::vector<std::string>& asked, const House& house,
                     Sources& sources, Diagnostics& diagnostics) {
  const fs::path folder = share / "layouts" / "words";
  const std::vector<std::string> have = names_in(folder);
  std::string language = "en";
  if (!asked.empty()) {
    language = asked.front();
    if (std::find(have.begin(), have.end(), language) == have.end())
      throw UsageError("there are no printed words in \"" + language + "\"; there are: " + fmt::format("{}", fmt::join(have, ", ")));
  } else if (!house.languages.empty() && std::find(have.begin(), have.end(), house.languages.front()) != have.end()) {
    language = house.languages.front();
  }
  auto words = load_words(folder / (language + ".toml"), sources, diagnostics);
  return words ? std::move(*words) : Words{};
}

Layout load_layout_for(const fs::path& share, const std::string& kit_folder, const std::string& name,
                       Sources& sources, Diagnostics& diagnostics) {
  const fs::path own = fs::path(kit_folder) / "layouts" / (name + ".toml");
  const fs::path ours = share / "layouts" / (name + ".toml");
  auto layout = load_layout(fs::exists(own) ? own : ours, sources, diagnostics);
  return layout ? std::move(*layout) : Layout{};
}

Stock load_stock_for(const fs::path& share, const std::string& name, Sources& sources, Diagnostics& diagnostics) {
  const fs::path folder = share / "layouts" / "stock";
  const std::vector<std::string> have = names_in(folder);
  if (std::find(have.begin(), have.end(), name) == have.end()) {
    const std::string guess = did_you_mean(name, have);
    throw UsageError("there is no label stock \"" + name + "\"" +
                     (guess.empty() ? "; there are " + fmt::format("{}", fmt::join(have, ", ")) : ": " + guess));
  }
  auto stock = load_stock(folder / (name + ".toml"), sources, diagnostics);
  return stock ? std::move(*stock) : Stock{};
}

std::string revision_of(const Sources& sources, const std::string& options, const std::string& letter) {
  std::uint64_t hash = 14695981039346656037ULL;
  auto mix = [&](std::string_view text) {
    for (const char c : text) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    hash = (hash ^ 0xFF) * 1099511628211ULL;  // no text contains this byte: it parts one from the next
  };
  mix(version);
  mix(options);
  for (const SourceFile& file : sources.files()) mix(file.text);
  const std::string mark = fmt::format("{:08x}", static_cast<std::uint32_t>(hash ^ (hash >> 32)));
  return letter.empty() ? mark : letter + " " + mark;
}

std::pair<Paper, Paper> sides(PaperSize paper) {
  if (paper == PaperSize::a4) return {210 * unit::paper_mm, 297 * unit::paper_mm};
  return {8.5 * unit::paper_in, 11 * unit::paper_in};
}

void tell(const std::vector<LayoutProblem>& problems, Diagnostics& diagnostics) {
  for (const LayoutProblem& problem : problems)
    diagnostics.error(problem.place, sentence(problem),
                      "shorten the text, or give it more room or fit = \"wrap\" or \"shrink\" in the layout");
}

}  // namespace dunnage
