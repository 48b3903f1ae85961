// SPDX-License-Identifier: MIT
#include "run/kit_commands.h"

#include <CLI/CLI.hpp>

#include "base/error.h"
#include "base/nearest.h"
#include "base/unit.h"

namespace dunnage {

namespace {

/// "HEAD=KEY"; the last equals sign parts them, since a head may have one.
std::vector<std::pair<std::string, std::string>> pairs_of(const std::string& option,
                                                          const std::vector<std::string>& typed) {
  std::vector<std::pair<std::string, std::string>> out;
  for (const std::string& pair : typed) {
    const auto equals = pair.rfind('=');
    if (equals == std::string::npos || equals == 0)
      throw UsageError(option + " wants two words with = between, not \"" + pair + "\": write " +
                       (option == "--unit" ? "--unit weighed=lb" : "--column \"Box no=code\""));
    out.emplace_back(pair.substr(0, equals), pair.substr(equals + 1));
  }
  return out;
}

void check_units(const std::vector<std::pair<std::string, std::string>>& units) {
  std::vector<std::string> known;
  for (const UnitName& unit : unit_names()) known.emplace_back(unit.symbol);
  for (const auto& [key, unit] : units) {
    if (std::find(known.begin(), known.end(), unit) != known.end()) continue;
    const std::string guess = did_you_mean(unit, known);
    throw UsageError("there is no unit \"" + unit + "\"" +
                     (guess.empty() ? "; see `dunnage list units`" : ": " + guess));
  }
}

const std::string& one_of_these(const std::string& option, const std::string& typed,
                                const std::vector<std::string>& known) {
  if (std::find(known.begin(), known.end(), typed) != known.end()) return typed;
  std::string all;
  for (const std::string& word : known) all += (all.empty() ? "" : ", ") + word;
  const std::string guess = did_you_mean(typed, known);
  throw UsageError(option + " is one of " + all + ", not \"" + typed + "\"" + (guess.empty() ? "" : ": " + guess));
}

}  // namespace

void add_kit_commands(CLI::App& app, KitTyped& t) {
  CLI::App* begin = app.add_subcommand("begin", "Write a small kit and show to change into your own");
  begin->add_option("DIR", t.begin.folder, "a new folder, or an empty one")->required();
  begin->add_option("--units", t.units, "metric or us (default: metric)");
  CLI::App* import = app.add_subcommand("import", "Take a spreadsheet, or readings of a scale, into a kit");
  import->add_option("FILE.csv", t.import.file, "the spreadsheet, saved as comma-separated text")->required();
  import->add_option("--kit", t.import.kit, "the kit folder; made if need be")->required();
  import->add_option("--as", t.as, "what its rows are: cases or items (default: cases)");
  import->add_option("--column", t.columns, "HEAD=KEY: the key that a column means, or HEAD= for none")
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  import->add_option("--unit", t.column_units, "KEY=UNIT: of numbers that have no unit")
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  import->add_flag("--weights", t.import.weights, "codes and masses: written as weighed into the kit as it stands");
  import->add_flag("--dry-run", t.import.dry_run, "say what would be written, and write nothing");
  CLI::App* tally =
      app.add_subcommand("tally", "Hold scans against what a show sends: what is missing, extra or not ours");
  tally->add_option("SHOW", t.tally.show, "the show file")->required();
  tally->add_option("--out", t.tally.out, "a list of what was pulled (once for each list)")
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  tally->add_option("--loaded", t.tally.loaded, "a list of what was loaded to come home")
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  tally->add_option("--back", t.tally.back, "a list of what is back on the shelf")
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  tally->add_option("--sheet", t.tally.sheet, "write the return sheet, filled in, as this PDF");
  tally->add_flag("--json", t.tally.json, "the result for another program to read");
  CLI::App* complete = app.add_subcommand("complete", "Print the completion script of a shell");
  complete->add_option("SHELL", t.complete.shell, "bash, zsh or fish")->required();
}

std::optional<Options> finish_kit_command(const std::string& command, KitTyped& t) {
  if (command == "begin") {
    t.begin.units = one_of_these("--units", t.units, {"metric", "us"}) == "us" ? UnitSystem::us : UnitSystem::metric;
    return t.begin;
  }
  if (command == "import") {
    if (t.import.weights && t.as != "cases")
      throw UsageError("--weights takes codes and masses, whatever they are of: leave --as away");
    t.import.as = one_of_these("--as", t.as, {"cases", "items"}) == "items" ? "item" : "case";
    t.import.columns = pairs_of("--column", t.columns);
    t.import.units = pairs_of("--unit", t.column_units);
    check_units(t.import.units);
    return t.import;
  }
  if (command == "tally") return t.tally;
  if (command == "complete") {
    one_of_these("SHELL", t.complete.shell, {"bash", "zsh", "fish"});
    return t.complete;
  }
  return std::nullopt;
}

}  // namespace dunnage
