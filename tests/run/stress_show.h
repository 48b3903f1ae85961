// SPDX-License-Identifier: MIT
// A kit and a show as large and as wordy as anybody's: 200 cases, 64 inputs, names of 60 characters, notes of 400.
#pragma once

#include <fmt/format.h>

#include <string>

#include "../shell.h"

namespace dunnage {

/// Words that end at exactly `length` characters, some long, some with accents.
inline std::string wordy(int seed, std::size_t length) {
  static const char* const words[] = {"Weatherproof", "microphone", "stand", "Überzug", "for", "the", "left-hand",
                                      "loudspeaker", "riser", "año", "of", "cables", "Façade", "trunk", "and", "Ω"};
  std::string out;
  std::size_t count = 0;
  for (int i = seed; count < length; ++i) {
    const std::string word = std::string(out.empty() ? "" : " ") + words[static_cast<std::size_t>(i * 7 + seed) % 16];
    for (const char c : word) {
      const bool begins = (static_cast<unsigned char>(c) & 0xC0) != 0x80;
      if (begins && count == length) return out;
      count += begins ? 1 : 0;
      out += c;
    }
  }
  return out;
}

inline std::string stress_kit() {
  std::string kit =
      "[house]\nname = \"" + wordy(1, 60) + "\"\nphone = \"555-0199\"\nunits = \"metric\"\npaper = \"a4\"\n"
      "meter = \"m/s\"\n[house.lift]\npeople = \"volunteers\"\ndeck = \"70 cm\"\naid = \"ramp\"\n\n";
  for (int i = 0; i < 40; ++i)
    kit += fmt::format("[[item]]\ncode = \"ITEM-{}\"\nname = \"{}\"\nnames.es = \"{}\"\nmass = \"0.4 kg\"\nserves = [\"thing-{}\"]\n\n",
                       i + 1, wordy(i, 60), wordy(i + 3, 60), i + 1);
  for (int i = 0; i < 200; ++i) {
    kit += fmt::format(
        "[[case]]\ncode = \"CASENO-{}\"\nname = \"{}\"\nnames.es = \"{}\"\nform = \"trunk\"\nlooks = \"{}\"\nhome = \"Bay {}, {}\"\n"
        "place = \"{}\"\nvehicle = \"VAN\"\nsize = \"80 x 60 x 50 cm\"\nempty = \"12 kg\"\ngrips = {}\n"
        "marks = [\"this-way-up\", \"fragile\", \"keep-dry\"]\ngoes = \"always\"\n",
        i + 1, wordy(i, 60), wordy(i + 5, 60), wordy(i + 2, 40), i / 20 + 1, wordy(i / 7, 24), i % 3 == 0 ? "foh" : "stage",
        i % 4 + 1);
    if (i % 3 != 0) kit += fmt::format("weighed = \"{} kg\"\n", 14 + i % 60);
    kit += "holds = [";
    for (int k = 0; k <= i % 11; ++k) kit += fmt::format("{{ item = \"ITEM-{}\", count = {} }}, ", (i + k) % 40 + 1, k + 1);
    kit += "]\n\n";
  }
  return kit + "[[vehicle]]\ncode = \"VAN\"\nname = \"" + wordy(4, 60) + "\"\nkind = \"van\"\npayload = \"1500 kg\"\n";
}

inline std::string stress_show() {
  std::string show = "kit = \"kit\"\n[show]\ntitle = \"" + wordy(2, 60) + "\"\ndate = 2027-06-19\nsetting = \"indoor\"\n"
                     "after_dark = true\ncrew = 30\nvolunteers = 30\naudience = 500\nhours = \"9 h\"\n"
                     "input_order = \"performer\"\n"
                     "[site]\naddress = \"" + wordy(5, 60) + "\"\nemergency_address = \"" + wordy(6, 60) + "\"\n\n";
  for (const char* place : {"foh", "stage"})
    show += fmt::format("[[place]]\ncode = \"{}\"\nname = \"{}\"\n\n", place, wordy(8, 60));
  for (int i = 0; i < 3; ++i) show += fmt::format("[[team]]\nname = \"{} {}\"\nhome = \"Bay {}\"\n\n", i + 1, wordy(i + 9, 30), i + 1);
  for (int i = 0; i < 12; ++i) show += fmt::format("[[time]]\nat = \"{:02}:30\"\nwhat = \"{}\"\n\n", i + 9, wordy(i, 60));
  for (int i = 0; i < 64; ++i)
    show += fmt::format("[[input]]\nchannel = {}\nperformer = \"{}\"\nsource = \"{}\"\npickup = \"ITEM-{}\"\nphantom = {}\n"
                        "pad = \"20 dB\"\nbox = \"BOX-{}\"\nsocket = {}\nat = \"stage\"\nnote = \"{}\"\n\n",
                        i + 1, wordy(i / 9, 60), wordy(i, 60), i % 40 + 1, i % 2 == 0 ? "true" : "false", i / 16 + 1,
                        i % 16 + 1, wordy(i, i % 8 == 0 ? 400 : 30));
  for (int i = 0; i < 12; ++i)
    show += fmt::format("[[mix]]\noutput = \"{}\"\nwho = \"{}\"\nnote = \"{}\"\n\n", i + 1, wordy(i, 60), wordy(i, 60));
  return show;
}

/// Writes both into the folder; the path of the show.
inline std::string write_stress_show(const Folder& folder) {
  std::filesystem::create_directories(folder.path / "kit");
  std::ofstream(folder.path / "kit/kit.toml", std::ios::binary) << stress_kit();
  return folder.file("show.toml", stress_show());
}

}  // namespace dunnage
