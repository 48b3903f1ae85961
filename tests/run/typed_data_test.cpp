// SPDX-License-Identifier: MIT
// Every name, note, place and time that somebody typed is found on the paper, as poppler reads it back with the box of
// each word: the words of one text stand next to each other, along a line or in lines below each other.
#include <toml++/toml.h>

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <cstdlib>
#include <map>
#include <sstream>

#include "../shell.h"
#include "base/unit.h"
#include "plan/plan_show.h"
#include "program.h"
#include "run/load_show.h"
#include "run/packet_sheets.h"
#include "stress_show.h"

using namespace dunnage;
namespace fs = std::filesystem;

namespace {

struct Seen {
  double left, top, right, bottom;
  int page;
};

double number_after(const std::string& line, const std::string& key) {
  return std::strtod(line.c_str() + line.find(key) + key.size(), nullptr);
}

std::string plain_text(std::string text) {
  for (const auto& [from, to] : std::map<std::string, std::string>{
           {"&amp;", "&"}, {"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&apos;", "'"}})
    for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
      text.replace(at, from.size(), to);
  return text;
}

/// The words of all PDFs of a folder, by what they say.
class ReadBack {
 public:
  explicit ReadBack(const fs::path& folder) {
    for (const auto& entry : fs::directory_iterator(folder))
      if (entry.path().extension() == ".pdf")
        read(shell("pdftotext -bbox-layout " + entry.path().string() + " - 2>&1").out);
  }

  /// Punctuation that a sheet puts after a text is no part of it.
  bool says(const std::string& text) const {
    std::vector<std::string> words;
    std::istringstream in(text);
    for (std::string word; in >> word;)
      for (const std::string& part : parts_of(word)) words.push_back(part);
    std::map<std::size_t, double> ends;  // where the text so far may end, and how far left it began
    for (const std::size_t at : places_of(words.front())) ends[at] = all_[at].left;
    for (std::size_t w = 1; w < words.size() && !ends.empty(); ++w) {
      std::map<std::size_t, double> next;
      const std::vector<std::size_t> places = places_of(words[w]);  // in the order of the pages
      for (const auto& [before, left] : ends) {
        const int page = all_[before].page;
        auto at = std::lower_bound(places.begin(), places.end(), page,
                                   [&](std::size_t one, int p) { return all_[one].page < p; });
        for (; at != places.end() && all_[*at].page <= page + 1; ++at)
          if (follows(all_[before], all_[*at], left)) next[*at] = std::min(left, all_[*at].left);
      }
      ends = std::move(next);
    }
    return !ends.empty();
  }

 private:
  static std::string bare(std::string word) {
    while (word.size() > 1 && std::string_view(",.;:)").find(word.back()) != std::string_view::npos) word.pop_back();
    return word.size() > 1 && word.front() == '(' ? word.substr(1) : word;
  }

  /// A line may end after a hyphen.
  static std::vector<std::string> parts_of(const std::string& word) {
    std::vector<std::string> out;
    for (std::size_t from = 0; from < word.size();) {
      const std::size_t end = std::min(word.find('-', from), word.size() - 1) + 1;
      out.push_back(word.substr(from, end - from));
      from = end;
    }
    return out;
  }

  std::vector<std::size_t> places_of(const std::string& word) const {
    const auto found = by_text_.find(bare(word));
    return found == by_text_.end() ? std::vector<std::size_t>() : found->second;
  }

  void read(const std::string& xml) {
    std::istringstream in(xml);
    for (std::string line; std::getline(in, line);) {
      if (line.find("<page ") != std::string::npos) ++page_;
      const std::size_t begin = line.find("<word ");
      if (begin == std::string::npos) continue;
      const std::size_t open = line.find('>', begin) + 1;
      Seen seen{number_after(line, "xMin=\""), number_after(line, "yMin=\""), number_after(line, "xMax=\""),
                number_after(line, "yMax=\""), page_};
      const std::string word = plain_text(line.substr(open, line.find("</word>") - open));
      const double letter = (seen.right - seen.left) / static_cast<double>(word.size());
      for (const std::string& part : parts_of(word)) {
        seen.right = seen.left + letter * static_cast<double>(part.size());
        by_text_[bare(part)].push_back(all_.size());
        all_.push_back(seen);
        seen.left = seen.right;
      }
    }
  }

  /// The next word stands to the right, a space away, or begins a line below.
  static bool follows(const Seen& before, const Seen& next, double left) {
    if (next.page == before.page + 1)
      return std::abs(next.left - left) < 1;  // a row taller than its page goes on at its edge
    if (before.page != next.page) return false;
    const double height = before.bottom - before.top;
    if (std::abs(next.bottom - before.bottom) < 0.3 * height)
      return next.left > before.right - 0.2 * height && next.left < before.right + height;
    return next.top > before.top + 0.5 * height && next.top < before.top + 2.2 * height && next.left < before.right &&
           next.left < left + 25 * height;
  }

