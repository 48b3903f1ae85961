// SPDX-License-Identifier: MIT
// Questions: figures, what is said when something is missing or misspelt, one set of names with SAFETY.md.
#include "reckon/reckon.h"

#include <catch2/catch.hpp>
#include <sstream>

using namespace dunnage;

namespace {

Answer ask(std::string_view name, const Typed& typed) {
  auto said = reckon(name, typed);
  if (auto* problems = std::get_if<std::vector<std::string>>(&said))
    for (const std::string& p : *problems) FAIL_CHECK(p);
  auto* answer = std::get_if<Answer>(&said);
  return answer ? *answer : Answer{};
}

std::vector<std::string> refused(std::string_view name, const Typed& typed) {
  auto said = reckon(name, typed);
  auto* problems = std::get_if<std::vector<std::string>>(&said);
  return problems ? *problems : std::vector<std::string>{};
}

std::string further(const Answer& answer, std::string_view what) {
  for (const auto& [name, words] : answer.also)
    if (name == what) return words;
  return "(not said)";
}

/// key=value words of an example, as a shell would split them.
Typed split(std::string_view example) {
  Typed typed;
  std::string word;
  bool quoted = false;
  for (char c : std::string(example) + " ") {
    if (c == '"') {
      quoted = !quoted;
    } else if (c == ' ' && !quoted) {
      const std::size_t at = word.find('=');
      if (at != std::string::npos) typed.emplace_back(word.substr(0, at), word.substr(at + 1));
      word.clear();
    } else {
      word += c;
    }
  }
  return typed;
}

}  // namespace

TEST_CASE("Every question's example has an answer, with formula, source and caution") {
  for (const Question& q : questions()) {
    INFO(q.name);
    const Answer a = ask(q.name, split(q.example));
    CHECK(a.question == q.name);
    CHECK_FALSE(a.unit.empty());
    CHECK_FALSE(a.formula.empty());
    CHECK_FALSE(a.source.empty());
    CHECK_FALSE(a.cautions.empty());
    for (const std::string& c : a.cautions) {
      CHECK(c.find("safe") == std::string::npos);
      CHECK(c.find("pass") == std::string::npos);
    }
  }
}

TEST_CASE("Every key says what it is, and every needed key has an example") {
  for (const Question& q : questions())
    for (const AskedKey& key : q.keys) {
      INFO(q.name << " " << key.name);
      CHECK_FALSE(key.says.empty());
      CHECK((!key.needed || !key.example.empty()));
    }
}

TEST_CASE("lift: the recommended weight and the index") {
  const Typed typed{{"mass", "20 kg"}, {"horizontal", "40 cm"}, {"vertical", "30 cm"}, {"travel", "80 cm"}};
  const Answer a = ask("lift", typed);
  CHECK(a.value == Approx(10.3));  // 23 x .625 x .865 x .876 x 1 x .95, down
  CHECK(a.unit == "kg");
  CHECK(further(a, "lifting index") == "1.94");
  CHECK(further(a, "reading") == "above 1: more people, less load or another way");
  const Answer far =
      ask("lift", {{"mass", "20 kg"}, {"horizontal", "70 cm"}, {"vertical", "30 cm"}, {"travel", "1 m"}});
  CHECK(far.value == 0);
  CHECK(further(far, "lifting index") == "not liftable by this method");
}

TEST_CASE("lift-team: as the lifting rule") {
  const Answer two = ask("lift-team", {{"mass", "70 lb"}, {"people", "crew"}, {"grips", "2"}});
  CHECK(two.value == 2);
  CHECK(further(two, "limit") == "73.4 lb");
  const Answer none = ask("lift-team", {{"mass", "81 lb"}, {"people", "volunteers"}});
  CHECK(none.value == 0);
  CHECK(further(none, "reading") == "nobody lifts it by hand: roll it, ramp it, carry it in parts or use an aid");
  CHECK(ask("lift-team", {{"mass", "50 kg"}, {"people", "crew"}, {"grips", "4"}, {"four", "60 kg"}}).value == 4);
}

TEST_CASE("lift-team: without grips one person may try, and what one cannot lift nobody lifts") {
  CHECK(ask("lift-team", {{"mass", "20 kg"}, {"people", "crew"}, {"grips", "0"}}).value == 1);
  const Answer none = ask("lift-team", {{"mass", "30 kg"}, {"people", "crew"}, {"grips", "0"}});
  CHECK(none.value == 0);
  CHECK(none.also.at(0).second == "nobody lifts it by hand: roll it, ramp it, carry it in parts or use an aid");
  CHECK(further(none, "with a grip for each") == "2 people");
}

