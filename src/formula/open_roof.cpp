// SPDX-License-Identifier: MIT
// Figures 27.3-4, 27.3-5 and 27.3-7 of ASCE 7-22.
#include "formula/open_roof.h"

#include <array>
#include <span>

namespace dunnage {
namespace {

/// One pitch: cases A and B, clear then obstructed.
struct SlopeRow {
  double pitch;
  std::array<HalfForce, 2> clear, obstructed;
};

// Figure 27.3-4, wind on the low edge (0 degrees). The first row holds up to 7.5 degrees.
constexpr SlopeRow kFlat{0, {{{1.2, 0.3}, {-1.1, -0.1}}}, {{{-0.5, -1.2}, {-1.1, -0.6}}}};
constexpr std::array<SlopeRow, 6> kLowEdge{{{7.5, {{{-0.6, -1.0}, {-1.4, 0}}}, {{{-1.0, -1.5}, {-1.7, -0.8}}}},
                                            {15, {{{-0.9, -1.3}, {-1.9, 0}}}, {{{-1.1, -1.5}, {-2.1, -0.6}}}},
                                            {22.5, {{{-1.5, -1.6}, {-2.4, -0.3}}}, {{{-1.5, -1.7}, {-2.3, -0.9}}}},
                                            {30, {{{-1.8, -1.8}, {-2.5, -0.5}}}, {{{-1.5, -1.8}, {-2.3, -1.1}}}},
                                            {37.5, {{{-1.8, -1.8}, {-2.4, -0.6}}}, {{{-1.5, -1.8}, {-2.2, -1.1}}}},
                                            {45, {{{-1.6, -1.8}, {-2.3, -0.7}}}, {{{-1.3, -1.8}, {-1.9, -1.2}}}}}};
// The same figure, wind on the high edge (180 degrees).
constexpr std::array<SlopeRow, 6> kHighEdge{{{7.5, {{{0.9, 1.5}, {1.6, 0.3}}}, {{{-0.2, -1.2}, {0.8, -0.3}}}},
                                             {15, {{{1.3, 1.6}, {1.8, 0.6}}}, {{{0.4, -1.1}, {1.2, -0.3}}}},
                                             {22.5, {{{1.7, 1.8}, {2.2, 0.7}}}, {{{0.5, -1.0}, {1.3, 0}}}},
                                             {30, {{{2.1, 2.1}, {2.6, 1.0}}}, {{{0.6, -1.0}, {1.6, 0.1}}}},
                                             {37.5, {{{2.1, 2.2}, {2.7, 1.1}}}, {{{0.7, -0.9}, {1.9, 0.3}}}},
                                             {45, {{{2.2, 2.5}, {2.6, 1.4}}}, {{{0.8, -0.9}, {2.1, 0.4}}}}}};
// Figure 27.3-5; flatter than its first row it is Figure 27.3-4.
constexpr std::array<SlopeRow, 6> kTwoSlopes{{{7.5, {{{1.1, -0.3}, {0.2, -1.2}}}, {{{-1.6, -1.0}, {-0.9, -1.7}}}},
                                              {15, {{{1.1, -0.4}, {0.1, -1.1}}}, {{{-1.2, -1.0}, {-0.6, -1.6}}}},
                                              {22.5, {{{1.1, 0.1}, {-0.1, -0.8}}}, {{{-1.2, -1.2}, {-0.8, -1.7}}}},
                                              {30, {{{1.3, 0.3}, {-0.1, -0.9}}}, {{{-0.7, -0.7}, {-0.2, -1.1}}}},
                                              {37.5, {{{1.3, 0.6}, {-0.2, -0.6}}}, {{{-0.6, -0.6}, {-0.3, -0.9}}}},
                                              {45, {{{1.1, 0.9}, {-0.3, -0.5}}}, {{{-0.5, -0.5}, {-0.3, -0.7}}}}}};

HalfForce mix(const HalfForce& a, const HalfForce& b, double share) {
  return {a.windward + share * (b.windward - a.windward), a.leeward + share * (b.leeward - a.leeward)};
}

void add(std::vector<HalfForce>& cases, std::span<const SlopeRow> rows, double pitch, bool obstructed) {
  std::size_t i = 1;
  while (i + 1 < rows.size() && pitch > rows[i].pitch) ++i;
  const SlopeRow &a = rows[i - 1], &b = rows[i];
  const double share = (pitch - a.pitch) / (b.pitch - a.pitch);
  for (std::size_t n = 0; n < 2; ++n)
    cases.push_back(obstructed ? mix(a.obstructed[n], b.obstructed[n], share) : mix(a.clear[n], b.clear[n], share));
}

}  // namespace

std::vector<HalfForce> free_roof_cases(RoofTable table, double pitch, bool obstructed) {
  std::vector<HalfForce> cases;
  if (pitch < 0 || pitch > 45) return cases;
  if (pitch < 7.5) {
    const auto& row = obstructed ? kFlat.obstructed : kFlat.clear;
    cases.assign(row.begin(), row.end());
  } else if (table == RoofTable::two_slope) {
    add(cases, kTwoSlopes, pitch, obstructed);
  } else {
    add(cases, kLowEdge, pitch, obstructed);
    add(cases, kHighEdge, pitch, obstructed);
  }
  return cases;
}

RoofForce free_roof_along(double distance_in_heights, bool obstructed) {
  if (distance_in_heights <= 1) return obstructed ? RoofForce{0.5, -1.2} : RoofForce{0.8, -0.8};
  if (distance_in_heights <= 2) return obstructed ? RoofForce{0.5, -0.9} : RoofForce{0.5, -0.6};
  return obstructed ? RoofForce{0.3, -0.6} : RoofForce{0.3, -0.3};
}

}  // namespace dunnage
