// SPDX-License-Identifier: MIT
// Noise dose of a day.
#include <algorithm>

#include "formula/noise.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {

void answer_noise_dose(const Inputs& in, Answer& out, Problems& problems) {
  std::vector<HeardFor> heard;
  Duration total;
  for (const auto& [level, time] : in.pairs("heard")) {
    heard.emplace_back(Sound::from_si(level), Duration::from_si(time));
    total += heard.back().second;
  }
  if (total > 24.0 * unit::hour) {
    problems.push_back("heard: more than 24 h in one day");
    return;
  }
  const auto dose = niosh_dose(heard);
  if (!dose) {
    problems.push_back("a level above 115 dBA: no time at all is allowed without protection");
    return;
  }
  result(out, said(*dose, 0, "%", Rounding::up));
  also(out, "measure", "NIOSH, 3 dB exchange, 85 dBA for 8 h is 100 %");
  if (*dose > 0)
    also(out, "eight-hour average", said(niosh_average(*dose) / unit::decibel_a, 1, "dBA", Rounding::up).text());
  const double osha = osha_dose(heard);
  also(out, "OSHA dose, from 80 dBA", said(osha, 0, "%", Rounding::up).text());
  also(out, "OSHA reading", osha >= 100 ? "over limit" : osha >= 50 ? "at or above the action level" : "below 50 %");
  const auto loudest = std::max_element(heard.begin(), heard.end());
  also(out, "allowed at the loudest level",
       said(niosh_time(loudest->first) / unit::minute, 1, "min", Rounding::down).text());
}

}  // namespace dunnage
