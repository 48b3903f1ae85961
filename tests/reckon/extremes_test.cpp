// SPDX-License-Identifier: MIT
// Every question with values at and beyond the ends of its ranges: a figure that is one, or a sentence.
#include <fmt/format.h>

#include <catch2/catch.hpp>
#include <cmath>
#include <random>

#include "../effort.h"
#include "base/unit.h"
#include "reckon/reckon.h"

using namespace dunnage;

namespace {

/// Ends of a range, what lies a hair inside and beyond them, and what no instrument reads.
std::vector<std::string> figures_of(const Range& range) {
  std::vector<std::string> out;
  for (const double value : {range.low,
                             range.high,
                             (range.low + range.high) / 2,
                             range.low * 0.999,
                             range.high * 1.001,
                             range.low + 1e-9,
                             0.0,
                             -0.0,
                             1e-3,
                             1e-6,
                             1e-9,
                             1e-12,
                             1e-14,
                             1e-16,
                             1e-100,
                             1e-308,
                             4.9e-324,
                             -1e-308,
                             1e15,
                             1e100,
                             1e308,
                             -1e308,
                             -1.0,
                             1.0})
    out.push_back(fmt::format("{:g} {}", value, range.symbol));
  return out;
}

std::vector<std::string> texts_of(const AskedKey& key) {
  using Kind = AskedKey::Kind;
  std::vector<std::string> out;
  switch (key.kind) {
    case Kind::quantity:
      return figures_of(*key.range);
    case Kind::number:
    case Kind::whole:
      for (const double value : {key.low, key.high, 0.0, -0.0, 1e-9, 1e-16, 1e-308, 4.9e-324, 1e308, -1.0, 1.0, 2.0})
        out.push_back(fmt::format("{:g}", value));
      return out;
    case Kind::word:
      return key.choices;
    case Kind::text:
      return {"1e308 kg", "1e-308 kg", "0 kg", "-0 kg", "kg", "1e-16 m", "4.9e-324 C", "1e15 ft", "lb", "m", "24 lb"};
    case Kind::sides:
      for (const std::string& first : figures_of(*key.range))
        for (const std::string& second : {first, std::string(key.example)})
          out.push_back(first.substr(0, first.find(' ')) + " x " + second);
      return out;
    case Kind::pair:
      for (const std::string& first : figures_of(*key.range))
        for (const std::string& second : figures_of(*key.second))
          out.push_back(fmt::format("{} {} {}", first, key.joined, second));
      return out;
  }
  return out;
}

/// What a question's row gives as its example, for all keys that have one.
Typed examples_of(const Question& q) {
  Typed out;
  for (const AskedKey& key : q.keys)
    if (key.needed && !key.example.empty()) out.emplace_back(key.name, key.example);
  return out;
}

bool is_figure(const std::string& text) {
  for (const char* odd : {"inf", "nan", "-0 ", "e+", "e-"})
    if ((" " + text + " ").find(odd) != std::string::npos) return false;
  return true;
}

void judge(const Question& q, const Typed& typed) {
  std::string asked(q.name);
  for (const auto& [key, text] : typed) asked += " " + key + "=\"" + text + "\"";
  INFO(asked);
  const auto said = reckon(q.name, typed);
  if (const auto* problems = std::get_if<std::vector<std::string>>(&said)) {
    CHECK_FALSE(problems->empty());
    return;
  }
  const Answer& answer = std::get<Answer>(said);
  CHECK(std::isfinite(answer.value));
  CHECK(std::abs(answer.value) < 1e15);
  CHECK_FALSE(std::signbit(answer.value) != (answer.value < 0));
  for (const auto& [what, words] : answer.also) {
    INFO(what << ": " << words);
    CHECK((what == "reading" || is_figure(words)));
  }
}

}  // namespace

TEST_CASE("Any value of any key ends in a figure or a sentence") {
  for (const Question& q : questions())
    for (const AskedKey& key : q.keys)
      for (const std::string& text : texts_of(key)) {
        Typed typed = examples_of(q);
        std::erase_if(typed, [&](const auto& one) { return one.first == key.name; });
        typed.emplace_back(key.name, text);
        judge(q, typed);
      }
}

TEST_CASE("So do extremes of several keys together") {
  std::mt19937 dice(7);
  for (const Question& q : questions())
    for (std::size_t round = 0; round < turns(3000); ++round) {
      Typed typed;
      for (const AskedKey& key : q.keys) {
        if (!key.needed && dice() % 2 == 0) continue;
        const std::vector<std::string> texts = texts_of(key);
        typed.emplace_back(key.name, dice() % 3 == 0 && !key.example.empty() ? std::string(key.example)
                                                                             : texts[dice() % texts.size()]);
      }
      judge(q, typed);
    }
}
