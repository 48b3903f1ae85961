// SPDX-License-Identifier: MIT
#include "document/phrase.h"

#include <algorithm>
#include <type_traits>

#include "base/utf8.h"

namespace dunnage {

std::string count_words(const Words& words, const std::string& one, const std::string& many, long n) {
  return words.say(n == 1 ? one : many, {{"n", std::to_string(n)}});
}

std::string mass_words(const Words& words, Mass mass, bool known, bool estimated, UnitSystem units) {
  if (!known) return words("mass.unknown");
  const std::string text = print(mass, units, Rounding::up).text();
  return estimated ? words.say("mass.estimated", {{"mass", text}}) : text;
}

std::string mass_words(const Words& words, const PlanRow& row, UnitSystem units) {
  return mass_words(words, row.mass, row.mass_known, row.estimated, units);
}

void PrintedSum::add(Mass mass, bool known, bool estimated) {
  if (!known) {
    ++unknown_;
    return;
  }
  value_ += print(mass, units_, Rounding::up).value;
  if (estimated) ++estimated_;
}

std::string PrintedSum::text(const Words& words) const {
  Printed sum = print(Mass(), units_, Rounding::up);
  sum.value = value_;
  std::string text = sum.text();
  if (estimated_ > 0) text = words.say("mass.estimated", {{"mass", text}});
  if (unknown_ == 0) return text;
  return words.say("mass.and-unknown", {{"mass", text}, {"n", std::to_string(unknown_)}});
}

bool goes_by_aid(const Handling& handling) {
  return handling.known && handling.people == 0 && handling.move == Handling::Move::carry;
}

std::string move_words(const Words& words, const Handling& handling) {
  if (goes_by_aid(handling)) return words.say("handling.by-aid", {{"aid", words.say(handling.aid)}});
  if (handling.move == Handling::Move::carry) return words("handling.carry");
  if (handling.ramp_people < 2) return words("handling.roll");
  return words.say("handling.roll-ramp", {{"n", std::to_string(handling.ramp_people)}});
}

std::string lift_words(const Words& words, const Handling& handling) {
  if (!handling.known) return words("handling.weigh-first");
  if (handling.people == 0) return words.say("handling.aid", {{"aid", words.say(handling.aid)}});
  return count_words(words, "handling.person", "handling.people", handling.people);
}

std::string stands_words(const Words& words, const LegRow& leg) {
  return leg.stands.empty() ? words("use.nothing") : words.say(leg.stands);
}

Handling handling_of(const std::vector<Handling>& by_unit, int unit) {
  const auto at = static_cast<std::size_t>(unit);
  return at < by_unit.size() ? by_unit[at] : Handling{};
}

std::string of_words(const Context& context, int unit) {
  const int count = context.catalogue.case_at(unit).count;
  if (count <= 1) return {};
  const int number = context.catalogue.units[static_cast<std::size_t>(unit)].number;
  return context.words.say("unit.of", {{"n", std::to_string(number)}, {"total", std::to_string(count)}});
}

std::string place_words(const Show& show, const std::string& code) {
  for (const ShowPlace& place : show.places)
    if (place.code.value == code && !place.name.empty()) return place.name.substr(0, place.name.find(','));
  return code;
}

std::string what_words(const Catalogue& catalogue, const std::string& what, const std::string& language) {
  if (const Item* item = catalogue.item(what)) return name_in(*item, language) + " (" + what + ")";
  if (const Case* box = catalogue.case_of(what)) return name_in(*box, language) + " (" + what + ")";
  if (const Structure* structure = catalogue.structure(what))
    return structure->name.value.empty() ? what : structure->name.value + " (" + what + ")";
  return what;
}

std::string vehicle_words(const Catalogue& catalogue, const std::string& code) {
  const Vehicle* vehicle = catalogue.vehicle(code);
  return vehicle && !vehicle->name.value.empty() ? vehicle->name.value : code;
}

std::string date_words(const Words& words, const Date& date) {
  static const char* const days[] = {"day.thu", "day.fri", "day.sat", "day.sun", "day.mon", "day.tue", "day.wed"};
  const long since_thursday = (date.days() % 7 + 7) % 7;  // 1970-01-01 was a Thursday
  return words(days[since_thursday]) + " " + date.iso();
}

std::string figure_words(const Figure& figure, const Context& context, Rounding way) {
  const auto scaled = [](double value, const char* unit_symbol, int decimals) {
    return plain(value, decimals) + " " + unit_symbol;
  };
  return std::visit(
      [&](const auto& value) -> std::string {
        using T = std::decay_t<decltype(value)>;
        if constexpr (std::is_same_v<T, std::monostate>)
          return {};
        else if constexpr (std::is_same_v<T, double>)
          return plain(value, 2);
        else if constexpr (std::is_same_v<T, Speed>)
          return print(value, context.meter, way).text();
        else if constexpr (std::is_same_v<T, Power>)
          return scaled(value / unit::watt, "W", 0);
        else if constexpr (std::is_same_v<T, Current>)
          return scaled(value / unit::ampere, "A", 1);
        else if constexpr (std::is_same_v<T, Voltage>)
          return scaled(value / unit::volt, "V", 1);
        else if constexpr (std::is_same_v<T, Duration>)
          return scaled(value / unit::minute, "min", 0);
        else
          return print(value, context.units, way).text();
      },
      figure);
}

const std::string& outcome_words(const Words& words, Outcome outcome) {
  switch (outcome) {
    case Outcome::within:
      return words("outcome.within");
    case Outcome::over:
      return words("outcome.over");
    case Outcome::not_checked:
      return words("outcome.not-checked");
    case Outcome::does_not_apply:
      break;
  }
  return words("outcome.does-not-apply");
}

std::string forecast_words(const Context& context) {
  const Words& words = context.words;
  if (!context.show.forecast) return words("walk.not-given");
  const Forecast& forecast = *context.show.forecast;
  const auto speed = [&](const char* key, const Maybe<Speed>& value) {
    return value ? words(key) + " " + forecast_words(value->value, context.meter) : std::string();
  };
  const auto per_cent = [&](const char* key, const Maybe<double>& value) {
    return value ? words(key) + " " + plain(value->value, 0) + " %" : std::string();
  };
  const std::string temperature = forecast.temperature
                                      ? print(forecast.temperature->value, context.units, Rounding::nearest).text()
                                      : std::string();
  return joined({joined({speed("walk.gust", forecast.gust), speed("walk.wind", forecast.wind), temperature,
                         per_cent("walk.humidity", forecast.humidity), per_cent("walk.rain", forecast.rain)},
                        ", "),
                 joined({forecast.issued_by, forecast.issued_at}, ", ")},
                "; ");
}

std::string contact_words(const Contact& contact) { return joined({contact.name.value, contact.phone.value}, ", "); }

std::string help_words(const Context& context) {
  const std::string& address = context.show.site.emergency_address;
  return address.empty() ? context.words.say("walk.address", {{"address", context.words("walk.not-given")}})
                         : context.words.say("crew.emergency-address", {{"address", address}});
}

std::string contact_words(const Show& show, std::string_view role) {
  for (const Contact& contact : show.site.contacts)
    if (utf8::lower(contact.role.value) == utf8::lower(role)) return contact_words(contact);
  return {};
}

double round_step(double end) {
  double step = 1;
  for (int i = 0; end / step > 8; ++i) step *= i % 3 == 1 ? 2.5 : 2.0;
  return step;
}

std::string joined(const std::vector<std::string>& parts, std::string_view separator) {
  std::string out;
  for (const std::string& part : parts) {
    if (part.empty()) continue;
    if (!out.empty()) out += separator;
    out += part;
  }
  return out;
}

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Takes a run of digits without leading zeros.
std::string_view take_digits(std::string_view& rest) {
  std::size_t end = 0;
  while (end < rest.size() && is_digit(rest[end])) ++end;
  std::string_view digits = rest.substr(0, end);
  rest.remove_prefix(end);
  while (digits.size() > 1 && digits.front() == '0') digits.remove_prefix(1);
  return digits;
}

}  // namespace

bool walks_before(std::string_view a, std::string_view b) {
  const auto low = [](char c) { return static_cast<unsigned char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c); };
  std::string_view x = a, y = b;
  while (!x.empty() && !y.empty()) {
    if (is_digit(x.front()) && is_digit(y.front())) {
      const std::string_view m = take_digits(x), n = take_digits(y);
      if (m.size() != n.size()) return m.size() < n.size();
      if (m != n) return m < n;
      continue;
    }
    if (low(x.front()) != low(y.front())) return low(x.front()) < low(y.front());
    x.remove_prefix(1);
    y.remove_prefix(1);
  }
  if (x.empty() != y.empty()) return x.empty();
  return a < b;
}

}  // namespace dunnage
