// SPDX-License-Identifier: MIT
// The folder's files into one kit. Which sections there are, one line each.
#include "read/kit_file.h"

#include <algorithm>
#include <system_error>

#include "base/nearest.h"
#include "base/utf8.h"
#include "read/key_list.h"
#include "read/kit_codes.h"
#include "read/kit_sections.h"
#include "read/mistaken.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;

/// A kit as it grows file by file, and whether the two sections that it cannot do without were typed at all.
struct Growing {
  Kit kit;
  bool house = false, box = false;
};

void read_sections(TableReader& top, Growing& growing) {
  Kit& kit = growing.kit;
  growing.house = growing.house || top.has("house");
  growing.box = growing.box || top.has("case");
  top.table("house", "[house]", [&](TableReader& section) {
    if (kit.house.place.known())
      section.diagnostics().error(section.place(), "[house] stands twice in this kit",
                                  "put all its keys under one [house]", kit.house.place, "it stands first here");
    House house = read_house(section);
    if (!kit.house.place.known()) kit.house = std::move(house);
  });
  top.tables("item", "[[item]]", [&](TableReader& section) { kit.items.push_back(read_item(section)); });
  top.tables("case", "[[case]]", [&](TableReader& section) { kit.cases.push_back(read_case(section)); });
  top.tables("unit", "[[unit]]", [&](TableReader& section) { kit.changes.push_back(read_unit_change(section)); });
  top.tables("structure", "[[structure]]",
             [&](TableReader& section) { kit.structures.push_back(read_structure(section)); });
  top.tables("vehicle", "[[vehicle]]", [&](TableReader& section) { kit.vehicles.push_back(read_vehicle(section)); });
}

/// More pieces than any house owns are a slip of the keyboard, and would take all memory.
bool few_enough(const Kit& kit, Diagnostics& diagnostics) {
  constexpr long most_units = 1000000;
  long units = 0;
  for (const Case& box : kit.cases) {
    units += box.count;
    if (units <= most_units) continue;
    diagnostics.error(box.code.place, "with this case the kit has more than " + std::to_string(most_units) + " pieces",
                      "check each count");
    return false;
  }
  return true;
}

/// Whether a line begins a section of a kit, or what may have been meant for one.
bool holds_section(std::string_view text) {
  static const std::vector<std::string> sections = {"house", "item", "case", "unit", "structure", "vehicle"};
  for (std::size_t at = 0; at < text.size(); at = std::min(text.find('\n', at), text.size() - 1) + 1) {
    std::size_t begin = text.find_first_not_of(" \t[", at);
    if (begin == std::string_view::npos) return false;
    const std::size_t end = std::min(text.find_first_not_of("abcdefghijklmnopqrstuvwxyz", begin), text.size());
    const std::string word(text.substr(begin, end - begin));
    const std::size_t after = std::min(text.find_first_not_of(" \t", end), text.size());
    const bool header = text[begin > 0 ? begin - 1 : 0] == '[';
    const bool assigned = after < text.size() && (text[after] == '=' || text[after] == '.');
    if ((assigned && std::find(sections.begin(), sections.end(), word) != sections.end()) ||
        (header && !nearest(word, sections).empty()))
      return true;
  }
  return false;
}

/// A file of the folder. A show that somebody sent may name any folder as its kit: of a file that holds nothing of a
/// kit no line is shown.
std::optional<TomlFile> load_file(const fs::path& path, Sources& sources, Diagnostics& diagnostics) {
  const SourceFile* file = load_text(path, sources, diagnostics);
  if (!file) return std::nullopt;
  if (holds_section(file->text)) return parse_toml(file, diagnostics);
  Diagnostics unheard;
  auto parsed = parse_toml(file, unheard);
  if (parsed && parsed->table.empty()) return parsed;
  diagnostics.error(
      {file, 0, 0, 1}, "this file holds no section of a kit",
      "a kit has [house], [[item]], [[case]], [[unit]], [[structure]] and [[vehicle]]: move the file out of "
      "its folder, or begin a section");
  return std::nullopt;
}

/// The place of the kit as a whole: the folder's name alone.
Place folder_itself(const std::string& folder, Sources& sources) { return {sources.add(folder, {}), 0, 0, 1}; }

