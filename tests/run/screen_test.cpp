// SPDX-License-Identifier: MIT
// Signs that a terminal obeys, and line ends that would forge a line, through every way by which a stranger's text can
// reach the screen.
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "../shell.h"
#include "base/shown.h"
#include "base/utf8.h"
#include "program.h"

using dunnage::bytes_of;
using dunnage::example;
using dunnage::Folder;
using dunnage::program;
using dunnage::Ran;

namespace {

/// ECMA-48 controls of one byte and of C1, marks and overrides of direction, separators, deprecated signs, tags.
const std::vector<std::string> signs = {"\x1B[2J",   "\x07",   "\x08",   "\x7F",       "\u0085",    "\u009B",
                                        "\u009D0;t", "\u061C", "\u200E", "\u200F",     "\u202A",    "\u202E",
                                        "\u2066",    "\u2069", "\uFEFF", "\u2028",     "\u2029",    "\u206A",
                                        "\u206F",    "\uFFF9", "\u00AD", "\U000E0001", "\U000E0041"};
constexpr const char* forged = "\nFORGED: all is well\n";

std::string all_signs() {
  std::string out = "odd";
  for (const std::string& sign : signs) out += sign;
  return out + forged + "end";
}

/// The same as TOML may hold it between quotes.
std::string in_toml(bool escaped = true) {
  std::string out;
  for (const char32_t c : dunnage::utf8::decode(all_signs())) {
    char hex[12];
    std::snprintf(hex, sizeof hex, "\\U%08X", static_cast<unsigned>(c));
    const bool raw = !escaped && c > 0x9F;
    out += raw ? dunnage::utf8::encode(c) : c == U'o' || c == U'd' ? std::string(1, static_cast<char>(c)) : hex;
  }
  return out;
}

void harmless(const std::string& text) {
  for (std::size_t at = 0; at < text.size();) {
    const char32_t c = dunnage::utf8::next(text, at);
    if (c != U'\n' && c != U'\t' && dunnage::is_unprinted(c))
      FAIL_CHECK("U+" << std::hex << static_cast<long>(c) << " in:\n" << text);
  }
  CHECK(("\n" + text).find("\nFORGED") == std::string::npos);
}

Ran harmless(const std::vector<std::string>& arguments) {
  const Ran ran = program(arguments);
  INFO(arguments.front() << " ended with " << ran.code << ": " << ran.err);
  harmless(ran.out);
  harmless(ran.err);
  return ran;
}

/// A kit and show that are in order, in a folder of their own.
struct Ground {
  Folder folder{"screen"};
  std::string kit = (folder.path / "kit").string(), show = (folder.path / "show.toml").string();
  Ground() { REQUIRE(program({"begin", folder.path.string()}).code == 0); }
  std::string file(const std::string& name, const std::string& text) const { return folder.file(name, text); }
};

}  // namespace

TEST_CASE("quoted keys, values and lines of a kit and a show") {
  const Ground g;
  const std::string section = "[[case]]\ncode = \"ODD\"\nname = \"Odd\"\nform = \"box\"\n";
  for (const std::string& line : std::vector<std::string>{
           "\"" + in_toml() + "\" = 1", "\"" + in_toml(false) + "\" = 1 # " + in_toml(false),
           "form_of = 1 # \u202E\u009B\u2066", "marks = [\"" + in_toml() + "\"]", "looks = \"" + in_toml() + "\"",
           "count = \"" + in_toml() + "\"", "names.\"" + in_toml() + "\" = 1", "goes = { \"" + in_toml() + "\" = 1 }",
           "\"kit\u202E\" = 2"}) {
    g.file("kit/odd.toml", section + line + "\n");
    CHECK(harmless({"list", "cases", g.kit}).code == 1);
    g.file("show2.toml", "kit = \"kit\"\n" + line + "\n");
    CHECK(harmless({"check", g.folder.path.string() + "/show2.toml"}).code == 1);
  }
}

TEST_CASE("names of files and folders") {
  const Ground g;
  const std::string odd = "a\x1B[2J\u202E\u009B" + std::string(forged);
  g.file("kit/" + odd + ".toml", "[[case]]\nwrong = 1\n");
  CHECK(harmless({"list", "cases", g.kit}).code == 1);
  CHECK(harmless({"check", g.show}).code == 1);
  std::filesystem::remove(g.kit + "/" + odd + ".toml");
  CHECK(harmless({"print", g.show, "--only", "cover", "--out", (g.folder.path / odd).string()}).code == 0);
  CHECK(harmless({"label", g.kit, "--out", (g.folder.path / (odd + ".pdf")).string()}).code == 0);
  CHECK(harmless({"begin", (g.folder.path / ("new" + odd)).string()}).code == 0);
  CHECK(harmless({"import", g.file(odd + ".csv", "Code,Name,Form\nBOX,Box,box\n"), "--kit", g.kit}).code != 3);
}

