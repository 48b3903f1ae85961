// SPDX-License-Identifier: MIT
#include "run/command_line.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "base/diagnostic.h"
#include "base/error.h"
#include "base/nearest.h"
#include "base/unit.h"
#include "run/command_table.h"
#include "run/commands.h"
#include "run/kit_commands.h"
#include "run/version.h"

namespace dunnage {

namespace {

/// Every command writes into its own options; `chosen` is the one that was called.
struct Arguments {
  PrintOptions print;
  CheckOptions check;
  ClashOptions clash;
  WhyOptions why;
  LabelOptions label;
  ReckonOptions reckon;
  ListOptions list;
  HelpOptions help;
  std::string paper, print_units, label_units, offset;
  std::vector<std::string> pairs;
  KitTyped kit;
};

/// The argument reader takes "010" for eight.
std::string without_zeros(std::string typed) {
  typed.erase(0, std::min(typed.find_first_not_of('0'), typed.size() - 1));
  return typed;
}

void add_print(CLI::App& app, Arguments& t) {
  CLI::App* c = app.add_subcommand("print", "Print the packet of a show: one PDF a sheet");
  c->add_option("SHOW", t.print.show, "the show file")->required();
  c->add_option("--out", t.print.out, "folder to put the paper in (default: named after the show)");
  c->add_option("--only", t.print.only, "only these sheets, by name: see `dunnage list docs`")
      ->delimiter(',')
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
  c->add_option("--for", t.print.team, "only what this team pulls");
  c->add_flag("--one-file", t.print.one_file, "all sheets in one PDF");
  c->add_flag("--duplex", t.print.duplex,
              "for printing on both sides: each recipient's part begins on a sheet of its own");
  c->add_option("--paper", t.paper, "a4 or letter (default: the house's)");
  c->add_option("--units", t.print_units, "metric or us (default: the house's)");
  c->add_option("--lang", t.print.languages, "language of the printed words, or two that stand on one sheet: en,es")
      ->delimiter(',')
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
}

void add_check(CLI::App& app, Arguments& t) {
  CLI::App* c = app.add_subcommand("check", "Read a show and say what goes, what is short, what is over a limit");
  c->add_option("SHOW", t.check.show, "the show file")->required();
  c->add_flag("--json", t.check.json, "the whole result for another program to read");
  c->add_option("--against", t.check.against, "an older copy of the show: say what its change changed in what goes");
}

void add_clash(CLI::App& app, Arguments& t) {
  CLI::App* c = app.add_subcommand("clash", "Say which cases two shows want on the same days");
  c->add_option("SHOW", t.clash.shows, "two show files or more, of one kit")->required()->expected(2, 1000);
}

void add_why(CLI::App& app, Arguments& t) {
  CLI::App* c = app.add_subcommand("why", "Why a case goes to a show, or stays; which vehicles suffice");
  c->add_option("SHOW", t.why.show, "the show file")->required();
  c->add_option("CODE", t.why.code, "the code of a case, of one unit or of a vehicle")->required();
}

void add_label(CLI::App& app, Arguments& t) {
  CLI::App* c = app.add_subcommand("label", "Print labels that live on the cases");
  c->add_option("KIT", t.label.kit, "the kit folder")->required();
  c->add_option("CODE", t.label.codes, "only these cases or units");
  c->add_option("--since", t.label.since, "another copy of the kit: only what is new or changed since");
  c->add_option("--stock", t.label.stock, "the label stock: see `dunnage list stocks`");
  c->add_option("--start-at", t.label.start_at, "first free label on a begun sheet, from 1")->transform(without_zeros);
  c->add_option("--copies", t.label.copies, "how many of each: a trunk wants one on each side")
      ->transform(without_zeros);
  c->add_option("--out", t.label.out, "the PDF to write (default: case-label.pdf)");
  c->add_option("--offset", t.offset, "shift everything right and down, for a printer that misses: \"1 mm, -0.5 mm\"");
  c->add_flag("--test-sheet", t.label.test_sheet, "print the stock's outline and rulers that show the offset");
  c->add_option("--units", t.label_units, "metric or us (default: the house's)");
  c->add_option("--lang", t.label.languages, "language of the printed words, or two: en,es")
      ->delimiter(',')
      ->take_all()
      ->expected(1)
      ->allow_extra_args(false);
}

void add_rest(CLI::App& app, Arguments& t) {
  CLI::App* reckon = app.add_subcommand("reckon", "Work out one figure, with its formula and source");
  reckon->add_option("QUESTION", t.reckon.question, "what to work out; without one, the list");
  reckon->add_option("KEY=VALUE", t.pairs, "what is known, for example mass=\"60 lb\"");
  reckon->add_flag("--json", t.reckon.json, "the answer for another program to read");
  CLI::App* list =
      app.add_subcommand("list", "List docs, stocks, units, rules, layouts, keys, or the cases and items of a kit");
  list->add_option("WHAT", t.list.what,
                   "docs, stocks, units, rules, layouts, cases, items, or kit-keys, show-keys, layout-keys, stock-keys")
      ->required();
  list->add_option("KIT", t.list.kit,
                   "the kit folder, for cases and items; for stocks and layouts, to list the house's own too");
  list->add_flag("--csv", t.list.csv, "cases or items as a spreadsheet, which import takes back unchanged");
  list->add_flag("--json", t.list.json, "keys as a JSON Schema, for an editor");
  CLI::App* help = app.add_subcommand("help", "Explain a topic: units, conditions, labels, layouts, safety");
  help->add_option("TOPIC", t.help.topic, "the topic; without one, the list");
}

std::vector<std::string> command_names(const CLI::App& app) {
  std::vector<std::string> out;
  for (const CLI::App* c : app.get_subcommands({})) out.push_back(c->get_name());
  return out;
}

std::vector<std::string> option_names(const CLI::App& command) {
  std::vector<std::string> out;
  for (const CLI::Option* option : command.get_options())
    for (const std::string& name : option->get_lnames()) out.push_back("--" + name);
  return out;
}

/// An option that is given with nothing, as a script does whose variable is empty, is no option left away.
void check_values(const CLI::App& command) {
  for (const CLI::Option* option : command.get_options()) {
    if (option->count() == 0 || option->get_items_expected_max() == 0) continue;
    for (const std::string& value : option->results())
      if (value.empty())
        throw UsageError(
            (option->get_positional() ? option->get_name(true, false) : "--" + option->get_lnames().front()) +
            " is given with nothing in it: write a value, or leave it away");
  }
}

[[noreturn]] void unknown(const std::string& kind, const std::string& typed, const std::vector<std::string>& known) {
  const std::string guess = did_you_mean(typed, known);
  throw UsageError("there is no " + kind + " \"" + typed + "\"" +
                   (guess.empty() ? "; there are " + listed(known) : ": " + guess));
}

/// The library notices a wrong option last, and blames another word for it: look first.
void check_words(const CLI::App& app, const std::vector<std::string>& arguments) {
  const std::string& first = arguments.front();
  if (!first.empty() && first[0] == '-') {
    if (first == "--help" || first == "-h" || first == "--version") return;
    unknown("option", first, {"--help", "--version"});
  }
  const auto commands = command_names(app);
  if (std::find(commands.begin(), commands.end(), first) == commands.end()) unknown("command", first, commands);
  const std::vector<std::string> known = option_names(*app.get_subcommand(first));
  for (std::size_t i = 1; i < arguments.size(); ++i) {
    const std::string word = arguments[i].substr(0, arguments[i].find('='));
    if (word.rfind("--", 0) != 0 || word == "--") continue;
    if (std::find(known.begin(), known.end(), word) == known.end()) unknown("option", word, known);
  }
}

template <class E>
std::optional<E> one_of(const std::string& option, const std::string& typed,
                        const std::vector<std::pair<std::string, E>>& words) {
  if (typed.empty()) return std::nullopt;
  std::vector<std::string> known;
  for (const auto& [word, value] : words) {
    if (word == typed) return value;
    known.push_back(word);
  }
  const std::string guess = did_you_mean(typed, known);
  throw UsageError(option + " is one of " + listed(known) + ", not \"" + typed + "\"" +
                   (guess.empty() ? "" : ": " + guess));
}

const std::vector<std::pair<std::string, UnitSystem>> unit_words = {{"metric", UnitSystem::metric},
                                                                    {"us", UnitSystem::us}};
const std::vector<std::pair<std::string, PaperSize>> paper_words = {{"a4", PaperSize::a4},
                                                                    {"letter", PaperSize::letter}};

void split_pairs(const std::vector<std::string>& typed, ReckonOptions& out) {
  for (const std::string& pair : typed) {
    const auto equals = pair.find('=');
    if (equals == std::string::npos)
      throw UsageError("\"" + pair + "\" is not key=value; write for example mass=\"60 lb\"");
    out.inputs.emplace_back(pair.substr(0, equals), pair.substr(equals + 1));
  }
}

/// "1 mm, -0.5 mm": right, then down.
std::pair<Paper, Paper> read_offset(const std::string& typed) {
  constexpr double most = 0.05;  // 50 mm: further off is no matter of feeding
  const std::size_t comma = typed.find(',');
  const auto length = [&](const std::string& text) {
    const ParsedQuantity parsed = parse_quantity(text, Measure::paper);
    if (!parsed.si || *parsed.si < -most || *parsed.si > most)
      throw UsageError("--offset is two lengths on paper of at most 50 mm, right and down, not \"" + typed +
                       "\": write --offset \"1 mm, -0.5 mm\"");
    return *parsed.si / unit::paper_mm.si * unit::paper_mm;
  };
  const std::string second = comma == std::string::npos ? std::string() : typed.substr(comma + 1);
  return {length(typed.substr(0, comma)), length(second)};
}

Options finish(const std::string& command, Arguments& t) {
  if (const auto options = finish_kit_command(command, t.kit)) return *options;
  if (command == "print") {
    t.print.paper = one_of("--paper", t.paper, paper_words);
    t.print.units = one_of("--units", t.print_units, unit_words);
    return t.print;
  }
  if (command == "check") {
    if (t.check.json && !t.check.against.empty()) throw UsageError("--against has no --json; ask for one of them");
    return t.check;
  }
  if (command == "clash") return t.clash;
  if (command == "why") return t.why;
  if (command == "label") {
    t.label.units = one_of("--units", t.label_units, unit_words);
    if (!t.offset.empty()) t.label.offset = read_offset(t.offset);
    if (t.label.start_at < 1) throw UsageError("--start-at counts labels from 1");
    if (t.label.copies < 1 || t.label.copies > 1000) throw UsageError("--copies is from 1 to 1000");
    return t.label;
  }
  if (command == "reckon") {
    split_pairs(t.pairs, t.reckon);
    return t.reckon;
  }
  if (command == "list") {
    if (t.list.csv && t.list.what != "cases" && t.list.what != "items") throw UsageError("--csv is of cases and items");
    if (t.list.json && !t.list.what.ends_with("-keys"))
      throw UsageError("--json is of kit-keys, show-keys, layout-keys and stock-keys");
    return t.list;
  }
  return t.help;
}

constexpr const char* about =
    "Dunnage: text goes in, one plan is made, every sheet of paper is printed from it.\n"
    "You write what you own (the kit) and what is going on (the show). Dunnage works out which cases go and why,\n"
    "what they weigh, what the wind and people's backs allow, and prints the paper for the people who carry it.";
constexpr const char* exits =
    "Ends with 0 when all is fine; 1 when a file or the command line is wrong (nothing is written);\n"
    "2 when it is done but something is over a limit, short, or could not be checked; 3 when the disk or a font fails.";

}  // namespace

namespace {

void build(CLI::App& app, Arguments& typed) {
  app.footer(exits);
  app.set_version_flag("--version", std::string("dunnage ") + version);
  app.require_subcommand(1);
  add_print(app, typed);
  add_check(app, typed);
  add_clash(app, typed);
  add_why(app, typed);
  add_label(app, typed);
  add_rest(app, typed);
  add_kit_commands(app, typed.kit);
}

OptionWords option_words(const CLI::Option& option) {
  const bool place = option.get_positional();
  return {place ? option.get_name(true, false) : "--" + option.get_lnames().front(), option.get_description(),
          option.get_items_expected_max() > 0, option.get_required(), option.get_items_expected_max() > 1};
}

/// `help print` says what `print --help` does, unless a topic is called so; empty: it is not asked.
std::string help_on_command(const CLI::App& app, const std::vector<std::string>& arguments) {
  if (arguments.size() != 2 || arguments.front() != "help") return {};
  const std::vector<std::string> topics = help_topics(), commands = command_names(app);
  const auto named = [&](const std::vector<std::string>& names) {
    return std::find(names.begin(), names.end(), arguments[1]) != names.end();
  };
  return named(commands) && !named(topics) ? app.get_subcommand(arguments[1])->help("dunnage") : std::string();
}

}  // namespace

CommandTable command_table() {
  Arguments typed;
  CLI::App app(about, "dunnage");
  build(app, typed);
  CommandTable table{about, exits, {}};
  for (const CLI::App* command : app.get_subcommands({})) {
    CommandWords words{command->get_name(), command->get_description(), {}, {}};
    for (const CLI::Option* option : command->get_options())
      if (!option->check_name("--help"))
        (option->get_positional() ? words.places : words.options).push_back(option_words(*option));
    table.commands.push_back(std::move(words));
  }
  return table;
}

Options read_command_line(const std::vector<std::string>& arguments) {
  Arguments typed;
  CLI::App app(about, "dunnage");
  build(app, typed);
  if (arguments.empty()) return SayOptions{app.help()};
  check_words(app, arguments);
  if (const std::string text = help_on_command(app, arguments); !text.empty()) return SayOptions{text};
  try {
    std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
    app.parse(reversed);
  } catch (const CLI::CallForHelp&) {
    const auto called = app.get_subcommands();
    return SayOptions{called.empty() ? app.help() : called.front()->help("dunnage")};
  } catch (const CLI::CallForVersion&) {
    return SayOptions{std::string("dunnage ") + version + "\n"};
  } catch (const CLI::ParseError& e) {
    throw UsageError(std::string(e.what()) + "; see `dunnage " + arguments.front() + " --help`");
  }
  check_values(*app.get_subcommands().front());
  return finish(app.get_subcommands().front()->get_name(), typed);
}

}  // namespace dunnage
