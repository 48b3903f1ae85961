// SPDX-License-Identifier: MIT
#include "read/csv_cell.h"

#include <algorithm>
#include <cctype>
#include <regex>

#include "base/diagnostic.h"
#include "base/utf8.h"
#include "read/toml_inline.h"

namespace dunnage {
namespace {

/// No quantity, date or count is longer; the regular expressions below recurse once a sign.
constexpr std::size_t most_signs = 200;

ReadCell as_is(std::string text) { return {IntakeValue{std::move(text)}, {}, {}, {}}; }
ReadCell raw(std::string text, std::string guess = {}) {
  return {IntakeValue{RawToml{std::move(text)}}, std::move(guess), {}, {}};
}
ReadCell nothing() { return {}; }
ReadCell not_read(std::string cause, std::string hint) { return {std::nullopt, {}, std::move(cause), std::move(hint)}; }
ReadCell too_long(const std::string& cell, const std::string& kind) {
  return not_read("a cell of " + std::to_string(cell.size()) + " signs is no " + kind,
                  "check the quotes and the separators around it");
}
std::string read_as(const std::string& cell, const std::string& value) { return in_quotes(cell) + " read as " + value; }

std::vector<Measure> measures_of(const std::string& kind) {
  std::vector<Measure> out;
  for (const UnitName& unit : unit_names()) {
    const std::string word = name(unit.measure);
    const bool is = kind == word || kind.starts_with(word + " or ") || kind.ends_with(" or " + word);
    if (is && std::find(out.begin(), out.end(), unit.measure) == out.end()) out.push_back(unit.measure);
  }
  return out;
}

ReadCell read_flag(const std::string& cell) {
  const std::string word = utf8::lower(plain_signs(cell));
  if (word == "true" || word == "false") return raw(word);
  if (word == "yes" || word == "no" || word == "x") return raw(word == "no" ? "false" : "true");
  for (const char* yes : {"y", "1", "ja", "j", "si", "sí", "oui", "✓", "✔", "on"})
    if (word == yes) return raw("true", read_as(cell, "true"));
  for (const char* no : {"n", "0", "nein", "non", "off"})
    if (word == no) return raw("false", read_as(cell, "false"));
  return not_read(in_quotes(cell) + " is neither yes nor no", "write yes or no");
}

ReadCell read_count(const std::string& cell, Decimals decimals) {
  const std::string text = plain_signs(cell);
  if (!text.empty() && text.size() < 10 &&
      std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; })) {
    const std::size_t first = std::min(text.find_first_not_of('0'), text.size() - 1);
    return raw(text.substr(first), first > 0 || text != cell ? read_as(cell, text.substr(first)) : "");
  }
  static const std::regex words("^x?\\s*([0-9]{1,9})(?:[.,]0{1,2})?\\s*(?:x|pcs?\\.?|pieces?|units?|ea\\.?|each|off)?$",
                                std::regex::icase);
  std::smatch match;
  if (std::regex_match(text, match, words)) {
    const std::string digits = std::to_string(std::stol(match[1]));
    return raw(digits, read_as(cell, digits));
  }
  const CellNumber number = read_number(text, decimals);
  if (number.ok && !number.has_unit && number.text.find_first_not_of("0123456789") == std::string::npos)
    return raw(number.text, read_as(cell, number.text));
  return not_read(in_quotes(cell) + " is no whole number", "write how many, for example 4");
}

/// A month 13 would be no TOML, and would take the whole file with it.
ReadCell date_or_not(const std::string& cell, const std::string& date) {
  if (!inline_toml(date))
    return not_read(in_quotes(cell) + " is no day of the calendar", "write year-month-day: 2027-06-19");
  return raw(date, date == cell ? "" : read_as(cell, date));
}

