// SPDX-License-Identifier: MIT
// The parsing is libcsv's: the one reader that Debian keeps which takes the delimiter at run time, line ends in
// quotes, and quotes that no standard allows. Fed byte by byte, since it knows no places.
#include "read/csv_text.h"

#include <csv.h>

#include <algorithm>
#include <map>
#include <new>
#include <optional>

#include "base/utf8.h"
#include "read/csv_bytes.h"
#include "read/toml_file.h"

namespace dunnage {
namespace {

/// Tabs are delimiters here, never blanks.
int is_blank(unsigned char c) { return c == ' ' ? 1 : 0; }

class Parse {
 public:
  Parse(const SourceFile* file, char delimiter) : file_(file) {
    if (csv_init(&parser_, 0) != 0) throw std::bad_alloc();
    csv_set_blk_size(&parser_, 1 << 16);  // its room for a cell grows by so much: by 128 bytes, a megabyte takes long
    csv_set_delim(&parser_, static_cast<unsigned char>(delimiter));
    csv_set_space_func(&parser_, is_blank);
  }
  ~Parse() { csv_free(&parser_); }
  Parse(const Parse&) = delete;
  Parse& operator=(const Parse&) = delete;

  /// False where the last quote is not closed; `begun()` is its place then.
  bool rows(std::string_view text, std::vector<CsvRow>& out) {
    out_ = &out;
    for (const char c : text) {
      if (csv_parse(&parser_, &c, 1, cell, row, this) != 1) throw std::bad_alloc();
      step(c);
    }
    csv_set_opts(&parser_, CSV_STRICT | CSV_STRICT_FINI);  // strict at the end alone: it tells an open quote
    const bool closed = csv_fini(&parser_, cell, row, this) == 0;
    if (!closed) row(0, this);
    return closed;
  }
  Place begun() const { return {file_, begin_line_, begin_column_, 1}; }

 private:
  void step(char c) {
    if (c == '\n') {
      ++line_;
      column_ = 1;
    } else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) {
      ++column_;
    }
    const bool line_end = c == '\n' || c == '\r';
    if (fresh_ || (between_rows_ && line_end)) {
      begin_line_ = line_;
      begin_column_ = column_;
      fresh_ = false;
    }
    between_rows_ = between_rows_ && line_end;
  }
  static void cell(void* bytes, std::size_t size, void* self) {
    Parse& p = *static_cast<Parse*>(self);
    std::string text(static_cast<const char*>(bytes), size);
    const std::size_t first = text.find_first_not_of("' ");  // as write/csv_out.cpp marks what is no formula
    if (text.starts_with('\'') && first != text.npos && std::string_view("=+-@\t\r").find(text[first]) != text.npos)
      text.erase(0, 1);
    Place place = p.begun();
    place.width = static_cast<std::uint32_t>(std::clamp<std::size_t>(utf8::length(text), 1, 200));
    p.now_.cells.push_back({std::move(text), place});
    p.fresh_ = true;
  }
  static void row(int, void* self) {
    Parse& p = *static_cast<Parse*>(self);
    const auto says = [](const Text& text) { return text.value.find_first_not_of(" \t\r\n") != std::string::npos; };
    if (std::any_of(p.now_.cells.begin(), p.now_.cells.end(), says)) {
      p.now_.place = p.now_.cells.front().place;
      p.out_->push_back(std::move(p.now_));
    }
    p.now_ = {};
    p.between_rows_ = true;
  }

  csv_parser parser_{};
  const SourceFile* file_;
  std::vector<CsvRow>* out_ = nullptr;
  CsvRow now_;
  std::uint32_t line_ = 1, column_ = 1, begin_line_ = 1, begin_column_ = 1;
  bool fresh_ = false, between_rows_ = true;
};

/// How well a delimiter explains the text: rows of the commonest width above one, times that width.
std::size_t explains(const SourceFile* file, char delimiter) {
  std::vector<CsvRow> rows;
  const std::string_view text(file->text);
  const std::size_t line_end = text.find('\n', std::min<std::size_t>(text.size(), 20000));
  Parse(file, delimiter).rows(text.substr(0, line_end), rows);
  std::map<std::size_t, std::size_t> by_width;
  for (const CsvRow& row : rows)
    if (row.cells.size() > 1) ++by_width[row.cells.size()];
  std::size_t best = 0;
  for (const auto& [width, count] : by_width) best = std::max(best, count * count * std::min<std::size_t>(width, 8));
  return best;
}

char guess_delimiter(const SourceFile* file) {
  char best = ',';
  std::size_t most = 0;
  for (const char candidate : {',', ';', '\t'}) {
    const std::size_t score = explains(file, candidate);
    if (score > most) best = candidate;
    most = std::max(most, score);
  }
  return best;
}

/// What a first line "sep=;" says; 0: nothing. The line is taken out of `text`, its end is not: lines keep their
/// numbers.
char said_delimiter(std::string& text) {
  if (!text.starts_with("sep=") || text.size() < 5) return 0;
  const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
  if (end != 5) return 0;
  const char said = text[4];
  text.erase(0, end);
  return said;
}

}  // namespace

CsvTable read_csv(const std::string& name, const std::string& bytes, Sources& sources, Diagnostics& diagnostics) {
  Recoded recoded = to_utf8(bytes);
  CsvTable table;
  const char said = said_delimiter(recoded.text);
  std::erase(recoded.text, '\0');
  table.file = sources.add(name, std::move(recoded.text));
  table.encoding = recoded.encoding + (recoded.guessed ? " (guessed)" : "");
  table.delimiter = said ? said : guess_delimiter(table.file);
  if (recoded.lost > 0)
    diagnostics.warning({table.file, 0, 0, 1},
                        std::to_string(recoded.lost) + " signs could not be read as " + recoded.encoding,
                        "save the spreadsheet as UTF-8");
  Parse parse(table.file, table.delimiter);
  if (!parse.rows(table.file->text, table.rows))
    diagnostics.error(parse.begun(), "the quote that begins this cell is never closed",
                      "close it, or take it away; everything below was taken for one cell");
  return table;
}

std::optional<std::string> load_bytes(const std::string& path, Sources& sources, Diagnostics& diagnostics) {
  const SourceFile* file = load_text(path, sources, diagnostics);
  if (!file) return std::nullopt;
  return file->text;
}

}  // namespace dunnage
