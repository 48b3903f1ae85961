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

/// What a kit names stays in the kit: a file that came with it may not lead to another of this machine, which would be
/// read and quoted. Told by its name alone.
bool leads_out(const std::string& kit_folder, const fs::path& file, Sources& sources, Diagnostics& diagnostics) {
  std::error_code error;
  const fs::path kit = fs::canonical(kit_folder.empty() ? "." : kit_folder, error);
  const fs::path real = error ? fs::path() : fs::canonical(file, error);
  if (error || real.lexically_relative(kit).begin()->string() != "..") return false;
  diagnostics.error({sources.add(file.string(), {}), 0, 0, 1}, "a link leads out of the kit",
                    "put the file itself into the kit's folder");
  return true;
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
  std::vector<std::string> wanted = asked;
  for (const Text& language : asked.empty() ? kit.house.languages : std::vector<Text>())
    wanted.push_back(language.value);
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
    if (!own.empty() && leads_out(kit.folder, own, sources, diagnostics)) return {Words{}};
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
  const fs::path own = own_file(kit_folder, "", name), file = style_file(share, kit_folder, "", name);
  if (own.empty())
    need_own(file);
  else if (leads_out(kit_folder, own, sources, diagnostics))
    return {};
  auto layout = load_layout(file, sources, diagnostics);
  return layout ? std::move(*layout) : Layout{};
}

Layout load_layout_of(const fs::path& share, const std::string& kit_folder, const Stock& stock, Sources& sources,
                      Diagnostics& diagnostics) {
  const std::vector<std::string> have = style_names(share, kit_folder, "");
  if (std::find(have.begin(), have.end(), stock.layout) != have.end())
    return load_layout_for(share, kit_folder, stock.layout, sources, diagnostics);
  const std::string guess = did_you_mean(stock.layout, have);
  diagnostics.error(stock.layout_place, "there is no layout " + in_quotes(stock.layout),
                    guess.empty() ? "a layout is named without folder and ending; there are " + listed(have) : guess);
  return {};
}

std::vector<std::string> style_names(const fs::path& share, const std::string& kit_folder, const std::string& what) {
  need_own(share / "layouts" / what);
  std::vector<std::string> all = names_in(share / "layouts" / what), own = names_in(own_folder(kit_folder, what));
  all.insert(all.end(), own.begin(), own.end());
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

std::vector<std::string> strange_files(const fs::path& share, const std::string& kit_folder) {
  std::vector<std::string> out;
  const std::vector<std::string> ours = names_in(share / "layouts");
  for (const std::string& name : names_in(own_folder(kit_folder, ""))) {
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
  const fs::path own = own_file(kit_folder, "stock", name);
  if (!own.empty() && leads_out(kit_folder, own, sources, diagnostics)) return {};
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
