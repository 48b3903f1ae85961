// SPDX-License-Identifier: MIT
// Setting of pictures. Sizes follow the printer's dots only for codes: the rest is drawn, not scanned.
#include "layout/set_picture.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/unit.h"
#include "layout/drawn.h"
#include "layout/fit.h"
#include "symbol/qr.h"

namespace dunnage {
namespace {

using unit::paper_in;
using unit::paper_mm;

constexpr Paper least_picture = 4.5 * paper_mm;
constexpr int least_side = 21;  ///< modules of the smallest code (ISO/IEC 18004)

/// How far into the room something of that width begins.
Paper offset(Align align, Paper room, Paper wide) {
  return (room - wide) * (align == Align::left ? 0.0 : align == Align::right ? 1.0 : 0.5);
}

Sign sign_of(Mark mark) {
  switch (mark) {
    case Mark::this_way_up:
      return Sign::this_way_up;
    case Mark::fragile:
      return Sign::fragile;
    case Mark::keep_dry:
      return Sign::keep_dry;
    case Mark::keep_cool:
      return Sign::keep_cool;
    case Mark::no_hand_truck:
      return Sign::no_hand_truck;
    case Mark::no_stack:
      return Sign::no_stack;
    case Mark::heavy:
      return Sign::heavy;
  }
  return Sign::warning;
}

/// The code of as much of the text as has room; its last lines too where they can stay. Where not even the first line
/// has room, as many of its words as do: the first is the code by which the case is known.
std::optional<QrFit> code_of(const block::Qr& qr, char correction, int max_side) {
  if (max_side < least_side) return std::nullopt;
  if (auto fit = qr_fit(qr.text, qr.more, correction, max_side, qr.keep_last)) return fit;
  if (auto fit = qr_fit(qr.text, qr.more, correction, max_side, 0)) return fit;
  std::string line = qr.text.substr(0, qr.text.find('\n'));
  for (std::size_t end; (end = line.find_last_not_of(' ', line.rfind(' '))) != std::string::npos;) {
    line.resize(end + 1);
    if (auto fit = qr_fit(line, {}, correction, max_side, 0)) return fit;
    if (line.find(' ') == std::string::npos) break;
  }
  return std::nullopt;
}

/// The words of marks, each in its cell.
std::vector<Lines> mark_words(Setting& setting, const TypeStyle& style, const block::Marks& marks, Paper cell) {
  std::vector<Lines> lines;
  for (const std::string& word : marks.words) lines.push_back(fit_words(setting, style, word, cell - 1 * paper_mm));
  return lines;
}

Paper tallest(const std::vector<Lines>& all) {
  Paper height;
  for (const Lines& lines : all) height = std::max(height, lines.height());
  return height;
}

struct Pictogram {
  Figure figure;
  std::string word;
};

/// As tall as its box and its words allow: the picture gives way until the words fit at three quarters of their size,
/// or else at their floor.
Paper picture_height(Setting& setting, const BlockSpec& spec, const Pictogram& pictogram, const Box& box, Paper gap) {
  const Paper most = spec.line_height > Paper{} ? std::min(spec.line_height, box.h) : box.h;
  const Paper least = std::min(least_picture, most), step = 0.5 * paper_mm;
  for (const Paper floor : {std::max(spec.type.floor, spec.type.size * 0.75), spec.type.floor}) {
    TypeStyle style = spec.type;
    style.floor = floor;
    for (Paper tall = most; tall > least; tall = tall - step)
      if (fits_box(setting, style, pictogram.word, box.w - tall * pictogram.figure.width - gap, box.h)) return tall;
  }
  return least;
}

void put_pictogram(Setting& setting, const BlockSpec& spec, const Pictogram& pictogram, const Box& box,
                   std::vector<Ink>& ink) {
  const Paper gap = 2 * paper_mm;
  const Paper tall = picture_height(setting, spec, pictogram, box, gap);
  const Paper wide = tall * pictogram.figure.width;
  put_figure(ink, pictogram.figure, {box.x, box.y + (box.h - tall) / 2}, tall);
  const Paper room = box.w - wide - gap;
  if (room < least_picture) {
    setting.problem(pictogram.word, "has no room beside its picture");
    return;
  }
  const Lines lines = fit_box(setting, spec.type, pictogram.word, room, box.h);
  put_lines(setting, ink, lines, spec.type, {box.x + wide + gap, box.y + (box.h - lines.height()) / 2}, room);
}

}  // namespace

void put_figure(std::vector<Ink>& ink, const Figure& figure, Spot at, Paper height) {
  for (Ink& outline : drawn(figure, {at.x, at.y, height * figure.width, height})) ink.push_back(std::move(outline));
}

void put_qr(Setting& setting, const BlockSpec& spec, const block::Qr& qr, const Box& box, std::vector<Ink>& ink) {
  const Paper dot = (1.0 / setting.dpi) * paper_in;
  const int room = static_cast<int>(steps_down(std::min(box.w, box.h) / dot)) - 1;  // one dot to come onto the grid
  const int max_side = std::min(room / std::max(1, spec.dots) - 2 * qr_quiet, 177);
  const std::optional<QrFit> fit = code_of(qr, spec.correction, max_side);
  if (!fit) {
    const std::string side = plain(std::min(box.w, box.h) / paper_mm, 1);
    setting.problem(qr.text.substr(0, qr.text.find('\n')), "does not fit into a QR code of " + side + " mm at " +
                                                               std::to_string(spec.dots) + " printer dots a module");
    return;
  }
  const int side = fit->code.side;
  const int dots = room / (side + 2 * qr_quiet);  // whole ones a module
  const Paper module = dot * dots;
  const Paper whole = module * (side + 2 * qr_quiet);
  const Spot at{box.x + offset(spec.type.align, box.w, whole) + module * qr_quiet, box.y + module * qr_quiet};
  ink.push_back(ink::Modules{at, module, side, fit->code.dark});
}

void put_marks(Setting& setting, const BlockSpec& spec, const block::Marks& marks, const Box& box,
               std::vector<Ink>& ink) {
  const std::size_t count = marks.marks.size();
  if (count == 0) return;
  const std::size_t across = spec.across > 1 ? static_cast<std::size_t>(spec.across) : count;
  const std::size_t rows = (count + across - 1) / across;
  const Paper row = box.h / static_cast<double>(rows);
  const Paper cell = std::min(box.w / static_cast<double>(across), row * 1.5);  // few marks stand close together
  const Paper left = box.x + offset(spec.type.align, box.w, cell * static_cast<double>(across));
  TypeStyle words = spec.type;
  words.align = Align::centre;
  std::vector<Lines> lines = mark_words(setting, words, marks, cell);
  if (std::min(row - tallest(lines), cell) < least_picture) {  // the words give way before the pictures do
    words.leading = leading_at(words, words.floor);
    words.size = words.floor;
    lines = mark_words(setting, words, marks, cell);
  }
  if (std::min(row - tallest(lines), cell) < least_picture) {  // then the second language does: the pictures speak
    block::Marks first = marks;
    for (std::string& word : first.words) word = apart(word).first;
    lines = mark_words(setting, words, first, cell);
  }
  const Paper tall = std::min(row - tallest(lines), cell - 1 * paper_mm);
  if (tall < least_picture) {
    setting.problem({}, std::to_string(count) + " marks with their words have no room in " +
                            plain(box.w / paper_mm, 1) + " x " + plain(box.h / paper_mm, 1) + " mm");
    return;
  }
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t line = i / across;
    const Paper x = left + cell * static_cast<double>(i % across), y = box.y + row * static_cast<double>(line);
    const Figure picture = figure(sign_of(marks.marks[i]));
    put_figure(ink, picture, {x + offset(Align::centre, cell, tall * picture.width), y}, tall);
    if (i < lines.size()) put_lines(setting, ink, lines[i], words, {x + 0.5 * paper_mm, y + tall}, cell - 1 * paper_mm);
  }
}

