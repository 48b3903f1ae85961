// SPDX-License-Identifier: MIT
#include "document/case_label.h"

#include <algorithm>
#include <cassert>

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

struct MarkWord {
  Mark mark;
  const char* key;
};
constexpr MarkWord mark_words[] = {
    {Mark::this_way_up, "mark.this-way-up"},
    {Mark::fragile, "mark.fragile"},
    {Mark::keep_dry, "mark.keep-dry"},
    {Mark::keep_cool, "mark.keep-cool"},
    {Mark::no_hand_truck, "mark.no-hand-truck"},
    {Mark::no_stack, "mark.no-stack"},
    {Mark::heavy, "mark.heavy"},
};

block::Marks marks_of(const Case& box, const Words& words) {
  block::Marks marks;
  for (const Mark mark : box.marks)
    for (const MarkWord& known : mark_words)
      if (known.mark == mark) {
        marks.marks.push_back(mark);
        marks.words.push_back(words(known.key));
      }
  return marks;
}

/// The mass as a label says it.
std::string label_mass(const Catalogue& catalogue, int unit, const Words& words, UnitSystem system) {
  const UnitMass mass = catalogue.mass_of(unit);
  return mass_words(words, mass.mass, mass.known, mass.estimated, system);
}

std::string revision_of(const Case& box, const std::string& revision) {
  return box.revision.empty() ? revision : box.revision;
}

block::Handle handle_of(const Handling& handling, const Words& words) {
  return {handling.move == Handling::Move::roll, move_words(words, handling), handling.people,
          lift_words(words, handling), goes_by_aid(handling) ? 0 : std::max(1, handling.ramp_people)};
}

/// How the mass is known, and as of which state of the kit: a label outlives what was in the case that day.
std::string mass_as_of(const UnitMass& mass, const std::string& revision, const Words& words) {
  const char* key = !mass.known ? "label.mass-unknown" : mass.estimated ? "label.mass-added" : "label.mass-weighed";
  return words.say(key, {{"revision", revision}});
}

/// Most that may stand on top, where the case says so.
std::string stack_words(const Case& box, const Words& words, UnitSystem system) {
  if (!box.stack) return {};
  return words.say("label.stack", {{"mass", print(box.stack->value, system, Rounding::down).text()}});
}

Section label_section(const Catalogue& catalogue, const Handling& handling, int unit, const Words& words,
                      UnitSystem system, const std::string& revision) {
  const Case& box = catalogue.case_at(unit);
  const std::string& code = catalogue.units[static_cast<std::size_t>(unit)].code;
  const House& house = catalogue.kit.house;
  Section section{code, {}};
  add(section, "code", block::Heading{code});
  add(section, "name", block::Heading{name_in(box, words.language)});
  add(section, "mass", block::Heading{label_mass(catalogue, unit, words, system)});
  add(section, "handle", handle_of(handling, words));
  block::Marks marks = marks_of(box, words);
  if (!marks.marks.empty()) add(section, "marks", std::move(marks));
  if (box.contents_on_label && !box.holds.empty())
    add(section, "contents", block::Listing{content_lines(catalogue, box, words)});
  // Whose it is and the phone are the last to be left out.
  const int whose = 1 + (catalogue.kit.house.phone.value.empty() ? 0 : 1);
  add(section, "qr",
      block::Qr{label_text(catalogue, handling, unit, words, system, revision), words("page.more"), whose});
  add(section, "owner", block::Paragraph{joined({house.name.value, house.phone.value}, "\n")});
  add(section, "revision",
      block::Paragraph{joined(
          {stack_words(box, words, system), mass_as_of(catalogue.mass_of(unit), revision_of(box, revision), words)},
          "; ")});
  return section;
}

}  // namespace

std::vector<std::string> content_lines(const Catalogue& catalogue, const Case& box, const Words& words) {
  std::vector<std::string> lines;
  for (const Content& content : box.holds) {
    const Item* item = catalogue.item(content.item.value);
    const std::string name = item ? name_in(*item, words.language) : content.item.value;
    lines.push_back(words.say("label.content", {{"n", std::to_string(content.count)}, {"name", name}}));
    assert(lines.back().front() >= '0' && lines.back().front() <= '9' && "a contents line begins with its count");
  }
  return lines;
}

std::string label_text(const Catalogue& catalogue, const Handling& handling, int unit, const Words& words,
                       UnitSystem system, const std::string& revision) {
  const Case& box = catalogue.case_at(unit);
  const House& house = catalogue.kit.house;
  std::vector<std::string> lines = {
      catalogue.units[static_cast<std::size_t>(unit)].code + "  " + name_in(box, words.language),
      words.say("label.mass-line",
                {{"mass", label_mass(catalogue, unit, words, system)}, {"revision", revision_of(box, revision)}}),
      words.say("label.lift-line", {{"move", move_words(words, handling)}, {"lift", lift_words(words, handling)}})};
  if (box.contents_on_label)
    for (std::string& line : content_lines(catalogue, box, words)) lines.push_back(std::move(line));
  lines.push_back(words.say("label.owner-line", {{"name", house.name.value}}));
  lines.push_back(words.say("label.phone-line", {{"phone", house.phone.value}}));
  return joined(lines, "\n");
}

namespace {

Document begin_labels(const House& house, const Words& words) {
  Document document;
  document.name = "case-label";
  document.title = words("label.title");
  document.show = house.name.value;
  document.page_words = words("page.of");
  document.continued = words("page.continued");
  document.more = words("page.more");
  document.language = words.language;
  return document;
}

}  // namespace

Document label_test(const House& house, const Words& words) {
  Document document = begin_labels(house, words);
  document.title = words("label.test-title");
  document.sections.push_back({{}, {{"test", block::Paragraph{words("label.test")}}}});
  return document;
}

Document case_labels(const Catalogue& catalogue, const std::vector<Handling>& handling, const std::vector<int>& units,
                     const Words& words, UnitSystem system, const std::string& revision) {
  Document document = begin_labels(catalogue.kit.house, words);
  document.revision = words.say("page.revision", {{"revision", revision}});
  for (const int unit : units)
    document.sections.push_back(label_section(catalogue, handling_of(handling, unit), unit, words, system, revision));
  return document;
}

Made case_label(const Context& context) {
  std::vector<int> units;
  for (const PlanRow* row : rows_to_pull(context)) units.push_back(row->unit);
  if (units.empty()) return Skipped{context.words("label.title"), context.words("skip.nothing-goes")};
  return case_labels(context.catalogue, context.findings.handling, units, context.words, context.units,
                     context.revision);
}

}  // namespace dunnage