ReadCell read_date(const std::string& cell) {
  static const std::regex iso("^([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})$");
  static const std::regex other("^([0-9]{1,2})([-/.])([0-9]{1,2})[-/.]([0-9]{4})$");
  const std::string text = plain_signs(cell);
  const auto two = [](const std::string& digits) { return digits.size() == 1 ? "0" + digits : digits; };
  std::smatch m;
  if (std::regex_match(text, m, iso)) {
    const std::string date = m[1].str() + "-" + two(m[2]) + "-" + two(m[3]);
    return date_or_not(cell, date);
  }
  if (!std::regex_match(text, m, other))
    return not_read(in_quotes(cell) + " is no date", "write year-month-day: 2027-06-19");
  const int first = std::stoi(m[1]), second = std::stoi(m[3]);
  const bool dots = m[2].str() == ".";
  if (!dots && first <= 12 && second <= 12 && first != second)
    return not_read(in_quotes(cell) + " may be two dates: day first or month first",
                    "write year-month-day: 2027-06-19");
  const bool day_first = dots || first > 12;
  const std::string date = m[4].str() + "-" + two(day_first ? m[3] : m[1]) + "-" + two(day_first ? m[1] : m[3]);
  return date_or_not(cell, date);
}

/// "29x21x18 in", "29\" x 21\" x 18\"" -> "29 x 21 x 18 in".
ReadCell read_lengths(const std::string& cell, const std::string& unit, Decimals decimals) {
  if (parse_lengths(cell, 3).problem.cause.empty() || parse_lengths(cell, 2).problem.cause.empty()) return as_is(cell);
  static const std::regex between("\\s*(?:x|\\*|\\bby\\b)\\s*", std::regex::icase);
  const std::string text = plain_signs(cell);
  std::vector<std::string> parts(std::sregex_token_iterator(text.begin(), text.end(), between, -1), {});
  std::string out, guess;
  bool last_has_unit = false;
  for (const std::string& part : parts) {
    const CellNumber number = read_number(part, decimals);
    if (!number.ok)
      return not_read(in_quotes(cell) + " is no size", "write length x width x height with a unit: 29 x 21 x 18 in");
    out += (out.empty() ? "" : " x ") + number.text;
    last_has_unit = number.has_unit;
    if (!number.guess.empty()) guess = number.guess;
  }
  if (!last_has_unit) {
    if (unit.empty())
      return not_read(in_quotes(cell) + " has no unit",
                      "write it in the cell, or in the head: Size (in); or say --unit size=in");
    out += " " + unit;
  }
  // A sheet's own spelling is no guess; what had no unit was told with its column.
  return {IntakeValue{out}, guess, {}, {}};
}

std::vector<std::string> parts_of(const std::string& text) {
  std::vector<std::string> out(1);
  for (const char c : text) {
    if (c == ';' || c == ',' || c == '\n' || c == '|') {
      out.emplace_back();
      continue;
    }
    out.back() += c;
  }
  for (std::string& part : out) part = plain_signs(part);
  std::erase(out, "");
  return out;
}

ReadCell read_texts(const std::string& cell, const Key& key) {
  if (cell.starts_with("["))
    if (const auto toml = inline_toml(cell)) return raw(*toml);
  std::vector<std::string> words = parts_of(cell);
  std::string guess;
  if (!key.words.empty())
    for (std::string& word : words) {
      std::string fitted = utf8::lower(word);
      std::replace(fitted.begin(), fitted.end(), ' ', '-');
      if (fitted == word) continue;
      guess = read_as(cell, "");
      word = fitted;
    }
  if (!guess.empty()) guess += listed(words);
  return {IntakeValue{words}, guess, {}, {}};
}

/// A text of the kit is one line; a cell may be of several.
ReadCell on_one_line(const std::string& cell) {
  if (cell.find_first_of("\r\n\t") == std::string::npos) return as_is(cell);
  std::string text;
  for (const std::string& word : split_words(cell)) text += (text.empty() ? "" : " ") + word;
  return {IntakeValue{text}, "written on one line", {}, {}};
}

ReadCell read_word(const std::string& cell, const Key& key) {
  if (key.words.empty()) return on_one_line(cell);
  for (const std::string& word : key.words)
    if (utf8::lower(plain_signs(cell)) == word)
      return {IntakeValue{word}, word == cell ? "" : read_as(cell, word), {}, {}};
  return not_read(in_quotes(key.name) + " cannot be " + in_quotes(cell), "one of: " + listed(key.words));
}

