// SPDX-License-Identifier: MIT
// Rule noise: the dose of a day by NIOSH, with OSHA's beside it.
#include "check/crew_noise.h"

#include <algorithm>

#include "base/slack.h"
#include "check/say.h"
#include "formula/noise.h"

namespace dunnage {
namespace {

/// All that one person or group hears.
struct Day {
  Subject subject;
  Text who;
  Place place;
  std::vector<HeardFor> heard;
  std::vector<Sentence> missing;
};

std::vector<Day> days_of(const Show& show) {
  std::vector<Day> days;
  for (const Heard& line : show.heard) {
    auto day = std::find_if(days.begin(), days.end(), [&](const Day& d) { return d.who.value == line.who.value; });
    if (day == days.end())
      day = days.insert(day, Day{subject_in(show.heard, line, Subject::Kind::heard), line.who, line.place, {}, {}});
    if (line.level && line.time) day->heard.emplace_back(line.level->value, line.time->value);
    if (!line.level) day->missing.push_back(said("a level"));
    if (!line.time) day->missing.push_back(said("the hours of a level"));
  }
  return days;
}

std::string whole(double percent) { return plain(steps_up(percent), 0) + " %"; }

Finding begin_noise(Subject subject, Sentence called, Place place) {
  Finding f = begin_finding(RuleName::noise, subject, std::move(called), std::move(place));
  f.sources = {as_is("NIOSH 98-126"), as_is("OSHA 29 CFR 1910.95 App. A")};
  f.caution = said("For people at work: hearing protection and shorter turns. The audience is the licence's matter.");
  return f;
}

/// No level is typed: is there anything loud listed?
Finding nothing_heard(const Show& show) {
  Finding f = begin_noise({}, said("crew"), show.show_place);
  if (show.mixes.empty())
    say_does_not_apply(f, show.show_place, said("No mix is listed, so no speaker is said to be near anybody."));
  else
    say_not_given(f, {said("what the crew hears")},
                  said("Read a level meter at the sound check and type level and hours under [[noise]]; until then ear "
                       "plugs for all."));
  return f;
}

/// "92 dBA for 1.5 h, 88 dBA for 40 min".
Sentence heard_words(const std::vector<HeardFor>& heard) {
  std::vector<Sentence> words;
  for (const auto& [level, time] : heard) {
    const bool minutes = time < 1 * unit::hour;
    words.push_back(
        said("{} dBA for {}", plain(level / unit::decibel_a, 1),
             minutes ? plain(steps_up(time / unit::minute), 0) + " min" : plain(time / unit::hour, 2) + " h"));
  }
  return strung(words, ", ");
}

Finding finding_of(const Day& day) {
  Finding f = begin_noise(day.subject, day.who.value, day.place);
  f.limit = 100.0;
  const auto dose = niosh_dose(day.heard);
  const std::string osha = whole(osha_dose(day.heard));
  if (!dose) {
    f.outcome = Outcome::over;
    f.says = said("A level above 115 dBA, the ceiling: nobody stays there, protected or not. OSHA dose {}.", osha);
  } else {
    f.measured = *dose;
    f.outcome = exceeds(*dose, 100.0) ? Outcome::over : Outcome::within;
    f.says =
        said("{}: {} of a day's dose by NIOSH (3 dB), {} by OSHA (5 dB).", heard_words(day.heard), whole(*dose), osha);
    if (f.outcome == Outcome::over) f.says.then(said("Ear plugs and shorter turns, or turn it down."));
  }
  if (!day.missing.empty() && f.outcome == Outcome::within)
    say_not_given(f, day.missing, said("Read a level meter and type it."));
  return f;
}

}  // namespace

void check_noise(const Catalogue&, const Show& show, const Plan&, Findings& findings) {
  if (show.heard.empty()) findings.list.push_back(nothing_heard(show));
  for (const Day& day : days_of(show)) findings.list.push_back(finding_of(day));
}

}  // namespace dunnage
