// SPDX-License-Identifier: MIT
#include "run/summary.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "run/on_screen.h"

namespace dunnage {

namespace {

/// "838 lb, proved least".
std::string cover_mass(const CoverReport& cover, UnitSystem units) {
  const std::string mass = print(cover.mass, units, Rounding::up).text();
  if (cover.unweighed > 0)
    return fmt::format("{} so far as weighed; not checked: {} of the {} added cases {} not weighed", mass,
                       cover.unweighed, cover.units, cover.unweighed == 1 ? "is" : "are");
  if (!cover.short_proved) return mass + "; not proved: whether more of what is short could be covered";
  if (cover.by_units)
    return fmt::format("{}, {} pieces, {}", mass, cover.units,
                       cover.proved ? "proved fewest"
                                    : fmt::format("not proved fewest: at most {} more than the fewest possible",
                                                  cover.units - cover.units_bound));
  if (!cover.proved)
    return fmt::format("{}, not proved least: at most {} heavier than the best possible", mass,
                       print(cover.mass - cover.bound, units, Rounding::up).text());
  if (cover.unweighed_left > 0)
    return fmt::format("{}, proved least of what is weighed; not checked: {} that could serve {} not weighed", mass,
                       cover.unweighed_left, cover.unweighed_left == 1 ? "is" : "are");
  return mass + ", proved least";
}

std::string cover_words(const CoverReport& cover, UnitSystem units) {
  if (cover.units == 0) return "Nothing had to be added to cover what the show asks for.\n";
  return "Cases added to cover what the show asks for: " + cover_mass(cover, units) + ".\n";
}

std::string at(const Place& place) { return place.known() ? " (" + place.words() + ")" : ""; }

/// What goes, its mass as somebody adds it up who has the sheets.
struct Sent {
  Printed mass;
  int pieces = 0, unknown = 0;
  bool estimated = false;

