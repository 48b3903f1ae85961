// SPDX-License-Identifier: MIT
#include "run/import_weights.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "base/file_bytes.h"
#include "read/cross_check.h"
#include "read/csv_weights.h"
#include "read/kit_file.h"
#include "run/file_set.h"
#include "run/load_show.h"
#include "run/on_screen.h"
#include "write/weigh_edit.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

/// The reader drops a byte order mark; what is written back must have it again.
std::string mark_of(const std::string& path) {
  constexpr std::string_view mark = "\xEF\xBB\xBF";
  return first_bytes(path, mark.size()).bytes == mark ? std::string(mark) : std::string();
}

/// Whether the scale's word for a code, of a case or of a unit, is what the kit says now.
bool says(const Catalogue& c, const std::string& code, Mass mass) {
  const int unit = c.unit_index(code), box = c.case_index(code);
  if (unit < 0 && box < 0) return false;
  const Maybe<Mass>& weighed =
      unit >= 0 ? c.units[static_cast<std::size_t>(unit)].weighed : c.kit.cases[static_cast<std::size_t>(box)].weighed;
  return weighed && std::abs(weighed->value.si() - mass.si()) < 1e-6;
}

/// Reads the kit's texts, edited, as a kit again: each mass must be there. What is wrong; empty: nothing is.
std::string fault_of(const Catalogue& before, std::vector<NamedText> files, const WeighEdit& edit,
                     const std::vector<ScaleReading>& readings) {
  Sources sources;
  Diagnostics diagnostics;
  for (auto& [name, text] : files)
    if (const auto at = edit.files.find(name); at != edit.files.end()) text = at->second;
  auto kit = read_kit_texts(before.kit.folder, files, sources, diagnostics);
  Catalogue after;
  if (kit) after = make_catalogue(std::move(*kit));
  if (kit) cross_check(after, nullptr, diagnostics);
  for (const Diagnostic& d : diagnostics.all())
    if (d.severity == Severity::error) return d.place.words() + ", " + d.cause;
  if (!kit || after.units.size() != before.units.size()) return "the kit would not have the cases that it has";
  for (const WeighChange& change : edit.changes)
    if (!says(after, change.code, change.mass)) return in_quotes(change.code) + " would not weigh " + change.after;
  const std::set<std::string> same(edit.same.begin(), edit.same.end());
  for (const ScaleReading& reading : readings) {
    if (same.count(reading.code.value) > 0 && !says(after, reading.code.value, reading.mass.value))
      return in_quotes(reading.code.value) + " would not weigh " + reading.typed;
  }
  return {};
}

int nothing_written(const Diagnostics& told, const Loaded& loaded, Desk& desk) {
  desk.err << render(told, loaded.sources) << "Nothing was written.\n";
  return 1;
}

void write_changes(FileSet& files, const std::vector<NamedText>& before, const WeighEdit& edit) {
  for (const auto& [name, text] : before)
    if (const auto at = edit.files.find(name); at != edit.files.end()) {
      const std::string mark = mark_of(name);
      files.add_change(fs::path(name).filename().string(), mark + text, mark + at->second);
    }
  if (!edit.files.empty()) files.commit();
}

void report(const WeighEdit& edit, const std::vector<ScaleReading>& readings, std::ostream& out) {
  for (const ScaleReading& reading : readings)
    if (!reading.guess.empty())
      out << on_screen("guessed: line {} ({}): weighed: {}\n", reading.mass.place.line, reading.code.value,
                       reading.guess);
  for (const WeighChange& change : edit.changes)
    out << on_screen("{:<12} {} -> {}  ({})\n", change.code, change.before.empty() ? "not weighed" : change.before,
                     change.after, change.place.words());
  if (!edit.same.empty()) out << on_screen("as before: {}\n", fmt::join(edit.same, ", "));
}

}  // namespace

int import_weights(const ImportOptions& options, Desk& desk) {
  // Held from before the kit is read: what another run writes meanwhile would be lost.
  std::optional<FileSet> files;
  if (!options.dry_run && fs::is_directory(options.kit)) files.emplace(options.kit, desk.err);
  Loaded loaded(desk.share);
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  const std::vector<NamedText> texts = texts_of(loaded.sources);
  Diagnostics told;
  const auto bytes = load_bytes(options.file.string(), loaded.sources, told);
  std::vector<ScaleReading> readings;
  if (bytes) {
    const CsvTable table = read_csv(options.file.string(), *bytes, loaded.sources, told);
    if (!told.has_errors()) readings = read_weights(table, loaded.catalogue, {options.columns, options.units}, told);
  }
  if (told.has_errors()) return nothing_written(told, loaded, desk);
  const WeighEdit edit = weigh_edit(loaded.catalogue, readings, told);
  const std::string fault = edit.files.empty() ? "" : fault_of(loaded.catalogue, texts, edit, readings);
  if (!fault.empty()) {
    told.error({readings.front().code.place.file, 0, 0, 1},
               "the masses cannot be written into the kit for you: " + fault, "write them into the kit yourself");
    return nothing_written(told, loaded, desk);
  }
  if (files) write_changes(*files, texts, edit);
  report(edit, readings, desk.out);
  desk.err << render(told, loaded.sources);
  desk.out << on_screen("{} masses {}\n", edit.changes.size(), options.dry_run ? "would be written" : "written");
  return told.all().empty() ? 0 : 2;
}

}  // namespace dunnage
