// SPDX-License-Identifier: MIT
// What each command was asked to do.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "model/kit.h"

namespace dunnage {

struct PrintOptions {
  std::filesystem::path show, out;          ///< out empty: a folder named after the show
  std::vector<std::string> only;
  std::string team;
  bool one_file = false;
  bool duplex = false;                      ///< each recipient's part begins on a right-hand page
  std::optional<PaperSize> paper;
  std::optional<UnitSystem> units;
  std::vector<std::string> languages;
};
struct CheckOptions {
  std::filesystem::path show, against;
  bool json = false;
};
struct ClashOptions {
  std::vector<std::filesystem::path> shows;
};
struct WhyOptions {
  std::filesystem::path show;
  std::string code;
};
struct LabelOptions {
  std::filesystem::path kit, out;           ///< out empty: case-label.pdf
  std::vector<std::string> codes;           ///< of cases or units; empty: every unit
  std::string stock;                        ///< empty: the house's
  int start_at = 1, copies = 1;
  std::pair<Paper, Paper> offset;           ///< right and down, of everything printed
  bool test_sheet = false;                  ///< the stock's outline and rulers in place of labels
  std::optional<UnitSystem> units;
  std::vector<std::string> languages;
};
struct ReckonOptions {
  std::string question;                     ///< empty: the list
  std::vector<std::pair<std::string, std::string>> inputs;
  bool json = false;
};
struct ListOptions {
  std::string what;
  std::filesystem::path kit;
};
struct HelpOptions {
  std::string topic;                        ///< empty: the topics
};
/// Something to say and nothing to do: --help, --version.
struct SayOptions {
  std::string text;
};

using Options = std::variant<PrintOptions, CheckOptions, ClashOptions, WhyOptions, LabelOptions, ReckonOptions, ListOptions,
                             HelpOptions, SayOptions>;

}  // namespace dunnage
