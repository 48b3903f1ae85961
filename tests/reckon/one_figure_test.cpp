// SPDX-License-Identifier: MIT
// A single question and a check of a show give one figure, and SAFETY.md names what both do.
#include <catch2/catch.hpp>
#include <fstream>
#include <set>
#include <sstream>

#include "../check/small_show.h"
#include "reckon/reckon.h"

using namespace dunnage;

TEST_CASE("The same canopy, asked alone and checked in a show") {
  test::SmallShow s;
  s.bags_a_leg = 2;
  const auto said = reckon("canopy-ballast", {{"plan", "10 x 10 ft"},
                                              {"eaves", "7 ft"},
                                              {"peak", "9 ft"},
                                              {"under", "half-full"},
                                              {"gust", "20 mph"},
                                              {"standing", "44 lb"},
                                              {"maker", "35 mph"},
                                              {"ballast", "60 lb"}});
  REQUIRE(std::holds_alternative<Answer>(said));
  const Answer& a = std::get<Answer>(said);
  const CanopyDetail d = s.canopy();
  CHECK(a.value >= d.legs[0].required / unit::pound);
  CHECK(a.value <= d.legs[0].required / unit::pound + 0.1);
  bool found = false;
  for (const auto& [what, words] : a.also)
    if (what == "down at, with that ballast") {
      found = true;
      CHECK(words == plain(*d.down_at / unit::mile_per_hour, 0) + " mph");
    }
  CHECK(found);
}

namespace {
/// The words that head the sections "### name" of one part of SAFETY.md.
std::set<std::string> headed(const std::string& part) {
  std::ifstream file(std::string(PROJECT_DIR) + "/SAFETY.md");
  std::set<std::string> names;
  std::string line;
  bool inside = false;
  while (std::getline(file, line)) {
    if (line.rfind("## ", 0) == 0) inside = line == "## " + part;
    if (inside && line.rfind("### ", 0) == 0) names.insert(line.substr(4));
  }
  return names;
}
}  // namespace

TEST_CASE("SAFETY.md, the rules and the questions name one set") {
  std::set<std::string> rule_names, question_names;
  for (const Rule& r : rules()) rule_names.emplace(name(r.name));
  for (const Question& q : questions()) question_names.emplace(q.name);
  CHECK(headed("Rules") == rule_names);
  CHECK(headed("Questions") == question_names);
}

TEST_CASE("SAFETY.md gives each rule its source as the table does") {
  std::ifstream file(std::string(PROJECT_DIR) + "/SAFETY.md");
  std::stringstream all;
  all << file.rdbuf();
  for (const Rule& r : rules()) {
    INFO(name(r.name));
    CHECK(all.str().find(r.source) != std::string::npos);
    CHECK_FALSE(r.covers.empty());
    CHECK_FALSE(r.formula.empty());
    CHECK_FALSE(r.leaves_out.empty());
    CHECK_FALSE(r.decides.empty());
  }
}
