// SPDX-License-Identifier: MIT
// Shows as they come: a van and a trailer, cases on wheels, tubs, bags, long pieces, up to three stops. From a seed,
// the same everywhere.
#pragma once

#include <fmt/format.h>

#include <random>

#include "instances.h"

namespace dunnage::instances {

class ShowMaker {
 public:
  explicit ShowMaker(unsigned seed) : engine_(seed) {}

  /// `room`: metres of cargo space in the van.
  Text2 make(int units, int stops, bool typed) {
    Text2 out;
    out.kit = "[house]\nname = \"H\"\n\n" + vehicles();
    for (int made = 0, n = 1; made < units; ++n) {
      const int count = std::min(roll(1, 4), units - made);
      out.kit += one_case(n, count, stops, typed);
      made += count;
    }
    std::string list;
    for (int s = 0; s < stops; ++s) list += fmt::format("{}\"P{}\"", s ? ", " : "", s);
    out.show = "kit = \"kit\"\n[show]\ntitle = \"T\"\ndate = 2027-06-19\n\n";
    for (int s = 0; s < stops; ++s) out.show += fmt::format("[[place]]\ncode = \"P{}\"\nname = \"Place {}\"\n\n", s, s);
    for (const char* v : {"VAN", "TRAILER"})
      out.show += fmt::format("[[load]]\nvehicle = \"{}\"\nstops = [{}]\n\n", v, list);
    return out;
  }

 private:
  int roll(int low, int high) { return low + static_cast<int>(engine_() % static_cast<unsigned>(high - low + 1)); }
  bool chance(int percent) { return roll(1, 100) <= percent; }

  std::string vehicles() {
    return fmt::format(
        "[[vehicle]]\ncode = \"VAN\"\nkind = \"van\"\ncargo = \"{} x 178 x 190 cm\"\n"
        "doors = [{{ where = \"rear\", size = \"156 x 182 cm\" }}]\n"
        "blocks = [\n  {{ what = \"left arch\", at = \"160 x 0 x 0 cm\", size = \"85 x 19 x 28 cm\" }},\n"
        "  {{ what = \"right arch\", at = \"160 x 159 x 0 cm\", size = \"85 x 19 x 28 cm\" }},\n]\n"
        "empty_front = \"1290 kg\"\nempty_rear = \"900 kg\"\nlimit_front = \"1850 kg\"\nlimit_rear = \"2250 kg\"\n"
        "gross = \"3500 kg\"\nwheelbase = \"360 cm\"\nfront_to_cargo = \"120 cm\"\nhitch_behind = \"110 cm\"\n"
        "people_and_fuel = \"160 kg\"\n\n"
        "[[vehicle]]\ncode = \"TRAILER\"\nkind = \"trailer\"\npulled_by = \"VAN\"\ncargo = \"305 x 180 x 185 cm\"\n"
        "doors = [{{ where = \"rear\", size = \"165 x 175 cm\" }}]\nempty_axle = \"535 kg\"\nempty_tongue = \"85 kg\"\n"
        "limit_axle = \"1600 kg\"\nlimit_tongue = \"230 kg\"\ngross = \"1600 kg\"\ncoupling_to_axle = \"305 cm\"\n"
        "coupling_to_cargo = \"130 cm\"\ntongue_from = 8\ntongue_to = 15\n\n",
        roll(29, 38) * 10);
  }

  std::string one_case(int number, int count, int stops, bool typed) {
    struct Sort {
      const char* form;
      int l[2], w[2], h[2], kg[2];
      bool wheels;
      int stack;
    };
    static const Sort sorts[] = {
        {"trunk", {80, 120}, {55, 62}, {60, 90}, {45, 130}, true, 80},
        {"trunk", {55, 62}, {55, 62}, {50, 75}, {35, 90}, true, 60},
        {"tub", {55, 70}, {38, 45}, {30, 40}, {8, 28}, false, 50},
        {"box", {45, 60}, {35, 50}, {18, 30}, {6, 20}, false, 40},
        {"loose", {38, 60}, {34, 45}, {30, 65}, {12, 30}, false, 0},
        {"bag", {35, 70}, {25, 40}, {15, 30}, {3, 17}, false, 0},
        {"bag", {125, 165}, {20, 35}, {20, 35}, {12, 28}, false, 0},
    };
    const Sort& s = sorts[roll(0, 6)];
    std::string text = fmt::format(
        "[[case]]\ncode = \"C{}\"\nname = \"Case {}\"\nform = \"{}\"\ncount = {}\ngoes = \"always\"\ngrips = 2\n",
        number, number, s.form, count);
    text +=
        fmt::format("size = \"{} x {} x {} cm\"\n", roll(s.l[0], s.l[1]), roll(s.w[0], s.w[1]), roll(s.h[0], s.h[1]));
    if (!chance(3)) text += fmt::format("weighed = \"{} kg\"\n", roll(s.kg[0], s.kg[1]));
    if (s.wheels) text += "wheels = true\n";
    if (s.stack > 0 && chance(80)) text += fmt::format("stack = \"{} kg\"\n", s.stack);
    if (chance(15)) text += "marks = [\"fragile\"]\n";
    if (!s.wheels && chance(20)) text += "lies = [\"side\", \"end\"]\n";
    if (stops > 0 && chance(85)) text += fmt::format("place = \"P{}\"\n", roll(0, stops - 1));
    if (typed || chance(50)) text += fmt::format("vehicle = \"{}\"\n", chance(55) ? "VAN" : "TRAILER");
    return text + "\n";
  }

  std::mt19937 engine_;
};

}  // namespace dunnage::instances
