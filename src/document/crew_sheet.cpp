// SPDX-License-Identifier: MIT
#include "document/crew_sheet.h"

#include <algorithm>
#include <array>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"

namespace dunnage {
namespace {

/// At most four lines that are read when someone is hurt.
std::vector<std::string> danger_lines(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  std::vector<std::string> lines;
  lines.push_back(help_words(context));
  if (!site.hospital.empty()) lines.push_back(words.say("crew.hospital", {{"hospital", site.hospital}}));
  if (!site.radio_channel.empty()) lines.push_back(words.say("crew.radio", {{"channel", site.radio_channel}}));
  if (context.show.stop_person) {
    const std::string& role = context.show.stop_person->value;
    lines.push_back(words.say("crew.stop", {{"who", joined({role, contact_words(context.show, role)}, ", ")}}));
  } else {
    lines.push_back(words("crew.stop-unnamed"));
  }
  return lines;
}

block::Table times_table(const Context& context) {
  block::Table table = make_table(context.words, {{"at", ""}, {"what", ""}});
  Group group;
  for (const ClockTime& time : context.show.times)
    group.rows.push_back({{text_cell(time.at), text_cell(time.what.value)}});
  table.groups.push_back(std::move(group));
  return table;
}

block::Table contacts_table(const Context& context) {
  block::Table table = make_table(context.words, {{"role", ""}, {"name", ""}, {"phone", ""}});
  Group group;
  for (const Contact& contact : context.show.site.contacts)
    group.rows.push_back(
        {{text_cell(contact.role.value), text_cell(contact.name.value), text_cell(contact.phone.value)}});
  const House& house = context.catalogue.kit.house;
  group.rows.push_back(
      {{text_cell(context.words("crew.kit-owner")), text_cell(house.name.value), text_cell(house.phone.value)}});
  table.groups.push_back(std::move(group));
  return table;
}

/// "foh = Front of house, by the old pear tree": places are called by either.
std::string all_places(const Context& context) {
  std::vector<std::string> places;
  for (const ShowPlace& place : context.show.places) places.push_back(joined({place.code.value, place.name}, " = "));
  return joined(places, "; ");
}

block::Facts site_facts(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  block::Facts facts;
  add_fact(facts, words("fact.address"), site.address);
  add_fact(facts, words("fact.gate"), site.gate);
  add_fact(facts, words("fact.curfew"), site.curfew);
  std::vector<std::string> permits;
  for (const Text& permit : site.permits) permits.push_back(permit.value);
  add_fact(facts, words("crew.permits"), joined(permits, "; "));
  add_fact(facts, words("crew.places"), all_places(context));
  return facts;
}
/// What the checks say of water, heat, cold and noise, and what each asks people to do.
std::vector<std::string> water_lines(const Context& context) {
  static constexpr std::array rules = {RuleName::water, RuleName::heat, RuleName::cold, RuleName::noise};
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const Finding& finding : context.findings.list) {
    if (finding.outcome == Outcome::does_not_apply ||
        std::find(rules.begin(), rules.end(), finding.rule) == rules.end())
      continue;
    std::string word;
    if (finding.outcome == Outcome::over) word = words("notice.over") + "  ";
    if (finding.outcome == Outcome::not_checked) word = words("notice.unchecked") + "  ";
    lines.push_back(word + said(finding, words));
    if (const auto* weather = std::get_if<WeatherDetail>(&finding.detail); weather && !weather->measures.empty())
      lines.push_back(words.say(strung(weather->measures, " ")));
  }
  return lines;
}

}  // namespace

Made crew_sheet(const Context& context) {
  const Words& words = context.words;
  const Site& site = context.show.site;
  Document document = begin_document(context, "crew-sheet", "crew.title");
  if (context.show.times.empty() && site.contacts.empty() && site.address.empty() && site.emergency_address.empty())
    return Skipped{document.title, words("skip.no-site")};
  Section section;
  add_notice(section, "danger", words("crew.danger"), danger_lines(context));
  if (!context.show.times.empty()) {
    add(section, "times-head", block::Heading{words("crew.times")});
    add(section, "times", times_table(context));
  }
  add(section, "contacts-head", block::Heading{words("crew.contacts")});
  add(section, "contacts", contacts_table(context));
  add_facts(section, "site", site_facts(context));
  add_listing(section, "water", words("crew.water"), water_lines(context));
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
