// SPDX-License-Identifier: MIT
#include "document/load_pictures.h"

#include <algorithm>
#include <cmath>

#include "document/phrase.h"

namespace dunnage {
namespace {

using picture::BoxView;
using picture::ViewBox;

enum class From { left, above, door };

/// How far a box is from whoever looks: the nearest covers the others.
double nearness(From from, const Cuboid& box) {
  switch (from) {
    case From::left:
      return -box.y.si();
    case From::above:
      return box.z.si();
    case From::door:
      return box.x.si() + box.length.si();
  }
  return 0;
}

/// Seen from the left the bulkhead is at the left of the paper; from above, the left wall is at its foot.
ViewBox seen(From from, const Cuboid& box) {
  switch (from) {
    case From::left:
      return {box.x, box.z, box.length, box.height, {}, false};
    case From::above:
      return {box.x, box.y, box.length, box.width, {}, false};
    case From::door:
      return {box.y, box.z, box.width, box.height, {}, false};
  }
  return {};
}

/// Pieces up to the number `before` stood there already, and have no name.
BoxView view_of(const Context& context, const BuiltLoad& built, From from, const std::vector<const BuiltPiece*>& pieces,
                const std::vector<Cuboid>& blocks, int before = 0) {
  const Size& cargo = built.vehicle->cargo->value;
  const ViewBox room = seen(from, {{}, {}, {}, cargo.length, cargo.width, cargo.height});
  BoxView view{room.width, room.height, {}, {}, {}, {}, {}};
  std::vector<std::pair<double, ViewBox>> all;
  for (const Cuboid& block : blocks) {
    all.emplace_back(nearness(from, block), seen(from, block));
    all.back().second.fixed = true;
  }
  for (const BuiltPiece* one : pieces) {
    ViewBox box = seen(from, one->piece->box);
    if (one->number > before)
      box.lines = {std::to_string(one->number),
                   context.catalogue.units[static_cast<std::size_t>(one->piece->unit)].code};
    if (!one->on.empty() && from == From::above && one->number > before) {
      std::vector<std::string> on;
      for (const int n : one->on) on.push_back(std::to_string(n));
      box.lines.push_back(context.words.say("load.on", {{"numbers", joined(on, ", ")}}));
    }
    all.emplace_back(nearness(from, one->piece->box), std::move(box));
  }
  std::stable_sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  for (auto& [far, box] : all) view.boxes.push_back(std::move(box));
  return view;
}

std::vector<Cuboid> blocks_of(const Vehicle& vehicle, Length from, Length to) {
  std::vector<Cuboid> out;
  for (const CargoBlock& b : vehicle.blocks)
    if (b.x < to && b.x + b.length > from) out.push_back({b.x, b.y, b.z, b.length, b.width, b.height});
  return out;
}

double in_unit(Length length, UnitSystem units) { return units == UnitSystem::us ? length / unit::foot : length.si(); }
double in_unit(Mass mass, UnitSystem units) { return units == UnitSystem::us ? mass / unit::pound : mass.si(); }

void add_dots(const Context& context, const LoadingDetail& detail, picture::Chart& chart, double& most) {
  int number = 0;  // as in the table of weights
  for (const LoadStage& stage : detail.stages) {
    ++number;
    if (!stage.centre) continue;
    const double cargo = in_unit(stage.cargo, context.units);
    chart.dots.push_back({in_unit(*stage.centre, context.units), cargo, std::to_string(number)});
    most = std::max(most, cargo);
  }
}

}  // namespace

picture::BoxViews load_views(const Context& context, const BuiltLoad& built) {
  const Words& words = context.words;
  std::vector<const BuiltPiece*> all;
  for (const BuiltPiece& one : built.pieces) all.push_back(&one);
  const std::vector<Cuboid> blocks = blocks_of(*built.vehicle, {}, built.vehicle->cargo->value.length);
  BoxView side = view_of(context, built, From::left, all, blocks),
          plan = view_of(context, built, From::above, all, blocks);
  if (built.detail)
    for (const LoadBar& bar : built.detail->bars) {
      if (!bar.stop.empty()) continue;  // at departure
      side.bars.push_back({bar.at, words("load.bar")});
      plan.bars.push_back({bar.at, {}});
    }
  side.left = plan.left = words("load.bulkhead");
  side.right = plan.right = words("load.rear");
  side.caption = words("load.from-side");
  plan.caption = words("load.from-above");
  return {{std::move(side), std::move(plan)}};
}

picture::BoxViews row_views(const Context& context, const BuiltLoad& built) {
  picture::BoxViews views;
  for (const BuiltPart& part : parts_of(context, built)) {
    std::vector<const BuiltPiece*> pieces;
    Length from = built.vehicle->cargo->value.length, to;
    for (std::size_t i = part.first; i < part.last; ++i) {
      const Cuboid& box = built.pieces[i].piece->box;
      from = std::min(from, box.x);
      to = std::max(to, box.x + box.length);
    }
    for (std::size_t i = 0; i < part.last; ++i) {
      const Cuboid& box = built.pieces[i].piece->box;
      if (i >= part.first || box.x + box.length > from)
        pieces.push_back(&built.pieces[i]);  // farther ones are out of sight
    }
    BoxView view =
        view_of(context, built, From::door, pieces, blocks_of(*built.vehicle, from, to), static_cast<int>(part.first));
    view.left = context.words("load.left");
    view.right = context.words("load.right");
    view.caption = part.title;
    views.views.push_back(std::move(view));
  }
  return views;
}

std::optional<picture::Chart> load_chart(const Context& context, const BuiltLoad& built) {
  if (!built.detail || built.detail->allowed.empty()) return std::nullopt;
  const Words& words = context.words;
  picture::Chart chart;
  picture::Curve curve{words("load.curve"), picture::Pattern::solid, {}};
  double most = 0, end = in_unit(built.vehicle->cargo->value.length, context.units);
  for (const auto& [centre, mass] : built.detail->allowed) {
    curve.points.emplace_back(in_unit(centre, context.units), in_unit(mass, context.units));
    most = std::max(most, in_unit(mass, context.units));
  }
  add_dots(context, *built.detail, chart, most);
  const bool us = context.units == UnitSystem::us;
  const double across = round_step(end), up = round_step(most);
  chart.across = {words.say("load.centre-axis", {{"unit", us ? "ft" : "m"}}), end, across, across < 1 ? 1 : 0};
  chart.up = {words.say("load.cargo-axis", {{"unit", us ? "lb" : "kg"}}), std::ceil(most * 1.05 / up) * up, up, 0};
  chart.curves.push_back(std::move(curve));
  return chart;
}

}  // namespace dunnage
