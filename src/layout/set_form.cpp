// SPDX-License-Identifier: MIT
// Setting of forms.
#include "layout/set_form.h"

#include <algorithm>
#include <utility>

#include "layout/fit.h"
#include "layout/set_text.h"

namespace dunnage {
namespace {

using unit::paper_mm;
using unit::point;

constexpr Paper field_gap = 6 * paper_mm;  ///< between fields side by side
constexpr Paper form_rule = 0.5 * point;

Paper line_height(const BlockSpec& spec, Paper usual) { return spec.line_height > Paper{} ? spec.line_height : usual; }

/// Width of one of `across` fields side by side.
Paper field_width(Paper width, std::size_t across) {
  return (width - field_gap * static_cast<double>(across - 1)) / static_cast<double>(across);
}

}  // namespace

void set_fill(Setting& setting, const BlockSpec& spec, const block::Fill& fill, Paper width, Galley& galley) {
  const auto across = static_cast<std::size_t>(std::max(1, spec.across));
  const Paper wide = field_width(width, across);
  for (std::size_t from = 0; from < fill.labels.size(); from += across) {
    const std::size_t end = std::min(from + across, fill.labels.size());
    std::vector<Lines> labels;
    Strip strip;
    strip.height = line_height(spec, 9 * paper_mm);
    for (std::size_t i = from; i < end; ++i) {
      labels.push_back(fit_width(setting, spec.head, fill.labels[i], wide * 0.6));
      strip.height = std::max(strip.height, labels.back().height());
    }
    const Paper rule_y = strip.height - 1 * paper_mm;
    for (std::size_t i = from; i < end; ++i) {
      const Lines& label = labels[i - from];
      const Paper x = (wide + field_gap) * static_cast<double>(i - from);
      put_lines(setting, strip.ink, label, spec.head, {x, strip.height - label.height()}, wide * 0.6);
      const double ems = natural_ems(setting.faces, setting.face(spec.head.face), fill.labels[i]);
      const Paper after = std::min(label.size * ems, wide * 0.6) + (ems > 0 ? 2 * paper_mm : Paper{});
      strip.ink.push_back(ink::Line{{x + after, rule_y}, {x + wide, rule_y}, form_rule, {}});
    }
    galley.strips.push_back(std::move(strip));
  }
}

void set_signature(Setting& setting, const BlockSpec& spec, const block::Signature& signature, Paper width,
                   Galley& galley) {
  const std::size_t first = galley.strips.size();
  if (!signature.statement.empty()) set_paragraph(setting, spec, signature.statement, width, galley);
  const std::size_t count = signature.fields.size();
  const std::size_t across = spec.across > 0 ? static_cast<std::size_t>(spec.across) : std::max<std::size_t>(1, count);
  const Paper wide = field_width(width, across);
  for (std::size_t from = 0; from < count; from += across) {
    Strip strip;
    const Paper rule_y = line_height(spec, 11 * paper_mm);
    for (std::size_t i = from; i < std::min(from + across, count); ++i) {
      const Paper x = (wide + field_gap) * static_cast<double>(i - from);
      const Lines label = fit_width(setting, spec.head, signature.fields[i], wide);
      strip.ink.push_back(ink::Line{{x, rule_y}, {x + wide, rule_y}, form_rule, {}});
      put_lines(setting, strip.ink, label, spec.head, {x, rule_y}, wide);
      strip.height = std::max(strip.height, rule_y + label.height());
    }
    galley.strips.push_back(std::move(strip));
  }
  for (std::size_t i = first; i + 1 < galley.strips.size(); ++i) galley.strips[i].keep_next = true;
}

}  // namespace dunnage
