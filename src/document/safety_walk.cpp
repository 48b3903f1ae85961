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
constexpr std::size_t most_names = 2;        // before a sentence; more are counted
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
  for (const Finding* finding : findings_on_walk(context)) {
    const std::string caution = context.words.say(finding->caution);
    for (std::size_t begin = 0; begin < caution.size();) {
      const std::size_t end = std::min(caution.find(". ", begin), caution.size() - 1) + 1;
      std::string sentence = caution.substr(begin, end - begin);
      if (std::find(told.begin(), told.end(), sentence) == told.end()) told.push_back(std::move(sentence));
      begin = end + 1;
    }
  }
  return joined(told, " ");
}

/// The sentence of what was not checked, once for all subjects alike, where the walk has no room for it: of
/// structures and lifts. The rest has a line of the walk that says it, and stands here by name.
std::vector<std::string> unchecked(const Context& context) {
  std::vector<std::pair<const Sentence*, std::vector<std::string>>> by_sentence;
  std::vector<std::string> lines, names;
  for (const Finding& finding : context.findings.list) {
    if (finding.outcome != Outcome::not_checked) continue;
    const std::string name = finding.called.empty() ? context.words.say(finding.says) : about(finding, context.words);
    if (has_line_of_its_own(finding)) {
      if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
      continue;
    }
    const auto same = [&](const auto& line) { return *line.first == finding.says; };
    auto line = std::find_if(by_sentence.begin(), by_sentence.end(), same);
    if (line == by_sentence.end()) line = by_sentence.insert(line, {&finding.says, {}});
    line->second.push_back(name);
  }
  for (const auto& [says, subjects] : by_sentence)
    lines.push_back(told_of(subjects.size() > most_names
                                ? context.words.say("walk.in-all", {{"n", std::to_string(subjects.size())}})
                                : joined(subjects, ", "),
                            context.words.say(*says), context.words));
  if (!names.empty()) lines.push_back(joined(names, "; "));
  return first_lines(std::move(lines), lines_an_outcome, context.words);
}

/// House limits that go beyond what is published, once for each number of people.
std::vector<std::string> house_limits(const Context& context) {
  std::vector<std::string> lines;
  std::vector<int> told;
  for (const Finding& finding : context.findings.list) {
    const auto* handling = std::get_if<Handling>(&finding.detail);
    if (!handling || !handling->above_screen || std::find(told.begin(), told.end(), handling->people) != told.end())
      continue;
    told.push_back(handling->people);
    const std::string limit = print(handling->limit, context.units, Rounding::down).text();
    lines.push_back(
        handling->screen
            ? context.words.say("walk.house-above",
                                {{"n", std::to_string(handling->people)},
                                 {"mass", limit},
                                 {"screen", print(*handling->screen, context.units, Rounding::down).text()}})
            : context.words.say("walk.house-alone", {{"n", std::to_string(handling->people)}, {"mass", limit}}));
  }
  return lines;
}

/// What is over a limit, then what was not checked.
std::vector<std::string> first_to_decide(const Context& context) {
  const Words& words = context.words;
  std::vector<std::string> lines;
  for (const std::string& line :
       first_lines(said_lines(context.findings, Outcome::over, words), lines_an_outcome, words))
    lines.push_back(words("notice.over") + "  " + line);
  for (const std::string& line : unchecked(context)) lines.push_back(words("notice.unchecked") + "  " + line);
  return lines;
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
  const std::string left_out = joined({joined(house_limits(context), " "), cautions(context)}, " ");
  if (!left_out.empty()) add(section, "cautions", block::Paragraph{left_out});
  add(section, "decide", block::Paragraph{who_decides(context)});
  add(section, "remarks", block::Fill{std::vector<std::string>(remark_lines, words("walk.remark"))});
  add(section, "end",
      block::Signature{words("walk.complete"), {words("sign.name"), words("sign.signature"), words("sign.time")}});
  const std::vector<const Finding*> told = findings_on_walk(context);
  const std::string names = list_words(told, &Finding::sources, words),
                    assumed = list_words(told, &Finding::assumptions, words);
  if (!names.empty())
    add(section, "sources",
        block::Paragraph{joined({words.say("walk.sources", {{"sources", names}}),
                                 assumed.empty() ? std::string() : words.say("walk.assumed", {{"assumed", assumed}})},
                                " ")});
  document.sections.push_back(std::move(section));
  return document;
}

}  // namespace dunnage
