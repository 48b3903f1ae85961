// SPDX-License-Identifier: MIT
// Small documents and layouts for tests, and ways to ask finished pages what stands on them.
#pragma once

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>
#include <utility>
#include <vector>

#include "base/diagnostic.h"
#include "font/faces.h"
#include "layout/lay_out.h"
#include "layout/lay_out_labels.h"
#include "read/faces_file.h"
#include "read/layout_file.h"
#include "read/stock_file.h"

namespace dunnage {

inline const Faces& faces() {
  static const Faces all(read_faces(SHARE_DIR "/fonts"));
  return all;
}

inline Cell cell(std::string text) { return {Cell::Kind::text, std::move(text), false}; }
inline Cell tick() { return {Cell::Kind::tick, {}, false}; }
inline Cell blank() { return {Cell::Kind::blank, {}, false}; }

/// "Walk", page words and all, without a section.
inline Document empty_document() {
  Document document;
  document.name = "walk";
  document.title = "Walk";
  document.show = "Field day";
  document.date = "2027-06-19";
  document.revision = "revision 1a2b";
  document.page_words = "page {n} of {total}";
  document.continued = "continued";
  return document;
}

inline Document document_of(std::vector<Block> blocks) {
  Document document = empty_document();
  document.sections.push_back({"", std::move(blocks)});
  return document;
}

/// A table "rows" of `count` rows "row 1" ... under one title.
inline Block rows(int count, const std::string& title = "Shelf", bool total = false) {
  block::Table table;
  table.columns = {"box", "what"};
  table.heads = {{"box", "Done"}, {"what", "What"}};
  Group group{title, {}};
  for (int i = 1; i <= count; ++i) group.rows.push_back({{tick(), cell("row " + std::to_string(i))}});
  table.groups.push_back(std::move(group));
  if (total) table.total = {cell(""), cell("in all " + std::to_string(count))};
  return {"rows", std::move(table)};
}

struct LaidOut {
  Pages pages;
  std::vector<LayoutProblem> problems;
};

/// A layout from its text; the test fails on a mistake in it.
inline Layout layout_of(const std::string& text) {
  static Sources sources;  // places in problems point into it
  Diagnostics diagnostics;
  const auto layout = read_layout("walk", "walk.toml", text, sources, diagnostics);
  INFO(render(diagnostics, sources));
  REQUIRE(layout);
  return *layout;
}

inline LaidOut lay_out(const Document& document, const std::string& layout, Paper width = 210 * unit::paper_mm,
                       Paper height = 297 * unit::paper_mm) {
  LaidOut out;
  out.pages = lay_out(document, layout_of(layout), width, height, faces(), out.problems);
  return out;
}

inline std::vector<std::string> sentences(const std::vector<LayoutProblem>& problems) {
  std::vector<std::string> out;
  for (const LayoutProblem& problem : problems) out.push_back(sentence(problem));
  return out;
}

/// All texts of a page, one ink a line.
inline std::string texts(const Page& page) {
  std::string all;
  for (const Ink& ink : page.ink)
    if (const auto* words = std::get_if<ink::Words>(&ink)) all += words->text + "\n";
  return all;
}

inline bool says(const Page& page, const std::string& text) { return texts(page).find(text) != std::string::npos; }

/// The first words of a page that are exactly `text`.
inline ink::Words words_on(const Page& page, const std::string& text) {
  for (const Ink& ink : page.ink)
    if (const auto* words = std::get_if<ink::Words>(&ink))
      if (words->text == text) return *words;
  FAIL("\"" << text << "\" is not on the page:\n" << texts(page));
  return {};
}

template <class Kind>
std::vector<Kind> all_of(const Page& page) {
  std::vector<Kind> out;
  for (const Ink& ink : page.ink)
    if (const auto* found = std::get_if<Kind>(&ink)) out.push_back(*found);
  return out;
}

inline double mm(Paper length) { return length / unit::paper_mm; }
inline double pt(Paper length) { return length / unit::point; }

/// The box that holds all ink of a page; letters by their capitals and a descender of a quarter of the size.
inline Box reach(const Page& page) {
  Paper left = page.width, top = page.height, right, bottom;
  const auto take = [&](Spot at) {
    left = std::min(left, at.x);
    right = std::max(right, at.x);
    top = std::min(top, at.y);
    bottom = std::max(bottom, at.y);
  };
  for (const Ink& ink : page.ink) {
    if (const auto* words = std::get_if<ink::Words>(&ink)) {
      take({words->at.x, words->at.y - words->size * 0.75});
      take({words->at.x + words->width, words->at.y + words->size * 0.25});
    } else if (const auto* line = std::get_if<ink::Line>(&ink)) {
      take(line->from);
      take(line->to);
    } else if (const auto* rect = std::get_if<ink::Rect>(&ink)) {
      take({rect->box.x, rect->box.y});
      take({rect->box.x + rect->box.w, rect->box.y + rect->box.h});
    } else if (const auto* outline = std::get_if<ink::Outline>(&ink)) {
      for (const auto& step : outline->steps)
        if (step.kind != ink::Outline::Step::Kind::close) take(step.a);
    } else if (const auto* modules = std::get_if<ink::Modules>(&ink)) {
      take(modules->at);
      take({modules->at.x + modules->module * modules->side, modules->at.y + modules->module * modules->side});
    }
  }
  return {left, top, right - left, bottom - top};
}

}  // namespace dunnage
