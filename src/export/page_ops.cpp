// SPDX-License-Identifier: MIT
// The pen remembers what it last set, so that a table of a thousand cells does not say "black" a thousand
// times.
#include "export/page_ops.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <cstdlib>
#include <string_view>

#include "base/utf8.h"

namespace dunnage {
namespace {

constexpr char kHex[] = "0123456789ABCDEF";
constexpr std::size_t kCharacters = 0x10000;

/// Whole thousandths: of a point, 0.35 micrometres on paper. What lies beyond the largest page that PDF knows was told
/// as a problem of its layout, and its page is never written.
long thousandths_of(double value) {
  constexpr double most = 14400;  // points (ISO 32000-1, annex C)
  assert(std::isfinite(value));
  return std::lround(std::clamp(value, -most, most) * 1000);
}

class Pen {
 public:
  Pen(std::string& out, Paper height, UsedCharacters& used) : out_(out), height_(height), used_(used) {}
  void operator()(const ink::Words& words);
  void operator()(const ink::Line& line);
  void operator()(const ink::Rect& rect);
  void operator()(const ink::Outline& outline);
  void operator()(const ink::Modules& modules);
  void finish() { leave_text(); }

 private:
  void thousandths(long value);
  void number(double value) { thousandths(thousandths_of(value)); }
  void length(Paper value) { number(value / unit::point); }
  void spot(Spot s) {
    length(s.x);
    length(height_ - s.y);
  }
  void say(std::string_view op) { out_.append(op).push_back('\n'); }
  void leave_text();
  void fill_grey(double grey);
  void stroke_with(double grey, Paper thickness, Paper dash, bool round);

