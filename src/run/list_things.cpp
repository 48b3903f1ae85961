// SPDX-License-Identifier: MIT
// `dunnage list` and `dunnage help`: what there is, each list read off the table that the program itself uses.
#include <fmt/format.h>

#include "base/error.h"
#include "base/nearest.h"
#include "base/range.h"
#include "base/unit.h"
#include "check/rules.h"
#include "document/documents.h"
#include "model/facts.h"
#include "run/command_table.h"
#include "run/commands.h"
#include "run/help_home.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

using Lister = int (*)(const ListOptions&, Desk&);

Words english(Desk& desk) {
  Sources sources;
  Diagnostics diagnostics;
  return load_words_for(desk.share, {"en"}, Kit{}, sources, diagnostics).front();
}

/// A kit need not have layouts of its own, but it must be there.
void need_folder(const std::filesystem::path& kit) {
  std::error_code ignored;
  if (!kit.empty() && !std::filesystem::is_directory(kit, ignored))
    throw UsageError("there is no folder " + in_quotes(kit.string()));
}

int list_docs(const ListOptions&, Desk& desk) {
  const Words words = english(desk);
  for (const DocumentKind& kind : document_kinds())
    desk.out << on_screen("{:<14} {}, for {}{}\n", kind.name, words(std::string(kind.title)),
                          words(std::string(kind.hand)), kind.in_packet ? "" : " (only when asked for)");
  return 0;
}

int list_stocks(const ListOptions& options, Desk& desk) {
  Sources sources;
  Diagnostics diagnostics;
  need_folder(options.kit);
  const std::string kit = options.kit.string();
  for (const std::string& name : style_names(desk.share, kit, "stock")) {
    const Stock stock = load_stock_for(desk.share, kit, name, sources, diagnostics);
    desk.out << on_screen("{:<14} {}, {} dpi\n", stock.name, stock.says, stock.dpi);
  }
  desk.err << render(diagnostics, sources);
  return diagnostics.has_errors() ? 1 : 0;
}

int list_units(const ListOptions&, Desk& desk) {
  Measure last{};
  bool first = true;
  for (const UnitName& unit : unit_names()) {
    if (!first && unit.measure != last) desk.out << '\n';
    if (first || unit.measure != last) desk.out << on_screen("{}:", name(unit.measure));
    desk.out << ' ' << unit.symbol;
    last = unit.measure;
    first = false;
  }
  desk.out << '\n';
  return 0;
}

int list_rules(const ListOptions&, Desk& desk) {
  for (const Rule& rule : rules())
    desk.out << on_screen("{}\n  covers: {}\n  formula: {}\n  source: {} ({})\n  leaves out: {}\n  who decides: {}\n",
                          name(rule.name), rule.covers, rule.formula, rule.source, rule.edition, rule.leaves_out,
                          rule.decides);
  return 0;
}

int list_layouts(const ListOptions& options, Desk& desk) {
  need_folder(options.kit);
  for (const std::string& name : style_names(desk.share, options.kit.string(), "")) desk.out << name << '\n';
  desk.out << "A file of the same name in the kit's own folder layouts/ is used instead.\n";
  return 0;
}

int list_cases(const ListOptions& options, Desk& desk) {
  if (options.kit.empty()) throw UsageError("name the kit folder: dunnage list cases KIT");
  if (options.csv) return list_as_csv(options, "case", desk);
  Loaded loaded(desk.share);
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  const Catalogue& c = loaded.catalogue;
  for (std::size_t u = 0; u < c.units.size(); ++u) {
    const UnitMass mass = c.mass_of(static_cast<int>(u));
    const std::string printed = print(mass.mass, c.kit.house.units, Rounding::up).text();
    desk.out << on_screen("{:<12} {:<36} {:>9}{} {}\n", c.units[u].code, c.case_at(static_cast<int>(u)).name.value,
                          mass.known ? printed : "not given", mass.known && mass.estimated ? " est." : "     ",
                          c.units[u].home);
  }
  return 0;
}

int list_items(const ListOptions& options, Desk& desk) {
  if (options.kit.empty()) throw UsageError("name the kit folder: dunnage list items KIT");
  if (options.csv) return list_as_csv(options, "item", desk);
  Loaded loaded(desk.share);
  if (!load_kit(options.kit, loaded, desk.err)) return 1;
  for (const Item& item : loaded.catalogue.kit.items)
    desk.out << on_screen("{:<12} {}\n", item.code.value, item.name.value);
  return 0;
}

