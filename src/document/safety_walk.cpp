// SPDX-License-Identifier: MIT
#include "document/safety_walk.h"

#include <algorithm>

#include "document/form.h"
#include "document/phrase.h"
#include "document/said.h"
#include "document/use_line.h"
#include "document/walk_stops.h"

namespace dunnage {
namespace {

constexpr std::size_t lines_an_outcome = 4;  // at most, so that the walk stays on two pages
constexpr int remark_lines = 2;

block::Facts walk_facts(const Context& context) {
  block::Facts facts;
  const Maybe<std::string>& ground = context.show.site.ground;
  const std::string on = ground ? context.words.say("use.ground", {{"ground", ground->value}}) : std::string();
  add_fact(facts, context.words("fact.forecast"), joined({forecast_words(context), on}, "; "));
  return facts;
}

/// At most three things that stop the job.
std::vector<std::string> stop_lines(const Context& context) {
  const Words& words = context.words;
  const std::string down = down_words(context);
  std::vector<std::string> lines;
  if (!down.empty()) lines.push_back(words.say("walk.stop-gust", {{"uses", down}}));
  if (!context.show.setting || context.show.setting->value == "outdoor") lines.push_back(words("walk.stop-thunder"));
  lines.push_back(words("walk.stop-mains"));
  return lines;
}

/// What the findings on the walk leave out, each sentence once.
std::string cautions(const Context& context) {
  std::vector<std::string> told;
  for (const Finding* finding : findings_on_walk(context))
    for (std::size_t begin = 0; begin < finding->caution.size();) {
      const std::size_t end = std::min(finding->caution.find(". ", begin), finding->caution.size() - 1) + 1;
      std::string sentence = finding->caution.substr(begin, end - begin);
      if (std::find(told.begin(), told.end(), sentence) == told.end()) told.push_back(std::move(sentence));
      begin = end + 1;
    }
  return joined(told, " ");
}

/// What is over a limit, in full; what was not checked by name only, since each has a line of the walk.
std::vector<std::string> first_to_decide(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const std::string& line : first_lines(said_lines(context.findings, Outcome::over), lines_an_outcome, words))
    lines.push_back(words("notice.over") + "  " + line);
  std::vector<std::string> subjects;
  for (const Finding& finding : context.findings.list) {
    const std::string& name = finding.subject.empty() ? finding.says : finding.subject;
    if (finding.outcome == Outcome::not_checked && std::find(subjects.begin(), subjects.end(), name) == subjects.end())
      subjects.push_back(name);
  }
  if (!subjects.empty()) lines.push_back(words("notice.unchecked") + "  " + joined(subjects, "; "));
  return lines;
}

std::string sources(const Context& context) {
  std::vector<std::string> names;
  for (const Finding* finding : findings_on_walk(context)) names.push_back(finding->source);
  return joined(parts_once(names), "; ");
}

}  // namespace

Made safety_walk(const Context& context) {
  const Words& words = context.words;
  Document document = begin_document(context, "safety-walk", "walk.title");
  Section section;
  add_facts(section, "facts", walk_facts(context));
  add_notice(section, "stop", words("walk.stop-word"), stop_lines(context));
  add_notice(section, "decide-first", words("walk.decide-first"), first_to_decide(context));
  add(section, "stops", walk_table(context));
  block::Table lifts = lift_table(context);
  if (!lifts.groups.empty()) {
    add(section, "lifts-head", block::Heading{words(has_column(lifts, "index") ? "walk.lifts-index" : "walk.lifts")});
    add(section, "lifts", std::move(lifts));
  }
  const std::string left_out = cautions(context);
  if (!left_out.empty()) add(section, "cautions", block::Paragraph{left_out});
  add(section, "decide", block::Paragraph{who_decides(context)});
  add(section, "remarks", block::Fill{std::vector<std::string>(remark_lines, words("walk.remark"))});
  add(section, "end", block::Signature{words("walk.complete"),
                                       {words("sign.name"), words("sign.signature"), words("sign.time")}});
  const std::string names = sources(context);
  if (!names.empty()) add(section, "sources", block::Paragraph{words.say("walk.sources", {{"sources", names}})});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
