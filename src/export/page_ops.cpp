// SPDX-License-Identifier: MIT
// The pen remembers what it last set, so that a table of a thousand cells does not say "black" a thousand
// times.
#include "export/page_ops.h"

#include <cassert>
#include <cmath>
#include <map>
#include <string_view>

#include "base/utf8.h"

namespace dunnage {
namespace {

constexpr char kHex[] = "0123456789ABCDEF";

class Pen {
 public:
  Pen(Paper height, const std::function<std::string(int)>& font_name)
      : height_(height), font_name_(font_name) {}
  void operator()(const ink::Words& words);
  void operator()(const ink::Line& line);
  void operator()(const ink::Rect& rect);
  void operator()(const ink::Outline& outline);
  void operator()(const ink::Modules& modules);
  std::string finish();

 private:
  void number(double value);
  void length(Paper value) { number(value / unit::point); }
  void spot(Spot s) {
    length(s.x);
    length(height_ - s.y);
  }
  void say(std::string_view op) { out_.append(op).push_back('\n'); }
  void leave_text();
  void fill_grey(double grey);
  void stroke_with(double grey, Paper thickness, Paper dash, bool round);

  Paper height_;
  const std::function<std::string(int)>& font_name_;
  std::map<int, std::string> names_;
  std::string out_;
  bool in_text_ = false;
  int face_ = -1;
  Paper size_, thickness_ = 1 * unit::point, dash_;
  double fill_ = 0, stroke_ = 0;  // the state a page begins with
  bool round_ = false;
};

/// Thousandths, without trailing zeros: 0.35 micrometres on paper.
void Pen::number(double value) {
  assert(std::isfinite(value) && std::abs(value) < 14400);
  long long thousandths = std::llround(value * 1000);
  if (thousandths < 0) {
    out_ += '-';
    thousandths = -thousandths;
  }
  out_ += std::to_string(thousandths / 1000);
  if (long long rest = thousandths % 1000; rest != 0) {
    out_ += '.';
    for (int place = 100; rest != 0; place /= 10) {
      out_ += static_cast<char>('0' + rest / place);
      rest %= place;
    }
  }
  out_ += ' ';
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
  if (!in_text_) say("BT");
  in_text_ = true;
  if (words.face != face_ || words.size != size_) {
    face_ = words.face;
    size_ = words.size;
    std::string& name = names_[face_];
    if (name.empty()) name = font_name_(face_);
    out_.append("/").append(name).append(" ");
    length(size_);
    say("Tf");
  }
  out_ += "1 0 0 1 ";
  spot(words.at);
  out_ += "Tm <";
  for (char32_t c : utf8::decode(words.text)) {
    assert(c <= 0xFFFF);
    for (int shift = 12; shift >= 0; shift -= 4) out_ += kHex[c >> shift & 0xF];
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
    out_ += step.kind == Kind::move    ? "m "
            : step.kind == Kind::line  ? "l "
            : step.kind == Kind::curve ? "c "
                                       : "h ";
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
  out_ +=
      "cm BI /IM true /W " + std::to_string(side) + " /H " + std::to_string(side) + " /D [1 0] /F /AHx ID ";
  for (int row = 0; row < side; ++row)
    for (int column = 0; column < (side + 7) / 8 * 8; column += 4) {
      int nibble = 0;
      for (int i = column; i < column + 4; ++i)
        nibble = nibble * 2 + (i < side && modules.dark[static_cast<std::size_t>(row) * side + i] ? 1 : 0);
      out_ += kHex[nibble];
    }
  say("> EI Q");
}

std::string Pen::finish() {
  leave_text();
  return std::move(out_);
}

}  // namespace

std::string page_operators(const Page& page, const std::function<std::string(int face)>& font_name) {
  Pen pen(page.height, font_name);
  for (const Ink& ink : page.ink) std::visit([&](const auto& one) { pen(one); }, ink);
  return pen.finish();
}

}  // namespace dunnage
