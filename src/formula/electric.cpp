// SPDX-License-Identifier: MIT
// Electrical tables and formulas as printed.
#include "formula/electric.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace dunnage {
namespace {

using namespace unit;

struct Wire {
  std::string_view awg;
  double ohms, cmil;
};
constexpr std::array<Wire, 13> kTable8{{{"14", 3.14, 4110},
                                        {"12", 1.98, 6530},
                                        {"10", 1.24, 10380},
                                        {"8", .778, 16510},
                                        {"6", .491, 26240},
                                        {"4", .308, 41740},
                                        {"3", .245, 52620},
                                        {"2", .194, 66360},
                                        {"1", .154, 83690},
                                        {"1/0", .122, 105600},
                                        {"2/0", .0967, 133100},
                                        {"3/0", .0766, 167800},
                                        {"4/0", .0608, 211600}}};

const Wire* wire(std::string_view awg) {
  for (const Wire& w : kTable8)
    if (w.awg == awg) return &w;
  return nullptr;
}

double ways(Phases phases) { return phases == Phases::three ? std::numbers::sqrt3 : 2.0; }

struct Cord {
  std::string_view awg;
  double two, three;
};
constexpr std::array<Cord, 9> kCords{{{"18", 10, 7},
                                      {"16", 13, 10},
                                      {"14", 18, 15},
                                      {"12", 25, 20},
                                      {"10", 30, 25},
                                      {"8", 40, 35},
                                      {"6", 55, 45},
                                      {"4", 70, 60},
                                      {"2", 95, 80}}};

struct StageCable {
  std::string_view awg;
  std::array<double, 9> amps;
};  // 90, 75, 60 C by 1, 2, 3; 0: none
constexpr std::array<StageCable, 8> kStage{{
    {"8", {80, 74, 65, 70, 65, 57, 0, 0, 0}},
    {"6", {105, 99, 87, 95, 88, 77, 0, 0, 0}},
    {"4", {140, 130, 114, 125, 115, 101, 105, 96, 84}},
    {"2", {190, 174, 152, 170, 152, 133, 140, 128, 112}},
    {"1/0", {260, 234, 205, 230, 207, 181, 195, 173, 151}},
    {"2/0", {300, 271, 237, 265, 238, 208, 225, 199, 174}},
    {"3/0", {350, 313, 274, 310, 275, 241, 260, 230, 201}},
    {"4/0", {405, 361, 316, 360, 317, 277, 300, 265, 232}},
}};

}  // namespace

std::optional<Resistance> copper_per_1000_feet(std::string_view awg) {
  const Wire* w = wire(awg);
  return w ? std::optional<Resistance>(w->ohms * ohm) : std::nullopt;
}

std::optional<double> circular_mils(std::string_view awg) {
  const Wire* w = wire(awg);
  return w ? std::optional<double>(w->cmil) : std::nullopt;
}

const std::vector<std::string_view>& copper_sizes() {
  static const std::vector<std::string_view> sizes = [] {
    std::vector<std::string_view> all;
    for (const Wire& w : kTable8) all.push_back(w.awg);
    return all;
  }();
  return sizes;
}

std::optional<Voltage> voltage_drop_us(Phases phases, std::string_view awg, Current current, Length length) {
  const Wire* w = wire(awg);
  if (!w) return std::nullopt;
  return ways(phases) * (current / ampere) * w->ohms * (length / foot) / 1000 * volt;
}

std::optional<Voltage> voltage_drop_by_k(Phases phases, std::string_view awg, Current current, Length length) {
  const Wire* w = wire(awg);
  if (!w) return std::nullopt;
  return ways(phases) * 12.9 * (current / ampere) * (length / foot) / w->cmil * volt;
}

std::optional<std::string_view> size_for_drop(Phases phases, Current current, Length length, Voltage allowed) {
  for (std::string_view awg : copper_sizes())
    if (*voltage_drop_us(phases, awg, current, length) <= allowed) return awg;
  return std::nullopt;
}

std::optional<Voltage> voltage_drop_iec(Phases phases, Area section, Current current, Length length,
                                        double power_factor) {
  const double mm2 = section.si() * 1e6;
  if (mm2 <= 0 || power_factor <= 0 || power_factor > 1) return std::nullopt;
  const double b = phases == Phases::one ? 2 : 1;
  const double sine = std::sqrt(1 - power_factor * power_factor);
  const double metres = length / metre;
  return b * (0.0225 * metres / mm2 * power_factor + 0.08e-3 * metres * sine) * (current / ampere) * volt;
}

double drop_limit_iec(bool public_supply, bool lighting, Length length) {
  const double base = public_supply ? (lighting ? 0.03 : 0.05) : (lighting ? 0.06 : 0.08);
  const double beyond = std::max(0.0, length / metre - 100);
  return base + std::min(0.005, beyond * 0.00005);
}

Current circuit_need(Current other, Current continuous) { return other + continuous * 1.25; }

Current current_of(Phases phases, Power power, Voltage voltage, double power_factor) {
  const double root = phases == Phases::three ? std::numbers::sqrt3 : 1.0;
  return power / voltage / (root * power_factor);
}

std::optional<Current> cord_ampacity(std::string_view awg, int conductors) {
  if (conductors != 2 && conductors != 3) return std::nullopt;
  for (const Cord& c : kCords)
    if (c.awg == awg) return (conductors == 2 ? c.two : c.three) * ampere;
  return std::nullopt;
}

std::optional<double> cord_share(int conductors) {
  if (conductors < 1 || conductors > 20) return std::nullopt;
  return conductors <= 3 ? 1.0 : conductors <= 6 ? 0.8 : conductors <= 9 ? 0.7 : 0.5;
}

std::optional<Current> stage_cable_ampacity(std::string_view awg, int rated_celsius, int conductors) {
  if (conductors < 1 || conductors > 3) return std::nullopt;
  const int block = rated_celsius == 90 ? 0 : rated_celsius == 75 ? 1 : rated_celsius == 60 ? 2 : -1;
  if (block < 0) return std::nullopt;
  for (const StageCable& c : kStage)
    if (c.awg == awg) {
      const double amps = c.amps[static_cast<std::size_t>(block * 3 + conductors - 1)];
      return amps > 0 ? std::optional<Current>(amps * ampere) : std::nullopt;
    }
  return std::nullopt;
}

std::optional<double> generator_share(Length altitude, Temperature air) {
  if (altitude / metre > 4000 || air.in_celsius() > 60) return std::nullopt;
  const double high = steps_up(std::max(0.0, altitude / metre - 1000) / 500);
  const double hot = steps_up(std::max(0.0, air.in_celsius() - 40) / 5);
  return (1 - 0.03 * high) * (1 - 0.03 * hot);
}

}  // namespace dunnage
