// SPDX-License-Identifier: MIT
#include "write/intake_text.h"

#include "base/toml_quote.h"

namespace dunnage {
namespace {

std::string spelled(const IntakeValue& value) {
  if (const auto* text = std::get_if<std::string>(&value)) return toml_quoted(*text);
  if (const auto* raw = std::get_if<RawToml>(&value)) return raw->text;
  std::string out;
  for (const std::string& one : std::get<std::vector<std::string>>(value))
    out += (out.empty() ? "" : ", ") + toml_quoted(one);
  return "[" + out + "]";
}

/// Comments end at the line: line ends in a cell become slashes, and what TOML forbids in comments blanks.
std::string on_one_line(const std::string& text) {
  std::string out;
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    if (c == '\n')
      out += " / ";
    else if (c != '\r')
      out += (byte < 0x20 && c != '\t') || byte == 0x7F ? ' ' : c;
  }
  return out;
}

class Writer {
 public:
  void line(const std::string& text, LineOrigin origin = {}) {
    out.text += text + "\n";
    out.lines.push_back(origin);
  }
  void row(const IntakeRow& row, int index) {
    line("");
    const std::string lead = row.refused ? "# " : "";
    if (!row.lines.empty()) line(lead + "[[" + row.section + "]]", {index, -1});
    for (std::size_t i = 0; i < row.lines.size(); ++i) {
      const IntakeLine& one = row.lines[i];
      line(on_one_line((one.refused && !row.refused ? "# " : lead) + one.key + " = " + spelled(one.value)),
           {index, static_cast<int>(i)});
    }
    for (const std::string& text : row.beside) line("# " + on_one_line(text));
  }
  IntakeText out;
};

}  // namespace

IntakeText intake_text(const Intake& intake) {
  Writer writer;
  writer.line("# From the spreadsheet " + on_one_line(intake.file) + " (" + intake.how + ").");
  for (const std::string& text : intake.above) writer.line("# " + on_one_line(text));
  for (std::size_t i = 0; i < intake.rows.size(); ++i) writer.row(intake.rows[i], static_cast<int>(i));
  return std::move(writer.out);
}

}  // namespace dunnage
