// SPDX-License-Identifier: MIT
#include "document/place_tag.h"

#include "document/form.h"
#include "document/phrase.h"
#include "document/shelf_walk.h"

namespace dunnage {
namespace {

Section tag_section(const Context& context, const PlanRow& row) {
  const Words& words = context.words;
  const std::string& code = code_of(context.catalogue, row);
  const Case& box = context.catalogue.case_at(row.unit);
  Section section{code, {}};
  add(section, "place",
      block::Heading{row.place.empty() ? words("tag.no-place") : place_words(context.show, row.place)});
  if (!row.vehicle.empty())
    add(section, "vehicle",
        block::Paragraph{words.say("tag.vehicle", {{"vehicle", vehicle_words(context.catalogue, row.vehicle)}})});
  add(section, "code", block::Heading{code});
  add(section, "name", block::Paragraph{joined({name_in(box, words.language), of_words(context, row.unit)}, ", ")});
  std::string date = context.show.date ? date_words(words, context.show.date->value) : std::string();
  add(section, "show", block::Paragraph{joined({context.show.title.value, date}, ", ")});
  return section;
}

}  // namespace

Made place_tag(const Context& context) {
  Document document = begin_document(context, "place-tag", "tag.title");
  for (const PlanRow* row : by_place(context.show, rows_to_pull(context)))
    if (!row->place.empty() || !row->vehicle.empty()) document.sections.push_back(tag_section(context, *row));
  if (document.sections.empty()) return Skipped{document.title, context.words("skip.no-places")};
  return document;
}

}  // namespace dunnage
