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

namespace {

/// Names of the .toml files of a folder, without the ending, sorted; none where there is no folder. One that cannot be
/// read may have any: Failure is thrown, which says whose it is.
template <class Failure>
std::vector<std::string> names_in(const fs::path& folder) {
  std::vector<std::string> out;
  std::error_code error;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (at->path().extension() == ".toml") out.push_back(at->path().stem().string());
  if (error && error != std::errc::no_such_file_or_directory && error != std::errc::not_a_directory)
    throw Failure("the folder " + folder.string() + " cannot be read: " + error.message());
  std::sort(out.begin(), out.end());
  return out;
}

/// A file or folder that came with the program.
void need_own(const fs::path& path) {
  std::error_code ignored;
  if (!fs::exists(path, ignored))
    throw WorldError("the program's own files are not where they should be: " + path.string());
}

/// Where a house keeps what it prints otherwise; nowhere without a kit.
fs::path own_folder(const std::string& kit_folder, const std::string& what) {
  return kit_folder.empty() ? fs::path() : fs::path(kit_folder) / "layouts" / what;
}

/// The house's own file of that name; empty where it has none.
fs::path own_file(const std::string& kit_folder, const std::string& what, const std::string& name) {
  const fs::path folder = own_folder(kit_folder, what), file = folder / (name + ".toml");
  std::error_code error;  // a link that leads in a circle is told when the file is read
  return !folder.empty() && (fs::exists(file, error) || error) ? file : fs::path();
}

/// That, else ours.
fs::path style_file(const fs::path& share, const std::string& kit_folder, const std::string& what,
                    const std::string& name) {
  const fs::path own = own_file(kit_folder, what, name);
  return own.empty() ? share / "layouts" / what / (name + ".toml") : own;
}

constexpr std::size_t most_languages = 2;  // a third would crowd out the other two

void check_languages(const std::vector<std::string>& wanted, const std::vector<std::string>& have) {
  for (const std::string& language : wanted)
    if (std::find(have.begin(), have.end(), language) == have.end())
      throw UsageError("there are no printed words in \"" + language +
                       "\"; there are: " + fmt::format("{}", fmt::join(have, ", ")));
  if (wanted.size() > most_languages)
    throw UsageError("at most two languages have room on one sheet; print the packet again for a third");
  if (wanted.size() == most_languages && wanted.front() == wanted.back())
    throw UsageError("the language \"" + wanted.front() + "\" is named twice");
}

}  // namespace

std::vector<Words> load_words_for(const fs::path& share, const std::vector<std::string>& asked, const Kit& kit,
                                  Sources& sources, Diagnostics& diagnostics) {
  const fs::path ours = share / "layouts" / "words";
  const std::vector<std::string>& wanted = asked.empty() ? kit.house.languages : asked;
  need_own(ours / "en.toml");
  check_languages(wanted, style_names(share, kit.folder, "words"));
  const std::optional<Words> english = load_words(ours / "en.toml", sources, diagnostics);
  if (!english) return {Words{}};  // the diagnostics say why
  std::vector<Words> all;
  for (const std::string& language : wanted) {
    std::optional<Words> words = english;
    if (language != "en" && fs::exists(ours / (language + ".toml")))
      words = load_words(ours / (language + ".toml"), sources, diagnostics);
    if (words) words->by_key.insert(english->by_key.begin(), english->by_key.end());
    if (words) words->sentences.insert(english->sentences.begin(), english->sentences.end());
    const fs::path own = own_file(kit.folder, "words", language);
    if (words && !own.empty()) words = load_own_words(std::move(*words), own, sources, diagnostics);
    if (!words) return {Words{}};
    all.push_back(std::move(*words));
  }
  return all;
}

std::string names_of(const std::vector<Words>& languages) {
  std::string out;
  for (const Words& words : languages) out += (out.empty() ? "" : ", ") + words.language;
  return out;
}

Layout load_layout_for(const fs::path& share, const std::string& kit_folder, const std::string& name, Sources& sources,
                       Diagnostics& diagnostics) {
  const fs::path file = style_file(share, kit_folder, "", name);
  if (own_file(kit_folder, "", name).empty()) need_own(file);
  auto layout = load_layout(file, sources, diagnostics);
  return layout ? std::move(*layout) : Layout{};
}

std::vector<std::string> style_names(const fs::path& share, const std::string& kit_folder, const std::string& what) {
  need_own(share / "layouts" / what);
  std::vector<std::string> all = names_in<WorldError>(share / "layouts" / what),
                           own = names_in<UsageError>(own_folder(kit_folder, what));
  all.insert(all.end(), own.begin(), own.end());
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

std::vector<std::string> strange_files(const fs::path& share, const std::string& kit_folder) {
  std::vector<std::string> out;
  const std::vector<std::string> ours = names_in<WorldError>(share / "layouts");
  for (const std::string& name : names_in<UsageError>(own_folder(kit_folder, ""))) {
    const std::string guess = did_you_mean(name, ours);
    if (std::find(ours.begin(), ours.end(), name) == ours.end() && !guess.empty())
      out.push_back((own_folder(kit_folder, "") / (name + ".toml")).string() + " is no sheet's layout: " + guess);
  }
  return out;
}

Stock load_stock_for(const fs::path& share, const std::string& kit_folder, const std::string& name, Sources& sources,
                     Diagnostics& diagnostics) {
  const std::vector<std::string> have = style_names(share, kit_folder, "stock");
  if (std::find(have.begin(), have.end(), name) == have.end()) {
    const std::string guess = did_you_mean(name, have);
    throw UsageError("there is no label stock \"" + name + "\"" +
                     (guess.empty() ? "; there are " + fmt::format("{}", fmt::join(have, ", ")) : ": " + guess));
  }
  auto stock = load_stock(style_file(share, kit_folder, "stock", name), sources, diagnostics);
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
