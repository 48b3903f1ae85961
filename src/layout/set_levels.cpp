// SPDX-License-Identifier: MIT
// Setting of levels of alarm.
#include "layout/set_levels.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper level_pad = 2 * paper_mm;
constexpr Paper sign = 15 * paper_mm;  ///< side of the shape
constexpr Paper frame = 1.5 * point;

/// A regular polygon about `middle`, its first corner at `turn` of a full turn.
std::vector<Spot> polygon(Spot middle, Paper radius, int corners, double turn) {
  std::vector<Spot> spots;
  for (int i = 0; i < corners; ++i) {
    const double angle = (turn + static_cast<double>(i) / corners) * 2 * 3.14159265358979323846;
    spots.push_back({middle.x + radius * std::cos(angle), middle.y + radius * std::sin(angle)});
  }
  return spots;
}

/// Worst: full. Next: lines. Last: empty with a dot. Told apart on any copy.
void put_sign(std::vector<Ink>& ink, picture::Level::Shape shape, Spot middle) {
  const Paper half = sign / 2;
  switch (shape) {
    case picture::Level::Shape::octagon:
      put_polygon(ink, polygon(middle, half * 1.04, 8, 1.0 / 16), {}, 0);
      break;
    case picture::Level::Shape::diamond: {
      put_polygon(ink, polygon(middle, half, 4, 0), 1.5 * point, -1);
      const Paper inner = half * 0.94;
      for (Paper c = 1.25 * paper_mm; c < inner * 2; c += 2.5 * paper_mm) {  // parallel to two of its sides
        const Paper d = c / 2;
        ink.push_back(
            ink::Line{{middle.x - inner + d, middle.y - d}, {middle.x + d, middle.y + inner - d}, 1 * point, {}});
      }
      break;
    }
    case picture::Level::Shape::disc:
      put_disc(ink, middle, half * 0.9, 2 * point, -1);
      put_disc(ink, middle, half * 0.2, {}, 0);
      break;
  }
}

/// As large as word and figure have room beside each other, down to the floor.
TypeStyle head_style(Setting& setting, const TypeStyle& head, const picture::Level& level, Paper room) {
  TypeStyle style = head;
  const double ems = natural_ems(setting.faces, setting.face(head.face), level.word + level.figure) + 0.05;
  const Paper size = std::clamp(room / ems, std::min(head.floor, head.size), head.size);
  style.leading = leading_at(head, size);
  style.size = size;
  return style;
}

Strip level_strip(Setting& setting, const BlockSpec& spec, const picture::Level& level, Paper width) {
  const Paper head_w = width * 0.42, text_x = sign + level_pad * 2 + head_w + level_pad;
  const Paper text_w = width - text_x - level_pad;
  const TypeStyle head = head_style(setting, spec.head, level, head_w - level_pad * 2);
  const Label word = label(setting, head, level.word, head_w);
  const Label figure = label(setting, head, level.figure, head_w);
  const Label note = label(setting, spec.type, level.note, head_w);
  std::vector<Label> actions;
  Paper text_h;
  for (const std::string& action : level.actions) {
    actions.push_back(label(setting, spec.type, action, text_w));
    text_h += actions.back().height;
  }
  const bool one_line = word.width + figure.width + level_pad * 2 <= head_w;
  const Paper head_h = std::max(word.height, figure.height) + (one_line ? Paper{} : figure.height) + note.height;
  Strip strip;
  strip.height = std::max({spec.height, sign + level_pad, head_h + level_pad, text_h + level_pad});
  const Paper middle = strip.height / 2;
  put_sign(strip.ink, level.shape, {level_pad + sign / 2, middle});
  const Paper x = sign + level_pad * 2;
  Paper y = middle - head_h / 2;
  put_label(setting, strip.ink, word, {x, y});
  if (!one_line) y += word.height;
  put_label(setting, strip.ink, figure, {one_line ? x + word.width + level_pad * 2 : x, y});
  put_label(setting, strip.ink, note, {x, y + figure.height});
  y = middle - text_h / 2;
  for (const Label& action : actions) {
    put_label(setting, strip.ink, action, {text_x, y});
    y += action.height;
  }
  strip.ink.push_back(ink::Rect{{frame / 2, frame / 2, width - frame, strip.height - frame}, frame});
  strip.height += 1 * paper_mm;
  return strip;
}

}  // namespace

void set_levels(Setting& setting, const BlockSpec& spec, const picture::Levels& levels, Paper width, Galley& galley) {
  for (const picture::Level& level : levels.levels) galley.strips.push_back(level_strip(setting, spec, level, width));
  for (std::size_t i = 0; i + 1 < galley.strips.size(); ++i) galley.strips[i].keep_next = true;
}

}  // namespace dunnage
