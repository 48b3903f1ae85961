// SPDX-License-Identifier: MIT
#include "document/load_order.h"

#include <algorithm>
#include <cmath>

#include "document/form.h"
#include "document/phrase.h"

namespace dunnage {
namespace {

constexpr Length near_wall = 0.05 * unit::metre;  ///< nearer than that it stands at the wall
/// A row of more pieces is built in parts of fewer: about as many as are ticked between two pauses.
constexpr std::size_t most_whole = 10, most_at_once = 9;
constexpr Length meets = 0.002 * unit::metre;  ///< tops and bottoms that carry

bool bears(const Cuboid& below, const Cuboid& above) {
  const auto across = [](Length a, Length a_size, Length b, Length b_size) {
    return std::min(a + a_size, b + b_size) - std::max(a, b) > meets;
  };
  const Length apart = below.z + below.height - above.z;
  return apart < meets && -apart < meets && across(below.x, below.length, above.x, above.length) &&
         across(below.y, below.width, above.y, above.width);
}

std::string numbers(const std::vector<int>& all) {
  std::vector<std::string> parts;
  for (const int one : all) parts.push_back(std::to_string(one));
  return joined(parts, ", ");
}

std::string floor_words(const Context& context, const BuiltLoad& built, const Cuboid& box) {
  const Words& words = context.words;
  const Length wide = built.vehicle->cargo ? built.vehicle->cargo->value.width : Length{};
  if (box.y < near_wall) return words("load.at-left");
  if (wide - box.y - box.width < near_wall) return words("load.at-right");
  return words.say("load.from-left", {{"length", print_small(box.y, context.units, Rounding::nearest).text()}});
}

std::string way_words(const Words& words, const LoadedPiece& piece) {
  if (piece.stance == Stance::on_end) return words("load.on-end");
  if (piece.stance == Stance::on_side) return words("load.on-side");
  if (piece.stance == Stance::flat) return words("load.flat");
  const Length more = piece.box.length - piece.box.width;
  return -more > near_wall ? words("load.crossways") : std::string();  // else its long side lies along the vehicle
}

/// Is its place a stop of its vehicle? What is not comes off at the end.
bool stops_at(const Context& context, const PlanRow& row) {
  for (const Load& load : context.show.loads)
    if (load.vehicle.value == row.vehicle)
      return std::any_of(load.stops.begin(), load.stops.end(),
                         [&](const Text& stop) { return stop.value == row.place; });
  return false;
}

Row row_of(const Context& context, const PlanRow& row, const std::string& number, const std::string& stands) {
  const Words& words = context.words;
  const Handling handling = handling_of(context.findings.handling, row.unit);
  return {{tick_cell(), text_cell(number), text_cell(code_of(context.catalogue, row)),
           text_cell(name_in(context.catalogue.case_at(row.unit), words.language)), text_cell(stands),
           text_cell(stops_at(context, row) ? place_words(context.show, row.place) : std::string()),
           text_cell(mass_words(words, row, context.units)),
           text_cell(move_words(words, handling) + ", " + lift_words(words, handling))}};
}

}  // namespace

std::vector<const Finding*> findings_about(const Context& context, const std::string& vehicle) {
  std::vector<const Finding*> found;
  const Vehicle* owned = context.catalogue.vehicle(vehicle);
  if (!owned) return found;
  const Subject subject = subject_in(context.catalogue.kit.vehicles, *owned, Subject::Kind::vehicle);
  for (const Finding& finding : context.findings.list)
    if (finding.subject == subject) found.push_back(&finding);
  return found;
}

BuiltLoad built_load(const Context& context, const std::string& vehicle) {
  BuiltLoad built;
  built.vehicle = context.catalogue.vehicle(vehicle);
  if (!context.plan.loading || !built.vehicle) return built;
  for (const VehicleLoading& loading : context.plan.loading->vehicles)
    if (loading.vehicle == vehicle) built.loading = &loading;
  for (const Finding* finding : findings_about(context, vehicle))
    if (const auto* detail = std::get_if<LoadingDetail>(&finding->detail)) built.detail = detail;
  if (!built.loading || !built.vehicle->cargo) return built;
  int number = 0;
  for (const LoadedPiece& piece : built.loading->pieces) built.pieces.push_back({++number, &piece, {}});
  for (BuiltPiece& above : built.pieces)
    for (const BuiltPiece& below : built.pieces)
      if (&above != &below && bears(below.piece->box, above.piece->box)) above.on.push_back(below.number);
  return built;
}

std::vector<BuiltPart> parts_of(const Context& context, const BuiltLoad& built) {
  const Words& words = context.words;
  std::vector<BuiltPart> parts;
  // A strip that is loaded before more of a row belongs to it: whoever builds goes in once.
  const auto row = [&](std::size_t i) {
    for (std::size_t k = i; k < built.pieces.size(); ++k)
      if (built.pieces[k].piece->row > 0) return built.pieces[k].piece->row;
    return 0;
  };
  for (std::size_t from = 0; from < built.pieces.size();) {
    std::size_t to = from;
    while (to < built.pieces.size() && row(to) == row(from)) ++to;
    const std::string title =
        row(from) > 0 ? words.say("load.row", {{"n", std::to_string(row(from))}}) : words("load.strips");
    std::optional<Length> begins;
    for (std::size_t k = from; k < to; ++k)
      if (const LoadedPiece& piece = *built.pieces[k].piece; piece.row > 0)
        begins = std::min(begins.value_or(piece.box.x), piece.box.x);
    const std::size_t pieces = to - from, cuts = pieces <= most_whole ? 1 : (pieces + most_at_once - 1) / most_at_once;
    for (std::size_t k = 0; k < cuts; ++k) {
      BuiltPart part{title, from + pieces * k / cuts, from + pieces * (k + 1) / cuts, {}};
      if (k == 0 && begins && *begins > near_wall) part.begins = begins;
      if (cuts > 1)
        part.title = words.say(
            "load.part", {{"row", title}, {"from", std::to_string(part.first + 1)}, {"to", std::to_string(part.last)}});
      parts.push_back(std::move(part));
    }
    from = to;
  }
  return parts;
}

std::string stands_words(const Context& context, const BuiltLoad& built, const BuiltPiece& one) {
  const Words& words = context.words;
  return joined({one.on.empty() ? floor_words(context, built, one.piece->box)
                                : words.say("load.on", {{"numbers", numbers(one.on)}}),
                 way_words(words, *one.piece)},
                ", ");
}

std::vector<Group> built_groups(const Context& context, const BuiltLoad& built, const VehicleLoad& load) {
  std::vector<Group> groups;
  std::vector<int> planned;
  for (const BuiltPart& part : parts_of(context, built)) {
    groups.push_back({part.title, {}});
    if (part.begins)
      groups.back().title = context.words.say(
          "load.begins",
          {{"row", part.title}, {"length", print_small(*part.begins, context.units, Rounding::nearest).text()}});
    for (std::size_t i = part.first; i < part.last; ++i) {
      const BuiltPiece& one = built.pieces[i];
      const PlanRow& row = context.plan.rows[static_cast<std::size_t>(one.piece->unit)];
      planned.push_back(one.piece->unit);
      groups.back().rows.push_back(row_of(context, row, std::to_string(one.number), stands_words(context, built, one)));
    }
  }
  Group rest{context.words("load.unplanned"), {}};
  for (const PlanRow* row : load.rows)
    if (std::find(planned.begin(), planned.end(), row->unit) == planned.end())
      rest.rows.push_back(row_of(context, *row, {}, {}));
  if (!rest.rows.empty()) groups.push_back(std::move(rest));
  return groups;
}

std::string stage_words(const Context& context, const std::string& after) {
  if (after.empty()) return context.words("load.departure");
  return context.words.say("load.after", {{"stop", place_words(context.show, after)}});
}

}  // namespace dunnage
