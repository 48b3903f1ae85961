// SPDX-License-Identifier: MIT
// Texts that no person typed: too large, too many, too long, figures beyond all sense. Each is refused in a sentence,
// soon, with exit code 1 and nothing written.
#include <algorithm>
#include <catch2/catch.hpp>
#include <chrono>

#include "../effort.h"
#include "../shell.h"
#include "program.h"

using dunnage::Folder;
using dunnage::program;
using dunnage::Ran;
namespace fs = std::filesystem;

namespace {

const std::string house = "[house]\nname = \"H\"\n";
const std::string one_case =
    "[[case]]\ncode = \"BOX\"\nname = \"Box\"\nform = \"box\"\nhome = \"Rack\"\nweighed = \"9 kg\"\n";
const std::string plain_show = "kit = \"kit\"\n[show]\ntitle = \"S\"\ndate = 2027-06-19\n";

/// A kit of one file beside a show, made anew for each text.
struct House {
  explicit House(const std::string& name) : folder("limits-" + name) { fs::create_directories(kit()); }
  fs::path kit() const { return folder.path / "kit"; }
  Ran check(const std::string& kit_text, const std::string& show_text = plain_show) const {
    std::ofstream(kit() / "kit.toml", std::ios::binary) << kit_text;
    return program({"check", folder.file("show.toml", show_text)});
  }
  Folder folder;
};

void refused(const Ran& ran, const std::string& why) {
  INFO(ran.err.substr(0, 2000));
  CHECK(ran.code == 1);
  CHECK(ran.out.empty());
  CHECK(ran.err.find(why) != std::string::npos);
}

}  // namespace

TEST_CASE("a kit that is a link in a circle, or links to nothing, is told") {
  const House house_("links");
  fs::remove(house_.kit());
  fs::create_symlink("kit", house_.kit());
  const std::string show = house_.folder.file("show.toml", plain_show);
  refused(program({"check", show}), "cannot be read: Too many levels of symbolic links");
  refused(program({"label", house_.kit().string()}), "cannot be read: Too many levels of symbolic links");
  fs::remove(house_.kit());
  fs::create_symlink("nowhere", house_.kit());
  refused(program({"check", show}), "there is no folder");
  refused(program({"check", house_.folder.file("other.toml",
                                               "kit = \"" + std::string(5000, 'k') + "\"\n[show]\ntitle = \"S\"\n")}),
          "cannot be read: File name too long");
  fs::remove(house_.kit());
  fs::create_directories(house_.kit());
  fs::create_symlink("kit.toml", house_.kit() / "kit.toml");
  refused(program({"check", show}), "cannot be read: Too many levels of symbolic links");
  fs::remove(house_.kit() / "kit.toml");
  fs::create_symlink("layouts", house_.kit() / "layouts");
  std::ofstream(house_.kit() / "kit.toml") << house << one_case;
  refused(program({"print", show, "--out", (house_.folder.path / "out").string()}),
          "cannot be read: Too many levels of symbolic links");
}

TEST_CASE("files above 64 MiB are refused by every reader") {
  const House h("large");
  const std::string show = h.folder.file("show.toml", plain_show), large = h.folder.file("large.toml", "");
  std::ofstream(h.kit() / "kit.toml") << house << one_case;
  fs::resize_file(large, 64u * 1024 * 1024 + 1);
  refused(program({"check", large}), "is larger than 64 MiB");
  refused(program({"import", large, "--kit", h.kit().string()}), "is larger than 64 MiB");
  refused(program({"import", large, "--weights", "--kit", h.kit().string()}), "is larger than 64 MiB");
  refused(program({"tally", show, "--back", large}), "is larger than 64 MiB");
  fs::rename(large, h.kit() / "large.toml");
  refused(program({"check", show}), "is larger than 64 MiB");
  refused(program({"label", h.kit().string()}), "is larger than 64 MiB");
  refused(program({"check", "/dev/zero"}), "is not a plain file");
}

