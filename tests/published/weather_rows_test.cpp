// SPDX-License-Identifier: MIT
// Heat, cold, WBGT, water and lightning, each row with its source. Cells that a source does not show are
// `none`.
#include <catch2/catch.hpp>
#include <cmath>

#include "formula/cold.h"
#include "formula/heat.h"
#include "formula/lightning.h"
#include "formula/water.h"
#include "formula/wbgt.h"

using namespace dunnage;
using namespace dunnage::unit;

namespace {

constexpr double none = -999;
struct GridRow {
  double head;
  double cells[13];
};
double whole(double x) { return std::copysign(std::floor(std::abs(x) + 0.5), x); }

// NWS Tulsa heat index chart, F: rows air temperature, columns relative humidity. It prints the polynomial
// without the two adjustments.
const double heat_chart_columns[] = {40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100};
const GridRow heat_chart[] = {
    {110, {136, none, none, none, none, none, none, none, none, none, none, none, none}},
    {108, {none, 137, none, none, none, none, none, none, none, none, none, none, none}},
    {106, {124, 130, none, none, none, none, none, none, none, none, none, none, none}},
    {104, {119, none, 131, 137, none, none, none, none, none, none, none, none, none}},
    {102, {none, 119, 124, none, 137, none, none, none, none, none, none, none, none}},
    {100, {109, 114, none, 124, 129, none, none, none, none, none, none, none, none}},
    {98, {105, none, 113, 117, none, 128, 134, none, none, none, none, none, none}},
    {96, {none, 104, 108, none, 116, 121, none, 132, none, none, none, none, none}},
    {94, {97, 100, none, 106, 110, none, 119, 124, none, 135, none, none, none}},
    {92, {94, none, 99, 101, none, 108, 112, none, 121, 126, none, none, none}},
    {90, {none, 93, 95, none, 100, 103, none, 109, 113, none, 122, 127, none}},
    {88, {88, 89, none, 93, 95, none, 100, 103, none, 110, 113, none, 121}},
    {86, {85, none, 88, 89, none, 93, 95, none, 100, 102, none, 108, 112}},
    {84, {none, 84, 85, none, 88, 89, none, 92, 94, none, 98, 100, none}},
    {82, {81, 82, none, 84, 84, none, 86, 88, none, 90, 91, none, 95}},
    {80, {80, none, 81, 81, none, 82, 83, none, 84, 85, none, 86, 87}},
};

// NWS wind chill chart of 2001, F: rows air temperature, columns mph.
const double us_chart_columns[] = {5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60};
const GridRow us_chart[] = {
    {40, {36, none, 32, 30, none, 28, 28, none, 26, 26, none, 25}},
    {35, {none, 27, 25, none, 23, 22, none, 20, 19, none, 18, 17}},
    {30, {25, 21, none, 17, 16, none, 14, 13, none, 12, 11, none}},
    {25, {19, none, 13, 11, none, 8, 7, none, 5, 4, none, 3}},
    {20, {none, 9, 6, none, 3, 1, none, -1, -2, none, -3, -4}},
    {15, {7, 3, none, -2, -4, none, -7, -8, none, -10, -11, none}},
    {10, {1, none, -7, -9, none, -12, -14, none, -16, -17, none, -19}},
    {5, {none, -10, -13, none, -17, -19, none, -22, -23, none, -25, -26}},
    {0, {-11, -16, none, -22, -24, none, -27, -29, none, -31, -32, none}},
    {-5, {-16, none, -26, -29, none, -33, -34, none, -37, -38, none, -40}},
};

// Environment Canada wind chill chart, C: rows km/h at 10 m, columns air temperature.
const double metric_chart_columns[] = {5, 0, -5, -10, -15, -20, -25, -30, -35, -40, -45, -50};
const GridRow metric_chart[] = {
    {5, {4, none, -7, -13, none, -24, -30, none, -41, -47, none, -58}},
    {10, {none, -3, -9, none, -21, -27, none, -39, -45, none, -57, -63}},
    {20, {1, -5, none, -18, -24, none, -37, -43, none, -56, -62, none}},
    {30, {0, none, -13, -20, none, -33, -39, none, -52, -59, none, -72}},
    {40, {none, -7, -14, none, -27, -34, none, -48, -54, none, -68, -74}},
    {50, {-1, -8, none, -22, -29, none, -42, -49, none, -63, -69, none}},
    {60, {-2, none, -16, -23, none, -36, -43, none, -57, -64, none, -78}},
    {70, {none, -9, -16, none, -30, -37, none, -51, -58, none, -72, -80}},
    {80, {-3, -10, none, -24, -31, none, -45, -52, none, -67, -74, none}},
};

}  // namespace

