// SPDX-License-Identifier: MIT
// Typed text to SI. What cannot be read is answered with the cause and the remedy.
#include <charconv>
#include <cmath>
#include <system_error>

#include "base/diagnostic.h"
#include "base/nearest.h"
#include "base/unit.h"

namespace dunnage {
namespace {

/// An example of each measure as a person would type it.
const char* example(Measure measure) {
  switch (measure) {
    case Measure::mass:
      return "27 lb or 12.5 kg";
    case Measure::length:
      return "6 ft 4 in or 1.9 m";
    case Measure::paper:
      return "4 in or 100 mm";
    case Measure::area:
      return "4 ft2 or 0.4 m2";
    case Measure::volume:
      return "5 gal or 20 l";
    case Measure::duration:
      return "20 min or 5 h";
    case Measure::frequency:
      return "540.125 MHz or 80 Hz";
    case Measure::speed:
      return "25 mph or 11 m/s";
    case Measure::force:
      return "200 lbf or 900 N";
    case Measure::pressure:
      return "5 psf or 240 Pa";
    case Measure::density:
      return "1.2 kg/m3";
    case Measure::power:
      return "35 W or 1.2 kW";
    case Measure::current:
      return "16 A";
    case Measure::voltage:
      return "120 V";
    case Measure::resistance:
      return "0.4 ohm";
    case Measure::sound:
      return "98 dBA";
    case Measure::line:
      return "+4 dBu";
    case Measure::temperature:
      return "85 F or 29 C";
    case Measure::angle:
      return "30 deg";
  }
  return "";
}

std::string write_unit(Measure measure) { return std::string("write a unit, for example ") + example(measure); }

std::string a(Measure measure) {
  const std::string word = name(measure);
  return (word == "area" || word == "angle" ? "an " : "a ") + word;
}

std::vector<std::string> symbols(Measure measure) {
  std::vector<std::string> out;
  for (const UnitName& unit : unit_names())
    if (unit.measure == measure) out.emplace_back(unit.symbol);
  return out;
}

/// What people write for a unit, and the symbol that is read.
struct Spoken {
  std::string_view written, symbol;
};
constexpr Spoken spoken[] = {
    {"lbs", "lb"},   {"pound", "lb"},  {"pounds", "lb"}, {"#", "lb"},        {"kgs", "kg"},      {"kilo", "kg"},
    {"kilos", "kg"}, {"ounces", "oz"}, {"tonnes", "t"},  {"foot", "ft"},     {"feet", "ft"},     {"'", "ft"},
    {"inch", "in"},  {"inches", "in"}, {"\"", "in"},     {"metre", "m"},     {"metres", "m"},    {"meter", "m"},
    {"meters", "m"}, {"yards", "yd"},  {"miles", "mi"},  {"sqft", "ft2"},    {"sqm", "m2"},      {"litre", "l"},
    {"litres", "l"}, {"liter", "l"},   {"liters", "l"},  {"gallon", "gal"},  {"gallons", "gal"}, {"hr", "h"},
    {"hrs", "h"},    {"hour", "h"},    {"hours", "h"},   {"mins", "min"},    {"minute", "min"},  {"minutes", "min"},
    {"sec", "s"},    {"seconds", "s"}, {"kph", "km/h"},  {"kmh", "km/h"},    {"kt", "kn"},       {"kts", "kn"},
    {"knot", "kn"},  {"watt", "W"},    {"watts", "W"},   {"amp", "A"},       {"amps", "A"},      {"volt", "V"},
    {"volts", "V"},  {"Ω", "ohm"},     {"ohms", "ohm"},  {"degrees", "deg"}, {"dB(A)", "dBA"},
};

QuantityProblem unknown_unit(std::string_view typed, Measure measure) {
  const std::string quoted = in_quotes(typed);
  for (const UnitName& unit : unit_names())
    if (unit.symbol == typed)
      return {quoted + " is a unit of " + name(unit.measure) + ", not of " + name(measure),
              "write " + a(measure) + ", for example " + example(measure)};
  const std::string cause = quoted + " is not a unit of " + name(measure);
  for (const Spoken& s : spoken)
    for (const std::string& symbol : symbols(measure))
      if (s.written == typed && s.symbol == symbol) return {cause, "write \"" + symbol + "\""};
  std::string hint = did_you_mean(typed, symbols(measure));
  if (hint.empty()) hint = "units of " + std::string(name(measure)) + ": " + listed(symbols(measure));
  return {cause, hint};
}

void skip_spaces(std::string_view& rest) {
  while (!rest.empty() && (rest.front() == ' ' || rest.front() == '\t')) rest.remove_prefix(1);
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes a number off the front of `rest`; nothing where there is none or it is too large or too small for any use.
std::optional<double> take_number(std::string_view& rest) {
  std::string_view text = rest;
  const bool plus = !text.empty() && text.front() == '+';
  if (plus) text.remove_prefix(1);
  const std::size_t sign = !plus && !text.empty() && text.front() == '-' ? 1 : 0;
  if (text.size() <= sign || !(is_digit(text[sign]) || text[sign] == '.')) return std::nullopt;
  double value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || !std::isfinite(value) || is_too_small(value)) return std::nullopt;
  rest = text.substr(static_cast<std::size_t>(end - text.data()));
  return value;
}

/// Takes what stands between a number and the next space.
std::string_view take_symbol(std::string_view& rest) {
  skip_spaces(rest);
  if (!rest.empty() && (is_digit(rest.front()) || rest.front() == '-' || rest.front() == '+')) return {};
  const std::string_view symbol = rest.substr(0, rest.find_first_of(" \t"));
  rest.remove_prefix(symbol.size());
  return symbol;
}

const UnitName* find_unit(std::string_view symbol, Measure measure) {
  for (const UnitName& unit : unit_names())
    if (unit.measure == measure && unit.symbol == symbol) return &unit;
  return nullptr;
}

QuantityProblem no_number(std::string_view text, Measure measure) {
  return {"\"" + std::string(text) + "\" is not " + a(measure),
          std::string("write a number and a unit, for example ") + example(measure)};
}

}  // namespace

ParsedQuantity parse_quantity(std::string_view text, Measure measure) {
  const auto problem = [](QuantityProblem p) { return ParsedQuantity{std::nullopt, std::move(p)}; };
  std::string_view rest = text;
  skip_spaces(rest);
  double total = 0, sign = 1;
  const UnitName* before = nullptr;
  do {
    const bool negative = !rest.empty() && rest.front() == '-';
    const std::optional<double> number = take_number(rest);
    if (!number || (before && negative)) return problem(no_number(text, measure));
    if (!rest.empty() && rest.front() == ',')
      return problem({"there is a comma in the number", "write 1200 for a thousand and two hundred, 0.5 for a half"});
    const std::string_view symbol = take_symbol(rest);
    if (symbol.empty()) return problem({"the number has no unit", write_unit(measure)});
    const UnitName* unit = find_unit(symbol, measure);
    if (!unit) return problem(unknown_unit(symbol, measure));
    if (before && (unit->offset != 0 || unit->factor >= before->factor))
      return problem({"\"" + std::string(unit->symbol) + "\" cannot follow \"" + std::string(before->symbol) + "\"",
                      std::string("write the larger unit first, for example ") + example(measure)});
    if (!before && negative) sign = -1;
    total += before ? sign * *number * unit->factor : *number * unit->factor + unit->offset;
    before = unit;
    skip_spaces(rest);
  } while (!rest.empty());
  return {total, {}};
}

namespace {

/// The parts between the signs of multiplication: "x", "X" or "×" with spaces or digits around.
std::vector<std::string_view> split_by_times(std::string_view text) {
  std::vector<std::string_view> parts;
  std::size_t begin = 0;
  for (std::size_t at = 0; at < text.size(); ++at) {
    const bool cross = text.substr(at, 2) == "×";
    if (!cross && text[at] != 'x' && text[at] != 'X') continue;
    parts.push_back(text.substr(begin, at - begin));
    if (cross) ++at;
    begin = at + 1;
  }
  parts.push_back(text.substr(begin));
  return parts;
}

std::string_view trimmed(std::string_view text) {
  skip_spaces(text);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t')) text.remove_suffix(1);
  return text;
}

}  // namespace

ParsedLengths parse_lengths(std::string_view text, std::size_t count) {
  static const char* const examples[] = {"", "31 in", "10 x 10 ft", "29 x 21 x 18 in"};
  const std::string hint = std::string("write it like ") + examples[count < 4 ? count : 3];
  ParsedLengths out;
  const std::vector<std::string_view> parts = split_by_times(text);
  if (parts.size() != count) {
    out.problem = {
        "expected " + std::to_string(count) + " lengths with x between, found " + std::to_string(parts.size()), hint};
    return out;
  }
  // The unit of the last part serves the parts that have none.
  std::string_view last = trimmed(parts.back());
  std::string_view symbol;
  while (!last.empty() && take_number(last)) {
    symbol = take_symbol(last);
    skip_spaces(last);
  }
  for (const std::string_view part : parts) {
    std::string typed(trimmed(part));
    std::string_view rest = typed;
    if (!symbol.empty() && take_number(rest) && trimmed(rest).empty()) typed += " " + std::string(symbol);
    const ParsedQuantity parsed = parse_quantity(typed, Measure::length);
    if (!parsed.si) {
      out.lengths.clear();
      out.problem = parsed.problem;
      return out;
    }
    out.lengths.push_back(Length::from_si(*parsed.si));
  }
  return out;
}

}  // namespace dunnage
