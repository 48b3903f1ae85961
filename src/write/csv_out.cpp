// SPDX-License-Identifier: MIT
#include "write/csv_out.h"

namespace dunnage {
namespace {

/// A semicolon or a tab is quoted too, so that no reader takes it for the delimiter.
std::string cell_text(const std::string& cell) {
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
