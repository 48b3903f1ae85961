// SPDX-License-Identifier: MIT
// `dunnage import`: a spreadsheet into a new file of the kit. The reader of kits judges every line before any is kept.
#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "base/error.h"
#include "base/utf8.h"
#include "document/documents.h"
#include "read/cross_check.h"
#include "read/csv_rows.h"
#include "read/kit_file.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/import_weights.h"
#include "run/load_show.h"
#include "run/on_screen.h"
#include "write/intake_text.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;
constexpr const char* house_name = "house.toml";

/// The kit as it stands: its files, and what it has.
struct Standing {
  std::vector<NamedText> files;
  Kit kit;
  bool house = false;
};

/// Mistakes of the kit as a whole (no case yet, no house yet) are what an import mends. A file that cannot be read may
/// hold anything.
bool load_standing(const fs::path& folder, Sources& sources, Standing& out, std::ostream& err) {
  Diagnostics told, diagnostics;
  out.files = load_kit_texts(folder, sources, told);
  auto kit = out.files.empty() || told.has_errors() ? std::optional<Kit>(Kit{})
                                                    : read_kit_texts(folder.string(), out.files, sources, diagnostics);
  for (const Diagnostic& d : diagnostics.all())
    if (d.severity == Severity::error && d.place.line > 0) told.error(d.place, d.cause, d.hint, d.other, d.other_says);
  if (told.has_errors() || !kit) {
    err << render(told.has_errors() ? told : diagnostics, sources)
        << "The kit must be in order before anything is added to it.\n";
    return false;
  }
  out.kit = std::move(*kit);
  out.house = out.kit.house.place.known();
  return true;
}

std::string house_text(const Intake& intake) {
  std::size_t us = 0, metric = 0;
  for (const IntakeRow& row : intake.rows)
    for (const IntakeLine& line : row.lines)
      if (const auto* text = std::get_if<std::string>(&line.value);
          text && (line.key == "weighed" || line.key == "size" || line.key == "empty"))
        (text->ends_with("lb") || text->ends_with("in") || text->ends_with("ft") || text->ends_with("oz") ? us
                                                                                                          : metric) +=
            1;
  return std::string(
             "# Made by dunnage import: change it to your own.\n[house]\nname = \"Our sound crew\"\nphone = \"your "
             "number\"\nunits = \"") +
         (us > metric ? "us" : "metric") + "\"\n";
}

/// The row and line of an intake that a place in its text is about; row -1: none.
LineOrigin origin_of(const Place& place, const std::string& name, const IntakeText& text) {
  if (!place.known() || place.file->name != name || place.line == 0 || place.line > text.lines.size()) return {};
  return text.lines[place.line - 1];
}

/// Takes out what a message is about, and tells it where it stands in the spreadsheet.
void refuse(Intake& intake, LineOrigin origin, const Diagnostic& d, Diagnostics& told) {
  IntakeRow& row = intake.rows[static_cast<std::size_t>(origin.row)];
  if (origin.line < 0 || row.lines[static_cast<std::size_t>(origin.line)].key == "code" ||
      row.lines[static_cast<std::size_t>(origin.line)].key == "name") {
    if (!row.refused) told.warning(row.place, "this row is left out: " + d.cause, d.hint);
    row.refused = true;
    return;
  }
  IntakeLine& line = row.lines[static_cast<std::size_t>(origin.line)];
  if (!line.refused) told.warning(line.cell.place, d.cause, d.hint);
  line.refused = true;
}

/// The text of the new file, once the kit reads without a mistake in it. Errors that are about nothing in the new file
/// are in `left`: they were there before.
IntakeText settle(Intake& intake, const std::vector<NamedText>& others, const std::string& name, Diagnostics& told,
                  std::string& left) {
  for (;;) {
    IntakeText text = intake_text(intake);
    Sources sources;
    Diagnostics diagnostics;
    std::vector<NamedText> files = others;
    files.emplace_back(name, text.text);
    if (auto kit = read_kit_texts("kit", files, sources, diagnostics))
      cross_check(make_catalogue(std::move(*kit)), nullptr, diagnostics, {document_names()});
    bool changed = false;
    Diagnostics rest;
    for (const Diagnostic& d : diagnostics.all()) {
      if (d.severity != Severity::error || d.place.line == 0) continue;
      LineOrigin origin = origin_of(d.place, name, text);
      if (origin.row < 0) origin = origin_of(d.other, name, text);
      if (origin.row < 0) {
        rest.error(d.place, d.cause, d.hint, d.other, d.other_says);
        continue;
      }
      refuse(intake, origin, d, told);
      changed = true;
    }
    if (changed) continue;
    if (rest.has_errors()) left = render(rest, sources);
    return text;
  }
}

