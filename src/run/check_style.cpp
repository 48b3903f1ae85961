// SPDX-License-Identifier: MIT
#include "run/check_style.h"

#include <algorithm>

#include "base/utf8.h"
#include "read/faces_file.h"
#include "run/check_letters.h"
#include "run/house_style.h"
#include "run/on_screen.h"

namespace dunnage {
namespace {

namespace fs = std::filesystem;

/// Whether a file has letters that a face may lack. The text face has Latin, Greek, Cyrillic and the usual signs; to
/// read the fonts takes longer than all else that a check does.
bool has_rare_letters(const Sources& sources) {
  constexpr char32_t first_rare = 0x0530, first_sign = 0x2010, last_sign = 0x2027;
  for (const SourceFile& file : sources.files())
    for (std::size_t at = 0; at < file.text.size();)
      if (const char32_t c = utf8::next(file.text, at); c >= first_rare && (c < first_sign || c > last_sign))
        return true;
  return false;
}

}  // namespace

bool check_style(Loaded& loaded, Desk& desk) {
  const Kit& kit = loaded.catalogue.kit;
  Diagnostics style;
  std::string languages;
  for (const Text& language : kit.house.languages) languages += (languages.empty() ? "" : ", ") + language.value;
  if (has_rare_letters(loaded.sources))
    check_letters(loaded.catalogue, &loaded.show, languages, Faces(read_faces(desk.share / "fonts")), style);
  if (!house_names(kit.folder, "words").empty()) load_words_for(desk.share, {}, kit, loaded.sources, style);
  for (const std::string& name : house_names(kit.folder, ""))
    load_layout_for(desk.share, kit.folder, name, loaded.sources, style);
  for (const std::string& name : house_names(kit.folder, "stock")) {
    const Stock stock = load_stock_for(desk.share, kit.folder, name, loaded.sources, style);
    if (!stock.layout.value.empty()) load_layout_for(desk.share, kit.folder, stock.layout, loaded.sources, style);
  }
  desk.err << render(style, loaded.sources);
  for (const std::string& told : strange_files(desk.share, kit.folder)) desk.err << on_screen("warning: {}\n", told);
  return !style.has_errors();
}

}  // namespace dunnage
