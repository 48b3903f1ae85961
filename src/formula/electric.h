// SPDX-License-Identifier: MIT
// Voltage drop, circuit load, cable tables and generators.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.h"

namespace dunnage {

enum class Phases { one, three };

/// Resistance of 1000 ft of uncoated stranded copper at 75 C. Sizes "14" to "1", "1/0" to "4/0"; else empty.
/// Source: NEC Chapter 9 Table 8 (a copy).
std::optional<Resistance> copper_per_1000_feet(std::string_view awg);
/// Circular mils of the same table.
std::optional<double> circular_mils(std::string_view awg);
/// Sizes of the table, the thinnest first.
const std::vector<std::string_view>& copper_sizes();

/// 2 I R L / 1000 ft, or root 3 for three phases (line to line), by Table 8. `length` one way.
std::optional<Voltage> voltage_drop_us(Phases phases, std::string_view awg, Current current, Length length);
/// The same by K = 12.9 ohm cmil/ft for copper (from memory: common practice).
std::optional<Voltage> voltage_drop_by_k(Phases phases, std::string_view awg, Current current, Length length);
/// The thinnest listed size whose drop is not above `allowed`; empty where none is.
std::optional<std::string_view> size_for_drop(Phases phases, Current current, Length length, Voltage allowed);

/// u = b (rho1 L / S cos phi + lambda L sin phi) I, b 2 for one phase, 1 for three (line to neutral); rho1
/// 0.0225 ohm mm2/m copper, lambda 0.08 mohm/m. Source: IEC 60364-5-52:2009 Annex G. `section` above 0,
/// power factor above 0 and at most 1 (0.8 where unknown); else empty.
std::optional<Voltage> voltage_drop_iec(Phases phases, Area section, Current current, Length length,
                                        double power_factor = 0.8);
/// Limit of IEC 60364-5-52:2009 Table G.52.1 as a share: public supply 3 % lighting, 5 % other; private 6 and
/// 8 %. Circuits above 100 m: 0.005 % more a metre, at most 0.5 %.
double drop_limit_iec(bool public_supply, bool lighting, Length length);

/// Ampacity that a breaker and cable must have: other loads + 1.25 x loads of three hours or more.
/// Source: NEC 210.19(A)(1), 210.20(A).
Current circuit_need(Current other, Current continuous);
/// I = P / (V pf), root 3 for three phases (V line to line). Power factor above 0 and at most 1.
Current current_of(Phases phases, Power power, Voltage voltage, double power_factor);

/// Flexible cord, two or three current-carrying conductors; 10 AWG and thicker, three conductors from 14, are
/// from memory. Source: NEC Table 400.5(A)(1). Empty outside.
std::optional<Current> cord_ampacity(std::string_view awg, int conductors);
/// Share left with 4 to 6 (0.8), 7 to 9 (0.7), 10 to 20 (0.5) current-carrying conductors.
/// Source: NEC 400.5(A)(3). Empty above 20 and below 1.
std::optional<double> cord_share(int conductors);
/// Stage cable of types W, SC, SCE, SCT, one to three conductors, rated 60, 75 or 90 C.
/// Source: NEC Table 400.5(B) (400.5(A)(2) in newer editions), as reprinted. Empty outside.
std::optional<Current> stage_cable_ampacity(std::string_view awg, int rated_celsius, int conductors);

/// What is left of a small generator's rating: 3 % less for each 500 m above 1000 m and for each 5 C above
/// 40 C, or part. Common practice, no source; the set's own figures win. Empty above 4000 m or 60 C.
std::optional<double> generator_share(Length altitude, Temperature air);

}  // namespace dunnage
