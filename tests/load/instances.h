// SPDX-License-Identifier: MIT
// Published instances of container loading as the text of a kit (the container is a vehicle, a type of box is a case)
// and of a show, read by the program's own readers.
//   BR1 to BR7: E. E. Bischoff, M. S. W. Ratcliff, Omega 23 (1995) 377-390. LN: H. T. Loh, A. Y. C. Nee (1992).
#pragma once

#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "load/plan_load.h"
#include "plan/plan_show.h"
#include "read/kit_file.h"
#include "read/show_file.h"

namespace dunnage::instances {

struct Text2 {
  std::string kit, show;
};

struct Instance {
  long name = 0;
  Text2 text;
};

/// One type of box: sides in the file's unit, each with whether it may stand upright.
inline std::string case_text(int number, const long (&side)[3], const int (&up)[3], int count, const char* unit) {
  std::string lies;
  if (up[0]) lies += "\"end\"";
  if (up[1]) lies += lies.empty() ? "\"side\"" : ", \"side\"";
  // All weigh the same and bear whatever stands on them: only their shapes are left to think about.
  return fmt::format(
      "[[case]]\ncode = \"C{}\"\nname = \"Box {}\"\nform = \"box\"\ncount = {}\nvehicle = \"V\"\ngoes = \"always\"\n"
      "size = \"{} x {} x {} {}\"\nlies = [{}]\nweighed = \"1 kg\"\nstack = \"2000 kg\"\n\n",
      number, number, count, side[0], side[1], side[2], unit, lies);
}

/// Each `step`th instance of a set, such as "BR1"; empty where the file is absent.
inline std::vector<Instance> instances_of(const std::filesystem::path& folder, const std::string& set, int step) {
  std::vector<Instance> out;
  std::ifstream in(folder / "clp" / (set + ".txt"));
  const bool br = set[0] == 'B';
  const char* unit = br ? "cm" : "mm";
  int count = 0;
  in >> count;
  for (int i = 0; in && i < count; ++i) {
    Instance one;
    long seed = 0, length = 0, width = 0, height = 0;
    int types = 0;
    in >> one.name;
    if (br) in >> seed;
    in >> length >> width >> height >> types;
    one.text.kit = "[house]\nname = \"H\"\n\n";
    one.text.kit += fmt::format("[[vehicle]]\ncode = \"V\"\nkind = \"van\"\ncargo = \"{} x {} x {} {}\"\n\n", length,
                                width, height, unit);
    for (int t = 0; t < types; ++t) {
      int number = 0, pieces = 0, up[3];
      long side[3];
      in >> number;
      for (int k = 0; k < 3; ++k) in >> side[k] >> up[k];
      in >> pieces;
      one.text.kit += case_text(number, side, up, pieces, unit);
    }
    one.text.show = "kit = \"kit\"\n[show]\ntitle = \"T\"\ndate = 2027-06-19\n\n[[load]]\nvehicle = \"V\"\n";
    if (i % step == 0) out.push_back(one);
  }
  return out;
}

struct World {
  Catalogue catalogue;
  Show show;
  Plan plan;
};

/// Text to a plan, as the program does it. Throws what the readers have to say.
inline World read_world(const Text2& text) {
  Sources sources;
  Diagnostics diagnostics;
  auto kit = read_kit_texts("kit", {{"kit/kit.toml", text.kit}}, sources, diagnostics);
  auto show = read_show_text("show.toml", text.show, sources, diagnostics);
  if (!kit || !show || diagnostics.has_errors()) throw std::runtime_error(render(diagnostics, sources));
  World world;
  world.catalogue = make_catalogue(std::move(*kit));
  world.show = std::move(*show);
  world.plan = plan_show(world.catalogue, world.show);
  return world;
}

/// The share of the cargo space that is filled, per cent.
inline double filled(const World& world, const VehicleLoading& loading) {
  const Size& room = world.catalogue.kit.vehicles.front().cargo->value;
  double sum = 0;
  for (const LoadedPiece& p : loading.pieces) sum += p.box.length.si() * p.box.width.si() * p.box.height.si();
  return 100 * sum / (room.length.si() * room.width.si() * room.height.si());
}

}  // namespace dunnage::instances
