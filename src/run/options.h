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
  std::filesystem::path show, out;  ///< out empty: a folder named after the show
  std::vector<std::string> only;
  std::string team;
  bool one_file = false;
  bool duplex = false;  ///< each recipient's part begins on a right-hand page
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
  std::filesystem::path kit, out;  ///< out empty: case-label.pdf
  std::filesystem::path since;     ///< another copy of the kit: only what is new or changed since
  std::vector<std::string> codes;  ///< of cases or units; empty: every unit
  std::string stock;               ///< empty: the house's
  int start_at = 1, copies = 1;
  std::pair<Paper, Paper> offset;  ///< right and down, of everything printed
  bool test_sheet = false;         ///< the stock's outline and rulers in place of labels
  std::optional<UnitSystem> units;
  std::vector<std::string> languages;
};
struct BeginOptions {
  std::filesystem::path folder;
  UnitSystem units = UnitSystem::metric;
};
struct ImportOptions {
  std::filesystem::path file, kit;
  std::string as = "case";                                   ///< section that a row becomes: "case" or "item"
  std::vector<std::pair<std::string, std::string>> columns;  ///< head, key
  std::vector<std::pair<std::string, std::string>> units;    ///< key, unit
  bool weights = false, dry_run = false;
};
struct TallyOptions {
  std::filesystem::path show, sheet;  ///< sheet empty: none is written
  std::vector<std::filesystem::path> out, loaded, back;
  bool json = false;
};
struct CompleteOptions {
  std::string shell;
};
struct ReckonOptions {
  std::string question;  ///< empty: the list
  std::vector<std::pair<std::string, std::string>> inputs;
  bool json = false;
};
struct ListOptions {
  std::string what;
  std::filesystem::path kit;
  bool csv = false, json = false;
};
struct HelpOptions {
  std::string topic;  ///< empty: the topics
};
/// Something to say and nothing to do: --help, --version.
struct SayOptions {
  std::string text;
};

using Options =
    std::variant<PrintOptions, CheckOptions, ClashOptions, WhyOptions, LabelOptions, ReckonOptions, ListOptions,
                 HelpOptions, BeginOptions, ImportOptions, TallyOptions, CompleteOptions, SayOptions>;

}  // namespace dunnage
