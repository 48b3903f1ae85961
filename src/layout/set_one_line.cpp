// SPDX-License-Identifier: MIT
// Setting of one-line diagrams.
#include "layout/set_one_line.h"

#include <algorithm>
#include <utility>

#include "layout/picture_ink.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper line_pad = 1.5 * paper_mm;
constexpr Paper bus_x = 4 * paper_mm;  ///< of the upright bus that all branches leave
constexpr Paper stub = 5 * paper_mm;   ///< from the bus to the breaker's box
constexpr Paper wire = 1.25 * point, bus = 3 * point;
constexpr Paper line_marker = 4 * paper_mm;

/// Lines of words in one column, the first in bold.
struct Stack {
  std::vector<Label> parts;
  Paper height;
};

Stack stack(Setting& setting, const TypeStyle& first, const TypeStyle& rest, const std::vector<std::string>& texts,
            Paper width) {
  Stack out;
  for (const std::string& text : texts) {
    if (text.empty()) continue;
    out.parts.push_back(label(setting, out.parts.empty() ? first : rest, text, width));
    out.height += out.parts.back().height;
  }
  return out;
}

void put_stack(Setting& setting, std::vector<Ink>& ink, const Stack& stack, Spot at) {
  for (const Label& part : stack.parts) {
    put_label(setting, ink, part, at);
    at.y += part.height;
  }
}

void put_frame(std::vector<Ink>& ink, const Box& box) { ink.push_back(ink::Rect{box, wire}); }

Strip supply_strip(Setting& setting, const BlockSpec& spec, const picture::OneLine& diagram, Paper width) {
  const Paper wide = std::min(width, 120 * paper_mm);
  const Stack words = stack(setting, spec.head, spec.type, diagram.supply, wide - line_pad * 2);
  Strip strip;
  const Paper box_h = words.height + line_pad;
  put_frame(strip.ink, {wire / 2, wire / 2, wide - wire, box_h});
  put_stack(setting, strip.ink, words, {line_pad, line_pad / 2});
  strip.height = box_h + 3 * paper_mm;
  strip.ink.push_back(ink::Line{{bus_x, box_h}, {bus_x, strip.height}, bus, {}});
  strip.keep_next = true;
  return strip;
}

/// A breaker's box, the cable as a line with its words above and below, the loads, and how it came out.
Strip branch_strip(Setting& setting, const BlockSpec& spec, const picture::Branch& branch, Paper width, bool last) {
  const Paper left = bus_x + stub;
  const Paper breaker_w = width * 0.22, cable_w = width * 0.22, says_w = width * 0.17;
  const Paper load_w = width - left - breaker_w - cable_w - says_w - line_pad;
  const Stack breaker = stack(setting, spec.head, spec.type, branch.breaker, breaker_w - line_pad * 2);
  const Stack cable = stack(setting, spec.type, spec.type, branch.cable, cable_w - line_pad * 2);
  const Stack loads = stack(setting, spec.type, spec.type, branch.loads, load_w - line_pad * 2);
  const Label says = label(setting, spec.head, branch.says, says_w - line_marker - line_pad);
  const Paper above = cable.parts.empty() ? Paper{} : cable.parts.front().height;
  Strip strip;
  strip.height = std::max({spec.height, breaker.height + line_pad * 3, loads.height + line_pad * 3,
                           says.height + line_pad, std::max(above, cable.height - above) * 2 + line_pad * 2});
  const Paper y = strip.height / 2, cable_x = left + breaker_w, load_x = cable_x + cable_w;
  strip.ink.push_back(ink::Line{{bus_x, {}}, {bus_x, last ? y + bus / 2 : strip.height}, bus, {}});
  strip.ink.push_back(ink::Line{{bus_x, y}, {left, y}, wire, {}});
  put_frame(strip.ink, {left, y - breaker.height / 2 - line_pad / 2, breaker_w, breaker.height + line_pad});
  put_stack(setting, strip.ink, breaker, {left + line_pad, y - breaker.height / 2});
  strip.ink.push_back(ink::Line{{cable_x, y}, {load_x, y}, wire, {}});
  put_stack(setting, strip.ink, cable, {cable_x + line_pad, y - above});
  put_frame(strip.ink, {load_x, y - loads.height / 2 - line_pad / 2, load_w, loads.height + line_pad});
  put_stack(setting, strip.ink, loads, {load_x + line_pad, y - loads.height / 2});
  put_state(strip.ink, branch.state, {load_x + load_w + line_pad + line_marker / 2, y}, line_marker);
  put_label(setting, strip.ink, says, {load_x + load_w + line_pad * 2 + line_marker, y - says.height / 2});
  return strip;
}

}  // namespace

void set_one_line(Setting& setting, const BlockSpec& spec, const picture::OneLine& diagram, Paper width,
                  Galley& galley) {
  galley.strips.push_back(supply_strip(setting, spec, diagram, width));
  for (const picture::Branch& branch : diagram.branches)
    galley.strips.push_back(branch_strip(setting, spec, branch, width, &branch == &diagram.branches.back()));
}

}  // namespace dunnage
