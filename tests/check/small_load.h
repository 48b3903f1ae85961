// SPDX-License-Identifier: MIT
// A van, a trailer and seven pieces, placed by hand, with which nothing is wrong. Each test breaks one thing.
#pragma once

#include <algorithm>
#include <string>

#include "check/load_faults.h"
#include "small_show.h"

namespace dunnage::test {

struct SmallLoad {
  Kit kit;
  Show show;
  Loading loading;

  SmallLoad() {
    kit.house.units = UnitSystem::metric;
    add_van();
    add_case("TRUNK", 2, {0.8, 0.6, 0.6}, 60, "foh").wheels = true;
    kit.cases.back().marks = {Mark::this_way_up};
    kit.cases.back().stack = given(100 * unit::kilogram);
    add_case("DESK", 1, {0.8, 0.6, 0.3}, 20, "foh").marks = {Mark::fragile, Mark::this_way_up};
    add_case("TUB", 3, {0.6, 0.4, 0.4}, 15, "stage").stack = given(20 * unit::kilogram);
    add_case("POLE", 1, {2.0, 0.2, 0.2}, 10, "stage").form = Form::loose;
    Load load;
    load.vehicle = text("VAN");
    load.stops = {text("stage"), text("foh")};
    show.loads.push_back(load);
    loading.vehicles.push_back({"VAN", {}, {}, 0});
    put("TRUNK-1", 0, 0, 0, 1, 1);
    put("TRUNK-2", 0, 0.6, 0, 1, 1);
    put("DESK", 0, 0, 0.6, 1, 1);
    put("POLE", 0, 1.22, 0, 0, 0);
    put("TUB-1", 0.8, 0, 0, 2, 0);
    put("TUB-2", 0.8, 0.4, 0, 2, 0);
    put("TUB-3", 0.8, 0, 0.4, 2, 0);
  }

  void add_van() {
    Vehicle v;
    v.code = text("VAN");
    v.cargo = given(Size{3 * unit::metre, 1.6 * unit::metre, 1.7 * unit::metre});
    v.doors = {{"rear", 1.5 * unit::metre, 1.6 * unit::metre, {}}};
    v.blocks = {
        {"left wheel arch", 1.8 * unit::metre, {}, {}, 0.8 * unit::metre, 0.15 * unit::metre, 0.25 * unit::metre, {}},
        {"right wheel arch",
         1.8 * unit::metre,
         1.45 * unit::metre,
         {},
         0.8 * unit::metre,
         0.15 * unit::metre,
         0.25 * unit::metre,
         {}}};
    v.empty_front = given(1290 * unit::kilogram);
    v.empty_rear = given(900 * unit::kilogram);  // as weighed with crew and fuel
    v.people_and_fuel = given(0 * unit::kilogram);
    v.limit_front = given(1850 * unit::kilogram);
    v.limit_rear = given(2250 * unit::kilogram);
    v.gross = given(3500 * unit::kilogram);
    v.wheelbase = given(3.6 * unit::metre);
    v.front_to_cargo = given(1 * unit::metre);
    kit.vehicles.push_back(v);
  }
  Case& add_case(const char* code, int count, std::array<double, 3> size, double mass, const char* place,
                 const char* vehicle = "VAN") {
    Case box;
    box.code = text(code);
    box.count = count;
    box.size = given(Size{size[0] * unit::metre, size[1] * unit::metre, size[2] * unit::metre});
    box.weighed = given(mass * unit::kilogram);
    box.place_word = place;
    box.vehicle = vehicle;
    kit.cases.push_back(box);
    return kit.cases.back();
  }
  int unit_of(const std::string& code) const { return make_catalogue(kit).unit_index(code); }
  Case& box(const std::string& code) {
    return *std::find_if(kit.cases.begin(), kit.cases.end(), [&](const Case& c) { return c.code.value == code; });
  }
  LoadedPiece& piece(const std::string& code) {
    for (VehicleLoading& v : loading.vehicles)
      for (LoadedPiece& p : v.pieces)
        if (p.unit == unit_of(code)) return p;
    throw code;
  }
  void put(const std::string& code, double x, double y, double z, int row, int stop, std::size_t vehicle = 0) {
    const Catalogue c = make_catalogue(kit);
    const int unit = c.unit_index(code);
    const Size& s = c.case_at(unit).size->value;
    loading.vehicles[vehicle].pieces.push_back(
        {unit,
         {x * unit::metre, y * unit::metre, z * unit::metre, s.length, s.width, s.height},
         Stance::upright,
         row,
         stop});
  }
  void move(const std::string& code, double x, double y, double z) {
    Cuboid& b = piece(code).box;
    b.x = x * unit::metre;
    b.y = y * unit::metre;
    b.z = z * unit::metre;
  }
  Plan plan() const { return all_go(make_catalogue(kit)); }
  std::vector<LoadFault> faults() const { return load_faults(make_catalogue(kit), show, plan(), loading); }
  /// All sentences, one a line.
  std::string says() const {
    std::string out;
    for (const LoadFault& f : faults()) out += f.says.english() + "\n";
    return out;
  }
  bool says(const std::string& sentence) const { return says().find(sentence + "\n") != std::string::npos; }
};

}  // namespace dunnage::test
