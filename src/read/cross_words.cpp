// SPDX-License-Identifier: MIT
// Free words: nothing defines them but their use, so a slip in one keeps gear at home in silence. Each is known from
// somewhere, a list, the kit or the show, or told with the nearest. Told as a warning: a show, a site or a house may
// have a word of its own, which [house] words makes known.
#include <algorithm>
#include <iterator>
#include <set>

#include "base/nearest.h"
#include "read/cross_rooms.h"

namespace dunnage {
namespace {

using Known = std::set<std::string>;

/// What the program asks a kit for by itself, as far as no show names it.
constexpr const char* asked_by_itself[] = {"mic-cable",  "pad",          "drinking-water", "extinguisher",
                                           "ballast",    "cover-wheels", "cover-feet",     "tape-carpet",
                                           "tape-stage", "tape-asphalt", "tape-concrete",  "tape-finished"};
constexpr const char* floors[] = {"grass", "asphalt", "concrete", "finished", "carpet", "stage", "cables"};
constexpr const char* grounds[] = {"concrete", "asphalt", "paving", "gravel", "sand", "soil", "clay", "grass"};

class WordCheck {
 public:
  WordCheck(const References& refer, const Show* show) : refer_(refer), kit_(refer.catalogue().kit), show_(show) {
    for (const Text& word : kit_.house.words) own_.insert(word.value);
  }

  void floors_of_rules_and_show();
  void consoles_and_sources();
  void words_served();
  void words_of_site();
  void names_by_language(const std::vector<std::string>& languages);

 private:
  template <class Take>  // Take(fact, word)
  void each_rule_word(const Take& take) const {
    for (const Case& box : kit_.cases)
      for (const ConditionTable& table : box.goes.any)
        for (const Condition& condition : table.all)
          for (const auto& value : condition.values)
            if (const auto* text = std::get_if<std::string>(&value)) take(condition.fact, Text{*text, condition.place});
  }
  /// Told unless known; where `near_alone`, only what is nearly a word that is known.
  void tell(const Text& typed, const Known& known, const std::string& cause, bool near_alone = false) const {
    if (typed.value.empty() || known.contains(typed.value) || own_.contains(typed.value)) return;
    const std::vector<std::string> words(known.begin(), known.end());
    std::string hint = did_you_mean(typed.value, words);
    if (hint.empty() && near_alone) return;
    if (hint.empty()) hint = "known are: " + listed(words) + "; a word of your own: add it to words = [...] in [house]";
    refer_.diagnostics().warning(typed.place, cause, hint);
  }
  Known asked() const;

