// SPDX-License-Identifier: MIT
// One page, as drawing operators and as plain text: exact.
#include <catch2/catch.hpp>

#include "export/page_ops.h"
#include "export/page_text.h"
#include "read/faces_file.h"

using namespace dunnage;

namespace {

Paper mm(double n) { return n * unit::paper_mm; }
Paper pt(double n) { return n * unit::point; }

/// One of each ink on a page of 200 x 100 points.
Page sample() {
  using Step = ink::Outline::Step;
  Page page{pt(200), pt(100), {}, "1", "Team A"};
  page.ink.push_back(ink::Words{{pt(10), pt(20)}, 0, pt(12), pt(20), "Aé", 0});
  page.ink.push_back(ink::Words{{pt(10), pt(34.5)}, 0, pt(12), pt(20), "7", 0});
  page.ink.push_back(ink::Line{{pt(0), pt(40)}, {pt(200), pt(40)}, pt(0.25), pt(3)});
  page.ink.push_back(ink::Rect{{pt(10), pt(50), pt(20), pt(10)}, pt(1), 0.8});
  page.ink.push_back(ink::Rect{{pt(40), pt(50), pt(20), pt(10)}, pt(0), -1});
  page.ink.push_back(ink::Outline{{{Step::Kind::move, {pt(0), pt(100)}, {}, {}},
                                   {Step::Kind::curve, {pt(1), pt(99)}, {pt(2), pt(98)}, {pt(1) / 3, pt(97)}},
                                   {Step::Kind::close, {}, {}, {}}},
                                  pt(0),
                                  1});
  page.ink.push_back(ink::Modules{{pt(100), pt(50)}, pt(2), 3, {1, 0, 1, 0, 1, 0, 1, 1, 0}});
  return page;
}

}  // namespace

TEST_CASE("a page is drawn from its lower left corner, saying nothing twice") {
  std::string stream;
  UsedCharacters used;
  add_operators(stream, sample().ink, sample().height, used);
  CHECK(stream ==
        "BT\n/F1 12 Tf\n10 80 Td <004100E9> Tj\n0 -14.5 Td <0037> Tj\nET\n"
        "0.25 w\n[3 ] 0 d\n0 60 m 200 60 l S\n"
        "0.8 g\n1 w\n[] 0 d\n10 40 20 10 re B\n"
        "1 g\n0 0 m 1 1 2 2 0.333 3 c h f*\n"
        "0 g\nq 6 0 0 6 100 44 cm BI /IM true /W 3 /H 3 /D [1 0] /F /AHx ID A040C0> EI Q\n");
  CHECK(used.size() == 1);
  CHECK(std::count(used.at(0).begin(), used.at(0).end(), true) == 3);
}

TEST_CASE("a page as text tells what stands where") {
  const Faces faces(read_faces(SHARE_DIR "/fonts"));
  CHECK(page_text({Pages{"Pull sheet", "en", {sample()}, true}}, faces) ==
        "document Pull sheet [en] to scale\n"
        "page 1 70.6x35.3 bookmark Team A\n"
        "words 3.5,7.1 text 12.0pt: Aé\n"
        "words 3.5,12.2 text 12.0pt: 7\n"
        "line 0.0,14.1 to 70.6,14.1 dashed\n"
        "rect 3.5,17.6 7.1x3.5 framed filled 0.80\n"
        "rect 14.1,17.6 7.1x3.5\n"
        "outline 0.0,34.2 0.7x1.1 grey 1.00\n"
        "modules 35.3,17.6 3 a side, 0.706 mm each\n");
  CHECK(page_text({Pages{"Empty", "de", {Page{mm(210), mm(297), {}, "i", ""}}, false}}, faces) ==
        "document Empty [de]\npage i 210.0x297.0\n");
}
