// SPDX-License-Identifier: MIT
// What goes anyway and what may be added, of one source: the two sides of each row of the cover.
#include <map>

#include "plan/cover_model.h"

namespace dunnage {

double supply_going(const Build& b, const Source& source) {
  double sum = 0;
  const auto count = [&](int k, double each, bool serve) {
    const auto [first, last] = units_of(b, k);
    for (int u = first; u < last; ++u)
      if (b.draft.goes(u) && !b.draft.spare(u) && (!serve || b.draft.may_serve(u))) sum += each;
  };
  if (source.kind == Source::Kind::units) {
    count(source.index, 1, true);
  } else if (const auto at = b.holders.find(source.index); at != b.holders.end()) {
    for (const Holder& holder : at->second)
      count(holder.case_index, source.kind == Source::Kind::measure ? holder.measure : holder.count, false);
  }
  return sum;
}

std::vector<Term> supply_added(const Build& b, const Source& source) {
  std::map<int, double> sum;  // a case may hold an item on several lines
  const auto count = [&](int k, double each) {
    if (const auto mine = b.by_case.find(k); mine != b.by_case.end())
      for (const std::size_t i : mine->second) sum[b.candidates[i].column] += each;
  };
  if (source.kind == Source::Kind::units) {
    count(source.index, 1);
  } else if (const auto at = b.holders.find(source.index); at != b.holders.end()) {
    for (const Holder& holder : at->second)
      if (!case_of(b, holder.case_index).spare_for)  // what stands by serves nobody
        count(holder.case_index, source.kind == Source::Kind::measure ? holder.measure : holder.count);
  }
  return {sum.begin(), sum.end()};
}

}  // namespace dunnage