TEST_CASE("NWS heat index chart") {
  for (const GridRow& row : heat_chart)
    for (std::size_t i = 0; i < std::size(heat_chart_columns); ++i) {
      if (row.cells[i] == none) continue;
      INFO(row.head << " F, " << heat_chart_columns[i] << " %");
      const Temperature air = Temperature::fahrenheit(row.head);
      // 90 F at 45 % prints 93 where the formula gives 92.49.
      CHECK(heat_index_polynomial(air, heat_chart_columns[i]).in_fahrenheit() == Approx(row.cells[i]).margin(0.515));
      const auto index = heat_index(air, heat_chart_columns[i]);
      REQUIRE(index);
      CHECK(index->in_fahrenheit() >= row.cells[i] - 0.52);  // adjusted is never lower than the chart
      CHECK(index->in_fahrenheit() <= row.cells[i] + 3);
    }
}

TEST_CASE("NWS SR 90-23: adjustments, the simple form and the limits") {
  CHECK(heat_index(Temperature::fahrenheit(80), 95)->in_fahrenheit() == Approx(87.8).margin(0.05));
  const double dry = heat_index_polynomial(Temperature::fahrenheit(95), 8).in_fahrenheit();
  CHECK(heat_index(Temperature::fahrenheit(95), 8)->in_fahrenheit() == Approx(dry - 5.0 / 4));
  CHECK(heat_index(Temperature::fahrenheit(70), 50)->in_fahrenheit() == Approx(69.525));  // own row, simple form
  CHECK_FALSE(heat_index(Temperature::fahrenheit(113), 20));
  CHECK_FALSE(heat_index(Temperature::fahrenheit(60), 50));
  CHECK_FALSE(heat_index(Temperature::fahrenheit(90), 101));
}

TEST_CASE("NWS heat bands, the lower of the two charts' breaks") {
  CHECK(heat_band(Temperature::fahrenheit(79)) == HeatBand::none);
  CHECK(heat_band(Temperature::fahrenheit(80)) == HeatBand::caution);
  CHECK(heat_band(Temperature::fahrenheit(90)) == HeatBand::extreme_caution);
  CHECK(heat_band(Temperature::fahrenheit(103)) == HeatBand::danger);
  CHECK(heat_band(Temperature::fahrenheit(125)) == HeatBand::extreme_danger);
}

TEST_CASE("NWS wind chill chart") {
  for (const GridRow& row : us_chart)
    for (std::size_t i = 0; i < std::size(us_chart_columns); ++i) {
      if (row.cells[i] == none) continue;
      INFO(row.head << " F, " << us_chart_columns[i] << " mph");
      const auto chill = wind_chill_us(Temperature::fahrenheit(row.head), us_chart_columns[i] * mile_per_hour);
      REQUIRE(chill);
      CHECK(whole(chill->in_fahrenheit()) == row.cells[i]);
      const auto metric = wind_chill(Temperature::fahrenheit(row.head), us_chart_columns[i] * mile_per_hour);
      CHECK(metric->in_fahrenheit() == Approx(chill->in_fahrenheit()).margin(0.2));
    }
}

TEST_CASE("Environment Canada wind chill chart") {
  for (const GridRow& row : metric_chart)
    for (std::size_t i = 0; i < std::size(metric_chart_columns); ++i) {
      if (row.cells[i] == none) continue;
      INFO(row.head << " km/h, " << metric_chart_columns[i] << " C");
      const auto chill = wind_chill(Temperature::celsius(metric_chart_columns[i]), row.head * kilometre_per_hour);
      REQUIRE(chill);
      CHECK(whole(chill->in_celsius()) == row.cells[i]);
    }
}

