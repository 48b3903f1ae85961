// SPDX-License-Identifier: MIT
// What was typed arrives in the model, with its place.
#include <catch2/catch.hpp>

#include "telling.h"

using namespace dunnage;

namespace {

struct Read {
  Sources sources;
  Diagnostics diagnostics;
  std::optional<Kit> kit;
  std::optional<Show> show;
  Read(const std::string& kit_text, const std::string& show_text) {
    kit = read_kit_texts("kit", {{"k.toml", kit_text}}, sources, diagnostics);
    show = read_show_text("show.toml", show_text, sources, diagnostics);
    INFO(render(diagnostics, sources));
    REQUIRE_FALSE(diagnostics.has_errors());
  }
};

}  // namespace

TEST_CASE("A case arrives whole") {
  const Read read(small_house + R"(units = "us"
[house.lift]
people = "crew"
one = "16 kg"
[[item]]
code = "TAPE"
name = "Cloth tape"
names.es = "Cinta"
each = "50 m"
used_up = true
[[item]]
code = "WATER"
name = "Water"
each = "5 gal"
[[case]]
code = "FOH"
name = "Front trunk"
form = "trunk"
count = 2
size = "29 x 21 x 18 in"
weighed = "81 lb"
marks = ["fragile", "keep-dry"]
holds = [{ item = "TAPE", count = 3, left = "110 m" }, { item = "WATER", count = 1, left = "4 gal" }]
inspect_by = 2027-09-01
goes = [{ setting = ["indoor", "outdoor"], crew_from = 4 }, { hours_to = "5 h", with = "livestream" }]
per = [{ structure = "tower", send = 2 }, { every = 6, of = "crew", send = 1 }, { every = "10 m", of = "run", floor = "grass", send = 1 }]
needs = [{ code = "TAPE" }, { code = "WATER", once = 2 }]
contents_on_label = false
[[unit]]
code = "FOH-2"
out_of_service = "wheel broken"
)",
                  small_show);
  const Kit& kit = *read.kit;
  CHECK(kit.house.paper == PaperSize::letter);
  CHECK(kit.house.meter == "mph");
  CHECK(kit.house.lift.people == People::crew);
  CHECK(kit.house.lift.one->value / unit::kilogram == Approx(16));
  CHECK(kit.items[0].names.at("es").value == "Cinta");
  CHECK(kit.items[0].each->value / unit::metre == Approx(50));
  CHECK(kit.items[1].each_volume->value / unit::us_gallon == Approx(5));
  REQUIRE(kit.cases.size() == 1);
  const Case& box = kit.cases[0];
  CHECK(box.size->value.width / unit::inch == Approx(21));
  CHECK(box.weighed->value / unit::pound == Approx(81));
  CHECK(box.weighed->place.words() == "k.toml:23:11");
  CHECK(box.marks == std::vector<Mark>{Mark::fragile, Mark::keep_dry});
  CHECK(box.holds[0].left->value / unit::metre == Approx(110));
  CHECK(box.holds[1].left_volume->value / unit::us_gallon == Approx(4));
  CHECK(box.inspect_by->value.iso() == "2027-09-01");
  CHECK_FALSE(box.contents_on_label);
  REQUIRE(box.goes.any.size() == 2);
  REQUIRE(box.goes.any[0].all.size() == 2);
  CHECK(box.goes.any[0].all[0].fact == "setting");
  CHECK(box.goes.any[0].all[0].values.size() == 2);
  CHECK(box.goes.any[0].all[1].kind == Condition::Kind::from);
  CHECK(std::get<double>(box.goes.any[1].all[0].values[0]) == Approx(5 * 3600));
  REQUIRE(box.per.size() == 3);
  CHECK(box.per[0].structure.value == "tower");
  CHECK(box.per[1].every == 6);
  CHECK(box.per[2].every_is_length);
  CHECK(box.per[2].floor->value == "grass");
  CHECK(box.needs[0].each == 1);
  CHECK(box.needs[1].once == 2);
  CHECK(kit.changes[0].out_of_service->value == "wheel broken");
}

TEST_CASE("Rules say always, asked, one table, or nothing") {
  const auto kind = [](const std::string& goes) { return Read(small_kit + goes, small_show).kit->cases[0].goes.kind; };
  CHECK(kind("goes = \"always\"\n") == Goes::Kind::always);
  CHECK(kind("goes = \"asked\"\n") == Goes::Kind::asked);
  CHECK(kind("goes = { setting = \"indoor\" }\n") == Goes::Kind::when);
  CHECK(kind("") == Goes::Kind::unstated);
}

TEST_CASE("A show arrives whole, and what it does not state stays unknown") {
  const Read read(small_kit, R"(kit = "kit"
bring = [{ code = "BOX", because = "asked for" }]
[show]
title = "Evening"
date = 2027-06-19
after_dark = false
hours = "5 h"
[forecast]
gust = "25 mph"
rain = 20
[[team]]
name = "blue"
home = ["Rack A", "Rack B"]
place = "foh"
[[use]]
structure = "CANOPY"
as = "foh canopy"
under = "half full"
ballast = [{ legs = "each", code = "BAG", count = 2 }, { at = ["0 in", "-20 in"], code = "PLATE" }]
[[input]]
channel = 3
source = "voice"
level = "+4 dBu"
radio = { frequency = "540.125 MHz", cells = 2 }
[[run]]
from = "stage"
to = "foh"
cable = "MIC"
over = [{ floor = "grass", length = "20 ft", crossed_by = "wheels", crossing = "12 ft" }]
)");
  const Show& show = *read.show;
  CHECK(show.date->value == Date{2027, 6, 19});
  CHECK(show.after_dark->value == false);
  CHECK_FALSE(show.crew);
  CHECK(show.hours->value / unit::hour == Approx(5));
  CHECK(show.forecast->gust->value / unit::mile_per_hour == Approx(25));
  CHECK_FALSE(show.forecast->wind);
  CHECK(show.bring[0].count == 0);
  CHECK(show.teams[0].homes.size() == 2);
  CHECK(show.teams[0].places.size() == 1);
  CHECK(show.uses[0].under == Under::half_full);
  CHECK(show.uses[0].ballast[0].each_leg);
  CHECK(show.uses[0].ballast[1].at->second / unit::inch == Approx(-20));
  CHECK(show.inputs[0].level->value / unit::decibel_u == Approx(4));
  CHECK(show.inputs[0].radio->cells == 2);
  CHECK(show.runs[0].over[0].crossing->value / unit::foot == Approx(12));
}