/// A dash, "n/a" or a question mark is how people leave a cell empty.
bool says_nothing(const std::string& cell) {
  const std::string word = utf8::lower(plain_signs(cell));
  for (const char* none : {"", "-", "--", "---", "n/a", "na", "?", "tbd", "none", "unknown"})
    if (word == none) return true;
  return false;
}

}  // namespace

std::vector<std::string> split_words(std::string_view text) {
  std::vector<std::string> out;
  std::size_t at = 0;
  while ((at = text.find_first_not_of(" \t\r\n", at)) != std::string_view::npos) {
    const std::size_t end = std::min(text.find_first_of(" \t\r\n", at), text.size());
    out.emplace_back(text.substr(at, end - at));
    at = end;
  }
  return out;
}

ReadCell read_quantity_cell(const std::string& cell, const std::vector<Measure>& measures, const std::string& unit,
                            Decimals decimals) {
  const std::string what = measures.empty() ? "quantity" : name(measures.front());
  if (cell.size() > most_signs) return too_long(cell, what);
  CellNumber number = read_number(cell, decimals);
  const bool two_ways = number.ok && !number.guess.empty();  // "1.000 kg" between decimal commas
  for (const Measure measure : measures)
    if (!two_ways && parse_quantity(cell, measure).si) return as_is(cell);
  if (!number.ok)
    return not_read(in_quotes(cell) + " is no " + what,
                    "write a number and a unit, for example " +
                        std::string(measures.front() == Measure::mass ? "27 lb or 12.5 kg" : "29 in or 74 cm"));
  if (!number.has_unit) {
    if (unit.empty())
      return not_read(in_quotes(cell) + " has no unit",
                      "write it in the cell, or in the head: Weight (lb); or say --unit KEY=UNIT");
    number.text += " " + unit;
  }
  return {IntakeValue{number.text}, number.guess, {}, {}};
}

ReadCell read_cell(const std::string& cell, const Key& key, const std::string& unit, Decimals decimals) {
  if (plain_signs(cell).empty()) return nothing();
  const std::vector<Measure> measures = measures_of(key.kind);
  if (key.kind == "text" || key.kind == "texts by language") return read_word(cell, key);
  if (key.kind == "list of sections") {
    if (!key.words.empty() && !cell.starts_with("[") && !cell.starts_with("{")) return read_word(cell, key);
    if (const auto toml = inline_toml(cell)) return raw(*toml);
    return not_read(in_quotes(cell) + " is not written as the kit wants it",
                    "write it as in the kit: [{ ... }, { ... }]");
  }
  if (says_nothing(cell)) return nothing();
  if (!measures.empty()) return read_quantity_cell(cell, measures, unit, decimals);
  if (cell.size() > most_signs && key.kind != "list of texts")
    return too_long(cell, key.kind == "lengths" ? "size" : key.kind);
  if (key.kind == "lengths") return read_lengths(cell, unit, decimals);
  if (key.kind == "true or false") return read_flag(cell);
  if (key.kind == "whole number") return read_count(cell, decimals);
  if (key.kind == "date") return read_date(cell);
  if (key.kind == "list of texts") return read_texts(cell, key);
  return as_is(cell);
}

bool has_numbers(const Key& key) {
  return key.kind == "lengths" || key.kind == "whole number" || key.kind == "number" || !measures_of(key.kind).empty();
}

Decimals decimals_of(const std::vector<std::string>& cells, char delimiter) {
  static const std::regex comma("[0-9],[0-9]{1,2}(?![0-9])|[0-9],[0-9]{4}|[0-9]\\.[0-9]{3},[0-9]");
  static const std::regex point("[0-9]\\.[0-9]{1,2}(?![0-9.])|[0-9],[0-9]{3}\\.[0-9]");
  long commas = 0, points = 0;
  for (const std::string& cell : cells) {
    commas += std::regex_search(cell, comma);
    points += std::regex_search(cell, point);
  }
  if (commas != points) return commas > points ? Decimals::comma : Decimals::point;
  return delimiter == ';' ? Decimals::comma : Decimals::point;
}

}  // namespace dunnage