TEST_CASE("Axles that stand nowhere and vehicles that weigh nothing are refused") {
  const auto first = [](std::string_view name, const Typed& typed) { return refused(name, typed).at(0); };
  CHECK(first("vehicle-axles", {{"front", "1290 kg"}, {"rear", "900 kg"}, {"wheelbase", "0 m"}}) ==
        "wheelbase: 0 m is outside 0.5 m to 20 m");
  CHECK(first("vehicle-axles", {{"front", "1290 kg"}, {"rear", "900 kg"}, {"wheelbase", "3 m"}, {"hitch", "-1 m"}}) ==
        "hitch: -1 m is outside 0 m to 10 m");
  CHECK(first("vehicle-axles", {{"front", "0 kg"}, {"rear", "0 kg"}, {"wheelbase", "3 m"}}) ==
        "front and rear: each axle bears some of the vehicle, so neither weighs 0");
  CHECK(first("tongue", {{"empty", "750 kg"}, {"tongue", "85 kg"}, {"axle", "-3 m"}}) ==
        "axle: -3 m is outside 0.5 m to 20 m");
  CHECK(first("tongue", {{"empty", "0 kg"}, {"tongue", "0 kg"}, {"axle", "3 m"}}) ==
        "empty: a trailer weighs more than 0");
}

TEST_CASE("canopy-ballast: the worked rows, from the command") {
  // own rows: 3 x 3 m, coefficient -1.3, 20 kg, 10 m/s: 13.64 and 26.07 kg
  const Typed typed{{"plan", "3 x 3 m"}, {"roof", "two-slope"}, {"pitch", "20"},     {"under", "full"},
                    {"gust", "10 m/s"},  {"standing", "20 kg"}, {"ballast", "27 kg"}};
  const Answer a = ask("canopy-ballast", typed);
  // With the push on the roof, whose height is not given: eaves 2.5 m, 1.3 x 3 m x 0.55 m at 2.77 m.
  CHECK(a.value == Approx(36.6));
  CHECK(a.unit == "kg");
  CHECK(further(a, "for the uplift alone") == "26.1 kg");
  CHECK(further(a, "for the uplift alone, without factors") == "13.7 kg");
  CHECK(further(a, "uplift in all") == "732 N");
  CHECK(further(a, "down at, with that ballast") == "8 m/s");
}

TEST_CASE("canopy-ballast: what no table covers asks for the maker's limit") {
  const Typed typed{{"plan", "10 x 10 ft"}, {"gust", "20 mph"}, {"eaves", "7 ft"}, {"peak", "10 ft"}};
  const Answer a = ask("canopy-ballast", typed);
  CHECK(a.cautions.at(0) ==
        "Assumed: the structure's own mass is not stated: none counted; four slopes read as two slopes; "
        "pitch 31 deg is beyond the table: read at 30 deg; what is under the roof is not stated: full "
        "blockage.");
  CHECK(a.cautions.at(1).find("the maker's gust limit is needed") != std::string::npos);
}

TEST_CASE("gust-from-ballast: rule-of-thumb weights hold little, in the unit typed") {
  const Typed typed{{"plan", "3 x 3 m"},  {"roof", "two-slope"}, {"pitch", "20"},   {"under", "full"},
                    {"ballast", "24 lb"}, {"standing", "20 kg"}, {"gust", "20 mph"}};
  const Answer a = ask("gust-from-ballast", typed);
  CHECK(a.unit == "mph");
  // own row: 9.23 m/s, rounded down
  CHECK(further(a, "by the uplift alone, without factors, at") == "20.6 mph");
  CHECK(further(a, "lifts, without factors, at") == "17.8 mph");
  CHECK(a.value == Approx(13.8));
  CHECK(further(a, "down at") == "13 mph");
  CHECK(further(a, "the gust given") == "over limit");
}

