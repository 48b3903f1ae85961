// SPDX-License-Identifier: MIT
// What the floors share: a document of the PDF library, set up with care. Programs that only draw: no reading, no
// planning, no layout.
#pragma once

#include <hpdf.h>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace dunnage::bench {

extern "C" inline void floor_fails(HPDF_STATUS error, HPDF_STATUS detail, void*) {
  std::fprintf(stderr, "the PDF library failed: 0x%04lX, %lu\n", error, detail);
  std::exit(3);
}

inline HPDF_Doc begin_floor() {
  HPDF_Doc document = HPDF_New(floor_fails, nullptr);
  HPDF_SetCompressionMode(document, HPDF_COMP_ALL);
  HPDF_SetPagesConfiguration(document, 256);
  HPDF_UseUTFEncodings(document);
  return document;
}

inline HPDF_Font floor_face(HPDF_Doc document, const std::string& folder, const char* file) {
  return HPDF_GetFont(document, HPDF_LoadTTFontFromFile(document, (folder + "/" + file).c_str(), HPDF_TRUE), "UTF-8");
}

inline HPDF_Page floor_page(HPDF_Doc document, double width, double height) {
  HPDF_Page page = HPDF_AddPage(document);
  HPDF_Page_SetWidth(page, static_cast<HPDF_REAL>(width));
  HPDF_Page_SetHeight(page, static_cast<HPDF_REAL>(height));
  return page;
}

/// Texts of one face and size, one after the other inside one text object.
class FloorText {
 public:
  FloorText(HPDF_Page page, HPDF_Font font, double size) : page_(page) {
    HPDF_Page_BeginText(page);
    HPDF_Page_SetFontAndSize(page, font, static_cast<HPDF_REAL>(size));
  }
  ~FloorText() { HPDF_Page_EndText(page_); }
  FloorText(const FloorText&) = delete;
  FloorText& operator=(const FloorText&) = delete;
  void put(double x, double y, const std::string& text) {
    HPDF_Page_MoveTextPos(page_, static_cast<HPDF_REAL>(x - x_), static_cast<HPDF_REAL>(y - y_));
    HPDF_Page_ShowText(page_, text.c_str());
    x_ = x;
    y_ = y;
  }

 private:
  HPDF_Page page_;
  double x_ = 0, y_ = 0;
};

}  // namespace dunnage::bench
