// SPDX-License-Identifier: MIT
// Tenths of a millimetre are fine enough to see a page change and coarse enough that no rounding error does.
#include "export/page_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace dunnage {
namespace {

/// Never "-0.0".
std::string mm(Paper p) {
  return fmt::format("{:.1f}", static_cast<double>(std::llround(p / unit::paper_mm * 10)) / 10);
}
std::string at(Spot s) { return mm(s.x) + "," + mm(s.y); }
std::string at(const Box& b) { return fmt::format("{},{} {}x{}", mm(b.x), mm(b.y), mm(b.w), mm(b.h)); }
std::string grey(double g) { return g == 0 ? std::string() : fmt::format(" grey {:.2f}", g); }

struct Writer {
  const Faces& faces;
  std::string out;

  void operator()(const ink::Words& w) {
    out += fmt::format("words {} {} {:.1f}pt{}: {}\n", at(w.at), faces.file(w.face).role, w.size / unit::point,
                       grey(w.grey), w.text);
  }
  void operator()(const ink::Line& l) {
    out += fmt::format("line {} to {}{}\n", at(l.from), at(l.to), l.dash > Paper() ? " dashed" : "");
  }
  void operator()(const ink::Rect& r) {
    out += fmt::format("rect {}{}{}\n", at(r.box), r.stroke > Paper() ? " framed" : "",
                       r.fill >= 0 ? fmt::format(" filled {:.2f}", r.fill) : "");
  }
  void operator()(const ink::Outline& o);
  void operator()(const ink::Modules& m) {
    out += fmt::format("modules {} {} a side, {:.3f} mm each\n", at(m.at), m.side, m.module / unit::paper_mm);
  }
};

/// The box of its spots; the shape itself is for pictures.
void Writer::operator()(const ink::Outline& o) {
  std::optional<Box> box;
  const auto reach = [&](Spot s) {
    if (!box) box = Box{s.x, s.y, Paper(), Paper()};
    const Paper right = std::max(box->x + box->w, s.x), bottom = std::max(box->y + box->h, s.y);
    box->x = std::min(box->x, s.x);
    box->y = std::min(box->y, s.y);
    box->w = right - box->x;
    box->h = bottom - box->y;
  };
  for (const ink::Outline::Step& step : o.steps) {
    using Kind = ink::Outline::Step::Kind;
    if (step.kind == Kind::close) continue;
    reach(step.a);
    if (step.kind == Kind::curve) reach(step.b), reach(step.c);
  }
  if (box) out += fmt::format("outline {}{}{}\n", at(*box), o.stroke > Paper() ? " stroked" : "", grey(o.grey));
}

}  // namespace

std::string page_text(const std::vector<Pages>& documents, const Faces& faces) {
  Writer writer{faces, {}};
  for (const Pages& document : documents) {
    writer.out +=
        fmt::format("document {} [{}]{}\n", document.title, document.language, document.to_scale ? " to scale" : "");
    for (const Page& page : document.pages) {
      writer.out += fmt::format("page {} {}x{}", page.label, mm(page.width), mm(page.height));
      writer.out += page.bookmark.empty() ? "\n" : fmt::format(" bookmark {}\n", page.bookmark);
      for (const Ink& ink : page.ink) std::visit(writer, ink);
    }
  }
  return std::move(writer.out);
}

}  // namespace dunnage
