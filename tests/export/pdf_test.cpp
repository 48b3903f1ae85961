// SPDX-License-Identifier: MIT
// The PDF as other programs see it: sound, complete, searchable, with every letter whole.
#include <hpdf.h>

#include <catch2/catch.hpp>

#include "../shell.h"
#include "base/error.h"
#include "base/utf8.h"
#include "export/pdf_file.h"
#include "read/faces_file.h"

using namespace dunnage;

namespace {

const Faces& staged() {
  static const Faces faces(read_faces(SHARE_DIR "/fonts"));
  return faces;
}

Paper mm(double n) { return n * unit::paper_mm; }

void put(Page& page, const std::string& role, Paper size, Spot at, const std::string& text) {
  for (const Piece& piece : staged().pieces(staged().at(role), text).pieces) {
    const Paper width = size * (piece.width / 1000.0);
    page.ink.push_back(ink::Words{at, piece.face, size, width, piece.text, 0});
    at.x += width;
  }
}

const std::string kAlphabets =
    "Größe señal çà Łódź Tiếng Việt ½ ⅖ ≤ ≥ → ± ° Київ Ёлка ё ї ΐ Αθήνα 0O 1lI “quoted” – 50 €";

/// Every role with letters of three alphabets, a rule, a box and an outline.
Pages sample() {
  Pages pages{"Pull sheet – Київ", "en", {}, false};
  Page page{mm(210), mm(297), {}, "1", "Team é"};
  Paper y = mm(20);
  for (const std::string& role : staged().roles()) {
    put(page, role, 8 * unit::point, {mm(15), y}, kAlphabets);
    y += mm(10);
  }
  page.ink.push_back(ink::Line{{mm(15), y}, {mm(195), y}, 0.5 * unit::point, mm(1)});
  page.ink.push_back(ink::Rect{{mm(15), y, mm(8), mm(8)}, 1 * unit::point, -1});
  pages.pages.push_back(page);
  return pages;
}

void whole_alphabet_matches(HPDF_Doc document, int face) {
  const std::string path = staged().file(face).file.string();
  const char* name = HPDF_LoadTTFontFromFile(document, path.c_str(), HPDF_TRUE);
  HPDF_Font font = HPDF_GetFont(document, name, "UTF-8");
  HPDF_FontDef definition = static_cast<HPDF_FontAttr>(font->attr)->fontdef;
  int seen = 0;
  for (char32_t c = 0x20; c < 0xFFF0; ++c) {
    if (!staged().has(face, c)) continue;
    INFO("U+" << std::hex << static_cast<unsigned>(c));
    const auto code = static_cast<HPDF_UINT16>(c);
    REQUIRE(HPDF_TTFontDef_GetGlyphid(definition, code) != 0);
    REQUIRE(HPDF_TTFontDef_GetCharWidth(definition, code) == staged().advance(face, c));
    ++seen;
  }
  CHECK(seen > 800);
}

/// A raster of one bit a dot, row by row.
struct Raster {
  std::size_t width = 0, height = 0;
  std::string bits;
  bool dark(std::size_t x, std::size_t y) const {
    return (static_cast<unsigned char>(bits[y * ((width + 7) / 8) + x / 8]) >> (7 - x % 8) & 1) != 0;
  }
  std::size_t dark_in(std::size_t left, std::size_t right, std::size_t top, std::size_t bottom) const {
    std::size_t count = 0;
    for (std::size_t y = top; y < bottom; ++y)
      for (std::size_t x = left; x < right; ++x) count += dark(x, y);
    return count;
  }
};

Raster raster(const std::string& pdf, int dpi) {
  const Said said = shell("pdftoppm -mono -r " + std::to_string(dpi) + " " + pdf + " 2>&1");
  Raster r;
  int used = 0;
  REQUIRE(std::sscanf(said.out.c_str(), "P4 %zu %zu%n", &r.width, &r.height, &used) == 2);
  r.bits = said.out.substr(static_cast<std::size_t>(used) + 1);
  REQUIRE(r.bits.size() == (r.width + 7) / 8 * r.height);
  return r;
}

}  // namespace

TEST_CASE("widths equal those of the PDF library, for every character of every face") {
  HPDF_Doc document = HPDF_New(nullptr, nullptr);
  HPDF_UseUTFEncodings(document);
  for (const std::string& role : staged().roles()) {
    INFO(role);
    whole_alphabet_matches(document, staged().at(role));
  }
  HPDF_Free(document);
}

