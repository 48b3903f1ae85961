// SPDX-License-Identifier: MIT
// A small house for the tests of documents, and documents as text: one line a block.
#pragma once

#include <catch2/catch.hpp>
#include <string>
#include <vector>

#include "document/context.h"
#include "read/words_file.h"

namespace dunnage {

inline const Words& english() {
  static Sources sources;
  static const Words words = [] {
    Diagnostics diagnostics;
    auto read = load_words(std::string(PROJECT_DIR) + "/layouts/words/en.toml", sources, diagnostics);
    REQUIRE(read);
    return *read;
  }();
  return words;
}

inline Text typed(std::string text) { return {std::move(text), {}}; }
template <class T>
Maybe<T> given(T value) {
  return Sourced<T>{std::move(value), {}};
}

inline Item small_item(std::string code, std::string name) {
  Item item;
  item.code = typed(std::move(code));
  item.name = typed(std::move(name));
  return item;
}

inline Case small_case(std::string code, std::string name, int count, std::string home) {
  Case box;
  box.code = typed(std::move(code));
  box.name = typed(std::move(name));
  box.count = count;
  box.home = std::move(home);
  return box;
}

/// A trunk that is weighed, three bags of which one stays, a box that no one weighed.
inline Kit small_kit() {
  Kit kit;
  kit.house.name = typed("4 Winds Sound");
  kit.house.phone = typed("555-0100");
  kit.items = {small_item("MIC", "Vocal mic"), small_item("TAPE", "Cloth tape")};
  kit.items[1].used_up = true;
  kit.items[1].each = given(50 * unit::metre);
  Case trunk = small_case("FOH", "Front trunk", 1, "Rack 2");
  trunk.looks = "black, red lid";
  trunk.wheels = true;
  trunk.weighed = given(81.4 * unit::pound);
  trunk.revision = "2027-03";
  trunk.marks = {Mark::fragile};
  trunk.holds = {{typed("MIC"), 6, {}, {}, {}}, {typed("TAPE"), 3, given(110 * unit::metre), {}, {}}};
  Case bag = small_case("BAG", "Ballast bag", 3, "Rack 10");
  bag.looks = "gray bag";
  bag.empty = given(34.2 * unit::pound);
  Case cash = small_case("CASH", "Cash box", 1, "");
  cash.holds = {{typed("MIC"), 1, {}, {}, {}}};
  cash.contents_on_label = false;
  kit.cases = {trunk, bag, cash};
  return kit;
}

/// A plan of that house: everything goes but BAG-2.
inline Plan small_plan(const Catalogue& catalogue) {
  Plan plan;
  for (int unit = 0; unit < static_cast<int>(catalogue.units.size()); ++unit) {
    const UnitMass mass = catalogue.mass_of(unit);
    PlanRow row;
    row.unit = unit;
    row.goes = catalogue.units[static_cast<std::size_t>(unit)].code != "BAG-2";
    row.mass = mass.mass;
    row.mass_known = mass.known;
    row.estimated = mass.estimated;
    row.home = catalogue.units[static_cast<std::size_t>(unit)].home;
    row.place = "foh";
    plan.rows.push_back(row);
  }
  return plan;
}

inline std::vector<Handling> small_handling() {
  Handling trunk, bag, cash;
  trunk.move = Handling::Move::roll;
  trunk.ramp_people = 2;
  trunk.people = 3;
  trunk.known = bag.known = true;
  bag.people = 1;
  return {trunk, bag, bag, bag, cash};
}

inline Show small_show() {
  Show show;
  show.title = typed("Meadow");
  show.date = Sourced<Date>{{2027, 6, 19}, {}};
  show.places = {{typed("foh"), "Front of house, by the tree", {}, {}}};
  return show;
}

/// All that a document is written from, kept together.
struct SmallHouse {
  SmallHouse() : catalogue(make_catalogue(small_kit())), show(small_show()), plan(small_plan(catalogue)) {
    findings.handling = small_handling();
  }
  Context context() const {
    Context c{catalogue, show, plan, findings, english(), UnitSystem::us, "mph", "7", {}, {}, {}};
    return c;
  }
  Catalogue catalogue;
  Show show;
  Plan plan;
  Findings findings;
};

inline std::string as_text(const CellView& cell) {
  if (cell.kind == Cell::Kind::tick) return "[ ]" + std::string(cell.text);
  if (cell.kind == Cell::Kind::blank) return "___" + std::string(cell.text);
  std::string text;
  for (const char c : cell.text) text += c == '\n' ? '/' : c;
  return text;
}

inline std::string as_text(const std::vector<std::string>& lines) {
  std::string out;
  for (const std::string& line : lines) out += "\n  " + line;
  return out;
}

inline std::string as_text(const block::Table& table) {
  std::string out;
  const auto row_text = [](const Row& row) {
    std::string line;
    const std::vector<CellView> cells = row.cells();
    for (const CellView& cell : cells) line += (&cell == &cells.front() ? "" : " | ") + as_text(cell);
    return line;
  };
  for (const Group& group : table.groups) {
    out += "\n " + (group.title.empty() ? std::string("-") : group.title);
    for (const Row& row : group.rows) out += "\n  " + row_text(row);
  }
  if (!table.total.empty()) out += "\n =" + row_text(table.total);
  return out;
}

inline std::string joined_lines(const std::vector<std::string>& lines) {
  std::string out;
  for (const std::string& line : lines) out += (out.empty() ? "" : "; ") + line;
  return out;
}
inline std::string as_text(const picture::Chart& chart) {
  std::string out = " " + chart.up.title + " over " + chart.across.title;
  for (const picture::Curve& curve : chart.curves) out += "\n  curve " + curve.name;
  for (const picture::Upright& upright : chart.uprights) out += "\n  upright " + upright.name;
  for (const picture::Dot& dot : chart.dots) out += "\n  dot " + dot.name;
  return out + "\n  floor " + chart.floor_name;
}
inline std::string as_text(const picture::PlanView& plan) {
  std::string out = " " + plan.caption;
  for (const picture::Stand& stand : plan.stands) out += "\n  " + stand.name + ": " + joined_lines(stand.lines);
  for (const std::string& wall : plan.walls) out += "\n  " + wall;
  return out;
}
inline std::string as_text(const picture::OneLine& diagram) {
  std::string out = " " + joined_lines(diagram.supply);
  for (const picture::Branch& b : diagram.branches)
    out += "\n  " + joined_lines(b.breaker) + " | " + joined_lines(b.cable) + " | " + joined_lines(b.loads) + " | " +
           b.says;
  return out;
}
inline std::string as_text(const picture::FaderStrips& strips) {
  std::string out;
  for (const picture::FaderCell& c : strips.cells) out += "\n  " + c.number + " " + c.name;
  return out;
}
inline std::string as_text(const picture::Levels& levels) {
  std::string out;
  for (const picture::Level& level : levels.levels)
    out += "\n  " + level.word + " " + level.figure + " | " + level.note + " | " + joined_lines(level.actions);
  return out;
}
inline std::string as_text(const picture::BoxViews& views) {
  std::string out;
  for (const picture::BoxView& view : views.views) {
    out += "\n " + view.left + " | " + view.caption + " | " + view.right;
    for (const picture::ViewBox& box : view.boxes) out += "\n  " + (box.fixed ? "fixed" : joined_lines(box.lines));
    for (const picture::ViewBar& bar : view.bars) out += "\n  bar " + bar.name;
  }
  return out;
}

/// One block as text: its id, then what it says.
inline std::string as_text(const Block& b) {
  struct Say {
    std::string operator()(const block::Heading& h) const { return " " + h.text; }
    std::string operator()(const block::Paragraph& p) const { return " " + p.text; }
    std::string operator()(const block::Listing& l) const { return as_text(l.lines); }
    std::string operator()(const block::Facts& f) const {
      std::string out;
      for (const block::Fact& fact : f.facts) out += "\n  " + fact.label + ": " + fact.value;
      return out;
    }
    std::string operator()(const block::Table& t) const { return as_text(t); }
    std::string operator()(const block::Fill& f) const { return as_text(f.labels); }
    std::string operator()(const block::Notice& n) const { return " " + n.word + as_text(n.lines); }
    std::string operator()(const block::Signature& s) const { return " " + s.statement + as_text(s.fields); }
    std::string operator()(const block::Qr& q) const { return "\n" + q.text; }
    std::string operator()(const block::Marks& m) const { return as_text(m.words); }
    std::string operator()(const block::Handle& h) const {
      return " " + h.move_word + ", " + h.lift_word + ", " + std::to_string(h.people);
    }
    std::string operator()(const block::Picture& p) const {
      return std::visit([](const auto& picture) { return as_text(picture); }, p.content);
    }
  };
  return b.id + ":" + std::visit(Say{}, b.content);
}

/// The block of that id as text; empty where the section has none.
inline std::string block_text(const Section& section, const std::string& id) {
  for (const Block& b : section.blocks)
    if (b.id == id) return as_text(b);
  return {};
}

inline Document made(Made result) {
  REQUIRE(std::holds_alternative<Document>(result));
  return std::get<Document>(std::move(result));
}
inline Skipped skipped(Made result) {
  REQUIRE(std::holds_alternative<Skipped>(result));
  return std::get<Skipped>(std::move(result));
}

}  // namespace dunnage
