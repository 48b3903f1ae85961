// SPDX-License-Identifier: MIT
// Puts one question to its formula.
#include "reckon/reckon.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "base/nearest.h"

namespace dunnage {

const Question* question(std::string_view name) {
  for (const Question& q : questions())
    if (q.name == name) return &q;
  return nullptr;
}

std::variant<Answer, std::vector<std::string>> reckon(std::string_view name, const Typed& typed) {
  std::vector<std::string> problems;
  const Question* q = question(name);
  if (!q) {
    std::vector<std::string> names;
    for (const Question& each : questions()) names.emplace_back(each.name);
    const std::string near = did_you_mean(name, names);
    problems.push_back(fmt::format("unknown question \"{}\"{}", name, near.empty() ? "" : ": " + near));
    problems.push_back(fmt::format("questions: {}", fmt::join(names, ", ")));
    return problems;
  }
  const Inputs inputs = read_inputs(q->keys, typed, problems);
  Answer answer;
  answer.question = q->name;
  answer.formula = q->formula;
  answer.source = q->source;
  for (const AskedKey& key : q->keys)
    for (const auto& [typed_key, text] : typed)
      if (typed_key == key.name) answer.inputs.emplace_back(typed_key, text);
  if (problems.empty()) q->answer(inputs, answer, problems);
  if (!problems.empty()) {
    problems.push_back(fmt::format("for example: dunnage reckon {} {}", q->name, q->example));
    return problems;
  }
  answer.cautions.emplace_back(q->caution);
  return answer;
}

}  // namespace dunnage