void put_handle(Setting& setting, const BlockSpec& spec, const block::Handle& handle, const Box& box,
                std::vector<Ink>& ink) {
  const bool by_hand = handle.ramp_people > 0;  // nobody moves it: the aid does
  const Pictogram both[] = {
      {handle.rolls ? roll_by(std::clamp(handle.ramp_people, 1, 2)) : figure(by_hand ? Sign::carry : Sign::aid),
       handle.move_word},
      {handle.people == 0 ? figure(Sign::aid) : lift_by(std::clamp(handle.people, 1, 4)), handle.lift_word}};
  const bool beside = spec.across >= 2;
  const Paper gap = (beside ? 3 : 1) * paper_mm;
  const Paper w = beside ? (box.w - gap) / 2 : box.w, h = beside ? box.h : (box.h - gap) / 2;
  put_pictogram(setting, spec, both[0], {box.x, box.y, w, h}, ink);
  put_pictogram(setting, spec, both[1],
                {box.x + (beside ? w + gap : Paper{}), box.y + (beside ? Paper{} : h + gap), w, h}, ink);
}

namespace {

Paper height_or(const BlockSpec& spec, Paper usual) { return spec.line_height > Paper{} ? spec.line_height : usual; }

}  // namespace

void set_qr(Setting& setting, const BlockSpec& spec, const block::Qr& qr, Paper width, Galley& galley) {
  Strip strip;
  strip.height = height_or(spec, 30 * paper_mm);
  put_qr(setting, spec, qr, {{}, {}, width, strip.height}, strip.ink);
  galley.strips.push_back(std::move(strip));
}

void set_marks(Setting& setting, const BlockSpec& spec, const block::Marks& marks, Paper width, Galley& galley) {
  if (marks.marks.empty()) return;
  Strip strip;
  strip.height = height_or(spec, 20 * paper_mm);
  put_marks(setting, spec, marks, {{}, {}, width, strip.height}, strip.ink);
  galley.strips.push_back(std::move(strip));
}

void set_handle(Setting& setting, const BlockSpec& spec, const block::Handle& handle, Paper width, Galley& galley) {
  Strip strip;
  strip.height = height_or(spec, 14 * paper_mm);
  if (spec.across < 2) strip.height = strip.height * 2 + 1 * paper_mm;
  put_handle(setting, spec, handle, {{}, {}, width, strip.height}, strip.ink);
  galley.strips.push_back(std::move(strip));
}

}  // namespace dunnage
