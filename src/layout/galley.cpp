// SPDX-License-Identifier: MIT
// Moving, framing and parting of set matter.
#include "layout/galley.h"

#include <algorithm>
#include <utility>

namespace dunnage {
namespace {

void move(Spot& spot, Paper right, Paper down) {
  spot.x += right;
  spot.y += down;
}

void move(Ink& ink, Paper right, Paper down) {
  struct Mover {
    Paper right, down;
    void operator()(ink::Words& words) const { move(words.at, right, down); }
    void operator()(ink::Line& line) const {
      move(line.from, right, down);
      move(line.to, right, down);
    }
    void operator()(ink::Rect& rect) const {
      rect.box.x += right;
      rect.box.y += down;
    }
    void operator()(ink::Outline& outline) const {
      for (auto& step : outline.steps) {
        move(step.a, right, down);
        move(step.b, right, down);
        move(step.c, right, down);
      }
    }
    void operator()(ink::Modules& modules) const { move(modules.at, right, down); }
  };
  std::visit(Mover{right, down}, ink);
}

/// How far up and down a piece of ink reaches, a little more than its letters; `close`: to the height of capitals, for
/// lines that stand so close that accents reach into the line above.
std::pair<Paper, Paper> extent(const Ink& ink, bool close) {
  struct Reach {
    bool close;
    std::pair<Paper, Paper> operator()(const ink::Words& words) const {
      return {words.at.y - words.size * (close ? 0.72 : 0.92), words.at.y + words.size * 0.26};
    }
    std::pair<Paper, Paper> operator()(const ink::Line& line) const { return std::minmax(line.from.y, line.to.y); }
    std::pair<Paper, Paper> operator()(const ink::Rect& rect) const { return {rect.box.y, rect.box.y + rect.box.h}; }
    std::pair<Paper, Paper> operator()(const ink::Outline& outline) const {
      std::pair<Paper, Paper> reach{outline.steps.front().a.y, outline.steps.front().a.y};
      for (const auto& step : outline.steps) {
        if (step.kind == ink::Outline::Step::Kind::close) continue;
        reach = {std::min(reach.first, step.a.y), std::max(reach.second, step.a.y)};
        if (step.kind == ink::Outline::Step::Kind::curve)
          reach = {std::min({reach.first, step.b.y, step.c.y}), std::max({reach.second, step.b.y, step.c.y})};
      }
      return reach;
    }
    std::pair<Paper, Paper> operator()(const ink::Modules& modules) const {
      return {modules.at.y, modules.at.y + modules.module * modules.side};
    }
  };
  return std::visit(Reach{close}, ink);
}

/// May a cut go through it? Frames and upright rules may be cut; words and pictures may not.
bool can_be_cut(const Ink& ink, Paper height) {
  const auto* rect = std::get_if<ink::Rect>(&ink);
  return (rect != nullptr && rect->box.h > height / 2) || std::holds_alternative<ink::Line>(ink);
}

/// The lowest place, at most `height` from the top, that no words cross; zero where there is none.
Paper place_to_cut(const std::vector<Ink>& all, Paper height, bool close) {
  std::vector<std::pair<Paper, Paper>> solid;
  for (const Ink& ink : all)
    if (!can_be_cut(ink, height)) solid.push_back(extent(ink, close));
  std::sort(solid.begin(), solid.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
  Paper cut = height;
  for (const auto& [top, bottom] : solid)  // from the lowest up: each may push the cut above itself
    if (top < cut && bottom > cut) cut = top;
  return std::max(cut, Paper{});
}

}  // namespace

void Galley::begin_block(Paper before, bool new_page) {
  white_ = before;
  new_page_ = new_page;
  first_ = strips.size();
}

void Galley::put_white() {
  if (!white_ || strips.size() <= first_) return;
  strips[first_].before = *white_;
  strips[first_].new_page = new_page_;
  white_.reset();
}

bool Galley::end_block() {
  put_white();
  return !white_;
}

void Galley::relieve() {
  if (!spill || strips.size() < 2) return;
  put_white();
  for (std::size_t i = 0; i + 1 < strips.size(); ++i) spill(std::move(strips[i]));
  strips.erase(strips.begin(), strips.end() - 1);
}

void move_ink(std::vector<Ink>& ink, Paper right, Paper down) {
  for (Ink& each : ink) move(each, right, down);
}

void add_moved(std::vector<Ink>& onto, std::vector<Ink> ink, Paper right, Paper down) {
  move_ink(ink, right, down);
  onto.insert(onto.end(), std::make_move_iterator(ink.begin()), std::make_move_iterator(ink.end()));
}

Strip framed(Galley galley, Paper width, Paper pad, Paper stroke) {
  Strip whole;
  Paper y = pad;
  for (std::size_t i = 0; i < galley.strips.size(); ++i) {
    if (i > 0) y += galley.strips[i].before;
    add_moved(whole.ink, std::move(galley.strips[i].ink), pad, y);
    y += galley.strips[i].height;
  }
  whole.height = y + pad;
  const Paper half = stroke / 2;
  if (stroke > Paper{}) whole.ink.push_back(ink::Rect{{half, half, width - stroke, whole.height - stroke}, stroke});
  return whole;
}

std::string first_words(const std::vector<Ink>& ink) {
  constexpr std::size_t enough = 60;
  std::string out;
  for (const Ink& each : ink)
    if (const auto* words = std::get_if<ink::Words>(&each); words && out.size() < enough)
      out += (out.empty() ? "" : " ") + words->text;
  return out;
}

bool part(Strip& strip, Strip& rest, Paper height, bool close) {
  const Paper cut = place_to_cut(strip.ink, height, close);
  if (cut <= Paper{}) return false;
  rest = Strip{{}, strip.height - cut, {}, strip.keep_next, strip.may_part, strip.resume};
  std::vector<Ink> above;
  for (Ink& ink : strip.ink) {
    const auto [top, bottom] = extent(ink, close);
    auto* rect = std::get_if<ink::Rect>(&ink);
    if (rect != nullptr && top < cut && bottom > cut) {
      ink::Rect lower = *rect;
      lower.box.y = {};
      lower.box.h = bottom - cut;
      rect->box.h = cut - top;
      rest.ink.push_back(lower);
      above.push_back(std::move(ink));
    } else if (top >= cut) {
      move(ink, {}, -cut);
      rest.ink.push_back(std::move(ink));
    } else {
      above.push_back(std::move(ink));
    }
  }
  strip.ink = std::move(above);
  strip.height = cut;
  strip.keep_next = false;
  return true;
}

}  // namespace dunnage