TEST_CASE("lists of scans, as text and as JSON") {
  const Ground g;
  std::string text = "DESK " + all_signs() + "\n";
  for (const std::string& sign : signs) text += "NO" + sign + "-7\nMICS damaged: " + sign + "\nnote: " + sign + "\n";
  const std::string list = g.file("\u202Elist\x1B.txt", text);
  CHECK(harmless({"tally", g.show, "--back", list}).code != 3);
  const Ran json = harmless({"tally", g.show, "--back", list, "--json"});
  const auto read = nlohmann::json::parse(json.out);  // the escapes mean what was scanned
  CHECK(read.dump().find("\u202E") != std::string::npos);
  CHECK(read.dump().find("\U000E0041") != std::string::npos);
}

TEST_CASE("heads and cells of spreadsheets") {
  const Ground g;
  const std::string odd = "\"" + all_signs() + "\"";
  for (const std::string& text : std::vector<std::string>{
           odd + ",Name,Form\n" + odd + ",Box,box\n",
           "Code,Name,Form,Weight (kg)\nBOX," + odd + "," + odd + "," + odd + "\n",
           "Code,Name,Form," + odd + "\nBOX,Box,box,1\n",
           "Code,Name,Form,Contents,Size,Inspect by\nB,B,box," + odd + "," + odd + "," + odd + "\n"}) {
    const std::string sheet = g.file("gear.csv", text);
    harmless({"import", sheet, "--kit", g.kit, "--dry-run"});
    harmless({"import", sheet, "--kit", g.kit, "--as", "items", "--dry-run"});
    harmless({"import", sheet, "--kit", g.kit, "--column", all_signs() + "=code"});
  }
  harmless({"import", g.file("scale.csv", "Code,Weight (kg)\n" + odd + ",3\nMICS," + odd + "\n"), "--kit", g.kit,
            "--weights"});
}

TEST_CASE("arguments") {
  const Ground g;
  const std::string odd = all_signs();
  for (const std::vector<std::string>& arguments :
       std::vector<std::vector<std::string>>{{odd},
                                             {"--" + odd},
                                             {"print", odd},
                                             {"print", g.show, "--paper", odd},
                                             {"print", g.show, "--only", odd},
                                             {"print", g.show, "--for", odd},
                                             {"print", g.show, "--lang", odd},
                                             {"print", g.show, "--" + odd},
                                             {"check", g.show, "--against", odd},
                                             {"why", g.show, odd},
                                             {"label", g.kit, odd},
                                             {"label", g.kit, "--stock", odd},
                                             {"label", g.kit, "--copies", odd},
                                             {"label", g.kit, "--offset", odd},
                                             {"reckon", odd},
                                             {"reckon", "ramp", odd},
                                             {"reckon", "ramp", odd + "=1"},
                                             {"reckon", "ramp", "rise=" + odd},
                                             {"list", odd},
                                             {"list", "cases", odd},
                                             {"list", "stocks", odd},
                                             {"help", odd},
                                             {"complete", odd},
                                             {"import", odd, "--kit", g.kit, "--unit", odd},
                                             {"tally", g.show, "--back", odd},
                                             {"clash", g.show, odd}})
    CHECK(harmless(arguments).code == 1);
  const Ran json = harmless({"reckon", "unit", "value=24 lb", "to=kg", "--json"});
  CHECK(json.code == 0);
}

TEST_CASE("a spreadsheet keeps its bytes, but not where a person watches") {
  const Ground g;
  g.file("kit/odd.toml", "[[case]]\ncode = \"ODD\"\nname = \"right\u200Fleft\"\nform = \"box\"\n");
  std::ostringstream piped, watched, err;
  CHECK(dunnage::run({"list", "cases", g.kit, "--csv"}, SHARE_DIR, piped, err) == 0);
  CHECK(dunnage::run({"list", "cases", g.kit, "--csv"}, SHARE_DIR, watched, err, {true, true}) == 0);
  CHECK(piped.str().find("right\u200Fleft") != std::string::npos);
  CHECK(watched.str().find("right\\u200Fleft") != std::string::npos);
}
