// SPDX-License-Identifier: MIT
// `dunnage label`: labels that live on the cases, without a show.
#include <fmt/format.h>

#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "base/utf8.h"
#include "check/lifting.h"
#include "document/case_label.h"
#include "document/two_languages.h"
#include "export/pdf_file.h"
#include "layout/lay_out_labels.h"
#include "layout/test_sheet.h"
#include "read/faces_file.h"
#include "run/changed_labels.h"
#include "run/check_letters.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

/// Unit indices for the codes typed, in the order typed; all units without any.
std::vector<int> units_for(const Catalogue& c, const std::vector<std::string>& codes) {
  std::vector<int> out;
  for (int u = 0; codes.empty() && u < static_cast<int>(c.units.size()); ++u) out.push_back(u);
  for (const std::string& code : codes) {
    const int box = c.case_index(code), one = c.unit_index(code);
    if (box < 0 && one < 0) {
      std::vector<std::string> known;
      for (const Case& k : c.kit.cases) known.push_back(k.code.value);
      for (const CaseUnit& unit : c.units) known.push_back(unit.code);
      const std::string guess = did_you_mean(code, known);
      throw UsageError("the kit has no case \"" + code + "\"" +
                       (guess.empty() ? "; see `dunnage list cases`" : ": " + guess));
    }
    const auto [first, last] = box >= 0 ? c.units_of[static_cast<std::size_t>(box)] : std::pair(one, one + 1);
    for (int u = first; u < last; ++u) out.push_back(u);
  }
  return out;
}

std::string stock_name(const LabelOptions& options, const House& house) {
  if (!options.stock.empty()) return options.stock;
  if (!house.label_stock.value.empty()) return house.label_stock.value;
  return house.paper == PaperSize::letter ? "4x6-roll" : "100x150-roll";
}

/// A longer code could not be read from a few steps away: its capitals would be lower than 11 mm on the large label.
constexpr std::size_t most_letters = 10;

void check_codes(const Catalogue& c, const std::vector<int>& units, Diagnostics& diagnostics) {
  for (const int unit : units) {
    const std::string& code = c.units[static_cast<std::size_t>(unit)].code;
    if (utf8::length(code) <= most_letters) continue;
    diagnostics.error(c.case_at(unit).code.place,
                      on_screen("the code \"{}\" is too long for a label: {} characters, at most {}", code,
                                utf8::length(code), most_letters),
                      "shorten the code, or name on the command line only what gets a label");
  }
}

/// Sets labels, a few at a time: of a large kit neither all words nor all pages are held.
class LabelRun {
 public:
  LabelRun(const Catalogue& c, const std::vector<Words>& words, UnitSystem system, std::string revision)
      : catalogue_(c), words_(words), system_(system), revision_(std::move(revision)) {
    for (int u = 0; u < static_cast<int>(c.units.size()); ++u)
      handling_.push_back(handling_of(c.case_at(u), c.mass_of(u), c.kit.house.lift));
  }

  int run(const std::vector<int>& units, LabelSheets& sheets) const {
    constexpr std::size_t at_once = 64;
    for (std::size_t from = 0; from < units.size(); from += at_once) {
      const auto begin = units.begin() + static_cast<std::ptrdiff_t>(from);
      const auto count = static_cast<std::ptrdiff_t>(std::min(at_once, units.size() - from));
      sheets.add(document({begin, begin + count}));
    }
    return sheets.finish();
  }

 private:
  Document document(const std::vector<int>& units) const {
    const auto in = [&](const Words& words) {
      return case_labels(catalogue_, handling_, units, words, system_, revision_);
    };
    return words_.size() < 2 ? in(words_.front()) : in_two_languages(in(words_.front()), in(words_.back()));
  }

  const Catalogue& catalogue_;
  const std::vector<Words>& words_;
  const UnitSystem system_;
  const std::string revision_;
  std::vector<Handling> handling_;
};

/// All sheets are held, compressed, until the last is set.
void check_number(std::size_t labels, const Stock& stock) {
  const std::size_t pages = labels / static_cast<std::size_t>(std::max(1, labels_on_page(stock)));
  if (pages > most_pages)
    throw UsageError(on_screen(
        "that would be {} labels on {} pages, and one run prints at most {}: name the cases, a few hundred at a time",
        labels, pages, most_pages));
}

