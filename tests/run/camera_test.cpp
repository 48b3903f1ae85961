// SPDX-License-Identifier: MIT
// Ten labels of every stock, printed at its printer's dots: two decoders read each code, clean and through a camera.
#include "camera.h"

#include <catch2/catch.hpp>
#include <sstream>

#include "../shell.h"
#include "check/lifting.h"
#include "document/case_label.h"
#include "export/pdf_file.h"
#include "layout/lay_out_labels.h"
#include "program.h"
#include "read/faces_file.h"
#include "run/house_style.h"
#include "run/load_show.h"

using namespace dunnage;

namespace {

constexpr int how_many = 10;

struct Kit10 {
  Loaded loaded;
  std::vector<int> units;
  std::vector<Handling> handling;
  Kit10() {
    std::ostringstream told;
    REQUIRE(load_kit(example("kit"), loaded, told));
    const int all = static_cast<int>(loaded.catalogue.units.size());
    for (int i = 0; i < how_many; ++i) units.push_back(i * all / how_many);
    for (int u = 0; u < all; ++u)
      handling.push_back(
          handling_of(loaded.catalogue.case_at(u), loaded.catalogue.mass_of(u), loaded.catalogue.kit.house.lift));
  }
};

std::string read_by(const std::string& program, const std::string& image) {
  const std::string command =
      program == "zbar" ? "zbarimg -q --raw -Sdisable -Sqrcode.enable -Sbinary " : "ZXingReader -bytes ";
  return shell(command + image + " 2>/dev/null").out;
}

/// Every line is one of the label's text, a count of what was left out, or the beginning of the first line.
void check_said(const std::string& said, const std::string& whole) {
  std::istringstream lines(said);
  std::string line, first;
  for (int n = 0; std::getline(lines, line); ++n) {
    INFO(line);
    if (n == 0) CHECK(whole.rfind(line, 0) == 0);
    if (n > 0) CHECK((line.rfind("+ ", 0) == 0 || whole.find("\n" + line) != std::string::npos));
  }
}

struct Printed10 {
  Pages pages;
  Stock stock;
};

Printed10 printed(const std::string& name, const Kit10& kit, const Words& words, const Faces& faces) {
  Sources sources;
  Diagnostics style;
  Printed10 out;
  out.stock = load_stock_for(SHARE_DIR, "", name, sources, style);
  const Layout layout = load_layout_for(SHARE_DIR, "", out.stock.layout, sources, style);
  REQUIRE_FALSE(style.has_errors());
  std::vector<LayoutProblem> problems;
  const Document document =
      case_labels(kit.loaded.catalogue, kit.handling, kit.units, words, UnitSystem::us, "1a2b3c4d");
  out.pages = lay_out_labels(document, layout, out.stock, 1, 1, faces, problems);
  for (const LayoutProblem& problem : problems) CHECK(sentence(problem) == "");
  return out;
}

}  // namespace

TEST_CASE("ten labels of every stock are read by two decoders, clean and through a camera") {
  const Folder folder("camera");
  const Kit10 kit;
  const Faces faces(read_faces(SHARE_DIR "/fonts"));
  Sources sources;
  Diagnostics style;
  const Words words = load_words_for(SHARE_DIR, {"en"}, Kit{}, sources, style).front();
  for (const std::string& name : style_names(SHARE_DIR, "", "stock")) {
    const Printed10 sheet = printed(name, kit, words, faces);
    const std::string pdf = folder.file("labels.pdf", pdf_bytes({sheet.pages}, faces));
    const std::string stem = (folder.path / name).string();
    shell("pdftoppm -mono -r " + std::to_string(sheet.stock.dpi) + " " + pdf + " " + stem);
    const Paper dot = 1.0 / sheet.stock.dpi * unit::paper_in;
    std::size_t label = 0, number = 0;
    for (const Page& page : sheet.pages.pages) {
      ++number;
      std::string digits = std::to_string(number);
      digits.insert(0, std::to_string(sheet.pages.pages.size()).size() - digits.size(), '0');
      const Picture paper = read_pbm(stem + "-" + digits + ".pbm");
      for (const Ink& ink : page.ink) {
        const auto* code = std::get_if<ink::Modules>(&ink);
        if (!code) continue;
        const int unit = kit.units.at(label++);
        INFO(name << ", " << kit.loaded.catalogue.units[static_cast<std::size_t>(unit)].code);
        const double dots = code->module / dot;
        CHECK(dots >= 4.999);
        const int quiet = static_cast<int>(std::lround(4 * dots)),
                  side = static_cast<int>(std::lround(code->side * dots));
        const Picture seen =
            cut_out(paper, static_cast<int>(std::lround(code->at.x / dot)) - quiet,
                    static_cast<int>(std::lround(code->at.y / dot)) - quiet, side + 2 * quiet, side + 2 * quiet);
        const std::string clean = stem + "-clean.pgm", camera = stem + "-camera.pgm";
        write_pgm(seen, clean);
        write_pgm(through_camera(seen, dots), camera);
        const std::string said = read_by("zxing", clean);
        check_said(said, label_text(kit.loaded.catalogue, kit.handling[static_cast<std::size_t>(unit)], unit, words,
                                    UnitSystem::us, "1a2b3c4d"));
        CHECK(said != "");
        CHECK(read_by("zbar", clean) == said);
        CHECK(read_by("zxing", camera) == said);
        CHECK(read_by("zbar", camera) == said);
      }
    }
    CHECK(label == how_many);
  }
}