  const References& refer_;
  const Kit& kit_;
  const Show* show_;
  Known own_;
};

void add(Known& known, const Maybe<std::string>& word) {
  if (word) known.insert(word->value);
}

/// Rules are held against the list, the house's tapes and the show; the show against those and the rules.
void WordCheck::floors_of_rules_and_show() {
  Known known(std::begin(floors), std::end(floors)), of_show, of_rules;
  for (const auto& entry : refer_.catalogue().items_by_word)
    if (entry.first.starts_with("tape-")) known.insert(entry.first.substr(5));
  std::vector<Text> typed;
  if (show_ && show_->floor) typed.push_back(*show_->floor);
  for (const Run& run : show_ ? show_->runs : std::vector<Run>())
    for (const Crossing& part : run.over)
      if (part.floor) typed.push_back(*part.floor);
  for (const Text& floor : typed) of_show.insert(floor.value);
  std::vector<Text> ruled;
  each_rule_word([&](const std::string& fact, const Text& word) {
    if (fact == "floor") ruled.push_back(word);
  });
  for (const Case& box : kit_.cases)
    for (const Per& per : box.per)
      if (per.floor) ruled.push_back(*per.floor);
  for (const Text& floor : ruled) of_rules.insert(floor.value);
  Known for_rules = known, for_show = known;
  for_rules.insert(of_show.begin(), of_show.end());
  for_show.insert(of_rules.begin(), of_rules.end());
  for (const Text& floor : ruled)
    tell(floor, for_rules, "no show and no sheet knows the floor " + in_quotes(floor.value));
  for (const Text& floor : typed)
    tell(floor, for_show, "no rule and no sheet knows the floor " + in_quotes(floor.value));
}

/// What plays is known from the show alone, and no show has all: only what looks like a slip is told.
void WordCheck::consoles_and_sources() {
  Known consoles, served, sources;
  if (show_) add(consoles, show_->console);
  for (const auto* things : {&refer_.catalogue().cases_by_word, &refer_.catalogue().items_by_word})
    for (const auto& entry : *things) served.insert(entry.first);
  if (show_)
    for (const Input& input : show_->inputs) sources.insert(input.source.value);
  each_rule_word([&](const std::string& fact, const Text& word) {
    if (fact == "console" && !served.contains(word.value)) {
      Known near = consoles;
      near.insert(served.begin(), served.end());
      const std::string hint = did_you_mean(word.value, {near.begin(), near.end()});
      if (!near.contains(word.value) && !own_.contains(word.value))
        refer_.diagnostics().warning(word.place,
                                     "no show and nothing in the kit knows the console " + in_quotes(word.value),
                                     hint.empty() ? "of another show: add it to words = [...] in [house]" : hint);
    }
    if (fact == "source") tell(word, sources, "no input of the show is called " + in_quotes(word.value), true);
  });
}

/// Every word that something asks for: the program, the kit's needs, spares and walls, the show.
Known WordCheck::asked() const {
  Known out(std::begin(asked_by_itself), std::end(asked_by_itself));
  for (const Case& box : kit_.cases) {
    for (const Need& need : box.needs) out.insert(need.code.value);
    add(out, box.spare_for);
  }
  for (const Structure& structure : kit_.structures) add(out, structure.wall);
  if (!show_) return out;
  add(out, show_->console);
  for (const Want& want : show_->wants) out.insert(want.what.value);
  for (const Input& input : show_->inputs)
    for (const auto* word : {&input.pickup, &input.stand}) add(out, *word);
  for (const Mix& mix : show_->mixes)
    for (const auto* word : {&mix.wedge, &mix.pack, &mix.speaker, &mix.prop}) add(out, *word);
  for (const Run& run : show_->runs) {
    out.insert(run.cable.value);
    for (const Crossing& part : run.over)
      if (part.floor) out.insert("tape-" + part.floor->value);
  }
  for (const Circuit& circuit : show_->circuits)
    for (const CircuitLoad& load : circuit.feeds) out.insert(load.code.value);
  for (const Use& use : show_->uses)
    for (const Carried& carried : use.carries) out.insert(carried.code.value);
  return out;
}

/// A word is another's slip where one letter differs, and no digit: DI-1 and DI-2 are two things.
bool is_slip(const std::string& word, const std::string& of) {
  const auto without_digits = [](std::string text) {
    std::erase_if(text, [](char c) { return c >= '0' && c <= '9'; });
    return text;
  };
  return word.size() > 4 && edit_distance(word, of) == 1 && without_digits(word) != without_digits(of);
}

/// A kit may serve what no show has asked for yet; what nothing asks for and is nearly what something does is a slip.
void WordCheck::words_served() {
  const Known known = asked();
  // What is meant is served by something, else the asking is the slip and told; and a word is no slip of a code.
  Known meant(std::begin(asked_by_itself), std::end(asked_by_itself));
  std::copy_if(known.begin(), known.end(), std::inserter(meant, meant.end()),
               [&](const std::string& word) { return refer_.catalogue().knows(word); });
  for (const Item& item : kit_.items) meant.erase(item.code.value);
  for (const Case& box : kit_.cases) meant.erase(box.code.value);
  std::set<std::string> told;
  const auto check = [&](const std::vector<Text>& words) {
    for (const Text& word : words) {
      if (known.contains(word.value) || own_.contains(word.value) || !told.insert(word.value).second) continue;
      const auto near =
          std::find_if(meant.begin(), meant.end(), [&](const auto& one) { return is_slip(word.value, one); });
      if (near != meant.end())
        refer_.diagnostics().warning(word.place, "nothing asks for " + in_quotes(word.value),
                                     "did you mean " + in_quotes(*near) + "?");
    }
  };
  for (const Item& item : kit_.items) check(item.serves);
  for (const Case& box : kit_.cases) check(box.serves);
  for (const Structure& structure : kit_.structures)
    if (structure.wall && !refer_.catalogue().knows(structure.wall->value)) {
      Known served;
      for (const auto* things : {&refer_.catalogue().cases_by_word, &refer_.catalogue().items_by_word})
        for (const auto& entry : *things) served.insert(entry.first);
      tell(*structure.wall, served, "nothing in the kit is or serves as " + in_quotes(structure.wall->value), true);
    }
}

void WordCheck::words_of_site() {
  if (!show_) return;
  Known things = asked(), ground(std::begin(grounds), std::end(grounds));
  for (const auto* served : {&refer_.catalogue().cases_by_word, &refer_.catalogue().items_by_word})
    for (const auto& entry : *served) things.insert(entry.first);
  for (const SiteHas& has : show_->site.has)
    tell(has.what, things, "nothing asks for " + in_quotes(has.what.value) + " and nothing in the kit serves as it",
         true);
  for (const TestedFriction& tested : kit_.house.friction) ground.insert(tested.ground);
  if (kit_.house.stake) ground.insert(kit_.house.stake->ground);
  const auto check = [&](const Maybe<std::string>& typed) {
    if (typed) tell(*typed, ground, "no rule knows the ground " + in_quotes(typed->value));
  };
  check(show_->site.ground);
  for (const Use& use : show_->uses) check(use.ground);
  for (const Supply& supply : show_->supplies)
    tell(supply.kind, {"generator", "mains"}, "no rule knows the supply " + in_quotes(supply.kind.value), true);
}

void WordCheck::names_by_language(const std::vector<std::string>& languages) {
  if (languages.empty()) return;
  const auto check = [&](const std::map<std::string, Text>& names) {
    for (const auto& [language, name] : names) {
      if (std::find(languages.begin(), languages.end(), language) != languages.end()) continue;
      const std::string near = did_you_mean(language, languages);
      refer_.diagnostics().warning(name.place, "no sheet is printed in " + in_quotes(language),
                                   near.empty() ? "there are printed words in: " + listed(languages) : near);
    }
  };
  for (const Item& item : kit_.items) check(item.names);
  for (const Case& box : kit_.cases) check(box.names);
}

}  // namespace

void check_free_words(const References& refer, const Show* show, const std::vector<std::string>& languages) {
  WordCheck check(refer, show);
  check.floors_of_rules_and_show();
  check.consoles_and_sources();
  check.words_served();
  check.words_of_site();
  check.names_by_language(languages);
}

}  // namespace dunnage
