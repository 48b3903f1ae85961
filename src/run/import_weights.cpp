// SPDX-License-Identifier: MIT
#include "run/import_weights.h"

#include <fmt/format.h>

#include <cassert>
#include <cmath>
#include <fstream>

#include "read/csv_weights.h"
#include "read/kit_file.h"
#include "run/file_set.h"
#include "run/load_show.h"
#include "write/weigh_edit.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

/// The reader drops a byte order mark; what is written back must have it again.
std::string mark_of(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  char three[3] = {};
  in.read(three, 3);
  return in && std::string(three, 3) == "\xEF\xBB\xBF" ? std::string(three, 3) : std::string();
}

/// Reads the edited texts as a kit again: each change must be there. Our mistake if not, and nothing is written.
void prove(const Catalogue& before, const WeighEdit& edit, const std::vector<ScaleReading>& readings) {
  Sources sources;
  Diagnostics diagnostics;
  std::vector<NamedText> files;
  for (auto& [name, text] : load_kit_texts(before.kit.folder, sources, diagnostics)) {
    const auto at = edit.files.find(name);
    files.emplace_back(name, at == edit.files.end() ? text : at->second);
  }
  auto kit = read_kit_texts(before.kit.folder, files, sources, diagnostics);
  assert(kit && !diagnostics.has_errors() && "an edited kit reads as before");
  const Catalogue after = make_catalogue(std::move(*kit));
  assert(after.units.size() == before.units.size());
  for (const WeighChange& change : edit.changes)
    for (const ScaleReading& reading : readings) {
      if (reading.code.value != change.code) continue;
      const int box = after.case_index(change.code);
      const int unit = box >= 0 ? after.units_of[static_cast<std::size_t>(box)].first : after.unit_index(change.code);
      const Maybe<Mass>& weighed = box >= 0 ? after.kit.cases[static_cast<std::size_t>(box)].weighed : after.units[static_cast<std::size_t>(unit)].weighed;
      assert(weighed && std::abs(weighed->value.si() - reading.mass.value.si()) < 1e-6);
      (void)weighed;
    }
}

void write_over(const fs::path& folder, const WeighEdit& edit, std::ostream& err) {
  FileSet files(folder);
  std::vector<std::pair<fs::path, fs::perms>> kept;
  for (const auto& [name, text] : edit.files) {
    kept.emplace_back(name, fs::status(name).permissions());
    files.add(fs::path(name).filename().string(), mark_of(name) + text);
  }
  files.commit();
  files.tell_removed(err);
  std::error_code ignored;
  for (const auto& [name, permissions] : kept) fs::permissions(name, permissions, ignored);
}

}  // namespace

int import_weights(const ImportOptions& options, Desk& desk) {
  Loaded loaded;
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  Diagnostics told;
  const auto bytes = load_bytes(options.file.string(), loaded.sources, told);
  std::vector<ScaleReading> readings;
  if (bytes) {
    const CsvTable table = read_csv(options.file.string(), *bytes, loaded.sources, told);
    if (!told.has_errors()) readings = read_weights(table, loaded.catalogue, {options.columns, options.units}, told);
  }
  if (told.has_errors()) {
    desk.err << render(told, loaded.sources) << "Nothing was written.\n";
    return 1;
  }
  const WeighEdit edit = weigh_edit(loaded.catalogue, readings, told);
  prove(loaded.catalogue, edit, readings);
  for (const WeighChange& change : edit.changes)
    desk.out << fmt::format("{:<12} {} -> {}  ({})\n", change.code, change.before.empty() ? "not weighed" : change.before, change.after, change.place.words());
  if (!edit.same.empty()) desk.out << fmt::format("as before: {}\n", fmt::join(edit.same, ", "));
  desk.err << render(told, loaded.sources);
  if (!options.dry_run && !edit.files.empty()) write_over(options.kit, edit, desk.err);
  desk.out << fmt::format("{} masses {}\n", edit.changes.size(), options.dry_run ? "would be written" : "written");
  return told.all().empty() ? 0 : 2;
}

}  // namespace dunnage
