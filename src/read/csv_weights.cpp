// SPDX-License-Identifier: MIT
#include "read/csv_weights.h"

#include <algorithm>
#include <map>

#include "base/range.h"
#include "base/utf8.h"
#include "read/csv_cell.h"
#include "read/csv_number.h"

namespace dunnage {
namespace {

const std::vector<Key> weight_keys = {{"code", "text", true, false, {}, {}, {}, {}},
                                      {"weighed", "mass", true, false, {}, {}, {}, {}}};

/// Codes of cases and units as the kit spells them, by their small letters.
std::map<std::string, std::string> spellings(const Catalogue& c) {
  std::map<std::string, std::string> out;
  for (const Case& box : c.kit.cases) out.emplace(utf8::lower(box.code.value), box.code.value);
  for (const CaseUnit& unit : c.units) out.emplace(utf8::lower(unit.code), unit.code);
  return out;
}

/// False where a cell stands in a column without a head, which is told: it may be the end of the mass.
bool under_heads(const std::vector<Text>& row, const CsvHead& head, Diagnostics& diagnostics) {
  for (std::size_t i = 0; i < row.size(); ++i) {
    if (!headless(head.columns, i) || plain_signs(row[i].value).empty()) continue;
    diagnostics.warning(row[i].place, in_quotes(row[i].value) + " stands in a column without a head",
                        "put a number with a comma into quotes, or head the column; the row is left out");
    return false;
  }
  return true;
}

}  // namespace

std::vector<ScaleReading> read_weights(const CsvTable& table, const Catalogue& catalogue, const ColumnWishes& wishes,
                                       Diagnostics& diagnostics) {
  const std::size_t before = diagnostics.errors();
  const CsvHead head = read_head(table, weight_keys, wishes, diagnostics);
  if (diagnostics.errors() > before) return {};
  const auto column = [&](const char* key) {
    const auto at =
        std::find_if(head.columns.begin(), head.columns.end(), [&](const IntakeColumn& c) { return c.key == key; });
    return static_cast<std::size_t>(at - head.columns.begin());
  };
  const std::size_t code_at = column("code"), mass_at = column("weighed"), none = head.columns.size();
  if (code_at == none || mass_at == none) {
    diagnostics.error({table.file, 0, 0, 1},
                      std::string("no column is headed as ") + (code_at == none ? "a code" : "a weight"),
                      "head the columns code and weight (lb), or say --column HEAD=code --column HEAD=weighed");
    return {};
  }
  for (const std::string& both : head.doubles)
    diagnostics.warning({table.file, 0, 0, 1}, both, "say --column HEAD=KEY for the one that counts");
  std::vector<std::string> cells;
  for (const CsvRow& row : table.rows)
    if (mass_at < row.cells.size()) cells.push_back(row.cells[mass_at].value);
  const Decimals decimals = decimals_of(cells, table.delimiter);
  const auto spelled = spellings(catalogue);
  std::vector<ScaleReading> out;
  for (std::size_t r = head.row + 1; r < table.rows.size(); ++r) {
    const std::vector<Text>& row = table.rows[r].cells;
    const std::string code = code_at < row.size() ? plain_signs(row[code_at].value) : "";
    const std::string mass = mass_at < row.size() ? plain_signs(row[mass_at].value) : "";
    if (code.empty() && mass.empty()) continue;
    if (code.empty() || mass.empty()) {
      diagnostics.warning(table.rows[r].place,
                          code.empty() ? "this row has a mass and no code" : in_quotes(code) + " has no mass",
                          "fill it in, or leave the row out");
      continue;
    }
    if (!under_heads(row, head, diagnostics)) continue;
    const ReadCell read = read_quantity_cell(mass, {Measure::mass}, head.columns[mass_at].unit, decimals);
    const auto parsed = read.value ? parse_quantity(std::get<std::string>(*read.value), Measure::mass)
                                   : ParsedQuantity{std::nullopt, {read.cause, read.hint}};
    if (!parsed.si)
      diagnostics.warning(row[mass_at].place, parsed.problem.cause, parsed.problem.hint);
    else if (!within(range::case_mass, *parsed.si))
      diagnostics.warning(row[mass_at].place, in_quotes(mass) + " is out of range",
                          std::string(range::case_mass.name) + ": " + words(range::case_mass));
    else
      out.push_back({{spelled.contains(utf8::lower(code)) ? spelled.at(utf8::lower(code)) : code, row[code_at].place},
                     {Mass::from_si(*parsed.si), row[mass_at].place},
                     std::get<std::string>(*read.value),
                     read.guess});
  }
  return out;
}

}  // namespace dunnage
