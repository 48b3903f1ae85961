// SPDX-License-Identifier: MIT
// One key that a kit or a show may have, as its reader knows it: what help, the schema for editors and the
// columns of a spreadsheet are made from.
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace dunnage {

struct Key {
  std::string name;  ///< "weighed"
  std::string kind;  ///< "text", "mass", "whole number", "section"; empty: anything
  bool needed = false;
  bool or_list = false;             ///< one value, or a list of such
  std::optional<double> low, high;  ///< of a whole number or a number, inclusive
  std::vector<std::string> words;   ///< the only texts allowed; empty: any
  std::vector<Key> inner;           ///< of sections and of entries in braces
};

}  // namespace dunnage
