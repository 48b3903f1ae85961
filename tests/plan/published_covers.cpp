// SPDX-License-Identifier: MIT
#include "published_covers.h"

#include <fmt/format.h>

#include <fstream>
#include <map>
#include <sstream>

#include "read/kit_file.h"
#include "read/show_file.h"
#include "small_kit.h"

namespace dunnage {

using namespace small;

namespace fs = std::filesystem;

namespace {

std::string item_code(std::size_t row) { return "I" + std::to_string(row); }
std::string case_code(std::size_t column) {
  const std::string n = std::to_string(column);
  return "C" + std::string(5 - n.size(), '0') + n;
}

/// Optima by file: the columns after `skip` fields.
std::map<std::string, std::vector<long>> optima(const fs::path& csv, std::size_t skip) {
  std::map<std::string, std::vector<long>> out;
  std::ifstream in(csv);
  std::string line;
  std::getline(in, line);
  while (std::getline(in, line)) {
    std::stringstream fields(line);
    std::string name, field;
    std::getline(fields, name, ',');
    for (std::size_t i = 1; i < skip; ++i) std::getline(fields, field, ',');
    while (std::getline(fields, field, ',')) out[name].push_back(std::stol(field));
  }
  return out;
}

Kit read_scp(const fs::path& file, std::size_t& rows) {
  std::ifstream in(file);
  std::size_t columns = 0;
  in >> rows >> columns;
  Kit kit;
  for (std::size_t r = 0; r < rows; ++r) add_item(kit, item_code(r));
  for (std::size_t c = 0; c < columns; ++c) {
    double cost = 0;
    in >> cost;
    add_case(kit, case_code(c), cost);
  }
  for (std::size_t r = 0; r < rows; ++r) {
    std::size_t n = 0, column = 0;
    in >> n;
    for (std::size_t i = 0; i < n; ++i) {
      in >> column;
      Content content;
      content.item = text(item_code(r));
      content.count = 1;
      kit.cases[column - 1].holds.push_back(content);
    }
  }
  return kit;
}

/// CPLEX LP text as these files use it: "+ 6 x2", ">= 10", "0 <= x3 <= 2".
void read_lp(const fs::path& file, Kit& kit, Show& show) {
  std::ifstream in(file);
  std::string line, section;
  std::size_t rows = 0;
  auto column = [](const std::string& x) { return static_cast<std::size_t>(std::stoul(x.substr(1))); };
  while (std::getline(in, line)) {
    std::stringstream words(line);
    std::string first;
    words >> first;
    if (first == "Minimize" || first == "Subject" || first == "Bounds" || first == "General" || first == "Generals" ||
        first == "End") {
      section = first;
      continue;
    }
    std::string plus, x;
    double a = 0;
    if (section == "Minimize") {
      while (words >> plus >> a >> x) add_case(kit, case_code(column(x)), a);
    } else if (section == "Subject") {
      const std::string item = item_code(rows++);
      add_item(kit, item);
      while (words >> plus) {
        if (plus == ">=") {
          words >> a;
          want(show, item, static_cast<int>(a));
          break;
        }
        words >> a >> x;
        Content content;
        content.item = text(item);
        content.count = static_cast<int>(a);
        kit.cases[column(x)].holds.push_back(content);
      }
    } else if (section == "Bounds") {
      std::string less;
      double high = 0;
      words >> less >> x >> less >> high;
      kit.cases[column(x)].count = static_cast<int>(high);
    }
  }
}

std::string kit_text(const Kit& kit) {
  std::string out = "[house]\nname = \"Instance\"\n";
  for (const Item& item : kit.items) out += fmt::format("[[item]]\ncode = \"{0}\"\nname = \"{0}\"\n", item.code.value);
  for (const Case& box : kit.cases) {
    out += fmt::format(
        "[[case]]\ncode = \"{0}\"\nname = \"{0}\"\nform = \"box\"\ncount = {1}\nweighed = \"{2} kg\"\nholds = [",
        box.code.value, box.count, box.weighed->value / unit::kilogram);
    for (const Content& content : box.holds)
      out += fmt::format("{{ item = \"{}\", count = {} }}, ", content.item.value, content.count);
    out += "]\n";
  }
  return out;
}

std::string show_text(const Show& show) {
  std::string out = "kit = \"kit\"\n[show]\ntitle = \"Instance\"\ndate = 2027-06-19\n";
  for (const Want& want : show.wants)
    out += fmt::format("[[want]]\nwhat = \"{}\"\ncount = {}\n", want.what.value, want.count);
  return out;
}

}  // namespace

std::vector<PublishedCover> published_covers(const fs::path& folder) {
  std::vector<PublishedCover> out;
  if (fs::exists(folder / "scp"))
    for (const auto& [file, best] : optima(folder / "scp" / "optima.csv", 3)) {
      if (!fs::exists(folder / "scp" / file)) continue;
      for (const int times : {1, 2})
        out.push_back({file + " k" + std::to_string(times), folder / "scp" / file, times,
                       best[static_cast<std::size_t>(times - 1)]});
    }
  if (fs::exists(folder / "multicover"))
    for (const auto& [file, best] : optima(folder / "multicover" / "optima.csv", 1))
      out.push_back({file, folder / "multicover" / file, 0, best[0]});
  return out;
}

Plan plan_published(const PublishedCover& cover, double effort, Diagnostics& diagnostics) {
  Kit built;
  Show wanted;
  if (cover.times > 0) {
    std::size_t rows = 0;
    built = read_scp(cover.file, rows);
    for (std::size_t r = 0; r < rows; ++r) want(wanted, item_code(r), cover.times);
  } else {
    read_lp(cover.file, built, wanted);
  }
  Sources sources;
  auto kit = read_kit_texts("kit", {{"kit/kit.toml", kit_text(built)}}, sources, diagnostics);
  const auto show = read_show_text("show.toml", show_text(wanted), sources, diagnostics);
  if (!kit || !show || diagnostics.has_errors()) return {};
  return plan_show(make_catalogue(std::move(*kit)), *show, effort);
}

}  // namespace dunnage
