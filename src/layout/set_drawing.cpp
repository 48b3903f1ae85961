// SPDX-License-Identifier: MIT
// Dispatch of drawn pictures.
#include "layout/set_drawing.h"

#include <utility>

#include "base/unit.h"
#include "layout/set_box_views.h"
#include "layout/set_chart.h"
#include "layout/set_fader_strip.h"
#include "layout/set_levels.h"
#include "layout/set_one_line.h"
#include "layout/set_plan_view.h"

namespace dunnage {
namespace {

using unit::paper_mm;

constexpr Paper usual_height = 70 * paper_mm;

/// Pictures that fill any box; false for those that flow.
bool put_in_box(Setting& setting, const BlockSpec& spec, const picture::Any& any, const Box& box,
                std::vector<Ink>& ink) {
  if (const auto* chart = std::get_if<picture::Chart>(&any)) {
    put_chart(setting, spec, *chart, box, ink);
    return true;
  }
  if (const auto* plan = std::get_if<picture::PlanView>(&any)) {
    put_plan_view(setting, spec, *plan, box, ink);
    return true;
  }
  return false;
}

}  // namespace

void set_drawing(Setting& setting, const BlockSpec& spec, const block::Picture& picture, Paper width, Galley& galley) {
  Strip strip;
  strip.height = spec.height > Paper{} ? spec.height : usual_height;
  if (put_in_box(setting, spec, picture.content, {{}, {}, width, strip.height}, strip.ink))
    galley.strips.push_back(std::move(strip));
  else if (const auto* line = std::get_if<picture::OneLine>(&picture.content))
    set_one_line(setting, spec, *line, width, galley);
  else if (const auto* strips = std::get_if<picture::FaderStrips>(&picture.content))
    set_fader_strips(setting, spec, *strips, width, galley);
  else if (const auto* levels = std::get_if<picture::Levels>(&picture.content))
    set_levels(setting, spec, *levels, width, galley);
  else if (const auto* views = std::get_if<picture::BoxViews>(&picture.content))
    set_box_views(setting, spec, *views, width, galley);
}

void put_drawing(Setting& setting, const BlockSpec& spec, const block::Picture& picture, const Box& box,
                 std::vector<Ink>& ink) {
  if (put_in_box(setting, spec, picture.content, box, ink)) return;
  Galley galley;
  set_drawing(setting, spec, picture, box.w, galley);
  Strip whole = framed(std::move(galley), box.w, {}, {});
  if (whole.height > box.h + 0.01 * paper_mm)
    setting.problem(first_words(whole.ink),
                    "needs " + plain(whole.height / paper_mm, 1) + " mm and has " + plain(box.h / paper_mm, 1) + " mm");
  add_moved(ink, std::move(whole.ink), box.x, box.y);
}

}  // namespace dunnage