TEST_CASE("NCDC: wind chill is defined to 50 F and above 3 mph") {
  CHECK_FALSE(wind_chill(Temperature::fahrenheit(51), 20 * mile_per_hour));
  CHECK_FALSE(wind_chill(Temperature::fahrenheit(20), 2.9 * mile_per_hour));
}

TEST_CASE("NIOSH 2016-106: WBGT and its limits") {
  const auto c = [](double t) { return Temperature::celsius(t); };
  CHECK(alert_limit(200 * watt)->in_celsius() == Approx(27.46).margin(0.005));
  CHECK(exposure_limit(200 * watt)->in_celsius() == Approx(30.24).margin(0.005));
  CHECK(alert_limit(415 * watt)->in_celsius() == Approx(22.99).margin(0.005));
  CHECK(exposure_limit(415 * watt)->in_celsius() == Approx(26.59).margin(0.005));
  // 1.1.3 reads 25 and 27.8 off its figures for 348.9 W; the equations give these: a known misprint.
  CHECK(alert_limit(348.9 * watt)->in_celsius() == Approx(24.05).margin(0.005));
  CHECK(exposure_limit(348.9 * watt)->in_celsius() == Approx(27.46).margin(0.005));
  CHECK(wbgt_outdoors(c(25), c(45), c(32)).in_celsius() == Approx(29.7));  // own row
  CHECK(wbgt_indoors(c(25), c(45)).in_celsius() == Approx(31.0));          // own row
  CHECK_FALSE(alert_limit(50 * watt));
}

TEST_CASE("OSHA Technical Manual III:4: screening limits, C WBGT") {
  struct Row {
    WorkLoad load;
    double share, used, not_used;
  };
  const Row rows[] = {{WorkLoad::light, 1, 31.0, 28.0},       {WorkLoad::moderate, 1, 28.0, 25.0},
                      {WorkLoad::light, .6, 31.0, 28.5},      {WorkLoad::moderate, .6, 29.0, 26.0},
                      {WorkLoad::heavy, .6, 27.5, 24.0},      {WorkLoad::light, .3, 32.0, 29.5},
                      {WorkLoad::moderate, .3, 30.0, 27.0},   {WorkLoad::heavy, .3, 29.0, 25.5},
                      {WorkLoad::very_heavy, .3, 28.0, 24.5}, {WorkLoad::light, .2, 32.5, 30.0},
                      {WorkLoad::moderate, .2, 31.5, 29.0},   {WorkLoad::heavy, .2, 30.5, 28.0},
                      {WorkLoad::very_heavy, .2, 30.0, 27.0}};
  for (const Row& r : rows) {
    const auto limit = screening_limit(r.load, r.share);
    REQUIRE(limit);
    CHECK(limit->used_to_heat.in_celsius() == Approx(r.used));
    CHECK(limit->not_used_to_heat.in_celsius() == Approx(r.not_used));
  }
  CHECK_FALSE(screening_limit(WorkLoad::heavy, 1));
  CHECK_FALSE(screening_limit(WorkLoad::very_heavy, .6));
}

TEST_CASE("OSHA/NIOSH: water (own rows from the text's cup each 20 minutes)") {
  CHECK(least_water(10, 5.0 * hour) / litre == Approx(35.5).margin(0.05));
  CHECK(good_water(10, 5.0 * hour) / litre == Approx(47.3).margin(0.05));
  CHECK(most_water_an_hour / us_quart == Approx(1.5));
}

TEST_CASE("Lightning: 5 s a mile, 30 s about 6 miles; clearing before 8 miles") {
  CHECK(flash_distance(30.0 * second) / mile == Approx(6));
  CHECK(flash_distance(3.0 * second) / kilometre == Approx(1).epsilon(0.04));
  CHECK(shelter_distance / kilometre == Approx(13).margin(0.2));
  CHECK(clearing_distance(30 * mile_per_hour, 20.0 * minute) / mile == Approx(18));  // own row
}
