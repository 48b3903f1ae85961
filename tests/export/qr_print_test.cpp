// SPDX-License-Identifier: MIT
// QR codes as printed: two readers read the rasters of label printers to the exact text.
#include <catch2/catch.hpp>

#include "../shell.h"
#include "export/pdf_file.h"
#include "read/faces_file.h"
#include "symbol/qr.h"

using namespace dunnage;

namespace {

/// A label of 4 x 6 in with the code at `dots` whole printer dots a module.
Pages label(const QrCode& code, int dpi, int dots) {
  const Paper dot = 1.0 / dpi * unit::paper_in;
  Page page{4 * unit::paper_in, 6 * unit::paper_in, {}, "1", ""};
  page.ink.push_back(
      ink::Modules{{dot * (dots * qr_quiet), dot * (dots * qr_quiet)}, dot * dots, code.side, code.dark});
  return Pages{"Label", "en", {page}, true};
}

void read_back(const std::string& text, char correction) {
  const auto code = qr(text, correction, 177);
  REQUIRE(code);
  const Faces faces(read_faces(SHARE_DIR "/fonts"));
  const Folder folder("qr-print");
  for (int dpi : {203, 300}) {
    INFO(dpi << " dpi: " << text);
    const std::string pdf = folder.file("label.pdf", pdf_bytes({label(*code, dpi, 5)}, faces));
    const std::string image = (folder.path / "label").string();
    CHECK(shell("pdftoppm -mono -singlefile -png -r " + std::to_string(dpi) + " " + pdf + " " + image + " 2>&1").out ==
          "");
    CHECK(shell("zbarimg -q --raw -Sbinary " + image + ".png 2>/dev/null").out == text);
    CHECK(shell("ZXingReader -bytes " + image + ".png").out == text);
  }
}

}  // namespace

TEST_CASE("readers get the text of a printed code exactly") {
  read_back("FOH-1  Front-of-house trunk", 'Q');
  read_back(
      "TWR-2  Tower base\n83 lb  roll, lift by 2\n6 Dynamic vocal mic\n3 Cloth tape, 50 m\n1 Hammer\n12 Mic "
      "cable, 50 ft\n"
      "+ 4 more\nThe house  555-0100",
      'M');
  read_back("MIC-1  Micrófono – Größe ½\n12 kg ≤ 25 kg\nКиїв Ёлка Αθήνα\n6 Tiếng €", 'Q');
}
