// SPDX-License-Identifier: MIT
#include "document/said.h"

#include <algorithm>
#include <utility>

#include "document/phrase.h"

namespace dunnage {

std::string said(const Finding& finding) {
  if (finding.subject.empty() || finding.says.starts_with(finding.subject)) return finding.says;
  return finding.subject + ": " + finding.says;
}

std::vector<std::string> said_lines(const Findings& findings, Outcome outcome) {
  std::vector<std::pair<std::string, std::vector<std::string>>> by_sentence;
  for (const Finding& finding : findings.list) {
    if (finding.outcome != outcome) continue;
    const auto same = [&](const auto& line) { return line.first == finding.says; };
    auto line = std::find_if(by_sentence.begin(), by_sentence.end(), same);
    if (line == by_sentence.end()) line = by_sentence.insert(line, {finding.says, {}});
    if (!finding.subject.empty() && !finding.says.starts_with(finding.subject))
      line->second.push_back(finding.subject);
  }
  std::vector<std::string> lines;
  for (const auto& [sentence, subjects] : by_sentence)
    lines.push_back(joined({joined(subjects, ", "), sentence}, ": "));
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
    if (finding.rule == "lifting") list.push_back(&finding);
  const auto rank = [](const Finding& finding) {
    switch (finding.outcome) {
      case Outcome::over: return 0;
      case Outcome::does_not_apply: return 1;
      case Outcome::within: return 2;
      case Outcome::not_checked: break;
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

std::vector<std::string> parts_once(const std::vector<std::string>& texts) {
  std::vector<std::string> parts;
  for (const std::string& text : texts)
    for (std::size_t begin = 0; begin < text.size();) {
      const std::size_t end = std::min(text.find("; ", begin), text.size());
      const std::string part = text.substr(begin, end - begin);
      if (std::find(parts.begin(), parts.end(), part) == parts.end()) parts.push_back(part);
      begin = end + 2;
    }
  return parts;
}

std::string who_decides(const Context& context) {
  const std::string role = context.show.stop_person ? context.show.stop_person->value : std::string();
  if (role.empty()) return context.words("walk.decide-unnamed");
  return context.words.say("walk.decide",
                           {{"who", joined({role, contact_words(context.show, role)}, ", ")}});
}

}  // namespace dunnage
