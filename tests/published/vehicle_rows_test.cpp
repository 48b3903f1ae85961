// SPDX-License-Identifier: MIT
// Axles, tongues, tie-downs and ramps, each row with its source. "own" rows are worked by hand.
#include <catch2/catch.hpp>

#include "formula/access.h"
#include "formula/vehicle_load.h"

using namespace dunnage;
using namespace dunnage::unit;

namespace {
Mass kg(double x) { return x * kilogram; }
Length m(double x) { return x * metre; }
}  // namespace

TEST_CASE("Tongue load: a worked example of the trade press (title and year not kept; statics)") {
  // 100 in to the axle, 1700 lb at 88 in, empty 800 lb with 80 lb on the tongue: 284 lb. It prints 11.86 %;
  // 284 of 2500 is 11.36 %: its misprint.
  const auto f = tongue_load(800 * pound, 80 * pound, 100 * inch, {{1700 * pound, 88 * inch}});
  CHECK(f.tongue / pound == Approx(284));
  CHECK(f.share == Approx(.1136));
}

TEST_CASE("Tongue load: how far an axle moves (common practice, no source; statics)") {
  const double first = shift_for_tongue((1025 - 822.5) * pound, 8225 * pound, 264 * inch) / inch;
  CHECK(first == Approx(6.5).margin(0.005));
  CHECK(shift_for_tongue(550 * pound, 8500 * pound, 264 * inch) / inch == Approx(17).margin(0.1));
}

TEST_CASE("Tongue load (own rows)") {
  // 400 kg whose own middle is 0.32 m ahead of the axle, 3.2 m from coupling to axle: 40 kg on the tongue.
  CHECK(tongue_load(kg(400), kg(40), m(3.2), {{kg(600), m(2.8)}}).tongue / kilogram == Approx(115));
  CHECK(tongue_load(kg(400), kg(40), m(3.2), {{kg(600), m(2.8)}}).share == Approx(.115));
  CHECK(tongue_load(kg(400), kg(40), m(3.2), {{kg(600), m(3.2)}}).share == Approx(.04));
  std::vector<PlacedMass> load{{kg(180), m(1.2)}, {kg(140), m(2.0)},  {kg(95), m(2.75)},
                               {kg(95), m(2.75)}, {kg(160), m(3.55)}, {kg(60), m(4.3)}};
  const auto f = tongue_load(kg(750), kg(85), m(3.2), load);
  CHECK(f.tongue / kilogram == Approx(238.6).margin(0.05));
  CHECK(f.axle / kilogram == Approx(1241.4).margin(0.05));
  CHECK(f.gross / kilogram == Approx(1480));
  CHECK(f.share == Approx(.161).margin(0.0005));
  load[1].behind = m(2.75);
  CHECK(tongue_load(kg(750), kg(85), m(3.2), load).share == Approx(.139).margin(0.0005));
}

TEST_CASE("Two axles: a worked example of the trade press (title and year not kept; statics)") {
  // 4200 at 54 in, wheelbase 120 in, 600 at 92 in, 450 on a hitch at 155 in.
  const auto f =
      axle_loads({}, {}, 120 * inch, {{4200 * pound, 54 * inch}, {600 * pound, 92 * inch}}, 450 * pound, 35 * inch);
  CHECK(f.rear / pound == Approx(2931.25));
  CHECK(f.front / pound == Approx(2318.75));
}

TEST_CASE("Two axles (own rows)") {
  const PlacedMass van{kg(1400), m(1.2)};
  const auto inside = axle_loads({}, {}, m(3), {van, {kg(600), m(2.4)}});
  CHECK(inside.front / kilogram == Approx(960));
  CHECK(inside.rear / kilogram == Approx(1040));
  const auto behind = axle_loads({}, {}, m(3), {van, {kg(600), m(3.6)}});
  CHECK(behind.front / kilogram == Approx(720));
  CHECK(behind.rear / kilogram == Approx(1280));
  std::vector<PlacedMass> load{
      {kg(180), m(1.6)}, {kg(140), m(2.3)}, {kg(190), m(3.1)}, {kg(320), m(3.9)}, {kg(60), m(4.6)}};
  const auto full = axle_loads(kg(1290), kg(900), m(3.6), load);
  CHECK(full.front / kilogram == Approx(1423.6).margin(0.05));
  CHECK(full.rear / kilogram == Approx(1656.4).margin(0.05));
  const auto towing = axle_loads(kg(1290), kg(900), m(3.6), load, kg(238.6), m(1.1));
  CHECK(towing.front / kilogram == Approx(1350.7).margin(0.05));
  CHECK(towing.rear / kilogram == Approx(1967.9).margin(0.05));
  load.resize(3);  // after the first stop: lighter in all, heavier on the front axle
  const auto after = axle_loads(kg(1290), kg(900), m(3.6), load);
  CHECK(after.front / kilogram == Approx(1466.9).margin(0.05));
  CHECK(after.rear / kilogram == Approx(1233.1).margin(0.05));
}

