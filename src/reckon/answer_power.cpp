// SPDX-License-Identifier: MIT
// Electricity.
#include <fmt/format.h>

#include "base/slack.h"
#include "formula/electric.h"
#include "reckon/answers.h"
#include "reckon/figure_words.h"

namespace dunnage {
namespace {
Phases phases_of(const Inputs& in) { return in.word("phases", "1") == "3" ? Phases::three : Phases::one; }
}  // namespace

void answer_voltage_drop(const Inputs& in, Answer& out, Problems& problems) {
  const Phases phases = phases_of(in);
  const Current current = in.get<Current>("current");
  const Length length = in.get<Length>("length");
  const Voltage voltage = in.get<Voltage>("voltage");
  if (in.has("awg") == in.has("section")) {
    problems.push_back("awg or section is needed, one of them, for example awg=12 or section=\"2.5 mm2\"");
    return;
  }
  const auto drop = in.has("awg")
                        ? voltage_drop_us(phases, in.word("awg", ""), current, length)
                        : voltage_drop_iec(phases, in.get<Area>("section"), current, length, in.number("factor", 0.8));
  if (!drop) {
    problems.push_back("awg: sizes listed are 14 to 1 and 1/0 to 4/0; factor above 0 and at most 1");
    return;
  }
  result(out, said(*drop / unit::volt, 2, "V", Rounding::up));
  const double share = *drop / voltage;
  also(out, "share of the voltage", plain(rounded_to(share * 100, 2, Rounding::up), 2) + " %");
  if (in.has("awg")) {
    also(out, "method", "NEC Chapter 9 Table 8; 3 % on a branch and 5 % in all are notes, not rules");
    if (const auto size = size_for_drop(phases, current, length, voltage * 0.03))
      also(out, "thinnest size within 3 %", std::string(*size) + " AWG");
  } else {
    also(out, "method", "IEC 60364-5-52 Annex G, copper; three phases: line to neutral");
    also(out, "limit, public supply, not lighting", share_words(drop_limit_iec(true, false, length)));
    also(out, "limit, own supply, not lighting", share_words(drop_limit_iec(false, false, length)));
  }
}

void answer_circuit(const Inputs& in, Answer& out, Problems& problems) {
  if (!in.has("continuous") && !in.has("other")) {
    problems.push_back("continuous or other is needed: the loads in amperes, for example continuous=\"12 A\"");
    return;
  }
  const Current need = circuit_need(in.get<Current>("other"), in.get<Current>("continuous"));
  result(out, said(need / unit::ampere, 1, "A", Rounding::up));
  if (!in.has("breaker")) return;
  const Current breaker = in.get<Current>("breaker");
  also(out, "breaker", exceeds(need, breaker) ? "over limit" : "within limit");
  also(out, "most that may run for three hours or more",
       said(breaker / unit::ampere / 1.25, 1, "A", Rounding::down).text());
}

void answer_generator(const Inputs& in, Answer& out, Problems& problems) {
  const auto share = generator_share(in.get<Length>("altitude"),
                                     in.maybe<Temperature>("temperature").value_or(Temperature::celsius(20)));
  if (!share) {
    problems.push_back("no derating is known above 4000 m or 60 C: ask the maker of the set");
    return;
  }
  const double kva = in.get<Power>("load") / unit::kilowatt / in.number("factor", 0.8) / *share;
  const double starting = in.get<Power>("starting") / unit::kilowatt / *share;
  result(out, said(kva + starting, 2, "kVA", Rounding::up));
  also(out, "left of the rating by height and heat", share_words(*share));
  also(out, "of it for starting", said(starting, 2, "kVA", Rounding::up).text());
}

}  // namespace dunnage