/// The kit of files already parsed. Where a file could not be parsed (`complete` false) the mistakes of the
/// others are told, but not what seems to be missing.
std::optional<Kit> read_parsed(const std::string& folder, const std::vector<TomlFile>& files, bool complete,
                               Sources& sources, Diagnostics& diagnostics) {
  Growing growing;
  Kit& kit = growing.kit;
  kit.folder = folder;
  for (const TomlFile& file : files)
    read_top(file, {}, diagnostics, [&](TableReader& top) { read_sections(top, growing); });
  if (!few_enough(kit, diagnostics)) return std::nullopt;
  keep_codes_once(kit, diagnostics);
  if (!complete) return std::nullopt;
  if (!growing.house)
    diagnostics.error(folder_itself(folder, sources), "the kit has no [house]",
                      "add [house] with name = \"...\" to one of its files");
  if (!growing.box)
    diagnostics.error(folder_itself(folder, sources), "the kit is empty: it has no [[case]]",
                      "add a [[case]] for each thing that is carried, with code, name and form");
  return kit;
}

/// The *.toml files of a folder by name. What keeps its list from being read to the end is in `error`.
std::vector<fs::path> files_of(const fs::path& folder, std::error_code& error) {
  std::vector<fs::path> out;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (utf8::lower(at->path().extension().string()) == ".toml" && !at->path().filename().string().starts_with("."))
      out.push_back(at->path());
  std::sort(out.begin(), out.end());
  return out;
}

/// What keeps the folder from being read; empty: nothing, and its files are in `paths`.
std::pair<std::string, std::string> refusal(const fs::path& folder, std::vector<fs::path>& paths) {
  std::error_code error;
  const std::string quoted_folder = in_quotes(folder.string());
  const fs::file_status status = fs::status(folder, error);
  if (status.type() == fs::file_type::not_found)
    return {"there is no folder " + quoted_folder, "check the name; a kit is a folder of .toml files"};
  if (error) return {quoted_folder + " cannot be read: " + error.message(), "check the name, and where links lead"};
  if (!fs::is_directory(status)) {
    if (const Mistaken mistaken = show_named_as_kit(folder); !mistaken.cause.empty())
      return {mistaken.cause, mistaken.hint};
    return {quoted_folder + " is a file, not a folder", "a kit is a folder of .toml files: name the folder"};
  }
  paths = files_of(folder, error);
  if (error) return {quoted_folder + " cannot be read: " + error.message(), "check who may read it"};
  return {};
}

}  // namespace

std::optional<Kit> read_kit(const fs::path& folder, Sources& sources, Diagnostics& diagnostics, Place named_at) {
  const auto place = [&] { return named_at.known() ? named_at : folder_itself(folder.string(), sources); };
  std::vector<fs::path> paths;
  if (const auto [cause, hint] = refusal(folder, paths); !cause.empty()) {
    diagnostics.error(place(), cause, hint);
    return std::nullopt;
  }
  std::vector<TomlFile> parsed;
  if (paths.empty()) {
    diagnostics.error(place(), "the kit is empty: " + in_quotes(folder.string()) + " holds no .toml file",
                      "write its cases into a file such as cases.toml in that folder");
    return std::nullopt;
  }
  for (const fs::path& path : paths)
    if (auto file = load_file(path, sources, diagnostics)) parsed.push_back(std::move(*file));
  return read_parsed(folder.string(), parsed, parsed.size() == paths.size(), sources, diagnostics);
}

std::optional<Kit> read_kit_texts(const std::string& folder, const std::vector<NamedText>& files, Sources& sources,
                                  Diagnostics& diagnostics) {
  std::vector<TomlFile> parsed;
  for (const auto& [name, text] : files)
    if (auto file = parse_toml(name, text, sources, diagnostics)) parsed.push_back(std::move(*file));
  return read_parsed(folder, parsed, parsed.size() == files.size(), sources, diagnostics);
}

std::vector<NamedText> load_kit_texts(const fs::path& folder, Sources& sources, Diagnostics& diagnostics) {
  std::vector<NamedText> out;
  std::vector<fs::path> paths;
  std::error_code error;
  if (fs::status(folder, error).type() == fs::file_type::not_found) return out;
  if (const auto [cause, hint] = refusal(folder, paths); !cause.empty())
    diagnostics.error(folder_itself(folder.string(), sources), cause, hint);
  for (const fs::path& path : paths)
    if (const SourceFile* file = load_text(path, sources, diagnostics)) out.emplace_back(path.string(), file->text);
  return out;
}

std::vector<Key> keys_of_a_kit() {
  return learn_keys([](TableReader& top) {
    Growing growing;
    read_sections(top, growing);
  });
}

std::vector<Key> keys_in_section(const std::string& section) {
  for (Key& top : keys_of_a_kit())
    if (top.name == section) return std::move(top.inner);
  return {};
}

}  // namespace dunnage
