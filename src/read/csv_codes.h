// SPDX-License-Identifier: MIT
// Codes for rows that have none, or have one that the kit would refuse.
#pragma once

#include <map>
#include <set>
#include <string>

#include "model/kit.h"

namespace dunnage {

class CodeMaker {
 public:
  /// Codes of the kit as it stands are taken.
  explicit CodeMaker(const Kit& kit);

  bool taken(const std::string& code) const { return taken_.count(code) > 0; }
  void take(const std::string& code) { taken_.insert(code); }
  /// "FOH 1" -> "FOH-1", "12" -> "C12"; empty where nothing can be made of it.
  static std::string mended(const std::string& typed);
  /// A free code from words: "Front of house trunk" -> "FRON-HO".
  std::string from_words(const std::string& name);
  /// The item of that name or code, ignoring case; empty: none.
  std::string item(const std::string& name) const;
  void know_item(const std::string& name, const std::string& code);

 private:
  std::set<std::string> taken_;
  std::map<std::string, std::string> items_;  ///< by name in lower case
};

}  // namespace dunnage