TEST_CASE("How much cargo the plates bear by where its centre lies (own rows)") {
  const AxleLimits van{kg(1290), kg(900), m(3.6), kg(1850), kg(2250), kg(3500), 0.25};
  const std::pair<double, double> rows[] = {{1.2, 840},  {1.8, 1120}, {2.4, 1310},
                                            {3.4, 1310}, {4.0, 1215}, {4.4, 1104.5}};
  for (const auto& [x, most] : rows) {
    const Mass cargo = *allowed_cargo(van, m(x));
    CHECK(cargo / kilogram == Approx(most).margin(0.6));
    const AxleFigures f = axle_loads(kg(1290), kg(900), m(3.6), {{cargo, m(x)}});  // as much as that is legal
    CHECK(f.front / kilogram <= 1850.001);
    CHECK(f.rear / kilogram <= 2250.001);
    CHECK(f.total / kilogram <= 3500.001);
    CHECK(f.front / f.total >= 0.25 - 1e-9);
  }
  const TongueLimits trailer{kg(750), kg(85), m(3.2), kg(1300), kg(150), kg(1500), 0.10, 0.15};
  for (const double x : {1.0, 2.0, 2.5, 3.0, 3.2, 3.6, 4.0}) {
    const Mass cargo = *allowed_cargo(trailer, m(x));
    const TongueFigures f = tongue_load(kg(750), kg(85), m(3.2), {{cargo, m(x)}});
    CHECK(f.axle / kilogram <= 1300.001);
    CHECK(f.tongue / kilogram <= 150.001);
    CHECK(f.gross / kilogram <= 1500.001);
    CHECK(f.share <= 0.15 + 1e-9);
    CHECK(f.share >= 0.10 - 1e-9);
  }
  CHECK_FALSE(allowed_cargo(TongueLimits{kg(750), kg(85), m(3.2), {}, {}, {}, {}, {}}, m(3)));
}

TEST_CASE("Moments: what rests on the axles is what was put in, wherever it stands") {
  for (int i = 0; i < 200; ++i) {
    std::vector<PlacedMass> load;
    Mass sum;
    for (int k = 0; k <= i % 9; ++k) {
      load.push_back({kg(10 + (i * 37 + k * 53) % 190), m(0.2 + ((i * 29 + k * 71) % 430) * 0.01)});
      sum += load.back().mass;
    }
    const TongueFigures t = tongue_load(kg(750), kg(85), m(3.2), load);
    CHECK((t.tongue + t.axle) / kilogram == Approx((kg(750) + sum) / kilogram));
    const AxleFigures a = axle_loads(kg(1290), kg(900), m(3.6), load, t.tongue, m(1.1));
    CHECK((a.front + a.rear) / kilogram == Approx((kg(2190) + sum + t.tongue) / kilogram));
    std::vector<PlacedMass> mirrored =
        load;  // front to rear, about the middle between the axles: the axles change places
    for (PlacedMass& p : mirrored) p.behind = m(3.6) - p.behind;
    const AxleFigures b = axle_loads(kg(900), kg(1290), m(3.6), mirrored);
    CHECK(b.front / kilogram == Approx(axle_loads(kg(1290), kg(900), m(3.6), load).rear / kilogram));
  }
}

TEST_CASE("49 CFR 393.110: number of tie-downs") {
  CHECK(tie_downs(5 * foot, 1100 * pound, false) == 1);
  CHECK(tie_downs(5 * foot, 1101 * pound, false) == 2);
  CHECK(tie_downs(8 * foot, 900 * pound, false) == 2);   // own row
  CHECK(tie_downs(20 * foot, 900 * pound, false) == 3);  // own row
  CHECK(tie_downs(21 * foot, 900 * pound, false) == 4);
  CHECK(tie_downs(10 * foot, 5000 * pound, true) == 1);
  CHECK(tie_downs(11 * foot, 5000 * pound, true) == 2);
}

TEST_CASE("49 CFR 393.106(d) and 393.102") {
  CHECK(working_load_needed(kg(1000)) / kilogram == Approx(500));
  CHECK(working_load_counted(kg(400), TieDownRoute::over_to_other_side) / kilogram == Approx(400));
  CHECK(working_load_counted(kg(400), TieDownRoute::vehicle_to_cargo) / kilogram == Approx(200));
  CHECK(working_load_counted(kg(400), TieDownRoute::back_to_same_side) / kilogram == Approx(200));
  CHECK(breaking_strength.forward == 0.8);
  CHECK(working_load.forward == 0.435);
  CHECK(working_load.sideways == 0.25);
}

TEST_CASE("ADA 303 and 405: changes in level and ramps") {
  CHECK(level_change(0.25 * inch) == LevelChange::none_needed);
  CHECK(level_change(0.5 * inch) == LevelChange::bevel);
  CHECK(level_change(0.6 * inch) == LevelChange::ramp);
  CHECK(ramp(30 * inch).runs == 1);
  CHECK(ramp(30 * inch).slope / foot == Approx(30));
  CHECK(ramp(31 * inch).runs == 2);
  CHECK(ramp(31 * inch).total / inch == Approx(31 * 12 + 3 * 60));
  CHECK(*steep_ramp_rise(1.0 / 10) / inch == Approx(6));
  CHECK(*steep_ramp_rise(1.0 / 8) / inch == Approx(3));
  CHECK_FALSE(steep_ramp_rise(1.0 / 7));
  CHECK(extinguishers(3001 * square_foot) == 2);  // City of Fort Worth (Texas), tent permit page
}
