// SPDX-License-Identifier: MIT
// Noise tables, each with its source. Two rows of the published tables are misprints and left out.
#include <catch2/catch.hpp>

#include "formula/noise.h"

using namespace dunnage;
using namespace dunnage::unit;

TEST_CASE("OSHA 1910.95 Appendix A, Table G-16a: reference hours") {
  // 83 dB prints 21.2 on the newer page; the older page and the formula give 21.1.
  const std::pair<double, double> rows[] = {
      {80, 32},   {82, 24.3}, {83, 21.1}, {85, 16},   {86, 13.9}, {88, 10.6}, {89, 9.2},  {91, 7.0},  {92, 6.1},
      {94, 4.6},  {95, 4},    {97, 3.0},  {98, 2.6},  {100, 2},   {101, 1.7}, {103, 1.3}, {104, 1.1}, {106, .87},
      {107, .76}, {109, .57}, {110, .5},  {112, .38}, {113, .33}, {115, .25}, {116, .22}, {118, .16}, {119, .14}};
  for (auto [level, hours] : rows) {
    INFO(level);
    CHECK(osha_time(level * decibel_a) / hour == Approx(hours).margin(hours < 1 ? 0.006 : 0.051));
  }
}

TEST_CASE("OSHA 1910.95 Table A-1: dose to eight-hour average") {
  const std::pair<double, double> rows[] = {
      {10, 73.4},  {25, 80.0},   {30, 81.3},   {50, 85.0},   {60, 86.3},   {75, 87.9},  {80, 88.4},  {95, 89.6},
      {100, 90.0}, {110, 90.7},  {120, 91.3},  {130, 91.9},  {140, 92.4},  {160, 93.4}, {175, 94.0}, {250, 96.6},
      {300, 97.9}, {400, 100.0}, {500, 101.6}, {800, 105.0}, {999, 106.6}, {91, 89.3}};
  for (auto [dose, average] : rows) CHECK(osha_average(dose) / decibel_a == Approx(average).margin(0.0501));
}

TEST_CASE("OSHA 1910.95 Table G-16: permitted hours, and nothing above 115 dBA") {
  const std::pair<double, double> rows[] = {{90, 8},    {92, 6},  {95, 4},   {97, 3},   {100, 2},
                                            {102, 1.5}, {105, 1}, {110, .5}, {115, .25}};
  for (auto [level, hours] : rows) CHECK(*osha_permitted(level * decibel_a) / hour == hours);
  CHECK(*osha_permitted(93 * decibel_a) / hour == 4);  // between rows, the shorter time
  CHECK_FALSE(osha_permitted(116 * decibel_a));
}

TEST_CASE("OSHA 1910.95: mixed exposure") {
  const auto db = [](double x) { return x * decibel_a; };
  CHECK(osha_dose({{db(95), 2.0 * hour}, {db(90), 4.0 * hour}, {db(100), 1.0 * hour}}) == Approx(150));
  CHECK(osha_dose({{db(87), 8.0 * hour}}) == Approx(65.97).margin(0.01));
  CHECK(osha_dose({{db(90), 8.0 * hour}}) == Approx(100));
  CHECK(osha_dose({{db(85), 8.0 * hour}}) == Approx(50));
  CHECK(osha_dose({{db(85), 8.0 * hour}}, db(90)) == 0);
}

TEST_CASE("NIOSH 98-126 Table 1-1: allowed time, in seconds") {
  // Some rows are truncated, not rounded: one printed unit is allowed. 99 dBA is printed wrong and left out.
  struct Row {
    double level, printed, unit;
  };
  const Row rows[] = {{80, 25 * 3600 + 24 * 60, 60},
                      {84, 10 * 3600 + 5 * 60, 60},
                      {85, 8 * 3600, 60},
                      {87, 5 * 3600 + 2 * 60, 60},
                      {88, 4 * 3600, 60},
                      {90, 2 * 3600 + 31 * 60, 60},
                      {91, 2 * 3600, 60},
                      {93, 3600 + 16 * 60, 60},
                      {94, 3600, 60},
                      {96, 37 * 60 + 48, 1},
                      {97, 30 * 60, 1},
                      {100, 15 * 60, 1},
                      {101, 11 * 60 + 54, 1},
                      {103, 7 * 60 + 30, 1},
                      {104, 5 * 60 + 57, 1},
                      {106, 3 * 60 + 45, 1},
                      {109, 60 + 53, 1},
                      {112, 56, 1},
                      {115, 28, 1}};
  for (const Row& r : rows) {
    INFO(r.level);
    CHECK(niosh_time(r.level * decibel_a) / second == Approx(r.printed).margin(r.unit));
  }
}

TEST_CASE("NIOSH 98-126: dose, average and the 115 dBA ceiling") {
  CHECK(*niosh_dose({{85 * decibel_a, 8.0 * hour}}) == Approx(100));
  CHECK(niosh_average(100) / decibel_a == Approx(85));
  CHECK(niosh_average(200) / decibel_a == Approx(88).margin(0.02));
  CHECK_FALSE(niosh_dose({{116 * decibel_a, 1.0 * second}}));
}

TEST_CASE("Distance in the open, and the UK daily level (own rows)") {
  CHECK(level_at(110 * decibel_a, 1 * metre, 30 * metre) / decibel_a == Approx(80.5).margin(0.05));
  CHECK(daily_exposure({{100 * decibel_a, 4.0 * hour}}) / decibel_a == Approx(96.99).margin(0.005));
}
