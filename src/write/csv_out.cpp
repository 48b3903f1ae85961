// SPDX-License-Identifier: MIT
#include "write/csv_out.h"

#include <string_view>

namespace dunnage {
namespace {

/// What a spreadsheet would run instead of showing it, however many apostrophes stand before it.
bool is_formula(std::string_view cell) {
  const std::size_t first = cell.find_first_not_of("' ");
  return first != std::string_view::npos && std::string_view("=+-@\t\r").find(cell[first]) != std::string_view::npos;
}

/// A semicolon or a tab is quoted too, so that no reader takes it for the delimiter.
std::string cell_text(const std::string& typed) {
  const std::string cell = is_formula(typed) ? "'" + typed : typed;
  const bool blank_ends = !cell.empty() && (cell.front() == ' ' || cell.back() == ' ');
  if (!blank_ends && cell.find_first_of(",;\t\"\r\n") == std::string::npos) return cell;
  std::string out = "\"";
  for (const char c : cell) out += c == '"' ? std::string("\"\"") : std::string(1, c);
  return out + "\"";
}

}  // namespace

std::string csv_text(const std::vector<std::vector<std::string>>& rows) {
  std::string out;
  for (const auto& row : rows) {
    for (std::size_t i = 0; i < row.size(); ++i) out += (i == 0 ? "" : ",") + cell_text(row[i]);
    out += "\r\n";
  }
  return out;
}

}  // namespace dunnage