TEST_CASE("the checkers find nothing to say, and every face is embedded") {
  const Folder folder("pdf-checks");
  const std::string pdf = folder.file("a.pdf", pdf_bytes({sample()}, staged()));
  CHECK(shell("qpdf --check " + pdf + " 2>&1").status == 0);
  CHECK(shell("pdftotext " + pdf + " - 2>&1 >/dev/null").out == "");
  CHECK(shell("pdftoppm -r 50 " + pdf + " 2>&1 >/dev/null").out == "");
  const Said drawn = shell("mutool draw -q -F png -o /dev/null -r 50 " + pdf + " 2>&1");
  CHECK(drawn.status == 0);
  CHECK_THAT(drawn.out, !Catch::Contains("error"));
  const Said fonts =
      shell("pdffonts " + pdf + " | tail -n +3 | awk '{print $(NF-4), $(NF-3), $(NF-2)}' | sort | uniq -c");
  CHECK(fonts.out == "      7 yes yes yes\n");
}

TEST_CASE("text is found as it was written, in three alphabets and in every face") {
  const Folder folder("pdf-text");
  const std::string pdf = folder.file("a.pdf", pdf_bytes({sample()}, staged()));
  const std::string text = shell("pdftotext -layout " + pdf + " - 2>&1").out;
  std::size_t found = 0;
  for (std::size_t at = text.find(kAlphabets); at != std::string::npos; at = text.find(kAlphabets, at + 1)) ++found;
  CHECK(found == staged().roles().size());
  CHECK_THAT(shell("mutool draw -q -F text " + pdf + " 2>/dev/null").out, Catch::Contains("Київ Ёлка ё ї ΐ Αθήνα"));
}

TEST_CASE("letters built of letters keep all their parts on paper") {
  // Each letter by itself, 144 pt high type at 72 dpi: 144 dots an em, baseline at 200.
  const Folder folder("pdf-letters");
  for (const std::string& role : staged().roles())
    for (const char32_t letter : U"éñїёΐế") {
      if (letter == 0) continue;
      INFO(role << " " << utf8::encode(letter));
      Pages pages{"Letter", "en", {Page{300 * unit::point, 300 * unit::point, {}, "1", ""}}, false};
      put(pages.pages[0], role, 144 * unit::point, {100 * unit::point, 200 * unit::point}, utf8::encode(letter));
      const Raster r = raster(folder.file("a.pdf", pdf_bytes({pages}, staged())), 72);
      const auto x_height = static_cast<std::size_t>(144 * staged().metrics(staged().at(role)).x_height);
      CHECK(r.dark_in(0, 300, 200 - x_height + 8, 201) > 500);
      CHECK(r.dark_in(0, 300, 0, 200 - x_height - 4) > 60);
    }
}

TEST_CASE("the same pages give the same bytes, with no date and no random mark") {
  const std::string first = pdf_bytes({sample()}, staged());
  const Faces again(read_faces(SHARE_DIR "/fonts"));
  CHECK(first == pdf_bytes({sample()}, again));
  CHECK(first.starts_with("%PDF-1.7"));
  CHECK(first.find("/ID") == std::string::npos);
  CHECK(first.find("/CreationDate") == std::string::npos);
}

TEST_CASE("words that are known last reach a page that was sealed long before") {
  const int face = staged().at("text");
  const auto words = [&](const std::string& text, double y) {
    return ink::Words{{mm(5), mm(y)}, face, 12 * unit::point, mm(9), text, 0};
  };
  for (const bool compress : {true, false}) {
    SealedPages pages(compress);
    pages.begin("Late", "en", false);
    for (const char* body : {"first body", "second body"}) pages.add(Page{mm(100), mm(50), {words(body, 20)}, "1", ""});
    for (const std::size_t page : {std::size_t{0}, std::size_t{1}})
      pages.add_words(page, {words("page " + std::to_string(page + 1) + " of 2", 10)});
    const Folder folder("pdf-late");
    const std::string pdf = folder.file("a.pdf", pdf_bytes(pages, staged()));
    CHECK(shell("qpdf --check " + pdf + " 2>&1").status == 0);
    CHECK(shell("pdftotext " + pdf + " - 2>&1").out == "page 1 of 2\nfirst body\n\n\fpage 2 of 2\nsecond body\n\n\f");
  }
}

