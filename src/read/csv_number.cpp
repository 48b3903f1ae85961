// SPDX-License-Identifier: MIT
#include "read/csv_number.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "base/diagnostic.h"
#include "base/utf8.h"

namespace dunnage {
namespace {

using Pair = std::pair<std::string_view, std::string_view>;

constexpr std::array<Pair, 19> signs = {{{"\u00A0", " "},
                                         {"\u202F", " "},
                                         {"\u2009", " "},
                                         {"\u201C", "\""},
                                         {"\u201D", "\""},
                                         {"\u2033", "\""},
                                         {"\u2032", "'"},
                                         {"\u2018", "'"},
                                         {"\u2019", "'"},
                                         {"\u00D7", "x"},
                                         {"\u2715", "x"},
                                         {"\u2013", "-"},
                                         {"\u2212", "-"},
                                         {"\u00BD", " 1/2"},
                                         {"\u00BC", " 1/4"},
                                         {"\u00BE", " 3/4"},
                                         {"\u00B2", "2"},
                                         {"\u00B3", "3"},
                                         {"\u00B0", " "}}};

constexpr std::array<Pair, 40> unit_words = {
    {{"lbs", "lb"},   {"lb.", "lb"},      {"lbs.", "lb"},      {"pound", "lb"}, {"pounds", "lb"}, {"#", "lb"},
     {"ounce", "oz"}, {"ounces", "oz"},   {"oz.", "oz"},       {"kgs", "kg"},   {"kg.", "kg"},    {"kilo", "kg"},
     {"kilos", "kg"}, {"kilogram", "kg"}, {"kilograms", "kg"}, {"gram", "g"},   {"grams", "g"},   {"gr", "g"},
     {"\"", "in"},    {"''", "in"},       {"in.", "in"},       {"inch", "in"},  {"inches", "in"}, {"ins", "in"},
     {"'", "ft"},     {"ft.", "ft"},      {"foot", "ft"},      {"feet", "ft"},  {"cms", "cm"},    {"cm.", "cm"},
     {"mms", "mm"},   {"mtr", "m"},       {"metre", "m"},      {"metres", "m"}, {"meter", "m"},   {"meters", "m"},
     {"yards", "yd"}, {"watts", "W"},     {"watt", "W"},       {"w", "W"}}};

void replace_all(std::string& text, std::string_view what, std::string_view by) {
  for (std::size_t at = 0; (at = text.find(what, at)) != std::string::npos; at += by.size())
    text.replace(at, what.size(), by);
}

/// "1 250", "1.250.000": up to three digits, then threes, with one sign between. A number without signs is, too.
bool in_threes(std::string_view whole) {
  const auto digits = [](std::string_view part) { return std::all_of(part.begin(), part.end(), digit); };
  const std::size_t first = std::min(whole.find_first_not_of("0123456789"), whole.size());
  if (first < whole.size() && (first == 0 || first > 3)) return false;
  for (std::size_t at = first; at < whole.size(); at += 4)
    if (whole[at] != whole[first] || at + 4 > whole.size() || !digits(whole.substr(at + 1, 3))) return false;
  return true;
}

/// The sign before the decimals; 0: there are none. A lone sign before three digits is as `decimals` says.
char decimal_sign(const std::string& typed, Decimals decimals) {
  const std::size_t comma = typed.rfind(','), point = typed.rfind('.');
  if (comma != std::string::npos && point != std::string::npos) return comma > point ? ',' : '.';
  const char sign = comma != std::string::npos ? ',' : '.';
  if (std::count(typed.begin(), typed.end(), sign) != 1) return 0;
  const bool thousand = in_threes(typed) && !typed.starts_with("0,");
  return sign == ',' && thousand && decimals == Decimals::point ? '\0' : sign;
}

/// "1.250,5" or "1,250.5" or "1 250" with a point and nothing else. Empty: it is no number, as "1.2.3".
std::string one_number(const std::string& typed, Decimals decimals, std::string& guess) {
  const char sign = decimal_sign(typed, decimals);
  const std::size_t end = sign ? typed.find(sign) : typed.size();
  const std::string part = sign ? typed.substr(end + 1) : "";
  std::string whole = typed.substr(0, end);
  if (!in_threes(whole) || !std::all_of(part.begin(), part.end(), digit)) return {};
  std::erase_if(whole, [](char c) { return !digit(c); });
  const std::string number = whole + (part.empty() ? "" : "." + part);
  const bool two_ways = in_threes(typed) && !typed.starts_with("0");
  if (two_ways && std::count(typed.begin(), typed.end(), ',') == 1)
    guess = in_quotes(typed) + " read as " + number;
  else if (two_ways && decimals == Decimals::comma && std::count(typed.begin(), typed.end(), '.') == 1)
    guess = in_quotes(typed) + " read as " + number + ", not as " + whole + part;
  return number;
}

/// A number at `at`, with a proper fraction after it ("5 1/2") or as such a fraction; `at` moves behind it. Empty: none
/// there. "14/12" and "-1/2" are something else than a number.
std::string take_number(std::string_view text, std::size_t& at, Decimals decimals, std::string& guess) {
  std::size_t end = at;
  if (end < text.size() && (text[end] == '-' || text[end] == '+')) ++end;
  const std::size_t first = end;
  const auto belongs = [&](std::size_t i) {
    if (digit(text[i])) return true;
    const bool between = i > first && digit(text[i - 1]) && i + 1 < text.size() && digit(text[i + 1]);
    if (!between) return false;
    if (text[i] == '.' || text[i] == ',') return true;
    const bool three = i + 3 < text.size() && digit(text[i + 2]) && digit(text[i + 3]) &&
                       (i + 4 >= text.size() || (!digit(text[i + 4]) && text[i + 4] != '/'));
    return (text[i] == ' ' || text[i] == '\'') && three;
  };
  while (end < text.size() && belongs(end)) ++end;
  if (end == first) return {};
  const std::string sign(text.substr(at, first - at));
  std::string number = one_number(std::string(text.substr(first, end - first)), decimals, guess);
  if (number.empty()) return {};
  number = sign + number;
  at = end;
  // "5 1/2": the fraction joins the whole; "1/2" alone begins with its numerator.
  const bool alone = at < text.size() && text[at] == '/';
  std::size_t top = alone ? first : text.find_first_not_of(' ', at);
  const std::size_t slash = text.find('/', top == std::string_view::npos ? text.size() : top);
  if (top == std::string_view::npos || slash == std::string_view::npos || slash == top || slash + 1 >= text.size())
    return number;
  const std::string_view over = text.substr(top, slash - top);
  std::size_t after = slash + 1;
  while (after < text.size() && digit(text[after])) ++after;
  if (!std::all_of(over.begin(), over.end(), digit) || after == slash + 1 || over.size() > 3 || after - slash > 4)
    return number;
  const int above = std::stoi(std::string(over)),
            under = std::stoi(std::string(text.substr(slash + 1, after - slash - 1)));
  if (above >= under || !sign.empty()) return {};
  at = after;
  const std::string value = plain((alone ? 0 : std::stod(number)) + static_cast<double>(above) / under, 6);
  if (alone) guess = in_quotes(text.substr(top, after - top)) + " read as " + value;
  return value;
}

}  // namespace

std::string plain_signs(std::string_view cell) {
  std::string out(cell);
  for (const auto& [from, to] : signs) replace_all(out, from, to);
  const std::size_t first = out.find_first_not_of(" \t\r\n");
  if (first == std::string::npos) return {};
  return out.substr(first, out.find_last_not_of(" \t\r\n") - first + 1);
}

std::string unit_symbol(std::string_view word) {
  for (const UnitName& unit : unit_names())
    if (unit.symbol == word) return std::string(unit.symbol);
  const std::string low = utf8::lower(word);
  for (const UnitName& unit : unit_names())
    if (utf8::lower(unit.symbol) == low) return std::string(unit.symbol);
  for (const auto& [typed, symbol] : unit_words)
    if (typed == low) return std::string(symbol);
  return {};
}

CellNumber read_number(std::string_view cell, Decimals decimals) {
  CellNumber out;
  std::string text = plain_signs(cell);
  for (const char* about : {"~", "approx. ", "approx ", "about ", "ca. ", "ca ", "c. "}) {
    if (!utf8::lower(text).starts_with(about)) continue;
    text.erase(0, std::string_view(about).size());
    out.guess = "\"about\" left out";
    break;
  }
  std::size_t at = text.find_first_not_of(' ');
  while (at < text.size()) {
    const std::string number = take_number(text, at, decimals, out.guess);
    if (number.empty()) return out;
    while (at < text.size() && text[at] == ' ') ++at;
    std::size_t end = at;
    while (end < text.size() && text[end] != ' ' && !digit(text[end]) && text[end] != '-') ++end;
    while (end < text.size() && end > at && digit(text[end]) && end + 1 == text.size()) ++end;  // "m2"
    const std::string unit = unit_symbol(std::string_view(text).substr(at, end - at));
    if (end > at && unit.empty()) return out;
    out.has_unit = !unit.empty();
    out.text += (out.text.empty() ? "" : " ") + number + (unit.empty() ? "" : " " + unit);
    at = end;
    while (at < text.size() && text[at] == ' ') ++at;
    if (!out.has_unit && at < text.size()) return out;
  }
  out.ok = !out.text.empty();
  return out;
}

}  // namespace dunnage
