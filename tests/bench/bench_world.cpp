// SPDX-License-Identifier: MIT
#include "bench_world.h"

#include <fstream>

#include "bench_words.h"

namespace dunnage::bench {
namespace {

namespace fs = std::filesystem;

constexpr const char* house = R"([house]
name = "Medlar Hill"
phone = "555-0142"
units = "us"
paper = "letter"
label_stock = "4x6-roll"
)";

constexpr const char* show_head = R"(kit = "kit"
[show]
title = "Long evening"
date = 2027-09-18
setting = "indoor"
)";

/// 32 rows of 7.3 mm a Letter page; one box of 5 mm and seven columns of words.
constexpr const char* sheet_layout = R"([page]
margin = "8 mm"
[title]
face = "text-bold"
size = "14 pt"
[running]
size = "9 pt"
floor = "8 pt"
fit = "shrink"
[type]
face = "narrow"
size = "8 pt"
floor = "7 pt"
leading = "8.5 pt"
[head]
face = "narrow-bold"
size = "8 pt"
floor = "7 pt"
[[block]]
ids = ["intro", "facts", "stays-head", "stays", "ask", "missing", "end"]
[[block]]
id = "rows"
row_height = "7.3 mm"
tick = "5 mm"
omit_columns = ["loaded"]
[[block.column]]
id = "pulled"
width = "8 mm"
[[block.column]]
id = "code"
width = "22 mm"
type = { face = "code" }
[[block.column]]
id = "name"
share = 2
type = { face = "narrow-bold" }
[[block.column]]
id = "looks"
share = 2
[[block.column]]
id = "of"
width = "16 mm"
[[block.column]]
id = "mass"
width = "16 mm"
type = { face = "narrow-bold", align = "right" }
[[block.column]]
id = "handling"
width = "26 mm"
[[block.column]]
id = "goes"
width = "20 mm"
type = { face = "narrow-bold" }
)";

constexpr const char* label_layout = R"([page]
omit = ["handle"]
furniture = false
margin = "0 mm"
[type]
face = "narrow"
size = "12 pt"
floor = "10 pt"
fit = "shrink"
[[block]]
id = "code"
type = { face = "code", size = "60 pt", floor = "40 pt", leading = "60 pt" }
area = { x = 0, y = 0, w = 1, h = 0.15 }
[[block]]
id = "name"
type = { face = "narrow-bold", size = "30 pt", floor = "14 pt", leading = "34 pt" }
area = { x = 0, y = 0.16, w = 1, h = 0.1 }
[[block]]
id = "mass"
type = { face = "narrow-bold", size = "40 pt", floor = "30 pt", leading = "44 pt" }
area = { x = 0, y = 0.27, w = 1, h = 0.11 }
[[block]]
id = "contents"
type = { size = "13 pt", floor = "11 pt", leading = "15 pt", fit = "cut" }
area = { x = 0, y = 0.41, w = 0.45, h = 0.59 }
[[block]]
id = "owner"
type = { face = "narrow-bold", size = "11 pt", floor = "9 pt", leading = "13 pt" }
area = { x = 0.5, y = 0.5, w = 0.5, h = 0.08 }
[[block]]
id = "revision"
type = { size = "9 pt", floor = "8 pt", leading = "10.8 pt", fit = "cut" }
area = { x = 0.5, y = 0.58, w = 0.5, h = 0.05 }
[[block]]
id = "qr"
type = { align = "right" }
dots = 5
area = { x = 0.5, y = 0.65, w = 0.5, h = 0.35 }
)";

/// Opens a file to write, its folders made.
std::ofstream open(const fs::path& file) {
  fs::create_directories(file.parent_path());
  std::ofstream out(file);
  out.exceptions(std::ios::failbit | std::ios::badbit);
  return out;
}

void write(const fs::path& file, const std::string& text) { open(file) << text; }

void write_case(std::ofstream& out, int n) {
  out << fmt::format(
      "\n[[case]]\ncode = \"{}\"\nname = \"{}\"\nlooks = \"{}\"\nhome = \"Hall 1\"\nplace = \"stage\"\n"
      "weighed = \"{} lb\"\nform = \"trunk\"\ngrips = 4\n",
      trunk_code(n), trunk_name(n), trunk_looks(n), trunk_pounds(n));
}

}  // namespace

void write_sheet_world(const fs::path& folder, int cases, int count) {
  write(folder / "kit" / "house.toml", house);
  write(folder / "kit" / "layouts" / "pull-sheet.toml", sheet_layout);
  write(folder / "show.toml", show_head);
  std::ofstream out = open(folder / "kit" / "cases.toml");
  for (int n = 1; n <= cases; ++n) {
    write_case(out, n);
    out << "goes = \"always\"\n";
    if (count > 1) out << "count = " << count << "\n";
  }
}

void write_label_world(const fs::path& folder, int labels) {
  write(folder / "kit" / "house.toml", house);
  write(folder / "kit" / "layouts" / "case-label.toml", label_layout);
  write(folder / "show.toml", show_head);
  std::ofstream out = open(folder / "kit" / "cases.toml");
  for (int i = 10; i < 100; ++i)
    out << fmt::format("[[item]]\ncode = \"T{}\"\nname = \"{}\"\nmass = \"1 lb\"\n", i, thing_name(i));
  for (int n = 1; n <= labels; ++n) {
    write_case(out, n);
    out << "holds = [";
    for (int line = 0; line < label_lines; ++line)
      out << fmt::format("{{ item = \"T{}\", count = {} }}, ", thing_number(n, line), thing_count(n, line));
    out << "]\n";
  }
}

void write_input_world(const fs::path& folder, int inputs) {
  write(folder / "kit" / "house.toml", house);
  std::ofstream kit = open(folder / "kit" / "cases.toml");
  kit << "[[item]]\ncode = \"MIC\"\nname = \"Vocal mic\"\nmass = \"0.7 lb\"\nserves = [\"vocal\"]\n"
         "[[item]]\ncode = \"STAND\"\nname = \"Tall stand\"\nmass = \"6 lb\"\nserves = [\"tall\"]\n"
         "[[item]]\ncode = \"LINE\"\nname = \"Mic cable\"\nmass = \"2 lb\"\nserves = [\"mic-cable\"]\nlength = \"30 "
         "ft\"\n";
  for (int n = 1; n <= (inputs + 7) / 8; ++n) {
    write_case(kit, n);
    kit << "goes = \"always\"\nholds = [{ item = \"MIC\", count = 8 }, { item = \"STAND\", count = 8 }, { item = "
           "\"LINE\", "
           "count = 8 }]\n";
  }
  std::ofstream show = open(folder / "show.toml");
  show << show_head;
  for (int n = 1; n <= inputs; ++n)
    show << fmt::format(
        "\n[[input]]\nchannel = {}\nperformer = \"Band {}\"\nsource = \"Voice {}\"\npickup = \"vocal\"\n"
        "stand = \"tall\"\ncable = \"25 ft\"\n",
        n, (n + 7) / 8, n);
}

}  // namespace dunnage::bench