TEST_CASE("a million wrong keys are counted, and the first ten thousand told") {
  const House h("keys");
  std::string text = house;
  for (int i = 0; i < 1000000; ++i) text += "k" + std::to_string(i) + " = 1\n";
  const Ran ran = h.check(text + one_case);
  refused(ran, "\"k0\" is not a key of [house]");
  CHECK(ran.err.ends_with("1000000 errors; the first 10000 are told above\n"));
}

TEST_CASE("a name of a megabyte is taken, and told where it has no room") {
  const House h("names");
  const std::size_t megabyte = dunnage::turns(1000000);
  const std::string name(megabyte, 'W');
  const std::string kit = house + one_case + "[[case]]\ncode = \"LONG\"\nname = \"" + name +
                          "\"\nform = \"box\"\nhome = \"Rack\"\nweighed = \"9 kg\"\ngoes = \"always\"\n";
  CHECK(h.check(kit).code == 2);
  refused(program({"print", (h.folder.path / "show.toml").string(), "--out", (h.folder.path / "out").string()}),
          " begins something taller than a page that cannot be parted");
  refused(program({"label", h.kit().string(), "--out", (h.folder.path / "out.pdf").string()}), "WWW");
  CHECK_FALSE(fs::exists(h.folder.path / "out"));
  refused(h.check(house + one_case + "[[case]]\ncode = \"" + name +
                  "\"\nname = \"N\"\nform = \"box\"\nholds = [{ item = \"" + name + "\", count = 1 }]\n"),
          "WWW");
  // In a spreadsheet and in a list of scans: one long line, and one long run of blanks.
  for (const std::string& cell : {name, std::string(megabyte, ' '), std::string(megabyte, '9'),
                                  "\"" + std::string(megabyte, ',') + "\"", std::string(megabyte, '"')}) {
    std::ofstream(h.kit() / "kit.toml", std::ios::binary) << house << one_case;
    const std::string sheet = h.folder.file("gear.csv", "code,name,weight (kg),size (cm),contents,count\nA1,Box," +
                                                            cell + "," + cell + "," + cell + "," + cell + "\n");
    const int code = program({"import", sheet, "--dry-run", "--kit", h.kit().string()}).code;
    CHECK((code == 0 || code == 1 || code == 2));
    CHECK(program({"tally", (h.folder.path / "show.toml").string(), "--back",
                   h.folder.file("scans.txt", "BOX " + cell + "\n12:00 " + cell + " 12:00\n" + cell + "\n")})
              .code != 3);
  }
}

TEST_CASE("sixty canopies, alike in all but their names, print on every sheet") {
  const House h("canopies");
  const std::string canopy =
      "[[structure]]\ncode = \"CANOPY\"\nkind = \"canopy\"\nlegs = [\"NW\", \"NE\", \"SE\", \"SW\"]\n";
  std::string show = plain_show;
  for (int i = 1; i <= 60; ++i)
    show += "[[use]]\nstructure = \"CANOPY\"\nas = \"canopy of the stall of number " + std::to_string(i) + "\"\n";
  REQUIRE(h.check(house + one_case + canopy, show).code == 2);
  const std::string out = (h.folder.path / "out").string();
  const Ran ran = program({"print", (h.folder.path / "show.toml").string(), "--out", out});
  INFO(ran.err);
  CHECK(ran.code == 2);
  const std::string walk = dunnage::shell("pdftotext -layout " + out + "/safety-walk.pdf -").out;
  for (const std::string name : {"number 1 ", "number 33 ", "number 60"}) CHECK(walk.find(name) != std::string::npos);
}

