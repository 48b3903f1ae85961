// SPDX-License-Identifier: MIT
// The floor of the labels: the same words straight through the PDF library, the code's mask chosen by the packaged
// generator, its modules merged into runs, one path and one fill.
// floor_labels FONTS LABELS FILE
#include <qrcodegen/qrcodegen.hpp>

#include "bench_words.h"
#include "floor.h"

using namespace dunnage::bench;
using qrcodegen::QrCode;

namespace {

struct Faces {
  HPDF_Font narrow, narrow_bold, code;
};

std::string line_words(int n, int line) {
  return fmt::format("{} x {}", thing_count(n, line), thing_name(thing_number(n, line)));
}

std::string code_text(int n) {
  std::string text = fmt::format("{}  {}\nmass {} lb (3f0c3861)\ncarry; lift: 1 person\n", trunk_code(n), trunk_name(n),
                                 trunk_pounds(n));
  for (int line = 0; line < label_lines; ++line) text += line_words(n, line) + "\n";
  return text + "belongs to " + house_name + "\nphone " + house_phone;
}

void draw_code(HPDF_Page page, int n) {
  const QrCode code = QrCode::encodeText(code_text(n).c_str(), QrCode::Ecc::MEDIUM);
  const double module = 5 * 72.0 / 203;
  const double left = 279 - module * code.getSize(), top = 8 + module * code.getSize();
  for (int y = 0; y < code.getSize(); ++y)
    for (int x = 0; x < code.getSize();) {
      int end = x;
      while (end < code.getSize() && code.getModule(end, y)) ++end;
      if (end > x)
        HPDF_Page_Rectangle(page, static_cast<HPDF_REAL>(left + module * x),
                            static_cast<HPDF_REAL>(top - module * (y + 1)), static_cast<HPDF_REAL>(module * (end - x)),
                            static_cast<HPDF_REAL>(module));
      x = end + 1;
    }
  HPDF_Page_Fill(page);
}

void draw_label(HPDF_Page page, const Faces& faces, int n) {
  FloorText(page, faces.code, 60).put(8, 370, trunk_code(n));
  FloorText(page, faces.narrow_bold, 30).put(8, 325, trunk_name(n));
  FloorText(page, faces.narrow_bold, 40).put(8, 275, fmt::format("{} lb", trunk_pounds(n)));
  {
    FloorText owner(page, faces.narrow_bold, 11);
    owner.put(144, 205, house_name);
    owner.put(144, 192, house_phone);
  }
  FloorText(page, faces.narrow, 9).put(144, 172, "mass of 3f0c3861");
  {
    FloorText lines(page, faces.narrow, 13);
    for (int line = 0; line < label_lines; ++line) lines.put(8, 235 - 15 * line, line_words(n, line));
  }
  draw_code(page, n);
}

}  // namespace

int main(int, char** arguments) {
  const std::string fonts = arguments[1];
  const int labels = std::atoi(arguments[2]);
  HPDF_Doc document = begin_floor();
  const auto face = [&](const char* file) { return floor_face(document, fonts, file); };
  const Faces faces{face("NotoSans-Condensed.ttf"), face("NotoSans-CondensedBold.ttf"), face("JetBrainsMono-Bold.ttf")};
  for (int n = 1; n <= labels; ++n) draw_label(floor_page(document, 288, 432), faces, n);
  HPDF_SaveToFile(document, arguments[3]);
  HPDF_Free(document);
}