  std::vector<Seen> all_;
  std::map<std::string, std::vector<std::size_t>> by_text_;
  int page_ = 0;
};

/// Texts that are worked with and not printed as they stand, with the reason.
const std::map<std::string, const char*> worked_with = {
    {"kit", "where the kit lies"},
    {"use.ballast.at", "said as ahead of the middle and behind it"},
    {"load.vehicle", "its name is printed"},
    {"load.takes", "where a case rides"},
    {"team.vehicle", "who pulls what"},
    {"show.input_order", "how the input list is grouped"},
    {"use.structure", "its name is printed"},
    {"use.under", "part of a formula"},
    {"use.carries.area", "part of a formula"},
    {"use.hung.area", "part of a formula"},
    {"run.over.rise", "part of a check"},
    {"run.over.wheel", "part of a check"},
    {"site.has.amount", "counted among the water"},
    {"run.cable", "the cable's name or length is printed"},
    {"forecast.temperature", "printed with its degree sign"},
    {"circuit.cable", "its name is printed"},
    {"way.rise", "part of a check"},
    {"input.pickup", "its name is printed"},
};

/// Texts of a file by the keys that lead to them, in the order typed.
void collect(const toml::node& node, const std::string& path, std::vector<std::pair<std::string, std::string>>& out) {
  if (const toml::table* table = node.as_table())
    for (const auto& [key, value] : *table) collect(value, path + "." + std::string(key.str()), out);
  if (const toml::array* list = node.as_array())
    for (const toml::node& one : *list) collect(one, path, out);
  if (const auto text = node.value<std::string>(); text && node.is_string()) out.emplace_back(path.substr(1), *text);
}

/// What the kit says of the units that go.
std::vector<std::pair<std::string, std::string>> typed_of_cases(const Loaded& loaded, const Plan& plan) {
  std::vector<std::pair<std::string, std::string>> out;
  for (const PlanRow& row : plan.rows) {
    if (!row.goes) continue;
    const Case& box = loaded.catalogue.case_at(row.unit);
    const std::string& code = loaded.catalogue.units[static_cast<std::size_t>(row.unit)].code;
    for (const std::string& text : {code, box.name.value, box.looks, row.home})
      if (!text.empty()) out.emplace_back(code, text);
    for (const Content& content : box.holds)
      if (const Item* item = loaded.catalogue.item(content.item.value)) out.emplace_back(code, item->name.value);
  }
  return out;
}

bool is_quantity(const std::string& text) {
  const auto& units = unit_names();
  return std::any_of(units.begin(), units.end(),
                     [&](const UnitName& unit) { return parse_quantity(text, unit.measure).si.has_value(); });
}

/// `quantities`: those too, where the show is typed as the house prints.
void check_printed(const std::string& show, bool quantities, const std::vector<std::string>& how) {
  Loaded loaded;
  std::ostringstream told;
  REQUIRE(load_show(show, loaded, told));
  auto typed = typed_of_cases(loaded, plan_show(loaded.catalogue, loaded.show));
  collect(toml::parse_file(show), "", typed);
  CHECK(typed.size() > 200);
  std::map<std::string, std::string> once;  // by text; each is looked for once
  for (const auto& [key, text] : typed)
    if (!worked_with.count(key) && (quantities || !is_quantity(text))) once.emplace(text, key);

  const Folder folder("typed");
  std::string all;
  for (const std::string& name : sheet_names())
    if (name != "case-label") all += (all.empty() ? "" : ",") + name;
  std::vector<std::string> arguments = {"print", show, "--out", (folder.path / "out").string(), "--only", all};
  arguments.insert(arguments.end(), how.begin(), how.end());
  const Ran ran = program(arguments);
  INFO(ran.err);
  REQUIRE(ran.code != 1);
  const ReadBack paper(folder.path / "out");
  std::string lost;
  for (const auto& [text, key] : once)
    if (!paper.says(text)) lost += key + ": " + text + "\n";
  CHECK(lost == "");
}

}  // namespace

TEST_CASE("every text typed for the outdoor example is found on its paper") {
  check_printed(example("outdoor-evening.toml"), true, {"--paper", "letter"});
  check_printed(example("outdoor-evening.toml"), true, {"--paper", "a4", "--lang", "en,es"});
}

TEST_CASE("every text typed for the indoor example is found on its paper") {
  check_printed(example("indoor-afternoon.toml"), false, {"--paper", "letter", "--lang", "fr"});
  check_printed(example("indoor-afternoon.toml"), false, {"--paper", "a4"});
}

TEST_CASE("every text typed for a show as large and wordy as any is found on its paper") {
  const Folder folder("stress-typed");
  const std::string show = write_stress_show(folder);
  check_printed(show, false, {"--paper", "a4", "--lang", "en,es"});
}
