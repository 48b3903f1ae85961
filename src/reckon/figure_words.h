// SPDX-License-Identifier: MIT
// Figures of an answer in the units of its question: one decimal, loads up, capacities down.
#pragma once

#include <string>
#include <string_view>

#include "model/answer.h"
#include "reckon/inputs.h"

namespace dunnage {

/// A rounded number with its unit.
struct Said {
  double value = 0;
  std::string unit;
  std::string text() const { return plain(value, 4) + " " + unit; }
};

double rounded_to(double value, int decimals, Rounding way);
Said said(Mass mass, const Inputs& in, Rounding way);
Said said(Length length, const Inputs& in, Rounding way);
Said said(Speed speed, const Inputs& in, Rounding way);
Said said(Pressure pressure, const Inputs& in, Rounding way);
Said said(Force force, const Inputs& in, Rounding way);
Said said(Volume volume, const Inputs& in, Rounding way);
Said said(Temperature temperature, const Inputs& in, Rounding way);
Said said(double value, int decimals, std::string unit, Rounding way);

/// Makes a figure the answer's result.
void result(Answer& answer, const Said& said);
void also(Answer& answer, std::string what, std::string words);
std::string share_words(double share);  ///< "11.5 %"

}  // namespace dunnage