  std::string remarks() const {
    return std::string(estimated ? ", some of it estimated" : "") +
           (unknown > 0 ? on_screen(", without {} of unknown mass", unknown) : "");
  }
};

Sent sum_of(const Plan& plan, UnitSystem units) {
  Sent sum{print(Mass(), units, Rounding::up)};
  for (const PlanRow& row : plan.rows) {
    if (!row.goes) continue;
    ++sum.pieces;
    if (!row.mass_known) ++sum.unknown;
    if (!row.mass_known) continue;
    sum.estimated = sum.estimated || row.estimated;
    sum.mass.value += print(row.mass, units, Rounding::up).value;
  }
  return sum;
}

std::string totals(const Plan& plan, UnitSystem units) {
  const Sent sum = sum_of(plan, units);
  const std::string pieces = sum.pieces == 1 ? "1 piece goes" : on_screen("{} pieces go", sum.pieces);
  return pieces + ", " + sum.mass.text() + sum.remarks() + ".\n";
}

/// Findings that say the same of several subjects; the place is the first's.
struct Alike {
  const Finding* first;
  std::string subjects;
};

std::vector<Alike> open_findings(const Findings& findings) {
  std::vector<Alike> out;
  for (const Finding& f : findings.list) {
    if (f.outcome != Outcome::over && f.outcome != Outcome::not_checked) continue;
    const auto same = std::find_if(out.begin(), out.end(), [&](const Alike& a) {
      return a.first->outcome == f.outcome && a.first->rule == f.rule && a.first->says == f.says;
    });
    if (same == out.end())
      out.push_back({&f, f.called.english()});
    else
      same->subjects += ", " + f.called.english();
  }
  return out;
}

/// "input 4 (Ana, voice)" of "input 4 (Ana, voice) asks for vocal-dynamic".
std::string who_asks(const Reason& reason) {
  const std::string text = reason.text.english();
  return text.substr(0, text.find(" asks for "));
}

/// A line a reason; what several lines ask for alike is said once.
std::string reason_lines(const std::vector<Reason>& reasons) {
  std::string out;
  std::vector<std::string> told;
  for (const Reason& r : reasons) {
    std::vector<const Reason*> alike;
    for (const Reason& other : reasons)
      if (!r.asks.empty() && other.asks == r.asks) alike.push_back(&other);
    if (alike.size() < 2) {
      out += on_screen("  because {}{}\n", r.text.english(), at(r.place));
    } else if (std::find(told.begin(), told.end(), r.asks) == told.end()) {
      told.push_back(r.asks);
      out += on_screen("  because {} is asked for {} times:\n", r.asks, alike.size());
      for (const Reason* one : alike) out += on_screen("    {}{}\n", who_asks(*one), at(one->place));
    }
  }
  return out;
}

}  // namespace

std::string summary(const Catalogue&, const Plan& plan, const Findings& findings, UnitSystem units) {
  std::string out = totals(plan, units) + cover_words(plan.cover, units);
  for (const Shortage& s : plan.shortages)
    out += on_screen("short: {} of {} {}, as {}{}{}\n", amount_words(s, s.missing, units),
                     amount_words(s, s.wanted, units), s.what, s.because.english(),
                     s.nearest.empty() ? "" : "; " + s.nearest.english(), at(s.place));
  int within = 0, elsewhere = 0;
  for (const Finding& f : findings.list) {
    within += f.outcome == Outcome::within;
    elsewhere += f.outcome == Outcome::does_not_apply;
  }
  for (const Alike& alike : open_findings(findings))
    out += on_screen("{}: {}{}{}: {}{}\n", name(alike.first->outcome), name(alike.first->rule),
                     alike.subjects.empty() ? "" : ", ", alike.subjects, alike.first->says.english(),
                     at(alike.first->place));
  for (const Sentence& remark : plan.remarks) out += "remark: " + remark.english() + "\n";
  return out + on_screen("{} checks within limit, {} that do not apply.\n", within, elsewhere);
}

std::string reasons(const Catalogue& catalogue, const Plan& plan, int unit, UnitSystem units) {
  const PlanRow& row = plan.rows[static_cast<std::size_t>(unit)];
  const std::string code = catalogue.units[static_cast<std::size_t>(unit)].code;
  const std::string& title = catalogue.case_at(unit).name.value;
  if (!row.goes) {
    std::string out = on_screen("{} ({}) stays at home.\n", code, title);
    for (const Reason& r : row.stays) out += on_screen("  because {}{}\n", r.text.english(), at(r.place));
    return out;
  }
  std::string out = on_screen("{} ({}) goes{}", code, title, row.spare ? " as a spare" : "");
  if (row.mass_known) out += ", " + print(row.mass, units, Rounding::up).text() + (row.estimated ? " estimated" : "");
  out += ".\n";
  out += reason_lines(row.reasons);
  if (std::all_of(row.reasons.begin(), row.reasons.end(), [](const Reason& r) { return r.why == Why::demand; }))
    out += on_screen("  Nothing that goes anyway has it to spare; the cases added for what is asked weigh {}.\n",
                     cover_mass(plan.cover, units));
  for (const Reason& r : row.stays) out += on_screen("  although {}{}\n", r.text.english(), at(r.place));
  return out;
}

std::string changes(const Change& change, const Plan& before, const Plan& now, UnitSystem units) {
  if (change.lines.empty()) return "Nothing changes in what goes.\n";
  std::string out;
  for (const Change::Line& line : change.lines) {
    const char* how = line.before == 0 ? "added" : line.now == 0 ? "gone" : line.now > line.before ? "more" : "fewer";
    out += on_screen("{:<6} {} ({}): {} -> {}\n", how, line.code, line.name, line.before, line.now);
  }
  const Sent was = sum_of(before, units), is = sum_of(now, units);
  Printed gap = is.mass;
  gap.value = std::abs(is.mass.value - was.mass.value);
  return out + on_screen("In all {} {} ({}{} -> {}{}).\n", gap.text(),
                         is.mass.value < was.mass.value ? "lighter" : "heavier", was.mass.text(), was.remarks(),
                         is.mass.text(), is.remarks());
}

}  // namespace dunnage
