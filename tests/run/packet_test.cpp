// SPDX-License-Identifier: MIT
// Both example packets from text to paper, judged by other people's programs: qpdf, poppler, MuPDF, and two decoders
// of QR codes.
#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "base/unit.h"
#include "check/lifting.h"
#include "document/case_label.h"
#include "program.h"
#include "read/words_file.h"
#include "run/house_style.h"
#include "run/load_show.h"

using dunnage::bytes_of;
using dunnage::example;
using dunnage::Folder;
using dunnage::program;
using dunnage::Ran;
using dunnage::shell;
namespace fs = std::filesystem;

namespace {

struct Packet {
  std::string show;
  std::vector<std::string> options;
  int code;
  dunnage::UnitSystem units;
};
const std::vector<Packet> packets = {
    {"outdoor-evening", {}, 2, dunnage::UnitSystem::us},
    {"indoor-afternoon", {"--units", "metric", "--paper", "a4"}, 0, dunnage::UnitSystem::metric}};

Ran print(const Packet& packet, const fs::path& out, std::vector<std::string> more = {}) {
  std::vector<std::string> arguments = {"print", example(packet.show + ".toml"), "--out", out.string()};
  arguments.insert(arguments.end(), packet.options.begin(), packet.options.end());
  arguments.insert(arguments.end(), more.begin(), more.end());
  return program(arguments);
}

std::vector<fs::path> pdfs(const fs::path& folder) {
  std::vector<fs::path> out;
  for (const auto& entry : fs::directory_iterator(folder))
    if (entry.path().extension() == ".pdf") out.push_back(entry.path());
  std::sort(out.begin(), out.end());
  return out;
}

std::string text_of(const fs::path& pdf) { return shell("pdftotext -layout " + pdf.string() + " - 2>&1").out; }

void check_file(const fs::path& pdf, const Folder& scratch) {
  INFO(pdf);
  CHECK(shell("qpdf --check " + pdf.string() + " 2>&1").status == 0);
  CHECK(shell("pdftotext " + pdf.string() + " /dev/null 2>&1").out.empty());
  // Debian builds MuPDF without colour profiles, and it says so each time.
  CHECK(shell("mutool draw -q -r 30 -o " + (scratch.path / "p%d.png").string() + " " + pdf.string() +
              " 2>&1 | grep -v 'ICC support is not available'")
            .out.empty());
  const std::string fonts =
      shell("pdffonts " + pdf.string() + " 2>&1 | tail -n +3 | awk '{print $(NF-4)}' | sort -u").out;
  CHECK(fonts == "yes\n");
}

bool has_word(const std::string& text, const std::string& word) {
  for (std::size_t at = 0; (at = text.find(word, at)) != std::string::npos; ++at) {
    auto part_of_word = [&](std::size_t i) {
      return i < text.size() && (std::isalnum(static_cast<unsigned char>(text[i])) || text[i] == '-');
    };
    if ((at == 0 || !part_of_word(at - 1)) && !part_of_word(at + word.size())) return true;
  }
  return false;
}

/// Whether a decoder read exactly this text; or, where the label had no room for all its contents, all but some lines
/// in a row and in their place a line that says how many.
bool reads(const std::string& decoded, const std::string& text) {
  if (decoded.find(text) != std::string::npos) return true;
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  for (std::size_t first = 3; first + 2 < lines.size(); ++first)
    for (std::size_t last = first + 1; last <= lines.size() - 2; ++last) {
      std::string cut;
      for (std::size_t i = 0; i < lines.size(); ++i) {
        if (i == first) cut += "+ " + std::to_string(last - first) + " more\n";
        if (i < first || i >= last) cut += lines[i] + "\n";
      }
      cut.pop_back();
      if (decoded.find(cut) != std::string::npos) return true;
    }
  return false;
}

}  // namespace

TEST_CASE("both packets print, with the exit code and the findings that are written down") {
  for (const Packet& packet : packets) {
    INFO(packet.show);
    const Ran ran = program({"check", example(packet.show + ".toml")});
    CHECK(ran.code == packet.code);
    CHECK(dunnage::without_folder(ran.out) == bytes_of(fs::path(TESTS_DIR) / "golden" / (packet.show + ".check.txt")));
  }
}

TEST_CASE("every file of both packets holds up in four readers") {
  const Folder folder("packets");
  for (const Packet& packet : packets) {
    const Ran ran = print(packet, folder.path / packet.show);
    CHECK(ran.code == packet.code);
    CHECK(!pdfs(folder.path / packet.show).empty());
    for (const fs::path& pdf : pdfs(folder.path / packet.show)) {
      CHECK(ran.out.find(pdf.filename().string()) != std::string::npos);
      check_file(pdf, folder);
    }
  }
}

TEST_CASE("sheets asked for in any order are each set by their own layout") {
  const Folder out("order");
  for (const char* only : {"weather-card,ballast-sheet,cover", "safety-walk,fader-strip,power-sheet"}) {
    const Ran ran = print(packets[0], out.path, {"--only", only});
    INFO(ran.err);
    CHECK(ran.code == packets[0].code);
  }
}

