// SPDX-License-Identifier: MIT
#include "check/circuit_gear.h"

#include <algorithm>
#include <map>

#include "base/slack.h"
#include "check/say.h"

namespace dunnage {
namespace {

struct Named {
  int count = 0;
  Place place;
};
/// By code or word, in all circuits together.
using NamedByCode = std::map<std::string, Named>;

NamedByCode fed_codes(const Show& show) {
  NamedByCode out;
  for (const Circuit& circuit : show.circuits)
    for (const CircuitLoad& load : circuit.feeds) out[load.code.value].count += load.count;
  return out;
}

bool names_any(const NamedByCode& fed, const std::vector<Text>& words) {
  return std::any_of(words.begin(), words.end(), [&](const Text& word) { return fed.contains(word.value); });
}

/// Whether a circuit names a thing in the case, or a word that the case or a thing in it serves.
bool fed_by_word(const Catalogue& c, const Case& box, const NamedByCode& fed) {
  return names_any(fed, box.serves) || std::any_of(box.holds.begin(), box.holds.end(), [&](const Content& content) {
           const Item* item = c.item(content.item.value);
           return item && item->draws && (fed.contains(item->code.value) || names_any(fed, item->serves));
         });
}

/// Cases that go and draw power, and how many of each are on no circuit. Spares stay in their cases.
std::vector<Sentence> unfed(const Catalogue& c, const Show& show, const Plan& plan) {
  const NamedByCode fed = fed_codes(show);
  std::vector<Sentence> out;
  for (int k = 0; k < static_cast<int>(c.kit.cases.size()); ++k) {
    const Case& box = c.kit.cases[static_cast<std::size_t>(k)];
    if (!draws_of(c, k) || fed_by_word(c, box, fed)) continue;
    const auto count_of = [&](const std::string& code) { return fed.contains(code) ? fed.at(code).count : 0; };
    int rest = -count_of(box.code.value);
    const auto [first, last] = c.units_of[static_cast<std::size_t>(k)];
    for (int unit = first; unit < last; ++unit) {
      const std::string& code = c.units[static_cast<std::size_t>(unit)].code;
      if (code != box.code.value) rest -= count_of(code);
      rest += goes(plan, unit) && !plan.rows[static_cast<std::size_t>(unit)].spare;
    }
    if (rest > 0) out.push_back(said("{} x {}", rest, box.code.value));
  }
  return out;
}

void add_cord(NamedByCode& cords, const Maybe<std::string>& cable) {
  if (!cable) return;
  Named& cord = cords[cable->value];
  if (cord.count++ == 0) cord.place = cable->place;
}

int going(const Catalogue& c, const Plan& plan, const std::string& code) {
  int count = 0;
  for (const int unit : plan.pulled()) {
    const Case& box = c.case_at(unit);
    count += box.code.value == code || c.units[static_cast<std::size_t>(unit)].code == code;
    for (const Content& content : box.holds)
      if (content.item.value == code) count += content.count;
  }
  return count;
}

Finding begin_cord(Subject subject, Sentence called, const Place& place, Sentence says) {
  Finding f = begin_circuit(subject, std::move(called), place);
  f.outcome = Outcome::over;
  f.says = std::move(says);
  return f;
}

Subject cord_subject(const Catalogue& c, const std::string& code) {
  if (const int item = c.item_index(code); item >= 0) return {Subject::Kind::item, item};
  return subject_in(c.kit.cases, *c.case_of(code), Subject::Kind::box);
}

/// Cords that circuits and supplies name, against those in what goes.
void count_cords(const Catalogue& c, const Show& show, const Plan& plan, Findings& findings) {
  NamedByCode cords;
  for (const Supply& supply : show.supplies) add_cord(cords, supply.cable);
  for (const Circuit& circuit : show.circuits) {
    add_cord(cords, circuit.cable);
    for (const Segment& segment : circuit.then) add_cord(cords, segment.cable);
  }
  for (const auto& [code, cord] : cords) {
    if (!c.item(code) && !c.case_of(code)) continue;  // the venue's, by its name
    if (const int go = going(c, plan, code); go < cord.count)
      findings.list.push_back(begin_cord(
          cord_subject(c, code), code, cord.place,
          said("{} are named by circuits and supplies, and {} go: bring more, or name what goes.", cord.count, go)));
  }
}

void measure_cord(const Catalogue& c, Subject subject, const std::string& called, const Maybe<std::string>& cable,
                  const Maybe<Length>& length, Findings& findings) {
  if (!cable || !length) return;
  const Item* item = c.item(cable->value);
  const Case* box = c.case_of(cable->value);
  const Maybe<Length> has = item ? item->length : box ? box->length : std::nullopt;
  if (!has || !falls_short(has->value, length->value)) return;
  const UnitSystem units = c.kit.house.units;
  findings.list.push_back(
      begin_cord(subject, called, cable->place,
                 said("{} is {} long, and {} are asked: name a cord that reaches, or each of several under \"then\".",
                      cable->value, print(has->value, units, Rounding::down).text(),
                      print(length->value, units, Rounding::up).text())));
}

}  // namespace

Finding begin_circuit(Subject subject, Sentence called, const Place& place) {
  Finding f = begin_finding(RuleName::circuit, subject, std::move(called), place);
  f.sources = {as_is("NEC 210.20(A), 400.5, Ch. 9 Table 8"), as_is("IEC 60364-5-52 Annex G")};
  f.caution = said("Test every residual-current device before doors. A licensed electrician and the inspector decide.");
  return f;
}

void check_circuit_gear(const Catalogue& catalogue, const Show& show, const Plan& plan, Findings& findings) {
  if (show.circuits.empty()) return;
  if (const std::vector<Sentence> codes = unfed(catalogue, show, plan); !codes.empty()) {
    Finding f = begin_circuit({}, said("power"), show.circuits.front().place);
    f.says = said("On no circuit, and in no sum: {}. Type each among the feeds of its circuit.", strung(codes, ", "));
    findings.list.push_back(std::move(f));
  }
  count_cords(catalogue, show, plan, findings);
  for (const Supply& supply : show.supplies)
    measure_cord(catalogue, subject_in(show.supplies, supply, Subject::Kind::supply), supply.name.value, supply.cable,
                 supply.length, findings);
  for (const Circuit& circuit : show.circuits) {
    const Subject subject = subject_in(show.circuits, circuit, Subject::Kind::circuit);
    measure_cord(catalogue, subject, circuit.name.value, circuit.cable, circuit.length, findings);
    for (const Segment& segment : circuit.then)
      measure_cord(catalogue, subject, circuit.name.value, segment.cable, segment.length, findings);
  }
}

}  // namespace dunnage
