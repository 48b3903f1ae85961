// SPDX-License-Identifier: MIT
// A kit and a show as large and as wordy as anybody's: 200 cases, 64 inputs, names of 60 characters, notes of 400;
// canopies, towers, light trees, circuits, vehicles, so that no sheet is left out.
#pragma once

#include <fmt/format.h>

#include <string>

#include "../shell.h"

namespace dunnage {

/// Words that end at exactly `length` characters, some long, some with accents.
inline std::string wordy(int seed, std::size_t length) {
  static const char* const words[] = {"Weatherproof", "microphone",  "stand", "Überzug", "for", "the",
                                      "left-hand",    "loudspeaker", "riser", "año",     "of",  "cables",
                                      "Façade",       "trunk",       "and",   "Ω"};
  std::string out;
  std::size_t count = 0;
  for (int i = 0; count < length; ++i) {
    const int at = i * 7 + seed * 11 + seed / 16 * (i + 1) * 5;
    const std::string word = std::string(out.empty() ? "" : " ") + words[static_cast<std::size_t>(at) % 16];
    for (const char c : word) {
      const bool begins = (static_cast<unsigned char>(c) & 0xC0) != 0x80;
      if (begins && count == length) return out;
      count += begins ? 1 : 0;
      out += c;
    }
  }
  return out;
}

/// What stands in the wind, its ballast and its power, with nothing left out but the name of its maker.
inline std::string stress_structures() {
  std::string kit;
  const auto box = [&](const std::string& code, int seed, const std::string& rest) {
    kit += fmt::format(
        "[[case]]\ncode = \"{}\"\nname = \"{}\"\nform = \"bag\"\nlooks = \"{}\"\nhome = \"Yard {}\"\nplace = "
        "\"stage\"\n"
        "vehicle = \"TRAILER\"\ngrips = 2\nsize = \"90 x 30 x 30 cm\"\n{}\n\n",
        code, wordy(seed, 60), wordy(seed + 1, 40), seed % 5 + 1, rest);
  };
  box("SANDBAG", 3, "count = 120\nweighed = \"16 kg\"\nserves = [\"ballast\"]\ngoes = \"asked\"");
  for (int i = 1; i <= 6; ++i) {
    box(fmt::format("CANBAG-{}", i), i, "weighed = \"22 kg\"\ngoes = \"asked\"");
    kit += fmt::format(
        "[[structure]]\ncode = \"CANOPY-{}\"\nname = \"{}\"\nkind = \"canopy\"\nmade_of = [{{ code = \"CANBAG-{}\", "
        "count = 1 }}]\n"
        "legs = [\"north-west\", \"north-east\", \"south-east\", \"south-west\"]\nroof = \"four-slope\"\nplan = \"3 x "
        "3 m\"\neaves = \"2.1 m\"\n"
        "peak = \"2.9 m\"\nstanding = \"22 kg\"\nmaker_gust = \"11 m/s\"\nstrike = {{ minutes = 6, people = 4 }}\n\n",
        i, wordy(i + 4, 60), i);
  }
  for (int i = 1; i <= 3; ++i) {
    box(fmt::format("MAST-{}", i), i, "weighed = \"26 kg\"\ngoes = \"asked\"");
    kit += fmt::format(
        "[[structure]]\ncode = \"TOWER-{}\"\nname = \"{}\"\nkind = \"{}\"\nmade_of = [{{ code = \"MAST-{}\", count = 1 "
        "}}]\n{}\n"
        "mast = \"2.7 m\"\nhead_area = \"0.1 m2\"\nhead_height = \"2.7 m\"\nrated_load = \"54 kg\"\nrated_height = \"3 "
        "m\"\n"
        "standing = \"55 kg\"\nmaker_gust = \"13 m/s\"\nstrike = {{ minutes = 5, people = 3 }}\n\n",
        i, wordy(i + 6, 60), i < 3 ? "tower" : "light-tree", i,
        i < 3 ? "base = \"1 x 1 m\"" : "feet = 3\nfoot_radius = \"66 cm\"");
  }
  box("AMPRACK", 2, "weighed = \"40 kg\"\ndraws = \"1800 W\"\ngoes = \"always\"");
  return kit + "[[item]]\ncode = \"CORD-30\"\nname = \"" + wordy(7, 60) +
         "\"\nmass = \"9 kg\"\nserves = [\"cord\"]\nlength = \"30 m\"\n"
         "conductor = \"2.5 mm2\"\n\n";
}

inline std::string stress_kit() {
  std::string kit = "[house]\nname = \"" + wordy(1, 60) +
                    "\"\nphone = \"555-0199\"\nunits = \"metric\"\npaper = \"a4\"\n"
                    "meter = \"m/s\"\n[house.lift]\npeople = \"volunteers\"\ndeck = \"70 cm\"\naid = \"ramp\"\n\n";
  for (int i = 0; i < 40; ++i)
    kit += fmt::format(
        "[[item]]\ncode = \"ITEM-{}\"\nname = \"{}\"\nnames.es = \"{}\"\nmass = \"0.4 kg\"\nserves = "
        "[\"thing-{}\"]\n\n",
        i + 1, wordy(i, 60), wordy(i + 3, 60), i + 1);
  for (int i = 0; i < 200; ++i) {
    kit += fmt::format(
        "[[case]]\ncode = \"CASENO-{}\"\nname = \"{}\"\nnames.es = \"{}\"\nform = \"trunk\"\nlooks = \"{}\"\nhome = "
        "\"Bay {}, {}\"\n"
        "place = \"{}\"\nvehicle = \"VAN\"\nsize = \"80 x 60 x 50 cm\"\nempty = \"12 kg\"\ngrips = {}\n"
        "marks = [\"this-way-up\", \"fragile\", \"keep-dry\"]\ngoes = \"always\"\n",
        i + 1, wordy(i, 60), wordy(i + 5, 60), wordy(i + 2, 40), i / 20 + 1, wordy(i / 7, 24),
        i % 3 == 0 ? "foh" : "stage", i % 4 + 1);
    if (i % 3 != 0) kit += fmt::format("weighed = \"{} kg\"\n", 14 + i % 60);
    kit += "holds = [";
    for (int k = 0; k <= i % 11; ++k)
      kit += fmt::format("{{ item = \"ITEM-{}\", count = {} }}, ", (i + k) % 40 + 1, k + 1);
    kit += "]\n\n";
  }
  return kit + stress_structures() + "[[vehicle]]\ncode = \"VAN\"\nname = \"" + wordy(4, 60) +
         "\"\nkind = \"van\"\npayload = \"1500 kg\"\n\n"
         "[[vehicle]]\ncode = \"TRAILER\"\nname = \"" +
         wordy(5, 60) + "\"\nkind = \"trailer\"\npayload = \"1000 kg\"\npulled_by = \"VAN\"\n";
}

/// The structures as they stand, and what feeds them.
inline std::string stress_uses() {
  std::string show;
  for (int i = 1; i <= 6; ++i)
    show += fmt::format(
        "[[use]]\nstructure = \"CANOPY-{}\"\nas = \"{} {}\"\nat = \"stage\"\nunder = \"half full\"\nground = "
        "\"grass\"\nwalls = [{}]\n"
        "ballast = [{{ legs = \"each\", code = \"SANDBAG\", count = {} }}]\n\n",
        i, i, wordy(i, 50), i % 2 == 0 ? "\"north-west\"" : "", i % 3 + 1);
  for (int i = 1; i <= 3; ++i)
    show += fmt::format(
        "[[use]]\nstructure = \"TOWER-{}\"\nas = \"{} {}\"\nat = \"foh\"\nground = \"grass\"\n"
        "ballast = [{{ at = [\"0 cm\", \"0 cm\"], code = \"SANDBAG\", count = {} }}]\n"
        "hung = [{{ what = \"{}\", area = \"0.5 m2\", at = \"1.5 m\", mass = \"1 kg\" }}]\n\n",
        i, i, wordy(i + 3, 50), i + 1, wordy(i, 60));
  for (int i = 1; i <= 2; ++i)
    show += fmt::format(
        "[[supply]]\nname = \"{} {}\"\nkind = \"mains\"\nvoltage = \"230 V\"\nphases = 1\npower = \"7000 W\"\n\n", i,
        wordy(i, 40));
  for (int i = 1; i <= 12; ++i)
    show += fmt::format(
        "[[circuit]]\nname = \"{} {}\"\nsupply = \"{} {}\"\nprotection = \"16 A\"\ncable = \"CORD-30\"\nlength = \"28 "
        "m\"\ncontinuous = true\n"
        "feeds = [{{ code = \"AMPRACK\", count = 1 }}]\n\n",
        i, wordy(i, 40), i % 2 + 1, wordy(i % 2 + 1, 40));
  for (int i = 0; i < 6; ++i)
    show +=
        "[[run]]\nfrom = \"foh\"\nto = \"stage\"\ncable = \"cord\"\nover = [{ floor = \"grass\", length = \"12 m\" }, "
        "{ floor = \"asphalt\", length = "
        "\"4 m\", crossed_by = \"wheels\", crossing = \"3 m\" }]\n\n";
  for (int i = 0; i < 3; ++i)
    show += fmt::format("[[noise]]\nwho = \"{}\"\nlevel = \"{} dBA\"\nhours = \"3 h\"\n\n", wordy(i, 60), 88 + i);
  for (int i = 0; i < 2; ++i)
    show +=
        fmt::format("[[way]]\nwhat = \"{}\"\nrise = \"2{} cm\"\nramp = \"3 m\"\nwidth = \"1 m\"\n\n", wordy(i, 60), i);
  return show +
         "[[load]]\nvehicle = \"VAN\"\nstops = [\"stage\", \"foh\"]\n\n[[load]]\nvehicle = \"TRAILER\"\nstops = "
         "[\"stage\", \"foh\"]\n\n";
}

inline std::string stress_show() {
  std::string show = "kit = \"kit\"\n[show]\ntitle = \"" + wordy(2, 60) +
                     "\"\ndate = 2027-06-19\nsetting = \"outdoor\"\nfloor = \"grass\"\n"
                     "after_dark = true\ncrew = 30\nvolunteers = 30\naudience = 500\nhours = \"9 h\"\n"
                     "input_order = \"performer\"\n"
                     "stop_person = \"Stage manager\"\n"
                     "[forecast]\nwind = \"5 m/s\"\ngust = \"9 m/s\"\ntemperature = \"33 C\"\nhumidity = 60\nrain = "
                     "70\nissued_by = \"" +
                     wordy(3, 60) +
                     "\"\nissued_at = \"2027-06-18 18:00\"\n[site]\nground = \"grass\"\naltitude = \"200 m\"\nclear = "
                     "\"15 min\"\nshelter = \"" +
                     wordy(9, 60) + "\"\ngate = \"" + wordy(10, 60) + "\"\nhospital = \"" + wordy(11, 60) +
                     "\"\nradio_channel = \"4\"\ncurfew = \"" + wordy(12, 60) + "\"\npermits = [\"" + wordy(13, 60) +
                     "\"]\ncontacts = [{ role = \"Stage manager\", name = \"" + wordy(14, 60) +
                     "\", phone = \"555-0100\" }, "
                     "{ role = \"" +
                     wordy(15, 30) + "\", name = \"" + wordy(0, 60) + "\", phone = \"555-0101\" }]\naddress = \"" +
                     wordy(5, 60) + "\"\nemergency_address = \"" + wordy(6, 60) + "\"\n\n";
  for (const char* place : {"foh", "stage"})
    show += fmt::format("[[place]]\ncode = \"{}\"\nname = \"{}\"\n\n", place, wordy(8, 60));
  for (int i = 0; i < 3; ++i)
    show += fmt::format("[[team]]\nname = \"{} {}\"\nhome = \"Bay {}\"\n\n", i + 1, wordy(i + 9, 30), i + 1);
  for (int i = 0; i < 12; ++i)
    show += fmt::format("[[time]]\nat = \"{:02}:30\"\nwhat = \"{}\"\n\n", i + 9, wordy(i, 60));
  for (int i = 0; i < 64; ++i)
    show += fmt::format(
        "[[input]]\nchannel = {}\nperformer = \"{}\"\nsource = \"{}\"\npickup = \"ITEM-{}\"\nphantom = {}\n"
        "pad = \"20 dB\"\nbox = \"BOX-{}\"\nsocket = {}\nat = \"stage\"\nnote = \"{}\"\n\n",
        i + 1, wordy(i / 9, 60), wordy(i, 60), i % 40 + 1, i % 2 == 0 ? "true" : "false", i / 16 + 1, i % 16 + 1,
        wordy(i, i % 8 == 0 ? 400 : 30));
  for (int i = 0; i < 12; ++i)
    show += fmt::format("[[mix]]\noutput = \"{}\"\nwho = \"{}\"\nbox = \"BOX-5\"\nsocket = {}\nnote = \"{}\"\n\n",
                        i + 1, wordy(i, 60), i + 1, wordy(i, i == 0 ? 400 : 60));
  return show + stress_uses();
}

/// Writes both into the folder; the path of the show.
inline std::string write_stress_show(const Folder& folder) {
  std::filesystem::create_directories(folder.path / "kit");
  std::ofstream(folder.path / "kit/kit.toml", std::ios::binary) << stress_kit();
  return folder.file("show.toml", stress_show());
}

}  // namespace dunnage