TEST_CASE("figures beyond all sense are refused at their place") {
  const House h("figures");
  for (const std::string mass : {"1e308 kg", "-0 kg", "0 kg", "-1 kg", "nan kg", "inf kg", "1e-308 kg", "1e999 kg",
                                 "99999999999999999999 kg", "0x10 kg", "1_0 kg"}) {
    INFO(mass);
    const Ran ran =
        h.check(house + "[[case]]\ncode = \"BOX\"\nname = \"Box\"\nform = \"box\"\nweighed = \"" + mass + "\"\n");
    refused(ran, "kit.toml:7:11: error: ");
    CHECK(ran.err.ends_with("1 error\n"));
  }
  for (const std::string count :
       {"-1", "0", "10000", "9223372036854775807", "1e308", "nan", "inf", "-0.0", "1.5", "99999999999999999999"}) {
    INFO(count);
    refused(h.check(house + one_case + "count = " + count + "\n"), "kit.toml:9:");
  }
  for (const std::string date : {"0000-00-00", "2027-02-29", "99999-01-01", "2027-13-01"})
    refused(h.check(house + one_case, "kit = \"kit\"\n[show]\ntitle = \"S\"\ndate = " + date + "\n"), "show.toml:4:");
  for (const std::string mass : {"1e308 kg", "-0 kg", "nan kg", "inf lb", "1e-308 kg", "kg", "1e308"}) {
    const Ran ran = program({"reckon", "lift-team", "mass=" + mass, "people=crew", "grips=2"});
    INFO(mass << ran.out);
    CHECK(ran.code == 1);
    CHECK(std::count(ran.err.begin(), ran.err.end(), '\n') == 2);  // what is wrong, and an example
  }
}

TEST_CASE("zero below nothing prints as zero") {
  const House h("minus-zero");
  const Ran ran = h.check(house + one_case + "goes = \"always\"\nstack = \"-0 kg\"\n");
  CHECK(ran.code == 2);
  CHECK(ran.out.find("-0") == std::string::npos);
}

TEST_CASE("more pieces and pages than one run can hold are refused with the limit") {
  const House h("many");
  std::string kit = house;
  const auto box = [](int i, int count) {
    return "[[case]]\ncode = \"B" + std::to_string(i) +
           "\"\nname = \"Box\"\nform = \"box\"\nhome = \"R\"\nweighed = \"9 kg\"\ngoes = \"always\"\ncount = " +
           std::to_string(count) + "\n";
  };
  for (int i = 0; i < 101; ++i) kit += box(i, 9999);
  refused(h.check(kit), "with this case the kit has more than 1000000 pieces");
  std::ofstream(h.kit() / "kit.toml") << house << box(1, 1000);
  const std::string out = (h.folder.path / "out.pdf").string();
  refused(program({"label", h.kit().string(), "--copies", "1000", "--stock", "4x6-roll", "--out", out}),
          "1000000 labels on 1000000 pages, and one run prints at most 200000");
  CHECK_FALSE(fs::exists(out));
  refused(program({"label", h.kit().string(), "--copies", "99999999999999999999"}), "--copies");
}

TEST_CASE("file names made from typed text are safe, and a name that is taken is told") {
  const House h("file-names");
  const std::string sheet = "code,name\nA1,Box\n";
  const auto made = [&](const std::string& name) {
    fs::remove_all(h.kit());
    const Ran ran = program({"import", h.folder.file(name, sheet), "--kit", h.kit().string()});
    INFO(name << ran.err);
    CHECK(ran.code != 3);
    std::vector<std::string> out;
    for (const auto& entry : fs::directory_iterator(h.kit())) out.push_back(entry.path().filename().string());
    std::sort(out.begin(), out.end());
    REQUIRE(out.size() == 2);
    CHECK(std::find(out.begin(), out.end(), "house.toml") != out.end());
    return out.front() == "house.toml" ? out.back() : out.front();
  };
  CHECK(made("Gear list 2.csv") == "gear-list-2.toml");
  CHECK(made("-rf.csv") == "rf.toml");
  CHECK(made("..csv") == "spreadsheet.toml");
  CHECK(made("CON.csv") == "con-spreadsheet.toml");
  CHECK(made("lpt1.csv") == "lpt1-spreadsheet.toml");
  CHECK(made("house.csv") == "house-spreadsheet.toml");
  CHECK(made("a\nb;$(c).csv") == "a-b---c.toml");
  CHECK(made("\xC3\xA9t\xC3\xA9.csv") == "t.toml");
  CHECK(made(std::string(240, 'x') + ".csv").size() < 120);
  program({"import", h.folder.file("gear list.csv", sheet), "--kit", h.kit().string()});
  refused(program({"import", h.folder.file("gear-list.csv", sheet), "--kit", h.kit().string()}),
          "gear-list.toml is there already");
}
