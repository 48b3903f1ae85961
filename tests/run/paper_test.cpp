// SPDX-License-Identifier: MIT
// Every sheet of both examples and of a show as large as any, on both papers, in both systems of units, in every
// language and in two at once: nothing beyond the margins, no words on other words, none too small, pages counted.
#include <algorithm>
#include <catch2/catch.hpp>
#include <map>
#include <sstream>

#include "base/utf8.h"
#include "check/rules.h"
#include "layout/lay_out.h"
#include "plan/plan_show.h"
#include "program.h"
#include "read/faces_file.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/packet_sheets.h"
#include "stress_show.h"

using namespace dunnage;

namespace {

const Faces& faces() {
  static const Faces all(read_faces(SHARE_DIR "/fonts"));
  return all;
}

struct Reach {
  Paper left, top, right, bottom;
};

bool has_descender(const std::string& text) { return text.find_first_of("gjpqyQ,;()[]{}/|_$@") != std::string::npos; }

/// What the letters cover, by the metrics of their face; descenders only where the text has some.
Reach reach_of(const ink::Words& words) {
  const FaceMetrics& metrics = faces().metrics(words.face);
  return {words.at.x, words.at.y - words.size * metrics.cap_height, words.at.x + words.width,
          words.at.y + words.size * (has_descender(words.text) ? metrics.descent * 0.75 : 0.0)};
}

void add(Reach& all, Spot at) {
  all.left = std::min(all.left, at.x);
  all.right = std::max(all.right, at.x);
  all.top = std::min(all.top, at.y);
  all.bottom = std::max(all.bottom, at.y);
}

Reach reach_of(const Ink& ink, const Page& page) {
  Reach all{page.width, page.height, {}, {}};
  if (const auto* words = std::get_if<ink::Words>(&ink)) return reach_of(*words);
  if (const auto* line = std::get_if<ink::Line>(&ink)) add(all, line->from), add(all, line->to);
  if (const auto* rect = std::get_if<ink::Rect>(&ink)) {
    add(all, {rect->box.x, rect->box.y});
    add(all, {rect->box.x + rect->box.w, rect->box.y + rect->box.h});
  }
  if (const auto* outline = std::get_if<ink::Outline>(&ink))
    for (const auto& step : outline->steps)
      if (step.kind != ink::Outline::Step::Kind::close) add(all, step.a);
  if (const auto* modules = std::get_if<ink::Modules>(&ink)) {
    add(all, modules->at);
    add(all, {modules->at.x + modules->module * modules->side, modules->at.y + modules->module * modules->side});
  }
  return all;
}

std::string beyond_margins(const Page& page, const Layout& layout) {
  const Paper hair = 0.05 * unit::paper_mm;
  for (const Ink& ink : page.ink) {
    const Reach r = reach_of(ink, page);
    if (r.left >= layout.margin_left - hair && r.top >= layout.margin_top - hair &&
        r.right <= page.width - layout.margin_right + hair && r.bottom <= page.height - layout.margin_bottom + hair)
      continue;
    const auto* words = std::get_if<ink::Words>(&ink);
    return words ? words->text : "a line or picture, kind " + std::to_string(ink.index());
  }
  return {};
}

/// Two texts of which one stands on the other; empty where there are none.
std::string on_each_other(const Page& page) {
  const Paper hair = 0.1 * unit::paper_mm;
  std::vector<std::pair<Reach, const ink::Words*>> all;
  for (const Ink& ink : page.ink)
    if (const auto* words = std::get_if<ink::Words>(&ink)) all.emplace_back(reach_of(*words), words);
  std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first.top < b.first.top; });
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t k = i + 1; k < all.size() && all[k].first.top < all[i].first.bottom - hair; ++k)
      if (all[k].first.left < all[i].first.right - hair && all[i].first.left < all[k].first.right - hair)
        return "\"" + all[i].second->text + "\" and \"" + all[k].second->text + "\"";
  return {};
}

Paper least_floor(const Layout& layout) {
  Paper least = std::min(layout.title.floor, layout.running.floor);
  for (const BlockSpec& block : layout.blocks) {
    least = std::min({least, block.type.floor, block.head.floor});
    for (const ColumnSpec& column : block.columns) least = std::min(least, column.type.floor);
  }
  return least;
}

std::string too_small(const Page& page, Paper least) {
  for (const Ink& ink : page.ink)
    if (const auto* words = std::get_if<ink::Words>(&ink))
      if (words->size < least - 0.001 * unit::point) return words->text;
  return {};
}

