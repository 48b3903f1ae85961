// SPDX-License-Identifier: MIT
#include "run/house_style.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <optional>

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

namespace {

constexpr std::size_t most_languages = 2;  // a third would crowd out the other two

void check_languages(const std::vector<std::string>& wanted, const std::vector<std::string>& have) {
  for (const std::string& language : wanted)
    if (std::find(have.begin(), have.end(), language) == have.end())
      throw UsageError("there are no printed words in \"" + language + "\"; there are: " +
                       fmt::format("{}", fmt::join(have, ", ")));
  if (wanted.size() > most_languages)
    throw UsageError("at most two languages have room on one sheet; print the packet again for a third");
  if (wanted.size() == most_languages && wanted.front() == wanted.back())
    throw UsageError("the language \"" + wanted.front() + "\" is named twice");
}

}  // namespace

std::vector<Words> load_words_for(const fs::path& share, const std::vector<std::string>& asked, const House& house,
                                  Sources& sources, Diagnostics& diagnostics) {
  const fs::path folder = share / "layouts" / "words";
  const std::vector<std::string>& wanted = asked.empty() ? house.languages : asked;
  check_languages(wanted, names_in(folder));
  std::vector<Words> all;
  std::optional<Words> english = load_words(folder / "en.toml", sources, diagnostics);
  for (const std::string& language : wanted) {
    std::optional<Words> words =
        language == "en" ? english : load_words(folder / (language + ".toml"), sources, diagnostics);
    if (!words || !english) return {Words{}};  // the diagnostics say why
    words->by_key.insert(english->by_key.begin(), english->by_key.end());
    all.push_back(std::move(*words));
  }
  return all;
}

std::string names_of(const std::vector<Words>& languages) {
  std::string out;
  for (const Words& words : languages) out += (out.empty() ? "" : ", ") + words.language;
  return out;
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