  std::string& out_;
  Paper height_;
  UsedCharacters& used_;
  bool in_text_ = false;
  int face_ = -1;
  std::vector<bool>* seen_ = nullptr;  ///< characters of that face
  long text_x_ = 0, text_y_ = 0;       ///< where the last text of this text object began, in thousandths of a point
  Paper size_, thickness_ = 1 * unit::point, dash_;
  double fill_ = 0, stroke_ = 0;  // the state a page begins with
  bool round_ = false;
};

/// Thousandths, without trailing zeros.
void Pen::thousandths(long value) {
  char digits[16];
  char* const end = digits + sizeof digits;
  char* at = end;
  *--at = ' ';
  const auto size = static_cast<unsigned long>(std::labs(value));
  unsigned long rest = size % 1000;
  if (rest != 0) {
    int places = 3;
    for (; rest % 10 == 0; rest /= 10) --places;
    for (; places > 0; --places, rest /= 10) *--at = static_cast<char>('0' + rest % 10);
    *--at = '.';
  }
  unsigned long whole = size / 1000;
  do *--at = static_cast<char>('0' + whole % 10);
  while ((whole /= 10) != 0);
  if (value < 0) *--at = '-';
  out_.append(at, static_cast<std::size_t>(end - at));
}

void Pen::leave_text() {
  if (in_text_) say("ET");
  in_text_ = false;
}

void Pen::fill_grey(double grey) {
  assert(grey >= 0 && grey <= 1);
  if (grey == fill_) return;
  fill_ = grey;
  number(grey);
  say("g");
}

void Pen::stroke_with(double grey, Paper thickness, Paper dash, bool round) {
  assert(grey >= 0 && grey <= 1);
  if (grey != stroke_) {
    stroke_ = grey;
    number(grey);
    say("G");
  }
  if (thickness != thickness_) {
    thickness_ = thickness;
    length(thickness);
    say("w");
  }
  if (dash != dash_) {
    dash_ = dash;
    out_ += '[';
    if (dash > Paper()) length(dash);
    say("] 0 d");
  }
  if (round != round_) {
    round_ = round;
    say(round ? "1 J 1 j" : "0 J 0 j");
  }
}

void Pen::operator()(const ink::Words& words) {
  if (words.text.empty()) return;
  fill_grey(words.grey);
  if (!in_text_) {
    say("BT");
    text_x_ = text_y_ = 0;
    in_text_ = true;
  }
  if (words.face != face_ || words.size != size_) {
    if (words.face != face_) seen_ = &used_.try_emplace(words.face, kCharacters).first->second;
    face_ = words.face;
    size_ = words.size;
    out_.append("/").append(face_name(face_)).append(" ");
    length(size_);
    say("Tf");
  }
  // From the text before, in whole thousandths: nothing is lost however many follow each other.
  const long x = thousandths_of(words.at.x / unit::point), y = thousandths_of((height_ - words.at.y) / unit::point);
  thousandths(x - text_x_);
  thousandths(y - text_y_);
  text_x_ = x;
  text_y_ = y;
  out_ += "Td <";
  for (std::size_t at = 0; at < words.text.size();) {
    const char32_t c = utf8::next(words.text, at);
    assert(c < kCharacters);
    (*seen_)[c] = true;
    const char code[] = {kHex[c >> 12], kHex[c >> 8 & 0xF], kHex[c >> 4 & 0xF], kHex[c & 0xF]};
    out_.append(code, 4);
  }
  say("> Tj");
}

void Pen::operator()(const ink::Line& line) {
  leave_text();
  stroke_with(0, line.thickness, line.dash, false);
  spot(line.from);
  out_ += "m ";
  spot(line.to);
  say("l S");
}

void Pen::operator()(const ink::Rect& rect) {
  const bool filled = rect.fill >= 0, stroked = rect.stroke > Paper();
  if (!filled && !stroked) return;
  leave_text();
  if (filled) fill_grey(rect.fill);
  if (stroked) stroke_with(0, rect.stroke, Paper(), false);
  spot({rect.box.x, rect.box.y + rect.box.h});
  length(rect.box.w);
  length(rect.box.h);
  say(!stroked ? "re f" : filled ? "re B" : "re S");
}

void Pen::operator()(const ink::Outline& outline) {
  if (outline.steps.empty()) return;
  leave_text();
  const bool stroked = outline.stroke > Paper();
  if (stroked)
    stroke_with(outline.grey, outline.stroke, Paper(), true);
  else
    fill_grey(outline.grey);
  for (const ink::Outline::Step& step : outline.steps) {
    using Kind = ink::Outline::Step::Kind;
    if (step.kind != Kind::close) spot(step.a);
    if (step.kind == Kind::curve) {
      spot(step.b);
      spot(step.c);
    }
    out_ += step.kind == Kind::move ? "m " : step.kind == Kind::line ? "l " : step.kind == Kind::curve ? "c " : "h ";
  }
  say(stroked ? "S" : "f*");
}

/// An inline 1-bit image mask: renderers paint whole dots of it, where they would fatten filled squares.
void Pen::operator()(const ink::Modules& modules) {
  const int side = modules.side;
  assert(side > 0 && modules.dark.size() == static_cast<std::size_t>(side) * static_cast<std::size_t>(side));
  leave_text();
  fill_grey(0);
  const Paper whole = modules.module * side;
  out_ += "q ";
  length(whole);
  out_ += "0 0 ";
  length(whole);
  spot({modules.at.x, modules.at.y + whole});
  out_ += "cm BI /IM true /W " + std::to_string(side) + " /H " + std::to_string(side) + " /D [1 0] /F /AHx ID ";
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < (side + 7) / 8 * 8; column += 4) {
      int nibble = 0;
      for (int i = column; i < column + 4; ++i)
        nibble = nibble * 2 + (i < side && modules.dark[static_cast<std::size_t>(row) * side + i] ? 1 : 0);
      out_ += kHex[nibble];
    }
  say("> EI Q");
}

}  // namespace

std::string face_name(int face) { return "F" + std::to_string(face + 1); }

void add_operators(std::string& stream, const std::vector<Ink>& ink, Paper height, UsedCharacters& used) {
  Pen pen(stream, height, used);
  for (const Ink& one : ink) std::visit(pen, one);
  pen.finish();
}

}  // namespace dunnage