struct List {
  Lister list;
  bool of_kit = false;  ///< KIT may follow
};

const std::vector<std::pair<std::string, List>> listers = {
    {"docs", {list_docs}},         {"stocks", {list_stocks, true}},   {"units", {list_units}},
    {"rules", {list_rules}},       {"layouts", {list_layouts, true}}, {"cases", {list_cases, true}},
    {"items", {list_items, true}}, {"kit-keys", {list_keys}},         {"show-keys", {list_keys}},
    {"layout-keys", {list_keys}},  {"stock-keys", {list_keys}}};

int help_units(Desk& desk) {
  desk.out << "Write every quantity with its unit, in quotes: mass = \"27 lb\", size = \"29 x 21 x 18 in\", \"6 ft 4 "
              "in\".\n\n";
  list_units({}, desk);
  desk.out << "\nRanges; a value outside is taken for a slip of the hand:\n";
  for (const Range* range : range::all()) desk.out << on_screen("  {:<34} {}\n", range->name, words(*range));
  return 0;
}

int help_conditions(Desk& desk) {
  desk.out << "goes = \"always\", \"asked\" (only when something asks for it), or a table of facts of the show, all of "
              "which must\n"
              "hold; in a list of tables any one will do. A list of values: any of them. NAME_from and NAME_to: at "
              "least, at most.\n\n";
  for (const FactKind& kind : fact_kinds()) desk.out << on_screen("  {:<12} stated by {}\n", kind.name, kind.state_it);
  return 0;
}

int help_labels(Desk& desk) {
  desk.out << "dunnage label KIT prints a label for every unit; name codes to print only those. Print at 100 %, never "
              "\"fit to\n"
              "page\". --test-sheet prints the stock's outlines and rulers: the number at the cut edge is the --offset "
              "of that\n"
              "printer. --copies 2 or 4 for a trunk that wants a label on each side.\n\nStocks:\n";
  return list_stocks({}, desk);
}

int help_layouts(Desk& desk) {
  desk.out << "Each sheet has a layout file that says where things stand and how large. Copy one into the folder "
              "layouts/ of your\n"
              "kit and change it there; the same name takes the place of ours. A mistake in it is told with its "
              "line.\n\nLayouts:\n";
  return list_layouts({}, desk);
}

int help_safety(Desk& desk) {
  desk.out << "Every figure is for planning. It never replaces the maker's limits, local codes, the authority, or a "
              "competent\n"
              "person on the spot. What was not given is printed as \"not checked\".\n\nRules:\n";
  return list_rules({}, desk);
}

const std::vector<std::pair<std::string, int (*)(Desk&)>> topics = {
    {"units", help_units},     {"conditions", help_conditions}, {"labels", help_labels},
    {"layouts", help_layouts}, {"safety", help_safety},         {"import", help_import},
    {"tally", help_tally},     {"editor", help_editor},         {"man", help_man}};

/// `more` are further words that one may have meant.
template <class T>
const T& pick(const std::vector<std::pair<std::string, T>>& table, const std::string& word, const std::string& what,
              std::vector<std::string> more = {}) {
  std::vector<std::string> names = std::move(more);
  for (const auto& [name, value] : table) {
    if (name == word) return value;
    names.push_back(name);
  }
  const std::string guess = did_you_mean(word, names);
  throw UsageError(what + " \"" + word + "\"" +
                   (guess.empty() ? "; there are " + on_screen("{}", fmt::join(names, ", ")) : ": " + guess));
}

}  // namespace

int list_things(const ListOptions& options, Desk& desk) {
  const List& list = pick(listers, options.what, "there is no list of");
  if (!options.kit.empty() && !list.of_kit)
    throw UsageError("the list of " + options.what + " is the same for every kit: leave " +
                     in_quotes(options.kit.string()) + " away");
  return list.list(options, desk);
}

std::vector<std::string> help_topics() {
  std::vector<std::string> out;
  for (const auto& topic : topics) out.push_back(topic.first);
  return out;
}

int help_topic(const HelpOptions& options, Desk& desk) {
  if (options.topic.empty()) {
    desk.out << on_screen("dunnage help TOPIC, where TOPIC is one of: {}\n", fmt::join(help_topics(), " "))
             << "dunnage help COMMAND or dunnage COMMAND --help explains one command.\n";
    return 0;
  }
  std::vector<std::string> commands;
  for (const CommandWords& command : command_table().commands) commands.push_back(command.name);
  return pick(topics, options.topic, "there is no help on", commands)(desk);
}

}  // namespace dunnage
