// SPDX-License-Identifier: MIT
// The one room that knows the PDF library (libharu 2.3.0), and its weaknesses: it drops parts of nested
// glyphs, draws nothing for a character that a face lacks, writes a malformed text map, and its errors stick.
#include "export/pdf_file.h"

#include <hpdf.h>

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <map>
#include <memory>
#include <optional>

#include "base/error.h"
#include "base/utf8.h"
#include "export/page_ops.h"
#include "font/tables.h"

namespace dunnage {
namespace {

constexpr std::size_t kCharacters = 0x10000;

/// By face: the characters that the pages use.
using Used = std::map<int, std::vector<bool>>;

struct Free {
  void operator()(HPDF_Doc document) const { HPDF_Free(document); }
};
using Handle = std::unique_ptr<HPDF_Doc_Rec, Free>;

std::string hex4(unsigned value) {
  std::string digits(4, '0');
  for (std::size_t i = 4; i-- > 0; value >>= 4) digits[i] = "0123456789ABCDEF"[value & 0xF];
  return digits;
}

/// The library calls this for every error; nothing of it goes on with a broken document.
extern "C" void on_pdf_error(HPDF_STATUS error, HPDF_STATUS detail, void*) {
  throw WorldError("the PDF library failed with error 0x" + hex4(static_cast<unsigned>(error)) + ", detail " +
                   std::to_string(detail));
}

Used used_characters(const std::vector<Pages>& documents, const Faces& faces) {
  Used used;
  for (const Pages& document : documents)
    for (const Page& page : document.pages)
      for (const Ink& ink : page.ink) {
        const auto* words = std::get_if<ink::Words>(&ink);
        if (!words || words->text.empty()) continue;
        std::vector<bool>& seen = used.try_emplace(words->face, kCharacters).first->second;
        for (char32_t c : utf8::decode(words->text)) {
          assert(c < kCharacters);
          if (seen[c]) continue;
          assert(faces.has(words->face, c) && "a character was laid out in a face that lacks it");
          seen[c] = true;
        }
      }
  return used;
}

/// Code to Unicode, for search and copying; the codes are the characters themselves.
std::string text_map(const std::vector<bool>& used) {
  std::vector<std::string> rows;
  for (std::size_t c = 0; c < used.size(); ++c)
    if (used[c])
      rows.push_back("<" + hex4(static_cast<unsigned>(c)) + "> <" + hex4(static_cast<unsigned>(c)) + ">\n");
  std::string map =
      "/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n"
      "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def\n"
      "/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n"
      "1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n";
  constexpr std::size_t most = 100;  // rows a section (ISO 32000-1, 9.7.5.4)
  for (std::size_t from = 0; from < rows.size(); from += most) {
    const std::size_t to = std::min(rows.size(), from + most);
    map += std::to_string(to - from) + " beginbfchar\n";
    for (std::size_t i = from; i < to; ++i) map += rows[i];
    map += "endbfchar\n";
  }
  return map + "endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n";
}

void write(HPDF_Stream stream, std::string_view bytes) {
  HPDF_Stream_Write(stream, reinterpret_cast<const HPDF_BYTE*>(bytes.data()),
                    static_cast<HPDF_UINT>(bytes.size()));
}

/// Flags the glyphs of all characters, and every part they are built of: the library follows one level only.
void keep_glyphs(HPDF_FontDef definition, std::string_view bytes, const std::vector<bool>& used) {
  auto* table = static_cast<HPDF_TTFontDefAttr>(definition->attr);
  for (std::size_t c = 0; c < used.size(); ++c) {
    if (!used[c]) continue;
    const HPDF_UINT16 glyph = HPDF_TTFontDef_GetGlyphid(definition, static_cast<HPDF_UINT16>(c));
    assert(glyph != 0 && glyph < table->num_glyphs);
    table->glyph_tbl.flgs[glyph] = 1;
    for (std::uint16_t part : glyph_parts(bytes, glyph)) table->glyph_tbl.flgs[part] = 1;
  }
}

/// Loads a face from its checked bytes. Two files with one PostScript name would be taken for one.
HPDF_Font load_face(HPDF_Doc document, const Faces& faces, int face, const std::vector<bool>& used) {
  const std::string_view bytes = faces.bytes(face);
  HPDF_Stream stream = HPDF_MemStream_New(document->mmgr, static_cast<HPDF_UINT>(bytes.size()));
  write(stream, bytes);
  HPDF_FontDef definition = HPDF_TTFontDef_Load(document->mmgr, stream, HPDF_TRUE);
  if (HPDF_Doc_FindFontDef(document, definition->base_font)) {
    const std::string name = definition->base_font;
    HPDF_FontDef_Free(definition);
    throw WorldError("the font file " + faces.file(face).file.string() +
                     " has the same name as another face: " + name);
  }
  HPDF_List_Add(document->fontdef_list, definition);
  // A subset's name begins with six letters of its own (ISO 32000-1, 9.6.4).
  std::string tag = "DUNAAA";
  tag[4] = static_cast<char>('A' + face / 26);
  tag[5] = static_cast<char>('A' + face % 26);
  HPDF_TTFontDef_SetTagName(definition, tag.data());
  HPDF_Font font = HPDF_GetFont(document, definition->base_font, "UTF-8");
  keep_glyphs(definition, bytes, used);
  HPDF_Stream map = static_cast<HPDF_FontAttr>(font->attr)->cmap_stream->stream;
  HPDF_MemStream_FreeData(map);
  write(map, text_map(used));
  return font;
}

HPDF_String text_string(HPDF_Doc document, const std::string& text) {
  return HPDF_String_New(document->mmgr, text.c_str(), HPDF_GetEncoder(document, "UTF-8"));
}

void describe(HPDF_Doc document, const std::vector<Pages>& documents, const PdfOptions& options) {
  const std::string& title = options.title.empty() ? documents.front().title : options.title;
  document->pdf_version = HPDF_VER_17;
  HPDF_Dict_Add(document->info, "Title", text_string(document, title));
  HPDF_Dict_Add(document->catalog, "Lang",
                HPDF_String_New(document->mmgr, documents.front().language.c_str(), nullptr));
  HPDF_Dict preferences = HPDF_Dict_New(document->mmgr);
  HPDF_Dict_Add(document->catalog, "ViewerPreferences", preferences);
  HPDF_Dict_AddBoolean(preferences, "DisplayDocTitle", HPDF_TRUE);
  if (std::ranges::any_of(documents, &Pages::to_scale))
    HPDF_Dict_AddName(preferences, "PrintScaling", "None");
}

/// "A-12" is the prefix "A-" and the number 12; a label that ends in no number is all prefix.
struct Label {
  std::string prefix;
  std::optional<int> number;
};
Label split(const std::string& label) {
  std::size_t digits = label.size();
  while (digits > 0 && label[digits - 1] >= '0' && label[digits - 1] <= '9') --digits;
  while (digits < label.size() && (label[digits] == '0' || label.size() - digits > 6)) ++digits;
  if (digits == label.size()) return {label, std::nullopt};
  return {label.substr(0, digits), std::stoi(label.substr(digits))};
}

/// A range of labels begins wherever counting on would give another label.
void add_labels(HPDF_Doc document, const std::vector<const Page*>& pages) {
  std::optional<Label> before;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    Label label = split(pages[i]->label);
    const bool follows = before && before->number && label.number && before->prefix == label.prefix &&
                         *label.number == *before->number + 1;
    if (!follows) {
      HPDF_Dict range = HPDF_Dict_New(document->mmgr);
      HPDF_Catalog_AddPageLabel(document->catalog, static_cast<HPDF_UINT>(i), range);
      if (!label.prefix.empty()) HPDF_Dict_Add(range, "P", text_string(document, label.prefix));
      if (label.number) {
        HPDF_Dict_AddName(range, "S", "D");
        HPDF_Dict_AddNumber(range, "St", *label.number);
      }
    }
    before = std::move(label);
  }
}

HPDF_Outline bookmark(HPDF_Doc document, HPDF_Outline parent, const std::string& title, HPDF_Page page) {
  HPDF_Outline entry =
      HPDF_CreateOutline(document, parent, title.c_str(), HPDF_GetEncoder(document, "UTF-8"));
  HPDF_Destination where = HPDF_Page_CreateDestination(page);
  HPDF_Destination_SetFit(where);
  HPDF_Outline_SetDestination(entry, where);
  return entry;
}

/// The pages of each document, their bookmarks below its title where there are several.
void draw(HPDF_Doc document, const std::vector<Pages>& documents, const std::map<int, HPDF_Font>& fonts) {
  std::vector<const Page*> all;
  for (const Pages& pages : documents) {
    HPDF_Outline parent = nullptr;
    for (const Page& page : pages.pages) {
      HPDF_Page sheet = HPDF_AddPage(document);
      HPDF_Page_SetWidth(sheet, static_cast<HPDF_REAL>(page.width / unit::point));
      HPDF_Page_SetHeight(sheet, static_cast<HPDF_REAL>(page.height / unit::point));
      const auto font_name = [&](int face) {
        return std::string(HPDF_Page_GetLocalFontName(sheet, fonts.at(face)));
      };
      write(static_cast<HPDF_PageAttr>(sheet->attr)->stream, page_operators(page, font_name));
      if (documents.size() > 1 && &page == &pages.pages.front())
        parent = bookmark(document, nullptr, pages.title, sheet);
      if (!page.bookmark.empty()) bookmark(document, parent, page.bookmark, sheet);
      all.push_back(&page);
    }
  }
  assert(!all.empty() && "a PDF needs a page");
  add_labels(document, all);
}

std::string saved(HPDF_Doc document) {
  HPDF_SaveToStream(document);
  std::string bytes(HPDF_GetStreamSize(document), '\0');
  HPDF_UINT32 size = static_cast<HPDF_UINT32>(bytes.size());
  HPDF_ResetStream(document);
  HPDF_ReadFromStream(document, reinterpret_cast<HPDF_BYTE*>(bytes.data()), &size);
  assert(size == bytes.size());
  return bytes;
}

}  // namespace

std::string pdf_bytes(const std::vector<Pages>& documents, const Faces& faces, const PdfOptions& options) {
  assert(!documents.empty());
  const Used used = used_characters(documents, faces);
  const Handle handle(HPDF_New(on_pdf_error, nullptr));
  if (!handle) throw WorldError("the PDF library does not start");
  HPDF_Doc document = handle.get();
  HPDF_SetCompressionMode(document, options.compress ? HPDF_COMP_ALL : HPDF_COMP_NONE);
  HPDF_SetPagesConfiguration(document, 256);  // the flat tree ends at 32,766 pages
  HPDF_UseUTFEncodings(document);
  describe(document, documents, options);
  std::map<int, HPDF_Font> fonts;
  for (const auto& [face, characters] : used) fonts[face] = load_face(document, faces, face, characters);
  draw(document, documents, fonts);
  return saved(document);
}

}  // namespace dunnage
