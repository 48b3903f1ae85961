// SPDX-License-Identifier: MIT
#include "document/said.h"

#include <algorithm>
#include <utility>

#include "document/phrase.h"

namespace dunnage {

std::string about(const Finding& finding, const Words& words) { return words.say(finding.called); }

std::string told_of(const std::string& subject, const std::string& sentence, const Words& words) {
  return subject.empty() || sentence.empty() ? subject + sentence : words.say(said("{}: {}", subject, sentence));
}

std::string said(const Finding& finding, const Words& words) {
  const std::string subject = about(finding, words), sentence = words.say(finding.says);
  return told_of(sentence.starts_with(subject) ? std::string() : subject, sentence, words);
}

std::vector<std::string> said_lines(const Findings& findings, Outcome outcome, const Words& words) {
  std::vector<std::pair<const Sentence*, std::vector<std::string>>> by_sentence;
  for (const Finding& finding : findings.list) {
    if (finding.outcome != outcome) continue;
    const auto same = [&](const auto& line) { return *line.first == finding.says; };
    auto line = std::find_if(by_sentence.begin(), by_sentence.end(), same);
    if (line == by_sentence.end()) line = by_sentence.insert(line, {&finding.says, {}});
    const std::string subject = about(finding, words);
    if (!subject.empty() && !words.say(finding.says).starts_with(subject)) line->second.push_back(subject);
  }
  std::vector<std::string> lines;
  for (const auto& [sentence, subjects] : by_sentence)
    lines.push_back(told_of(joined(subjects, ", "), words.say(*sentence), words));
  return lines;
}

std::vector<std::string> first_lines(std::vector<std::string> lines, std::size_t most, const Words& words) {
  if (lines.size() <= most) return lines;
  const std::size_t rest = lines.size() - most;
  lines.resize(most);
  lines.push_back(words.say("walk.more-on-cover", {{"n", std::to_string(rest)}}));
  return lines;
}

std::vector<const Finding*> worst_lifts(const Findings& findings) {
  std::vector<const Finding*> list;
  for (const Finding& finding : findings.list)
    if (finding.rule == RuleName::lifting) list.push_back(&finding);
  const auto rank = [](const Finding& finding) {
    switch (finding.outcome) {
      case Outcome::over:
        return 0;
      case Outcome::does_not_apply:
        return 1;
      case Outcome::within:
        return 2;
      case Outcome::not_checked:
        break;
    }
    return 3;
  };
  const auto share = [](const Finding& finding) {
    const Mass* measured = std::get_if<Mass>(&finding.measured);
    const Mass* limit = std::get_if<Mass>(&finding.limit);
    return measured && limit && limit->si() > 0 ? *measured / *limit : 0.0;
  };
  std::stable_sort(list.begin(), list.end(), [&](const Finding* a, const Finding* b) {
    return rank(*a) != rank(*b) ? rank(*a) < rank(*b) : share(*a) > share(*b);
  });
  return list;
}

std::vector<Sentence> each_once(const std::vector<const Finding*>& findings, std::vector<Sentence> Finding::*list) {
  std::vector<Sentence> out;
  for (const Finding* finding : findings)
    for (const Sentence& one : finding->*list)
      if (std::find(out.begin(), out.end(), one) == out.end()) out.push_back(one);
  return out;
}

std::string list_words(const std::vector<const Finding*>& findings, std::vector<Sentence> Finding::*list,
                       const Words& words) {
  return words.say(strung(each_once(findings, list), "; "));
}

std::string caution_words(const std::vector<const Finding*>& findings, const Words& words) {
  std::vector<Sentence> cautions;
  for (const Finding* finding : findings)
    if (std::find(cautions.begin(), cautions.end(), finding->caution) == cautions.end())
      cautions.push_back(finding->caution);
  return words.say(strung(cautions, " "));
}

std::string who_decides(const Context& context) {
  const std::string role = context.show.stop_person ? context.show.stop_person->value : std::string();
  if (role.empty()) return context.words("walk.decide-unnamed");
  return context.words.say("walk.decide", {{"who", joined({role, contact_words(context.show, role)}, ", ")}});
}

}  // namespace dunnage
