// SPDX-License-Identifier: MIT
// `dunnage label`: labels that live on the cases, without a show.
#include <fmt/format.h>

#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "check/lifting.h"
#include "document/case_label.h"
#include "export/pdf_file.h"
#include "layout/lay_out_labels.h"
#include "read/faces_file.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/house_style.h"
#include "run/load_show.h"

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
      throw UsageError("the kit has no case \"" + code + "\"" + (guess.empty() ? "; see `dunnage list cases`" : ": " + guess));
    }
    const auto [first, last] = box >= 0 ? c.units_of[static_cast<std::size_t>(box)] : std::pair(one, one + 1);
    for (int u = first; u < last; ++u) out.push_back(u);
  }
  return out;
}

std::string stock_name(const LabelOptions& options, const House& house) {
  if (!options.stock.empty()) return options.stock;
  if (!house.label_stock.empty()) return house.label_stock;
  return house.paper == PaperSize::letter ? "4x6-roll" : "100x150-roll";
}

}  // namespace

int print_labels(const LabelOptions& options, Desk& desk) {
  Loaded loaded;
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  const Catalogue& c = loaded.catalogue;
  const std::vector<int> units = units_for(c, options.codes);
  const UnitSystem system = options.units.value_or(c.kit.house.units);

  const std::string revision = revision_of(loaded.sources, "", "");
  Diagnostics style;
  const Words words = load_words_for(desk.share, options.languages, c.kit.house, loaded.sources, style);
  const Stock stock = load_stock_for(desk.share, stock_name(options, c.kit.house), loaded.sources, style);
  const Layout layout = style.has_errors() ? Layout{} : load_layout_for(desk.share, c.kit.folder, stock.layout, loaded.sources, style);
  std::vector<Handling> handling;
  for (int u = 0; u < static_cast<int>(c.units.size()); ++u)
    handling.push_back(handling_of(c.case_at(u), c.mass_of(u), c.kit.house.lift));

  Pages pages;
  const Faces faces(read_faces(desk.share / "fonts"));
  if (!style.has_errors()) {
    if (options.start_at > labels_on_page(stock))
      throw UsageError(fmt::format("--start-at {} is beyond the sheet: {} has {} labels on one", options.start_at, stock.name, labels_on_page(stock)));
    const Document document = case_labels(c, handling, units, words, system, revision);
    std::vector<LayoutProblem> problems;
    pages = lay_out_labels(document, layout, stock, options.start_at, options.copies, faces, problems);
    tell(problems, style);
  }
  if (style.has_errors()) {
    desk.err << render(style, loaded.sources);
    return 1;
  }
  const std::filesystem::path file = options.out.empty() ? "case-label.pdf" : options.out;
  FileSet files(file.parent_path());
  files.add(file.filename().string(), pdf_bytes({pages}, faces, {}));
  files.commit();
  desk.out << fmt::format("{}  {} labels on {} {}, stock {} ({})\n", file.string(), units.size() * static_cast<std::size_t>(options.copies),
                          pages.pages.size(), stock.roll ? "lengths of roll" : "sheets", stock.name, stock.says);
  return 0;
}

}  // namespace dunnage
