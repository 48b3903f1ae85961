// SPDX-License-Identifier: MIT
// Setting of fader strips.
#include "layout/set_fader_strip.h"

#include <algorithm>
#include <utility>

#include "base/unit.h"
#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper usual_pitch = 25 * paper_mm, usual_cell = 24 * paper_mm;
constexpr Paper write_on = 8 * paper_mm;  ///< left blank at the foot of each cell
constexpr Paper mark = 4 * paper_mm;      ///< length of a cut mark, outside the strip
constexpr Paper cell_pad = 1 * paper_mm;
constexpr Paper cell_rule = 0.5 * point;

std::string filled(std::string text, const std::string& name, const std::string& value) {
  if (const auto at = text.find(name); at != std::string::npos) text.replace(at, name.size(), value);
  return text;
}

/// A line of whole millimetres with a tick each ten; a photocopy that is not full size shows at once.
Strip ruler(Setting& setting, const BlockSpec& spec, const std::string& words, Paper length, Paper width) {
  Strip strip;
  const Label text = label(setting, spec.type, filled(words, "{length}", plain(length / paper_mm, 0) + " mm"), width);
  put_label(setting, strip.ink, text, {});
  const Paper y = text.height + 4 * paper_mm;
  strip.ink.push_back(ink::Line{{{}, y}, {length, y}, 0.75 * point, {}});
  for (Paper x; x <= length + 0.01 * paper_mm; x += 10 * paper_mm)
    strip.ink.push_back(ink::Line{{x, y - 3 * paper_mm}, {x, y}, 0.75 * point, {}});
  strip.height = y + 1 * paper_mm;
  return strip;
}

/// Marks at the four corners, outside: they lead a knife and are cut away.
void put_cut_marks(std::vector<Ink>& ink, const Box& box) {
  for (const Paper x : {box.x, box.x + box.w})
    for (const bool top : {true, false}) {
      const Paper from = top ? box.y - mark : box.y + box.h;
      ink.push_back(ink::Line{{x, from}, {x, from + mark}, cell_rule, {}});
    }
  for (const Paper y : {box.y, box.y + box.h})
    for (const bool left : {true, false}) {
      const Paper from = left ? box.x - mark : box.x + box.w;
      ink.push_back(ink::Line{{from, y}, {from + mark, y}, cell_rule, {}});
    }
}

void put_cell(Setting& setting, const BlockSpec& spec, const picture::FaderCell& cell, const Box& box,
              std::vector<Ink>& ink) {
  const Label number = label(setting, spec.type, cell.number, box.w - cell_pad * 2);
  put_label(setting, ink, number, {box.x + (box.w - number.width) / 2, box.y + cell_pad / 2});
  const Paper name_y = box.y + cell_pad / 2 + number.height;
  const Paper room = box.y + box.h - write_on - name_y;
  if (!cell.name.empty()) {
    TypeStyle style = spec.head;
    style.align = Align::centre;
    const Lines name = fit_box(setting, style, cell.name, box.w - cell_pad * 2, room);
    put_lines(setting, ink, name, style, {box.x + cell_pad, name_y + (room - name.height()) / 2}, box.w - cell_pad * 2);
  }
  const Paper rule = box.y + box.h - write_on;
  ink.push_back(ink::Line{{box.x + cell_pad, rule}, {box.x + box.w - cell_pad, rule}, cell_rule, {}});
}

Strip bank(Setting& setting, const BlockSpec& spec, const picture::FaderStrips& strips, std::size_t from,
           std::size_t count, const Box& cell) {
  Strip strip;
  const std::size_t last = std::min(from + count, strips.cells.size()) - 1;
  const std::string title =
      filled(filled(strips.bank, "{from}", strips.cells[from].number), "{to}", strips.cells[last].number);
  const Label words = label(setting, spec.type, title, cell.w * static_cast<double>(count));
  put_label(setting, strip.ink, words, {mark + 2 * paper_mm, {}});
  const Box whole{mark, words.height + mark, cell.w * static_cast<double>(count), cell.h};
  for (std::size_t i = 0; i < count; ++i) {
    const Paper x = whole.x + cell.w * static_cast<double>(i);
    if (i > 0) strip.ink.push_back(ink::Line{{x, whole.y}, {x, whole.y + whole.h}, cell_rule, {}});
    if (from + i < strips.cells.size())
      put_cell(setting, spec, strips.cells[from + i], {x, whole.y, cell.w, cell.h}, strip.ink);
  }
  strip.ink.push_back(ink::Rect{whole, cell_rule});
  put_cut_marks(strip.ink, whole);
  strip.height = whole.y + whole.h + mark;
  strip.before = 3 * paper_mm;
  return strip;
}

}  // namespace

void set_fader_strips(Setting& setting, const BlockSpec& spec, const picture::FaderStrips& strips, Paper width,
                      Galley& galley) {
  const auto count = static_cast<std::size_t>(strips.per_bank.value_or(spec.across > 1 ? spec.across : 8));
  const Box cell{{},
                 {},
                 strips.pitch.value_or(spec.pitch > Paper{} ? spec.pitch : usual_pitch),
                 spec.height > Paper{} ? spec.height : usual_cell};
  const auto most = static_cast<std::size_t>((width - mark * 2) / cell.w + 1e-6);
  if (most == 0)
    return setting.problem({}, "has no room for one fader of " + plain(cell.w / paper_mm, 1) + " mm: a wider page");
  const std::size_t lengths = (count + most - 1) / most, piece = (count + lengths - 1) / lengths;
  const Paper wide = cell.w * static_cast<double>(piece);
  galley.strips.push_back(ruler(setting, spec, strips.check, std::min(wide, 200 * paper_mm), width));
  for (std::size_t from = 0; from < strips.cells.size(); from += count)
    for (std::size_t part = 0; part < count; part += piece)  // a bank too wide for the paper: lengths to lay end to end
      if (from + part < strips.cells.size())
        galley.strips.push_back(bank(setting, spec, strips, from + part, std::min(piece, count - part), cell));
}

}  // namespace dunnage