TEST_CASE("only the faces that the pages use are embedded") {
  Pages pages{"One face", "en", {Page{mm(50), mm(50), {}, "1", ""}}, false};
  put(pages.pages[0], "code", 12 * unit::point, {mm(5), mm(10)}, "FOH-1");
  const Folder folder("pdf-faces");
  const std::string pdf = folder.file("a.pdf", pdf_bytes({pages}, staged()));
  const std::string fonts = shell("pdffonts " + pdf + " 2>&1 | tail -n +3").out;
  CHECK_THAT(fonts, Catch::Contains("JetBrainsMono-Bold"));
  CHECK(std::count(fonts.begin(), fonts.end(), '\n') == 1);
  CHECK(std::filesystem::file_size(pdf) < 40000);
}

TEST_CASE("title, language, page labels, bookmarks and printing at full size") {
  Pages pull{"Pull sheet – Київ", "en", {}, true}, tags{"Étiquettes", "fr", {}, true};
  for (const char* label : {"1", "2", "A-9", "A-10", "A-12", "cover"})
    pull.pages.push_back(Page{mm(100), mm(150), {}, label, label == std::string("A-9") ? "Équipe A" : ""});
  tags.pages.push_back(Page{mm(100), mm(150), {}, "1", "Pied"});
  const Folder folder("pdf-document");
  const std::string pdf = folder.file("a.pdf", pdf_bytes({pull, tags}, staged()));
  CHECK(shell("qpdf --check " + pdf + " 2>&1").status == 0);
  const std::string info = shell("pdfinfo " + pdf + " 2>&1").out;
  CHECK_THAT(info, Catch::Contains("Title:           Pull sheet – Київ\n"));
  CHECK_THAT(info, Catch::Contains("Pages:           7\n"));
  const std::string tree = shell("qpdf --qdf --object-streams=disable " + pdf + " - 2>&1").out;
  CHECK_THAT(tree, Catch::Contains("/Lang (en)"));
  CHECK_THAT(tree, Catch::Contains("/PrintScaling /None"));
  CHECK_THAT(tree, Catch::Contains("/DisplayDocTitle true"));
  const auto json = [&](const std::string& key) {
    return shell("qpdf --json=1 --json-key=" + key + " " + pdf + " 2>&1 | tr -d ' \\n'").out;
  };
  CHECK_THAT(json("pagelabels"),
             Catch::Contains(
                 "{\"index\":0,\"label\":{\"/S\":\"/D\",\"/St\":1}},{\"index\":2,\"label\":{\"/P\":\"A-\",\"/S\":"
                 "\"/D\",\"/St\":9}},{\"index\":4,\"label\":{\"/P\":\"A-\",\"/S\":\"/D\",\"/St\":12}},{\"index\":5,"
                 "\"label\":{\"/P\":\"cover\",\"/St\":1}},{\"index\":6,\"label\":{\"/S\":\"/D\",\"/St\":1}}"));
  const std::string outlines = json("outlines");
  CHECK_THAT(outlines, Catch::Contains("\"title\":\"Pullsheet–Київ\""));
  CHECK_THAT(outlines, Catch::Contains("\"destpageposfrom1\":3,\"kids\":[],\"object\":"));
  CHECK_THAT(outlines, Catch::Contains("\"title\":\"ÉquipeA\""));
  CHECK_THAT(outlines, Catch::Contains("\"destpageposfrom1\":7"));
}

TEST_CASE("two faces with one name inside are refused, as the library would take the first for both") {
  const std::filesystem::path file = SHARE_DIR "/fonts/NotoSans-Regular.ttf";
  const Faces twins({{"text", file, {}}, {"again", file, {}}});
  Pages pages{"Twins", "en", {Page{mm(50), mm(50), {}, "1", ""}}, false};
  for (int face : {0, 1}) pages.pages[0].ink.push_back(ink::Words{{mm(5), mm(9)}, face, mm(4), mm(3), "A", 0});
  CHECK_THROWS_WITH(pdf_bytes({pages}, twins),
                    "the font file " + file.string() + " has the same name as another face: NotoSans-Regular");
}
