// SPDX-License-Identifier: MIT
// A spreadsheet as cases, as items and as readings of a scale. What an import writes must be TOML.
#include <cassert>
#include <sstream>

#include "ground.h"
#include "read/csv_rows.h"
#include "read/csv_weights.h"
#include "read/kit_file.h"
#include "write/intake_text.h"
#include "write/weigh_edit.h"

namespace {

using namespace dunnage;

void as_rows(const std::string& bytes, const char* section) {
  Sources sources;
  Diagnostics told;
  const CsvTable table = read_csv("gear.csv", bytes, sources, told);
  std::vector<std::string> guesses;
  const Intake intake = read_rows(table, section, ground().catalogue.kit, {}, guesses, told);
  assert(!render(told, sources).empty() || told.all().empty());
  if (told.has_errors()) return;
  const IntakeText text = intake_text(intake);
  Diagnostics read;
  // What the reader refuses, the import takes out again line by line: each mistake must stand on a line.
  const auto kit = read_kit_texts("kit", {{"gear.toml", text.text}}, sources, read);
  for (const Diagnostic& mistake : read.all()) assert(kit || mistake.place.line > 0);
}

void as_weights(const std::string& bytes) {
  Sources sources;
  Diagnostics told;
  const CsvTable table = read_csv("scale.csv", bytes, sources, told);
  const auto readings = read_weights(table, ground().catalogue, {}, told);
  const WeighEdit edit = weigh_edit(ground().catalogue, readings, told);
  assert(edit.files.empty() == edit.changes.empty());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  if (size > most_fuzzed) return -1;
  const std::string bytes(reinterpret_cast<const char*>(data), size);
  as_rows(bytes, "case");
  as_rows(bytes, "item");
  as_weights(bytes);
  return 0;
}