/// "page 2 of 3" on each page: every section counts from 1 to its number of pages.
void check_counted(const Sheet& sheet, const Pages& pages) {
  const std::string words = apart(sheet.document.page_words).first;
  const auto filled = [&](std::size_t n, std::size_t total) {
    std::string out = words;
    out.replace(out.find("{n}"), 3, std::to_string(n));
    return out.replace(out.find("{total}"), 7, std::to_string(total));
  };
  const auto says = [](const Page& page, const std::string& text) {
    return std::any_of(page.ink.begin(), page.ink.end(), [&](const Ink& ink) {
      const auto* one = std::get_if<ink::Words>(&ink);
      return one && one->text == text;
    });
  };
  std::size_t sections = 0;
  for (std::size_t first = 0; first < pages.pages.size(); ++sections) {
    std::size_t total = 1;
    while (total < 500 && !says(pages.pages[first], filled(1, total))) ++total;
    REQUIRE(first + total <= pages.pages.size());
    for (std::size_t n = 1; n <= total; ++n) CHECK(says(pages.pages[first + n - 1], filled(n, total)));
    first += total;
  }
  CHECK(sections == sheet.document.sections.size());
}

void check_sheet(const Sheet& sheet, const Pages& pages) {
  const Paper least = std::max(least_floor(sheet.layout), 8 * unit::point);
  for (const Page& page : pages.pages) {
    INFO(sheet.document.name << ", page " << page.label);
    CHECK(beyond_margins(page, sheet.layout) == "");
    CHECK(on_each_other(page) == "");
    CHECK(too_small(page, least) == "");
  }
  if (sheet.layout.furniture && sheet.layout.across * sheet.layout.down == 1) check_counted(sheet, pages);
}

struct LaidOut {
  Sheet sheet;
  Pages pages;
};

/// All sheets of a show, laid out.
std::vector<LaidOut> sheets_of(const Loaded& loaded, const Plan& plan, const Findings& findings, UnitSystem units,
                               PaperSize paper, const std::vector<std::string>& languages,
                               std::vector<LayoutProblem>& problems) {
  static Sources sources;
  Diagnostics style;
  PrintOptions options;
  options.only = sheet_names();
  options.only.erase(std::find(options.only.begin(), options.only.end(), "case-label"));  // stands on stocks
  const Kit& kit = loaded.catalogue.kit;
  const auto words = load_words_for(SHARE_DIR, languages, kit, sources, style);
  const auto kinds = sheets_asked_for(options, kit.house);
  std::vector<Layout> layouts;
  for (const DocumentKind* kind : kinds)
    layouts.push_back(load_layout_for(SHARE_DIR, "", std::string(kind->name), sources, style));
  INFO(render(style, sources));
  REQUIRE_FALSE(style.has_errors());
  std::vector<Context> contexts;
  for (const Words& one : words)
    contexts.push_back({loaded.catalogue,
                        loaded.show,
                        plan,
                        findings,
                        one,
                        units,
                        units == UnitSystem::us ? "mph" : "m/s",
                        "0123abcd",
                        {},
                        {},
                        {}});
  const auto [width, height] = sides(paper);
  std::vector<LaidOut> out;
  for (Sheet& sheet : make_sheets(kinds, layouts, contexts)) {
    Pages pages = lay_out(sheet.document, sheet.layout, width, height, faces(), problems);
    out.push_back({std::move(sheet), std::move(pages)});
  }
  return out;
}

void check_show(const std::string& file) {
  for (const UnitSystem units : {UnitSystem::metric, UnitSystem::us}) {
    Loaded loaded;
    std::ostringstream told;
    const bool read = load_show(file, loaded, told);
    INFO(told.str());
    REQUIRE(read);
    loaded.catalogue.kit.house.units = units;
    const Plan plan = plan_show(loaded.catalogue, loaded.show);
    const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
    for (const PaperSize paper : {PaperSize::a4, PaperSize::letter})
      for (const std::vector<std::string>& languages :
           {std::vector<std::string>{"en"}, std::vector<std::string>{"es"}, std::vector<std::string>{"fr"},
            std::vector<std::string>{"en", "es"}}) {
        INFO((paper == PaperSize::a4 ? "A4, " : "Letter, ")
             << (units == UnitSystem::us ? "us, " : "metric, ") << languages.front() << " " << languages.back());
        std::vector<LayoutProblem> problems;
        const std::vector<LaidOut> sheets = sheets_of(loaded, plan, findings, units, paper, languages, problems);
        for (const LayoutProblem& problem : problems) CHECK(sentence(problem) == "");
        for (const LaidOut& laid : sheets) check_sheet(laid.sheet, laid.pages);
      }
  }
}

}  // namespace

TEST_CASE("every sheet of the outdoor example stands on its paper as it should") {
  check_show(example("outdoor-evening.toml"));
}
TEST_CASE("every sheet of the indoor example stands on its paper as it should") {
  check_show(example("indoor-afternoon.toml"));
}
TEST_CASE("every sheet of a show as large and wordy as any stands on its paper as it should") {
  const Folder folder("stress");
  check_show(write_stress_show(folder));
}
