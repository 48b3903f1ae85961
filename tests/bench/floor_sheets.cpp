// SPDX-License-Identifier: MIT
// The floor of the pull sheets: the same words, boxes and rules straight through the PDF library.
// floor_sheets FONTS PAGES FILE
#include "bench_words.h"
#include "floor.h"

using namespace dunnage::bench;

namespace {

constexpr float left = 22.7F, right = 589.3F, top = 769.3F, first_row = 716, row_height = 20.7F;

struct Faces {
  HPDF_Font narrow, narrow_bold, code, text_bold, text;
};

float row_y(int row) { return first_row - row_height * static_cast<float>(row); }

void draw_lines(HPDF_Page page) {
  HPDF_Page_SetLineWidth(page, 0.5F);
  for (const float y : {top - 32, first_row + 22, first_row + 12}) {
    HPDF_Page_MoveTo(page, left, y);
    HPDF_Page_LineTo(page, right, y);
  }
  for (int row = 0; row < rows_on_page; ++row) {
    HPDF_Page_MoveTo(page, left, row_y(row) - 9);
    HPDF_Page_LineTo(page, right, row_y(row) - 9);
  }
  HPDF_Page_Stroke(page);
  HPDF_Page_SetLineWidth(page, 0.8F);
  for (int row = 0; row < rows_on_page; ++row) HPDF_Page_Rectangle(page, left, row_y(row) - 6, 14.2F, 14.2F);
  HPDF_Page_Stroke(page);
}

void draw_head(HPDF_Page page, const Faces& faces, int number, int pages) {
  FloorText(page, faces.text_bold, 14).put(left, top - 12, "Pull sheet");
  {
    FloorText text(page, faces.text, 9);
    text.put(left, top - 26, "Long evening \u00b7 Sat 2027-09-18");
    text.put(500, top - 26, fmt::format("page {} of {}", number, pages));
    text.put(left, 24, "revision 3f0c3861");
  }
  FloorText text(page, faces.narrow_bold, 8);
  const char* heads[] = {"have", "code", "what", "looks like", "no.", "mass", "move and lift", "goes to"};
  const double at[] = {left, 50, 115, 225, 340, 390, 430, 510};
  for (int i = 0; i < 8; ++i) text.put(at[i], first_row + 26, heads[i]);
  text.put(left, first_row + 15, "Hall 1 (continued)");
}

void draw_rows(HPDF_Page page, const Faces& faces, int first) {
  const auto trunk = [&](int row) { return (first + row) / 32 + 1; };
  const auto unit = [&](int row) { return (first + row) % 32 + 1; };
  {
    FloorText text(page, faces.code, 8);
    for (int row = 0; row < rows_on_page; ++row)
      text.put(50, row_y(row), fmt::format("{}-{}", trunk_code(trunk(row)), unit(row)));
  }
  {
    FloorText text(page, faces.narrow_bold, 8);
    for (int row = 0; row < rows_on_page; ++row) {
      text.put(115, row_y(row), trunk_name(trunk(row)));
      text.put(400, row_y(row), fmt::format("{} lb", trunk_pounds(trunk(row))));
      text.put(510, row_y(row), "stage");
    }
  }
  FloorText text(page, faces.narrow, 8);
  for (int row = 0; row < rows_on_page; ++row) {
    text.put(225, row_y(row), trunk_looks(trunk(row)));
    text.put(340, row_y(row), fmt::format("{} of 32", unit(row)));
    text.put(430, row_y(row) + 4, "carry");
    text.put(430, row_y(row) - 4.5, "lift: 1 person");
  }
}

}  // namespace

int main(int, char** arguments) {
  const std::string fonts = arguments[1];
  const int pages = std::atoi(arguments[2]);
  HPDF_Doc document = begin_floor();
  const auto face = [&](const char* file) { return floor_face(document, fonts, file); };
  const Faces faces{face("NotoSans-Condensed.ttf"), face("NotoSans-CondensedBold.ttf"), face("JetBrainsMono-Bold.ttf"),
                    face("NotoSans-Bold.ttf"), face("NotoSans-Regular.ttf")};
  for (int number = 1; number <= pages; ++number) {
    HPDF_Page page = floor_page(document, 612, 792);
    draw_head(page, faces, number, pages);
    draw_rows(page, faces, (number - 1) * rows_on_page);
    draw_lines(page);
  }
  HPDF_SaveToFile(document, arguments[3]);
  HPDF_Free(document);
}
