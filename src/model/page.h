// SPDX-License-Identifier: MIT
// Finished pages: few plain marks at fixed places. Lengths on paper from the top left corner; y grows downwards.
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

struct Spot {
  Paper x, y;
};
struct Box {
  Paper x, y, w, h;
};

namespace ink {
/// One line of text in one face, its baseline beginning at `at`. Width as the metrics give it.
struct Words {
  Spot at;
  int face;
  Paper size;
  Paper width;
  std::string text;
  double grey = 0;
};
struct Line {
  Spot from, to;
  Paper thickness;
  Paper dash;
};  ///< dash zero: solid
struct Rect {
  Box box;
  Paper stroke;
  double fill = -1;
};  ///< fill: grey 0 to 1; negative: none. stroke zero: none
/// A filled (even-odd) or stroked (round ends and joins) outline; curves are cubic, three spots each.
struct Outline {
  struct Step {
    enum class Kind { move, line, curve, close } kind;
    Spot a, b, c;
  };
  std::vector<Step> steps;
  Paper stroke;  ///< zero: filled
  double grey = 0;
};
/// Square modules, dark where set; `side` modules a side, row by row from the top.
struct Modules {
  Spot at;
  Paper module;
  int side;
  std::vector<bool> dark;
};
}  // namespace ink

using Ink = std::variant<ink::Words, ink::Line, ink::Rect, ink::Outline, ink::Modules>;

struct Page {
  Paper width, height;
  std::vector<Ink> ink;
  std::string label;     ///< page label, "1"
  std::string bookmark;  ///< where a section begins; empty elsewhere
};

/// Pages of one document; of a packet, where several follow each other.
struct Pages {
  std::string title, language = "en";
  std::vector<Page> pages;
  bool to_scale = false;  ///< labels: ask the viewer not to scale
  int longest = 0;        ///< pages of the longest section
};

/// Takes pages as they are finished, so that nobody need keep them all.
class PageSink {
 public:
  virtual ~PageSink() = default;
  /// The pages that follow are of a document with this title and language.
  virtual void begin(const std::string& title, const std::string& language, bool to_scale) = 0;
  /// The next page; its index, from 0.
  virtual std::size_t add(Page page) = 0;
  /// Words for a page that was given before: what is known only at the end, as "page 1 of 9".
  virtual void add_words(std::size_t page, std::vector<Ink> words) = 0;
};

/// Keeps them all.
class KeptPages final : public PageSink {
 public:
  Pages pages;
  void begin(const std::string& title, const std::string& language, bool to_scale) override {
    pages = {title, language, {}, to_scale, 0};
  }
  std::size_t add(Page page) override {
    pages.pages.push_back(std::move(page));
    return pages.pages.size() - 1;
  }
  void add_words(std::size_t page, std::vector<Ink> words) override {
    for (Ink& one : words) pages.pages[page].ink.push_back(std::move(one));
  }
};

}  // namespace dunnage
