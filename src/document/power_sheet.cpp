// SPDX-License-Identifier: MIT
#include "document/power_sheet.h"

#include <algorithm>

#include "document/circuit_line.h"
#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"

namespace dunnage {
namespace {

constexpr std::size_t lines_a_notice = 6;

/// A supply with what the checks found of it and of its circuits.
struct Source {
  const Supply* supply;
  const Finding* finding = nullptr;
  const SupplyDetail* detail = nullptr;
  std::vector<const Finding*> all;  ///< its own, then its circuits'
};

Source source_of(const Context& context, const Supply& supply) {
  const std::vector<Supply>& all = context.show.supplies;  // and perhaps it is none of them
  const Subject subject = all.empty() ? Subject{} : subject_in(all, supply, Subject::Kind::supply);
  Source source{&supply, nullptr, nullptr, {}};
  for (const Finding& finding : context.findings.list)
    if (const auto* detail = std::get_if<SupplyDetail>(&finding.detail); detail && finding.subject == subject) {
      source.finding = &finding;
      source.detail = detail;
      source.all.push_back(&finding);
    }
  for (const Finding& finding : context.findings.list)
    if (const auto* circuit = std::get_if<CircuitDetail>(&finding.detail)) {
      const auto same = [&](const CircuitRow& row) { return row.circuit == circuit->row.circuit; };
      if (source.detail && std::any_of(source.detail->circuits.begin(), source.detail->circuits.end(), same))
        source.all.push_back(&finding);
    }
  return source;
}

std::vector<std::string> lines_of(const Context& context, const Source& source, Outcome outcome) {
  std::vector<std::string> lines;
  for (const Finding* finding : source.all)
    if (finding->outcome == outcome) lines.push_back(said(*finding, context.words));
  if (outcome == Outcome::not_checked && !source.detail) lines.push_back(context.words("power.no-check"));
  return first_lines(std::move(lines), lines_a_notice, context.words);
}

block::Facts supply_facts(const Context& context, const Source& source) {
  const Words& words = context.words;
  block::Facts facts;
  if (!source.detail) return facts;
  const SupplyDetail& detail = *source.detail;
  add_fact(facts, words("power.all"),
           words.say("power.all-of", {{"load", watts_words(detail.load, Rounding::up)},
                                      {"apparent", plain(steps_up(detail.apparent / unit::watt), 0) + " VA"}}));
  if (detail.starting > Power{}) add_fact(facts, words("power.starting"), watts_words(detail.starting, Rounding::up));
  add_fact(facts, words("power.rated"),
           detail.rated ? watts_words(*detail.rated, Rounding::down) : words("outcome.not-checked"));
  if (detail.kind == "generator")
    add_fact(facts, words("power.here"),
             detail.left ? watts_words(*detail.left, Rounding::down) : words("outcome.not-checked"));
  add_fact(facts, words("power.outcome"), outcome_words(words, source.finding->outcome));
  return facts;
}

block::Table test_table(const Context& context, const SupplyDetail* detail) {
  block::Table table =
      make_table(context.words, {{"test", "power.tests"}, {"value", "power.value"}, {"done", "power.done"}});
  std::vector<std::string> tests;
  if (detail)
    for (const Sentence& test : detail->tests) tests.push_back(context.words.say(test));
  if (tests.empty()) tests.push_back(context.words("power.test-each"));
  tests.push_back(context.words("power.test-dry"));
  Group group;
  for (const std::string& test : tests) group.rows.push_back({{text_cell(test), blank_cell(), tick_cell()}});
  table.groups.push_back(std::move(group));
  return table;
}

/// Why there is no sheet, as the check of circuits came out.
const char* skip_key(const Context& context) {
  for (const Finding& finding : context.findings.list)
    if (finding.rule == RuleName::circuit && finding.outcome == Outcome::does_not_apply) return "skip.power-elsewhere";
  return "skip.no-power";
}

Section section_of(const Context& context, const Source& source) {
  const Words& words = context.words;
  Section section{source.supply->name.value, {}};
  add_notice(section, "over", words("notice.over"), lines_of(context, source, Outcome::over));
  add_notice(section, "unchecked", words("notice.unchecked"), lines_of(context, source, Outcome::not_checked));
  add(section, "diagram", block::Picture{one_line(context, *source.supply, source.detail)});
  add_facts(section, "facts", supply_facts(context, source));
  if (source.detail) {
    add(section, "circuits", circuit_table(context, source.detail->circuits));
    block::Table legs = leg_power_table(context, *source.detail);
    if (!legs.groups.empty()) add(section, "legs", std::move(legs));
  }
  add(section, "tests", test_table(context, source.detail));
  const std::string cautions = caution_words(source.all, words);
  if (!cautions.empty()) add(section, "cautions", block::Paragraph{cautions});
  add(section, "end",
      block::Signature{words("power.complete"), {words("power.by"), words("sign.signature"), words("sign.time")}});
  const std::string sources = list_words(source.all, &Finding::sources, words),
                    assumed = list_words(source.all, &Finding::assumptions, words);
  if (!sources.empty())
    add(section, "sources", block::Paragraph{words.say("power.sources", {{"sources", sources}, {"assumed", assumed}})});
  return section;
}

}  // namespace

Made power_sheet(const Context& context) {
  Document document = begin_document(context, "power-sheet", "power.title");
  if (context.show.supplies.empty() && context.show.circuits.empty())
    return Skipped{document.title, context.words(skip_key(context))};
  Supply unnamed;  // circuits may be typed before anybody knows what feeds them
  unnamed.name.value = context.words("power.no-supply");
  if (context.show.supplies.empty()) document.sections.push_back(section_of(context, source_of(context, unnamed)));
  for (const Supply& supply : context.show.supplies)
    document.sections.push_back(section_of(context, source_of(context, supply)));
  return document;
}

}  // namespace dunnage
