// SPDX-License-Identifier: MIT
// Setting of heads and feet.
#include "layout/furniture.h"

#include <algorithm>

#include "layout/fit.h"
#include "layout/galley.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper furniture_gap = 4 * paper_mm;
constexpr Paper white_below = 3 * paper_mm;  ///< between the head's rule and the body
constexpr Paper white_above = 2 * paper_mm;  ///< between the body and the foot
constexpr Paper page_rule = 1 * point;

void fill_in(std::string& text, const std::string& name, int value) {
  const std::string said = std::to_string(value);
  for (std::size_t at = 0; (at = text.find(name, at)) != std::string::npos; at += said.size())
    text.replace(at, name.size(), said);
}

std::string joined(const std::string& a, const std::string& b) {
  return a.empty() || b.empty() ? a + b : a + "  \u00b7  " + b;
}

}  // namespace

Furniture::Furniture(Setting& setting, const Layout& layout, const Section& section, Paper width)
    : setting_(setting),
      layout_(layout),
      title_(layout.title),
      recipient_(layout.title),
      running_(layout.running),
      running_right_(layout.running),
      width_(width) {
  if (!layout.furniture) return;
  setting.at_block({}, {layout.file, 1, 1, 1});
  const Document& document = setting.document;
  recipient_.align = Align::right;
  running_right_.align = Align::right;
  const Paper title_wide = title_.size * natural_ems(setting.faces, setting.face(title_.face), document.title);
  const Paper name_wide = title_.size * natural_ems(setting.faces, setting.face(title_.face), section.recipient);
  const bool beside = section.recipient.empty() || title_wide + furniture_gap + name_wide <= width;
  Paper y;
  const Lines title = fit_width(setting, title_, document.title, width);
  put_lines(setting, head_, title, title_, {}, width);
  if (!beside) recipient_.align = Align::left;
  if (!beside) y += title.height();
  const Lines name = fit_width(setting, recipient_, section.recipient, width);
  if (!section.recipient.empty()) put_lines(setting, head_, name, recipient_, {{}, y}, width);
  y += beside ? std::max(title.height(), name.height()) : name.height();
  page_y_ = y;
  const std::string widest = page_words(888, 888);
  page_width_ = running_.size * natural_ems(setting.faces, setting.face(running_.face), widest) + 0.1 * paper_mm;
  const Paper left_wide = width - page_width_ - furniture_gap;
  const Lines show = fit_width(setting, running_, joined(document.show, document.date), left_wide);
  put_lines(setting, head_, show, running_, {{}, y}, left_wide);
  y += std::max(show.height(), fit_width(setting, running_, widest, page_width_).height()) + page_rule;
  head_.push_back(ink::Line{{{}, y - page_rule / 2}, {width, y - page_rule / 2}, page_rule, {}});
  head_height_ = y + white_below;
  const Lines revision = fit_width(setting, running_, document.revision, width);
  put_lines(setting, foot_, revision, running_, {{}, white_above}, width);
  foot_height_ = white_above + revision.height();
}

std::string Furniture::page_words(int number, int total) const {
  std::string words = setting_.document.page_words;
  fill_in(words, "{n}", number);
  fill_in(words, "{total}", total);
  return words;
}

void Furniture::put(std::vector<Ink>& ink, const Box& box) const {
  if (!layout_.furniture) return;
  add_moved(ink, head_, box.x, box.y);
  add_moved(ink, foot_, box.x, box.y + box.h - foot_height_);
}

void Furniture::put_number(std::vector<Ink>& ink, const Box& box, int number, int total) const {
  if (!layout_.furniture) return;
  const Lines words = fit_width(setting_, running_, page_words(number, total), page_width_);
  put_lines(setting_, ink, words, running_right_, {box.x + width_ - page_width_, box.y + page_y_}, page_width_);
}

}  // namespace dunnage
