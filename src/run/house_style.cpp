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

/// Names of the .toml files of a folder, without the ending, sorted. `error`: why it could not be read.
std::vector<std::string> names_in(const fs::path& folder, std::error_code& error) {
  std::vector<std::string> out;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (at->path().extension() == ".toml") out.push_back(at->path().stem().string());
  std::sort(out.begin(), out.end());
  return out;
}

/// Of a folder that came with the program.
std::vector<std::string> our_names(const fs::path& folder) {
  std::error_code error;
  std::vector<std::string> found = names_in(folder, error);
  if (error || found.empty())
    throw WorldError("the program's own files are not where they should be: " + folder.string());
  return found;
}

/// A file that came with the program, read: whatever is wrong with it is wrong with the installation, and nothing that
/// was typed.
template <class Load>
auto from_ours(const fs::path& file, Sources& sources, const Load& load) {
  Diagnostics told;
  auto read = load(file, sources, told);
  if (told.has_errors() || !read)
    throw WorldError("the program's own file " + file.string() + " cannot be used: " +
                     (told.all().empty() ? "it is empty" : told.all().front().cause) + "; install the program again");
  return std::move(*read);
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
  check_languages(wanted, style_names(share, kit.folder, "words"));
  const auto read = [](const fs::path& file, Sources& from, Diagnostics& told) { return load_words(file, from, told); };
  const Words english = from_ours(ours / "en.toml", sources, read);
  std::vector<Words> all;
  for (const std::string& language : wanted) {
    std::optional<Words> words = english;
    if (language != "en" && fs::exists(ours / (language + ".toml")))
      words = from_ours(ours / (language + ".toml"), sources, read);
    words->by_key.insert(english.by_key.begin(), english.by_key.end());
    words->sentences.insert(english.sentences.begin(), english.sentences.end());
    const fs::path own = own_file(kit.folder, "words", language);
    if (!own.empty() && leads_out(kit.folder, own, sources, diagnostics)) return {Words{}};
    if (!own.empty()) words = load_own_words(std::move(*words), own, sources, diagnostics);
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
  const auto read = [](const fs::path& file, Sources& from, Diagnostics& told) {
    return load_layout(file, from, told);
  };
  const fs::path own = own_file(kit_folder, "", name);
  if (own.empty()) return from_ours(share / "layouts" / (name + ".toml"), sources, read);
  if (leads_out(kit_folder, own, sources, diagnostics)) return {};
  return read(own, sources, diagnostics).value_or(Layout{});
}

Layout load_layout_for(const fs::path& share, const std::string& kit_folder, const Text& named, Sources& sources,
                       Diagnostics& diagnostics) {
  const std::vector<std::string> have = style_names(share, kit_folder, "");
  if (std::find(have.begin(), have.end(), named.value) != have.end())
    return load_layout_for(share, kit_folder, named.value, sources, diagnostics);
  const std::string guess = did_you_mean(named.value, have);
  diagnostics.error(named.place, "there is no layout " + in_quotes(named.value),
                    guess.empty() ? "a layout is named without folder and ending; there are " + listed(have) : guess);
  return {};
}

std::vector<std::string> house_names(const std::string& kit_folder, const std::string& what) {
  const fs::path folder = own_folder(kit_folder, what);
  std::error_code error;
  std::vector<std::string> found = names_in(folder, error);
  if (error && error != std::errc::no_such_file_or_directory && error != std::errc::not_a_directory)
    throw UsageError("the folder " + folder.string() + " cannot be read: " + error.message());
  return found;
}

std::vector<std::string> style_names(const fs::path& share, const std::string& kit_folder, const std::string& what) {
  std::vector<std::string> all = our_names(share / "layouts" / what), own = house_names(kit_folder, what);
  all.insert(all.end(), own.begin(), own.end());
  std::sort(all.begin(), all.end());
  all.erase(std::unique(all.begin(), all.end()), all.end());
  return all;
}

std::vector<std::string> strange_files(const fs::path& share, const std::string& kit_folder) {
  std::vector<std::string> out;
  const std::vector<std::string> ours = our_names(share / "layouts");
  for (const std::string& name : house_names(kit_folder, "")) {
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
  const auto read = [](const fs::path& file, Sources& from, Diagnostics& told) { return load_stock(file, from, told); };
  const fs::path own = own_file(kit_folder, "stock", name);
  if (own.empty()) return from_ours(share / "layouts" / "stock" / (name + ".toml"), sources, read);
  if (leads_out(kit_folder, own, sources, diagnostics)) return {};
  return read(own, sources, diagnostics).value_or(Stock{});
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
