// SPDX-License-Identifier: MIT
// Optimal string alignment over bytes: codes, keys and units are ASCII but for a few signs.
#include "base/nearest.h"

#include <algorithm>

#include "base/utf8.h"

namespace dunnage {

std::size_t edit_distance(std::string_view a, std::string_view b) {
  const std::string x = utf8::lower(a), y = utf8::lower(b);
  std::vector<std::size_t> before_last(y.size() + 1), last(y.size() + 1), now(y.size() + 1);
  for (std::size_t j = 0; j <= y.size(); ++j) last[j] = j;
  for (std::size_t i = 1; i <= x.size(); ++i) {
    now[0] = i;
    for (std::size_t j = 1; j <= y.size(); ++j) {
      const std::size_t replaced = last[j - 1] + (x[i - 1] == y[j - 1] ? 0 : 1);
      now[j] = std::min({last[j] + 1, now[j - 1] + 1, replaced});
      if (i > 1 && j > 1 && x[i - 1] == y[j - 2] && x[i - 2] == y[j - 1])
        now[j] = std::min(now[j], before_last[j - 2] + 1);
    }
    before_last.swap(last);
    last.swap(now);
  }
  return last[y.size()];
}

std::string nearest(std::string_view typed, const std::vector<std::string>& candidates) {
  const std::size_t allowed = std::clamp<std::size_t>(typed.size() / 3, 1, 3);
  std::size_t best = allowed + 1;
  std::string found;
  for (const std::string& candidate : candidates) {
    const std::size_t longer = std::max(typed.size(), candidate.size());
    if (longer - std::min(typed.size(), candidate.size()) > allowed) continue;
    const std::size_t edits = edit_distance(typed, candidate);
    if (edits >= best || edits >= longer) continue;  // a word changed in every letter is another word
    best = edits;
    found = candidate;
  }
  return found;
}

std::string did_you_mean(std::string_view typed, const std::vector<std::string>& candidates) {
  const std::string found = nearest(typed, candidates);
  return found.empty() ? std::string() : "did you mean \"" + found + "\"?";
}

}  // namespace dunnage