void report(const Intake& intake, const std::vector<std::string>& guesses, std::ostream& out) {
  out << on_screen("{}: {}\n", intake.file, intake.how);
  for (const IntakeColumn& column : intake.columns)
    if (!column.head.empty())
      out << on_screen("  {:<24} {}{}\n", "\"" + column.head + "\"",
                       column.key.empty() ? "no key: kept as comments" : "-> " + column.key,
                       column.unit.empty() ? "" : ", in " + column.unit);
  for (const std::string& guess : guesses) out << on_screen("guessed: {}\n", guess);
  for (const IntakeRow& row : intake.rows) {
    if (row.guesses.empty() || row.refused) continue;
    out << on_screen("guessed: line {} ({}): {}\n", row.place.line, row.text("code"), fmt::join(row.guesses, "; "));
  }
}

/// The spreadsheet's name as one that every system takes: no separators, no dash in front, none that one system reads
/// as a device. Two spreadsheets that come to one name are told apart by whoever imports the second.
fs::path new_file_for(const ImportOptions& options) {
  std::string stem;
  for (const char c : utf8::lower(options.file.stem().string().substr(0, 100))) {
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
    if (plain || !stem.empty()) stem += plain ? c : '-';
  }
  while (stem.ends_with('-')) stem.pop_back();
  const bool numbered = stem.size() == 4 && (stem.starts_with("com") || stem.starts_with("lpt")) &&
                        stem.back() >= '0' && stem.back() <= '9';
  const bool device = numbered || stem == "con" || stem == "prn" || stem == "aux" || stem == "nul";
  const bool ours = stem == "house";  // which an import may have to make
  if (stem.empty() || device || ours) stem += stem.empty() ? "spreadsheet" : "-spreadsheet";
  return options.kit / (stem + ".toml");
}

std::size_t count_of(const Intake& intake, const std::string& section) {
  return static_cast<std::size_t>(std::count_if(intake.rows.begin(), intake.rows.end(), [&](const IntakeRow& row) {
    return row.section == section && !row.refused;
  }));
}

/// Reads the spreadsheet; false where it cannot be, which is told.
bool read_sheet(const ImportOptions& options, const Kit& kit, Sources& sources, Intake& intake,
                std::vector<std::string>& guesses, Diagnostics& told) {
  const auto bytes = load_bytes(options.file.string(), sources, told);
  if (!bytes) return false;
  const CsvTable table = read_csv(options.file.string(), *bytes, sources, told);
  if (!told.has_errors()) intake = read_rows(table, options.as, kit, {options.columns, options.units}, guesses, told);
  return !told.has_errors();
}

/// New files of the kit, by name in its folder.
using NewTexts = std::vector<NamedText>;

/// The text of the spreadsheet's file, and that of a house where the kit has none. `left`: mistakes that were there.
NewTexts texts_for(const ImportOptions& options, const Standing& standing, Intake& intake,
                   std::vector<std::string>& guesses, Diagnostics& told, std::string& left) {
  NewTexts out;
  std::vector<NamedText> others = standing.files;
  if (!standing.house) {
    const std::string house = (options.kit / house_name).string();
    out.emplace_back(house_name, house_text(intake));
    others.emplace_back(house, out.back().second);
    guesses.push_back("the kit has no [house]: " + house + " is made, to be changed to your own");
  }
  const fs::path target = new_file_for(options);
  out.emplace_back(target.filename().string(), settle(intake, others, target.string(), told, left).text);
  return out;
}

}  // namespace

int import_table(const ImportOptions& options, Desk& desk) {
  if (options.weights) return import_weights(options, desk);
  Sources sources;
  Diagnostics told;
  Standing standing;
  const fs::path target = new_file_for(options);
  // Held from before the kit is read: what another run adds meanwhile might be there twice.
  std::optional<FileSet> files;
  if (!options.dry_run && (!fs::exists(options.kit) || fs::is_directory(options.kit)))
    files.emplace(options.kit, desk.err);
  if (!load_standing(options.kit, sources, standing, desk.err)) return 1;
  if (files && dunnage::standing(target) != fs::file_type::not_found)
    throw UsageError(target.string() +
                     " is there already; move it away, or rename the spreadsheet. Nothing was written");
  Intake intake;
  std::vector<std::string> guesses;
  std::string left;
  NewTexts texts;
  if (read_sheet(options, standing.kit, sources, intake, guesses, told))
    texts = texts_for(options, standing, intake, guesses, told, left);
  if (told.has_errors()) {
    desk.err << render(told, sources) << "Nothing was written.\n";
    return 1;
  }
  if (files) {
    for (const auto& [name, text] : texts) files->add_new(name, text);
    files->commit();
  }
  report(intake, guesses, desk.out);
  desk.err << render(told, sources);
  if (!left.empty()) desk.err << left << "These mistakes were in the kit before; mend them next.\n";
  const std::string found = on_screen("{} cases, {} items", count_of(intake, "case"), count_of(intake, "item"));
  desk.out << (files ? on_screen("{}  {}\n", target.string(), found)
                     : on_screen("{} would be ({}):\n\n", target.string(), found) + texts.back().second);
  return told.all().empty() && left.empty() ? 0 : 2;
}

}  // namespace dunnage
