// SPDX-License-Identifier: MIT
// `dunnage print`: a show file in, a packet of paper out.
#include <fmt/format.h>

#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "check/rules.h"
#include "document/documents.h"
#include "export/pdf_file.h"
#include "layout/lay_out.h"
#include "plan/plan_show.h"
#include "read/faces_file.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/summary.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

std::vector<std::string> all_names() {
  std::vector<std::string> out;
  for (const DocumentKind& kind : document_kinds()) out.emplace_back(kind.name);
  return out;
}

/// The sheets to make, in the order of the list of sheets: those asked for, else the house's packet, else all
/// that belong to one.
std::vector<const DocumentKind*> chosen(const PrintOptions& options, const House& house) {
  for (const std::string& name : options.only) {
    const auto known = all_names();
    if (std::find(known.begin(), known.end(), name) != known.end()) continue;
    const std::string guess = did_you_mean(name, known);
    throw UsageError("there is no sheet \"" + name + "\"" +
                     (guess.empty() ? "; there are " + fmt::format("{}", fmt::join(known, ", ")) : ": " + guess));
  }
  std::vector<const DocumentKind*> out;
  for (const DocumentKind& kind : document_kinds()) {
    const auto named = [&](const auto& list) {
      return std::any_of(list.begin(), list.end(), [&](const std::string& n) { return n == kind.name; });
    };
    const bool wanted = !options.only.empty() ? named(options.only) : !house.packet.empty() ? named(house.packet) : kind.in_packet;
    if (wanted) out.push_back(&kind);
  }
  return out;
}

struct Sheet {
  const DocumentKind* kind;
  Layout layout;
  Document document;
  Pages pages;
};

/// Makes every sheet but the cover first, since the cover tells what the packet holds.
std::vector<Sheet> make_documents(std::vector<const DocumentKind*> kinds, std::vector<Layout>& layouts, Context& context) {
  std::vector<Sheet> sheets(kinds.size());
  std::vector<bool> made(kinds.size(), false);
  for (const bool cover : {false, true})
    for (std::size_t i = 0; i < kinds.size(); ++i) {
      if ((kinds[i]->name == "cover") != cover) continue;
      Made result = kinds[i]->make(context);
      if (const Skipped* skipped = std::get_if<Skipped>(&result)) {
        context.skipped.push_back(*skipped);
        continue;
      }
      sheets[i] = {kinds[i], std::move(layouts[i]), std::move(std::get<Document>(result)), {}};
      if (!cover) context.made.push_back(sheets[i].document.title);
      made[i] = true;
    }
  std::vector<Sheet> out;
  for (std::size_t i = 0; i < sheets.size(); ++i)
    if (made[i]) out.push_back(std::move(sheets[i]));
  return out;
}

/// Sheets of an earlier run that this one did not make: still in the folder, and about an older show.
std::vector<std::string> older_sheets(const fs::path& folder, const std::vector<std::string>& written) {
  std::vector<std::string> known = all_names(), out;
  known.emplace_back("packet");
  for (const std::string& name : known) {
    const std::string file = name + ".pdf";
    if (std::find(written.begin(), written.end(), file) == written.end() && fs::exists(folder / file)) out.push_back(file);
  }
  return out;
}

void write_packet(const std::vector<Sheet>& sheets, const PrintOptions& options, const fs::path& folder,
                  const Faces& faces, const std::string& title, Desk& desk) {
  FileSet files(folder);
  std::vector<std::string> written;
  std::vector<Pages> all;
  for (const Sheet& sheet : sheets) {
    if (options.one_file) {
      all.push_back(sheet.pages);
      continue;
    }
    written.push_back(std::string(sheet.kind->name) + ".pdf");
    files.add(written.back(), pdf_bytes({sheet.pages}, faces, {}));
  }
  if (options.one_file) {
    written.emplace_back("packet.pdf");
    files.add(written.back(), pdf_bytes(all, faces, {title, true}));
  }
  files.commit();
  for (const std::string& name : files.removed()) desk.err << "removed " << name << ", left by a run that was cut short\n";
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const std::string& name = options.one_file ? written.front() : written[i];
    desk.out << fmt::format("{}  {} ({} {})\n", (folder / name).string(), sheets[i].document.title,
                            sheets[i].pages.pages.size(), sheets[i].pages.pages.size() == 1 ? "page" : "pages");
  }
  for (const std::string& name : older_sheets(folder, written))
    desk.err << "note: " << (folder / name).string() << " is from an earlier run; this one did not make it\n";
}

void check_team(const PrintOptions& options, const Show& show) {
  if (options.team.empty()) return;
  std::vector<std::string> names;
  for (const Team& team : show.teams) names.push_back(team.name.value);
  if (std::find(names.begin(), names.end(), options.team) != names.end()) return;
  const std::string guess = did_you_mean(options.team, names);
  throw UsageError("the show has no team \"" + options.team + "\"" +
                   (guess.empty() ? "; it has " + fmt::format("{}", fmt::join(names, ", ")) : ": " + guess));
}

std::string meter_of(const House& house, UnitSystem units) {
  if (!house.meter.empty()) return house.meter;
  return units == UnitSystem::us ? "mph" : "m/s";
}

}  // namespace

int print_packet(const PrintOptions& options, Desk& desk) {
  Loaded loaded;
  if (!load_show(options.show, loaded, desk.err)) return 1;
  House& house = loaded.catalogue.kit.house;
  const UnitSystem units = options.units.value_or(house.units);
  house.units = units;  // findings speak in the units of the sheets
  const PaperSize paper = options.paper.value_or(house.paper);
  check_team(options, loaded.show);
  const std::vector<const DocumentKind*> kinds = chosen(options, house);

  Diagnostics style;
  const Words words = load_words_for(desk.share, options.languages, house, loaded.sources, style);
  std::vector<Layout> layouts;
  for (const DocumentKind* kind : kinds)
    layouts.push_back(load_layout_for(desk.share, loaded.catalogue.kit.folder, std::string(kind->name), loaded.sources, style));
  const Faces faces(read_faces(desk.share / "fonts"));
  if (style.has_errors()) {
    desk.err << render(style, loaded.sources);
    return 1;
  }

  const Plan plan = plan_show(loaded.catalogue, loaded.show);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  const std::string how = fmt::format("{} {} {}", units == UnitSystem::us, paper == PaperSize::a4, words.language);
  const std::string letter = loaded.show.revision ? loaded.show.revision->value : "";
  Context context{loaded.catalogue, loaded.show, plan, findings, words, units, meter_of(house, units),
                  revision_of(loaded.sources, how, letter), options.team, {}, {}};
  std::vector<Sheet> sheets = make_documents(kinds, layouts, context);
  if (sheets.empty()) throw UsageError("none of the sheets asked for would help anybody: " + context.skipped.front().reason);

  const auto [width, height] = sides(paper);
  std::vector<LayoutProblem> problems;
  for (Sheet& sheet : sheets) sheet.pages = lay_out(sheet.document, sheet.layout, width, height, faces, problems);
  tell(problems, style);
  if (style.has_errors()) {
    desk.err << render(style, loaded.sources);
    return 1;
  }
  const fs::path folder = options.out.empty() ? fs::path(options.show.stem().string() + "-paper") : options.out;
  write_packet(sheets, options, folder, faces, loaded.show.title.value, desk);
  for (const Skipped& skipped : context.skipped) desk.out << "skipped " << skipped.document << ": " << skipped.reason << "\n";
  desk.out << summary(loaded.catalogue, plan, findings, units);
  return exit_code(plan, findings);
}

}  // namespace dunnage