/// The stock as a printer that misses must be told of it. Throws UsageError where a label's content would leave the
/// page.
Stock shifted(Stock stock, std::pair<Paper, Paper> by) {
  const auto stays = [&](Paper first, Paper pitch, int count, Paper side, Paper page) {
    const Paper give = 1e-6 * unit::paper_mm;
    return first + stock.inner > -give && first + pitch * (count - 1) + side - stock.inner < page + give;
  };
  stock.left += by.first;
  stock.top += by.second;
  if (!stays(stock.left, stock.pitch_x, stock.across, stock.label_width, stock.page_width) ||
      !stays(stock.top, stock.pitch_y, stock.down, stock.label_height, stock.page_height))
    throw UsageError(
        on_screen("--offset: so far off, part of a label would leave the page; stock {} has {} mm to spare within "
                  "each label's edge",
                  stock.name, plain(stock.inner / unit::paper_mm, 1)));
  return stock;
}

void write_file(const std::filesystem::path& file, std::string bytes, const Sources& sources, Desk& desk) {
  refuse_to_replace(file, sources);
  FileSet files(file.parent_path(), desk.err);
  files.add_paper(file.filename().string(), std::move(bytes));
  files.commit();
}

}  // namespace

int print_labels(const LabelOptions& options, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  const Catalogue& c = loaded.catalogue;
  std::vector<int> units = units_for(c, options.codes);
  std::string changes;
  if (!options.since.empty()) {
    const auto changed = changed_labels(c, units, options.since, changes, desk);
    if (!changed) return 1;
    units = *changed;
    if (units.empty()) {
      desk.out << on_screen("No label has changed since {}; nothing was written.\n", options.since.string());
      return 0;
    }
  }
  const std::string revision = revision_of(loaded.sources, "", "");
  const std::filesystem::path file = options.out.empty() ? "case-label.pdf" : options.out;

  Diagnostics style;
  const Faces faces(read_faces(desk.share / "fonts"));
  const std::vector<Words> words = load_words_for(desk.share, options.languages, c.kit, loaded.sources, style);
  Stock stock = load_stock_for(desk.share, c.kit.folder, stock_name(options, c.kit.house), loaded.sources, style);
  if (!style.has_errors()) stock = shifted(stock, options.offset);
  if (!style.has_errors() && options.test_sheet) {
    std::vector<LayoutProblem> problems;
    const Pages sheet = test_sheet(label_test(c.kit.house, words.front()), stock, faces, problems);
    write_file(file, pdf_bytes({sheet}, faces, {}), loaded.sources, desk);
    desk.out << on_screen("{}  test sheet of stock {} ({})\n", file.string(), stock.name, stock.says);
    return 0;
  }
  const Layout layout =
      style.has_errors() ? Layout{} : load_layout_for(desk.share, c.kit.folder, stock.layout, loaded.sources, style);
  check_letters(c, nullptr, names_of(words), faces, style);
  check_codes(c, units, style);
  SealedPages pages;
  int pages_used = 0;
  if (!style.has_errors()) {
    check_number(units.size() * static_cast<std::size_t>(options.copies), stock);
    if (options.start_at > labels_on_page(stock))
      throw UsageError(on_screen("--start-at {} is beyond the sheet: {} has {} labels on one", options.start_at,
                                 stock.name, labels_on_page(stock)));
    std::vector<LayoutProblem> problems;
    LabelSheets sheets(layout, stock, options.start_at, options.copies, faces, problems, pages);
    pages_used = LabelRun(c, words, options.units.value_or(c.kit.house.units), revision).run(units, sheets);
    tell(problems, style);
  }
  if (style.has_errors()) {
    desk.err << render(style, loaded.sources);
    return 1;
  }
  write_file(file, pdf_bytes(pages, faces), loaded.sources, desk);
  desk.out << changes;
  const auto counted = [](std::size_t n, const std::string& one, const std::string& many) {
    return on_screen("{} {}", n, n == 1 ? one : many);
  };
  desk.out << on_screen("{}  {} on {}, stock {} ({})\n", file.string(),
                        counted(units.size() * static_cast<std::size_t>(options.copies), "label", "labels"),
                        stock.roll ? counted(static_cast<std::size_t>(pages_used), "length of roll", "lengths of roll")
                                   : counted(static_cast<std::size_t>(pages_used), "sheet", "sheets"),
                        stock.name, stock.says);
  for (const Words& one : words)
    if (!one.read_by_native)
      desk.err << on_screen("note: nobody who grew up with \"{}\" has read its printed words\n", one.language);
  return 0;
}

}  // namespace dunnage
