// SPDX-License-Identifier: MIT
// `dunnage reckon`: one question, one figure, on the terminal.
#include <fmt/format.h>

#include "base/error.h"
#include "export/plan_json.h"
#include "reckon/reckon.h"
#include "run/commands.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

std::string words(const Answer& answer) {
  std::string out = on_screen("{}: {} {}\n", answer.question, plain(answer.value, 4), answer.unit);
  for (const auto& [what, figure] : answer.also) out += on_screen("  {}: {}\n", what, figure);
  out += on_screen("  formula: {}\n  source: {}\n", answer.formula, answer.source);
  for (const std::string& caution : answer.cautions) out += on_screen("  caution: {}\n", caution);
  return out;
}

}  // namespace

int reckon_figure(const ReckonOptions& options, Desk& desk) {
  if (options.question.empty()) {
    for (const Question& q : questions())
      desk.out << on_screen("{:<18} {}\n{:<18} dunnage reckon {} {}\n", q.name, q.asks, "", q.name, q.example);
    return 0;
  }
  const auto result = reckon(options.question, options.inputs);
  if (const auto* problems = std::get_if<std::vector<std::string>>(&result)) {
    for (const std::string& problem : *problems) desk.err << on_screen("error: {}\n", problem);
    return 1;
  }
  const Answer& answer = std::get<Answer>(result);
  desk.out << (options.json ? answer_json(answer) : words(answer));
  return 0;
}

}  // namespace dunnage