TEST_CASE("Other questions give their published figures") {
  CHECK(ask("wind-pressure", {{"gust", "26 m/s"}}).value == Approx(422.5));
  CHECK(ask("tower-tip", {{"area", "0.42 m2"},
                          {"height", "2.4 m"},
                          {"mass", "38 kg"},
                          {"feet", "3"},
                          {"radius", "55 cm"},
                          {"gust", "12 m/s"}})
            .also.at(2)
            .second == "63 kg");
  CHECK(ask("sliding", {{"gust", "10 m/s"}, {"roof", "9 m2"}, {"wall", "6 m2"}, {"friction", "0.4"}}).value ==
        Approx(331.4).margin(0.1));
  CHECK(ask("heat-index", {{"temperature", "92 F"}, {"humidity", "55 %"}}).value == Approx(101).margin(0.6));
  CHECK(ask("wind-chill", {{"temperature", "-10 C"}, {"wind", "30 km/h"}}).value == Approx(-20).margin(0.5));
  CHECK(ask("wbgt", {{"wet", "25 C"}, {"globe", "45 C"}, {"air", "32 C"}}).value == Approx(29.7));
  CHECK(ask("water", {{"people", "10"}, {"hours", "5 h"}}).value == Approx(47.4));
  CHECK(ask("lightning", {{"count", "30 s"}}).value == Approx(9.6));
  CHECK(ask("voltage-drop", {{"current", "16 A"}, {"length", "100 ft"}, {"voltage", "120 V"}, {"awg", "12"}}).value ==
        Approx(6.34));
  CHECK(ask("voltage-drop", {{"current", "32 A"}, {"length", "50 m"}, {"voltage", "230 V"}, {"section", "6 mm2"}})
            .value == Approx(9.76).margin(0.011));
  CHECK(ask("circuit", {{"continuous", "16 A"}, {"breaker", "20 A"}}).also.at(0).second == "within limit");
  CHECK(ask("circuit", {{"continuous", "16.1 A"}, {"breaker", "20 A"}}).also.at(0).second == "over limit");
  CHECK(ask("generator", {{"load", "8 kW"}, {"altitude", "1500 m"}}).value == Approx(10.31).margin(0.01));
  CHECK(further(
            ask("noise-dose", {{"heard", "95 dBA for 2 h"}, {"heard", "90 dBA for 4 h"}, {"heard", "100 dBA for 1 h"}}),
            "OSHA dose, from 80 dBA") == "150 %");
  CHECK(ask("ramp", {{"rise", "8 in"}}).value == Approx(8));
  CHECK(further(ask("vehicle-axles", {{"front", "1290 kg"},
                                      {"rear", "900 kg"},
                                      {"wheelbase", "3.6 m"},
                                      {"load", "180 kg at 1.6 m"},
                                      {"load", "140 kg at 2.3 m"},
                                      {"load", "190 kg at 3.1 m"},
                                      {"load", "320 kg at 3.9 m"},
                                      {"load", "60 kg at 4.6 m"}}),
                "front axle") == "1423.7 kg");
  CHECK(ask("tongue", {{"empty", "800 lb"}, {"tongue", "80 lb"}, {"axle", "100 in"}, {"load", "1700 lb at 88 in"}})
            .value == Approx(284));
  CHECK(ask("tie-downs", {{"length", "20 ft"}, {"mass", "900 lb"}}).value == 3);
  CHECK(ask("unit", {{"value", "24 lb"}, {"to", "kg"}}).value == Approx(10.88621688));
  CHECK(ask("unit", {{"value", "30 mph"}, {"to", "knots"}}).value == Approx(26.069).margin(0.0005));
}

TEST_CASE("A misspelt question or key is answered with the nearest") {
  CHECK(refused("lift-taem", {}).at(0) == "unknown question \"lift-taem\": did you mean \"lift-team\"?");
  const auto problems = refused("lift-team", {{"mas", "20 kg"}, {"people", "crew"}});
  CHECK(problems.at(0) == "unknown key \"mas\": did you mean \"mass\"?");
  CHECK(problems.at(1) == "mass is needed: what the case weighs, for example mass=\"62 lb\"");
  CHECK(problems.back() == "for example: dunnage reckon lift-team mass=\"62 lb\" people=crew grips=2");
}

TEST_CASE("Missing and absurd values are answered with what is needed") {
  CHECK(refused("heat-index", {}).at(0) == "temperature is needed: air in the shade, for example temperature=\"92 F\"");
  CHECK(refused("heat-index", {{"temperature", "92 F"}, {"humidity", "140"}}).at(0) ==
        "humidity: 140 is outside 0 to 100");
  CHECK(refused("heat-index", {{"temperature", "92"}, {"humidity", "60"}}).at(0).find("the number has no unit") !=
        std::string::npos);
  CHECK(refused("lift-team", {{"mass", "20 kg"}, {"people", "crews"}}).at(0) ==
        "people: \"crews\" is none of crew, volunteers; did you mean \"crew\"?");
  CHECK(refused("canopy-ballast", {{"plan", "10 ft"}, {"gust", "900 mph"}}).size() == 3);
  CHECK(refused("tongue", {{"empty", "750 kg"}, {"tongue", "85 kg"}, {"axle", "3 m"}, {"load", "12 kg"}}).at(0) ==
        "load: write it as \"180 kg at 1.2 m\"");
  CHECK(refused("sliding", {{"gust", "20 mph"}, {"ground", "grass"}}).at(0) ==
        "no friction is published for this ground: pull a foot and give friction=");
  CHECK(refused("wind-chill", {{"temperature", "20 C"}, {"wind", "10 m/s"}}).size() == 2);
  CHECK(refused("lift", {{"mass", "1 kg"}, {"mass", "2 kg"}}).at(0) == "mass: given twice");
}