TEST_CASE("one file holds the whole packet, and two runs give the same bytes") {
  const Folder folder("one-file");
  CHECK(print(packets[1], folder.path / "a", {"--one-file"}).code == 0);
  CHECK(print(packets[1], folder.path / "b", {"--one-file"}).code == 0);
  REQUIRE(pdfs(folder.path / "a").size() == 1);
  check_file(folder.path / "a/packet.pdf", folder);
  CHECK(bytes_of(folder.path / "a/packet.pdf") == bytes_of(folder.path / "b/packet.pdf"));
}

TEST_CASE("every code of the plan stands on its pull sheet, with the mass that JSON gives") {
  const Folder folder("pull");
  for (const Packet& packet : packets) {
    INFO(packet.show);
    print(packet, folder.path, {"--only", "pull-sheet"});
    const std::string sheet = text_of(folder.path / "pull-sheet.pdf");
    const auto plan = nlohmann::json::parse(program({"check", example(packet.show + ".toml"), "--json"}).out);
    CHECK(plan["schema"] == 1);
    double kilograms = 0;
    for (const auto& row : plan["cases"]) {
      const std::string code = row["code"];
      INFO(code);
      CHECK(has_word(sheet, code));
      const dunnage::Mass mass = row["mass_kg"].get<double>() * dunnage::unit::kilogram;
      kilograms += row["mass_kg"].get<double>();
      const std::string printed = dunnage::print(mass, packet.units, dunnage::Rounding::up).text();
      // The mass stands on the line of the code, or on the line above or below where the name takes two.
      bool beside = false;
      for (std::size_t at = 0; !beside && (at = sheet.find(code, at)) != std::string::npos; ++at)
        beside = sheet.substr(at < 400 ? 0 : at - 400, 800).find(printed) != std::string::npos;
      CHECK(beside);
    }
    CHECK(plan["totals"]["mass_kg"].get<double>() == Approx(kilograms));
    CHECK(plan["totals"]["units"] == plan["cases"].size());
  }
}

TEST_CASE("a mistake in the show leaves the paper of the last run untouched") {
  const Folder folder("untouched");
  fs::copy(example("kit"), folder.path / "kit", fs::copy_options::recursive);
  std::string show = bytes_of(example("indoor-afternoon.toml"));
  const std::string good = folder.file("show.toml", show);
  REQUIRE(program({"print", good, "--out", (folder.path / "out").string()}).code == 0);
  std::map<std::string, std::string> before;
  for (const fs::path& pdf : pdfs(folder.path / "out")) before[pdf.string()] = bytes_of(pdf);
  const std::size_t at = show.find("[show]");
  REQUIRE(at != std::string::npos);
  show.insert(at + 6, "\ncolour = \"red\"");
  folder.file("show.toml", show);
  const Ran ran = program({"print", good, "--out", (folder.path / "out").string()});
  CHECK(ran.code == 1);
  CHECK(ran.err.find("\"colour\" is not a key of [show]") != std::string::npos);
  for (const auto& [file, bytes] : before) CHECK(bytes_of(file) == bytes);
  CHECK(pdfs(folder.path / "out").size() == before.size());
}

TEST_CASE("every QR of the labels is read by two decoders, at 203 and at 300 dpi, to the exact text") {
  const Folder folder("labels");
  dunnage::Loaded kit;
  std::ostringstream ignored;
  REQUIRE(dunnage::load_kit(example("kit"), kit, ignored));
  dunnage::Sources sources;
  dunnage::Diagnostics diagnostics;
  const auto words = dunnage::load_words(fs::path(SHARE_DIR) / "layouts/words/en.toml", sources, diagnostics);
  REQUIRE(words);
  const std::string revision = dunnage::revision_of(kit.sources, "", "");
  const std::string pdf = (folder.path / "labels.pdf").string();
  REQUIRE(program({"label", example("kit"), "--stock", "4x6-roll", "--out", pdf}).code == 0);
  check_file(pdf, folder);
  const std::string text = text_of(pdf);
  for (const std::string dpi : {"203", "300"}) {
    const std::string images = (folder.path / dpi).string() + "-*.png";
    shell("pdftoppm -mono -png -r " + dpi + " " + pdf + " " + (folder.path / dpi).string());
    // Other symbologies see bars in ruled lines: only QR codes are asked for.
    const std::string zbar = shell("zbarimg -q --raw -Sdisable -Sqrcode.enable " + images + " 2>/dev/null").out;
    const std::string zxing = shell("for f in " + images + "; do ZXingReader -bytes $f; done 2>/dev/null").out;
    for (int u = 0; u < static_cast<int>(kit.catalogue.units.size()); ++u) {
      const auto handling =
          dunnage::handling_of(kit.catalogue.case_at(u), kit.catalogue.mass_of(u), kit.catalogue.kit.house.lift);
      const std::string& code = kit.catalogue.units[static_cast<std::size_t>(u)].code;
      INFO(code << " at " << dpi << " dpi");
      INFO(dunnage::label_text(kit.catalogue, handling, u, *words, dunnage::UnitSystem::us, revision));
      CHECK(has_word(text, code));
      const std::string said =
          dunnage::label_text(kit.catalogue, handling, u, *words, dunnage::UnitSystem::us, revision);
      CHECK(reads(zbar, said));
      CHECK(reads(zxing, said));
    }
  }
}
