// SPDX-License-Identifier: MIT
// The one room that knows the PDF library (libharu 2.3.0), and its weaknesses: it drops parts of nested
// glyphs, draws nothing for a character that a face lacks, writes a malformed text map, and its errors stick.
#include "export/pdf_file.h"

#include <hpdf.h>

#include <algorithm>
#include <cassert>
#include <cstdint>
#include <memory>
#include <optional>

#include "base/error.h"
#include "font/tables.h"

namespace dunnage {
namespace {

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

/// Code to Unicode, for search and copying; the codes are the characters themselves.
std::string text_map(const std::vector<bool>& used) {
  std::vector<std::string> rows;
  for (std::size_t c = 0; c < used.size(); ++c)
    if (used[c]) rows.push_back("<" + hex4(static_cast<unsigned>(c)) + "> <" + hex4(static_cast<unsigned>(c)) + ">\n");
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
  HPDF_Stream_Write(stream, reinterpret_cast<const HPDF_BYTE*>(bytes.data()), static_cast<HPDF_UINT>(bytes.size()));
}

/// Flags the glyphs, and every part they are built of: the library follows one level only.
void keep_glyphs(HPDF_FontDef definition, std::string_view bytes, const std::vector<Mapped>& characters) {
  auto* table = static_cast<HPDF_TTFontDefAttr>(definition->attr);
  for (const Mapped& one : characters) {
    assert(one.glyph < table->num_glyphs);
    table->glyph_tbl.flgs[one.glyph] = 1;
    for (std::uint16_t part : glyph_parts(bytes, one.glyph)) table->glyph_tbl.flgs[part] = 1;
  }
}

std::vector<Mapped> mapped(const Faces& faces, int face, const std::vector<bool>& used) {
  std::vector<Mapped> out;
  for (std::size_t c = 0; c < used.size(); ++c) {
    if (!used[c]) continue;
    assert(faces.has(face, static_cast<char32_t>(c)) && "a character was laid out in a face that lacks it");
    out.push_back({static_cast<std::uint16_t>(c), faces.glyph(face, static_cast<char32_t>(c))});
  }
  return out;
}

/// Loads a face from its checked bytes. Two files with one PostScript name would be taken for one.
HPDF_Font load_face(HPDF_Doc document, const Faces& faces, int face, const std::vector<bool>& used) {
  const std::vector<Mapped> characters = mapped(faces, face, used);
  const std::string bytes = with_characters(faces.bytes(face), characters);
  HPDF_Stream stream = HPDF_MemStream_New(document->mmgr, static_cast<HPDF_UINT>(bytes.size()));
  write(stream, bytes);
  HPDF_FontDef definition = HPDF_TTFontDef_Load(document->mmgr, stream, HPDF_TRUE);
  if (HPDF_Doc_FindFontDef(document, definition->base_font)) {
    const std::string name = definition->base_font;
    HPDF_FontDef_Free(definition);
    throw WorldError("the font file " + faces.file(face).file.string() + " has the same name as another face: " + name);
  }
  HPDF_List_Add(document->fontdef_list, definition);
  // A subset's name begins with six letters of its own (ISO 32000-1, 9.6.4).
  std::string tag = "DUNAAA";
  tag[4] = static_cast<char>('A' + face / 26);
  tag[5] = static_cast<char>('A' + face % 26);
  HPDF_TTFontDef_SetTagName(definition, tag.data());
  HPDF_Font font = HPDF_GetFont(document, definition->base_font, "UTF-8");
  keep_glyphs(definition, bytes, characters);
  HPDF_Stream map = static_cast<HPDF_FontAttr>(font->attr)->cmap_stream->stream;
  HPDF_MemStream_FreeData(map);
  write(map, text_map(used));
  return font;
}

HPDF_String text_string(HPDF_Doc document, const std::string& text) {
  return HPDF_String_New(document->mmgr, text.c_str(), HPDF_GetEncoder(document, "UTF-8"));
}

void describe(HPDF_Doc document, const SealedPages& pages, const std::string& title) {
  const SealedPages::Head& first = pages.documents().front();
  document->pdf_version = HPDF_VER_17;
  // By it a later run knows paper of ours, which it may replace. A plain string stands in the file as it is.
  HPDF_Dict_Add(document->info, "Creator", HPDF_String_New(document->mmgr, paper_creator, nullptr));
  HPDF_Dict_Add(document->info, "Title", text_string(document, title.empty() ? first.title : title));
  HPDF_Dict_Add(document->catalog, "Lang", HPDF_String_New(document->mmgr, first.language.c_str(), nullptr));
  HPDF_Dict preferences = HPDF_Dict_New(document->mmgr);
  HPDF_Dict_Add(document->catalog, "ViewerPreferences", preferences);
  HPDF_Dict_AddBoolean(preferences, "DisplayDocTitle", HPDF_TRUE);
  if (std::ranges::any_of(pages.documents(), &SealedPages::Head::to_scale))
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
void add_labels(HPDF_Doc document, const std::vector<SealedPages::Sealed>& pages) {
  std::optional<Label> before;
  for (std::size_t i = 0; i < pages.size(); ++i) {
    Label label = split(pages[i].label);
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
  HPDF_Outline entry = HPDF_CreateOutline(document, parent, title.c_str(), HPDF_GetEncoder(document, "UTF-8"));
  HPDF_Destination where = HPDF_Page_CreateDestination(page);
  HPDF_Destination_SetFit(where);
  HPDF_Outline_SetDestination(entry, where);
  return entry;
}

/// The faces used, for all pages: they inherit what the root of their tree has (ISO 32000-1, 7.7.3.4).
void add_faces(HPDF_Doc document, const SealedPages& pages, const Faces& faces) {
  HPDF_Dict resources = HPDF_Dict_New(document->mmgr), fonts = HPDF_Dict_New(document->mmgr);
  HPDF_Dict_Add(document->root_pages, "Resources", resources);
  HPDF_Dict_Add(resources, "Font", fonts);
  for (const auto& [face, characters] : pages.used())
    HPDF_Dict_Add(fonts, face_name(face).c_str(), load_face(document, faces, face, characters));
}

HPDF_STATUS name_filter(HPDF_Dict, HPDF_Stream stream) {
  return HPDF_Stream_WriteStr(stream, "/Filter /FlateDecode\012");
}

HPDF_Page add_page(HPDF_Doc document, const SealedPages::Sealed& page, const std::string& stream, bool compressed) {
  HPDF_Page sheet = HPDF_AddPage(document);
  HPDF_Page_SetWidth(sheet, static_cast<HPDF_REAL>(page.width / unit::point));
  HPDF_Page_SetHeight(sheet, static_cast<HPDF_REAL>(page.height / unit::point));
  HPDF_Dict_RemoveElement(sheet, "Resources");
  auto* attributes = static_cast<HPDF_PageAttr>(sheet->attr);
  HPDF_Dict contents = attributes->contents;
  HPDF_Stream_Free(contents->stream);  // its least room is 4 KB
  contents->stream = HPDF_MemStream_New(document->mmgr, std::max<HPDF_UINT>(1, static_cast<HPDF_UINT>(stream.size())));
  attributes->stream = contents->stream;
  write(contents->stream, stream);
  contents->filter = HPDF_STREAM_FILTER_NONE;  // it is deflated already
  if (compressed) contents->write_fn = name_filter;
  return sheet;
}

/// The pages of each document, their bookmarks below its title where there are several.
void draw(HPDF_Doc document, SealedPages& pages) {
  const bool several = pages.documents().size() > 1;
  auto next = pages.documents().begin();
  HPDF_Outline parent = nullptr;
  for (std::size_t i = 0; i < pages.pages().size(); ++i) {
    const SealedPages::Sealed& page = pages.pages()[i];
    HPDF_Page sheet = add_page(document, page, pages.take_stream(i), pages.compress());
    for (; next != pages.documents().end() && next->first_page == i; ++next)
      if (several) parent = bookmark(document, nullptr, next->title, sheet);
    if (!page.bookmark.empty()) bookmark(document, parent, page.bookmark, sheet);
  }
  add_labels(document, pages.pages());
}

HPDF_STATUS take_bytes(HPDF_Stream stream, const HPDF_BYTE* bytes, HPDF_UINT size) {
  static_cast<std::string*>(stream->attr)->append(reinterpret_cast<const char*>(bytes), size);
  return HPDF_OK;
}

/// The library would keep the file in pieces of 4 KB; a stream of ours gathers it at once. `about`: bytes to expect,
/// since a string that grows holds twice what it says.
std::string saved(HPDF_Doc document, std::size_t about) {
  std::string bytes;
  bytes.reserve(about);
  document->stream = HPDF_CallbackWriter_New(document->mmgr, take_bytes, &bytes);
  HPDF_SaveToStream(document);
  return bytes;
}

}  // namespace

std::string pdf_bytes(SealedPages& pages, const Faces& faces, const std::string& title) {
  assert(!pages.pages().empty() && "a PDF needs a page");
  const Handle handle(HPDF_New(on_pdf_error, nullptr));
  if (!handle) throw WorldError("the PDF library does not start");
  HPDF_Doc document = handle.get();
  HPDF_SetCompressionMode(document, pages.compress() ? HPDF_COMP_ALL : HPDF_COMP_NONE);
  HPDF_SetPagesConfiguration(document, 256);  // the flat tree ends at 32,766 pages
  HPDF_UseUTFEncodings(document);
  describe(document, pages, title);
  add_faces(document, pages, faces);
  constexpr std::size_t faces_take = 200'000, page_takes = 700;
  std::size_t about = faces_take;
  for (const SealedPages::Sealed& page : pages.pages()) about += page.body.bytes.size() + page_takes;
  draw(document, pages);
  return saved(document, about);
}

std::string pdf_bytes(const std::vector<Pages>& documents, const Faces& faces, const PdfOptions& options) {
  SealedPages sealed(options.compress);
  for (const Pages& document : documents) {
    sealed.begin(document.title, document.language, document.to_scale);
    for (const Page& page : document.pages) sealed.add(page);
  }
  return pdf_bytes(sealed, faces, options.title);
}

}  // namespace dunnage
