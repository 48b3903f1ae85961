// SPDX-License-Identifier: MIT
// `dunnage print`: a show file in, a packet of paper out.
#include <fmt/format.h>

#include <algorithm>

#include "base/error.h"
#include "base/nearest.h"
#include "check/meter.h"
#include "check/rules.h"
#include "export/pdf_file.h"
#include "layout/lay_out.h"
#include "layout/right_hand.h"
#include "read/faces_file.h"
#include "run/check_letters.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/on_screen.h"
#include "run/packet_sheets.h"
#include "run/progress.h"
#include "run/summary.h"

namespace dunnage {

namespace {

namespace fs = std::filesystem;

/// Sheets of an earlier run that this one did not make: still in the folder, and about an older show.
std::vector<std::string> older_sheets(const fs::path& folder, const std::vector<std::string>& written) {
  std::vector<std::string> known = sheet_names(), out;
  known.emplace_back("packet");
  for (const std::string& name : known) {
    const std::string file = name + ".pdf";
    if (std::find(written.begin(), written.end(), file) == written.end() && fs::exists(folder / file))
      out.push_back(file);
  }
  return out;
}

/// What was printed, for whom, on how many sheets.
void tell_written(const std::vector<Sheet>& sheets, const std::vector<std::string>& names, const fs::path& folder,
                  bool duplex, const Words& words, Desk& desk) {
  const auto counted = [](std::size_t n, const char* one) { return on_screen("{} {}{}", n, one, n == 1 ? "" : "s"); };
  std::size_t all = 0;
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    const std::size_t pages = sheets[i].pages;
    all += duplex ? (pages + 1) / 2 : pages;
    if (i > 0 && names[i] == names[i - 1])
      desk.out << on_screen("{:{}}  {} ({})\n", "", (folder / names[i]).string().size(),
                            on_one_line(sheets[i].document.title), counted(pages, "page"));
    else
      desk.out << on_screen("{}  {}, for {} ({})\n", (folder / names[i]).string(),
                            on_one_line(sheets[i].document.title), words(std::string(sheets[i].kind->hand)),
                            counted(pages, "page"));
  }
  desk.out << on_screen("{} of paper{}.\n", counted(all, "sheet"), duplex ? ", printed on both sides" : "");
  for (const Sheet& sheet : sheets)
    if (sheet.layout.most_pages > 0 && sheet.longest > sheet.layout.most_pages)
      desk.err << on_screen("note: {} takes {} pages, and its layout means it for {} at most (most_pages)\n",
                            sheet.kind->name, sheet.longest, sheet.layout.most_pages);
  for (const std::string& name : older_sheets(folder, names))
    desk.err << on_screen("note: {} is from an earlier run; this one did not make it\n", (folder / name).string());
}

void check_team(const PrintOptions& options, const Show& show) {
  if (options.team.empty()) return;
  std::vector<std::string> names;
  for (const Team& team : show.teams) names.push_back(team.name.value);
  if (std::find(names.begin(), names.end(), options.team) != names.end()) return;
  if (names.empty()) throw UsageError("the show has no teams; add [[team]] with a name and what it pulls");
  const std::string guess = did_you_mean(options.team, names);
  throw UsageError("the show has no team \"" + options.team + "\"" +
                   (guess.empty() ? "; it has " + on_screen("{}", fmt::join(names, ", ")) : ": " + guess));
}

/// One layout a sheet asked for, in their order. Ours and the house's are all read: the revision must not depend on
/// what is printed.
std::vector<Layout> layouts_for(const std::vector<const DocumentKind*>& kinds, Loaded& loaded, Diagnostics& style,
                                const Desk& desk) {
  std::vector<Layout> out(kinds.size());
  for (const DocumentKind& kind : document_kinds()) {
    const Layout layout =
        load_layout_for(desk.share, loaded.catalogue.kit.folder, std::string(kind.name), loaded.sources, style);
    for (std::size_t i = 0; i < kinds.size(); ++i)
      if (kinds[i] == &kind) out[i] = layout;
  }
  return out;
}

struct FileToBe {
  std::string name, bytes;
};

/// Lays a sheet out into `pages`.
void set_sheet(Sheet& sheet, PaperSize paper, bool duplex, const Faces& faces, std::vector<LayoutProblem>& problems,
               SealedPages& pages) {
  const auto [width, height] = sides(paper);
  const std::size_t before = pages.pages().size();
  RightHand right(pages, sheet.layout.across * sheet.layout.down > 1);
  PageSink& sink = duplex ? static_cast<PageSink&>(right) : pages;
  sheet.longest = lay_out(sheet.document, sheet.layout, width, height, faces, problems, sink);
  if (duplex) right.fill_up();
  sheet.pages = pages.pages().size() - before;
  sheet.document.sections = {};  // its words may fill more memory than its pages
}

/// Sheets to files, one a sheet or one for all; what does not fit is told in `style`. Each sheet's pages are made into
/// bytes before the next sheet's are set.
std::vector<FileToBe> make_files(std::vector<Sheet>& sheets, const PrintOptions& options, PaperSize paper,
                                 const Faces& faces, const std::string& title, Diagnostics& style, Progress& progress) {
  std::vector<LayoutProblem> problems;
  std::vector<FileToBe> files;
  SealedPages all;
  for (Sheet& sheet : sheets) {
    progress.step(on_one_line(sheet.document.title));
    SealedPages own;
    SealedPages& pages = options.one_file ? all : own;
    set_sheet(sheet, paper, options.duplex, faces, problems, pages);
    if (!options.one_file && problems.empty())
      files.push_back({std::string(sheet.kind->name) + ".pdf", pdf_bytes(own, faces)});
  }
  if (options.one_file && problems.empty()) files.push_back({"packet.pdf", pdf_bytes(all, faces, title)});
  progress.done();
  tell(problems, style);
  return files;
}

void write_files(std::vector<FileToBe> all, const fs::path& folder, const Sources& sources, Desk& desk) {
  for (const FileToBe& file : all) refuse_to_replace(folder / file.name, sources);
  FileSet files(folder, desk.err);
  for (FileToBe& file : all) files.add_paper(file.name, std::move(file.bytes));
  files.commit();
}

int refuse(const Diagnostics& style, const Loaded& loaded, Desk& desk) {
  desk.err << render(style, loaded.sources);
  return 1;
}

}  // namespace

int print_packet(const PrintOptions& options, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_show(options.show, loaded, desk.err)) return 1;
  House& house = loaded.catalogue.kit.house;
  const UnitSystem units = house.units = options.units.value_or(house.units);  // findings speak as the sheets do
  const PaperSize paper = options.paper.value_or(house.paper);
  check_team(options, loaded.show);
  const std::vector<const DocumentKind*> kinds = sheets_asked_for(options, house);

  Diagnostics style;
  const std::vector<Words> words =
      load_words_for(desk.share, options.languages, loaded.catalogue.kit, loaded.sources, style);
  std::vector<Layout> layouts = layouts_for(kinds, loaded, style, desk);
  const Faces faces(read_faces(desk.share / "fonts"));
  check_letters(loaded.catalogue, &loaded.show, names_of(words), faces, style);
  if (style.has_errors()) return refuse(style, loaded, desk);
  for (const std::string& told : strange_files(desk.share, loaded.catalogue.kit.folder))
    desk.err << on_screen("warning: {}\n", told);

  const Plan plan = plan_whole(loaded.catalogue, loaded.show);
  const Findings findings = check_all(loaded.catalogue, loaded.show, plan);
  const std::string how = on_screen("{} {} {}", units == UnitSystem::us, paper == PaperSize::a4, names_of(words));
  const std::string revision =
      revision_of(loaded.sources, how, loaded.show.revision ? loaded.show.revision->value : "");
  std::vector<Context> contexts;
  for (const Words& one : words)
    contexts.push_back({loaded.catalogue,
                        loaded.show,
                        plan,
                        findings,
                        one,
                        units,
                        std::string(meter_of(house)),
                        revision,
                        options.team,
                        {},
                        {}});
  std::vector<Sheet> sheets = make_sheets(kinds, layouts, contexts);
  const std::vector<Skipped>& skipped = contexts.front().skipped;
  if (sheets.empty()) throw UsageError("none of the sheets asked for would help anybody: " + skipped.front().reason);

  Progress progress(desk.bar, sheets.size());
  std::vector<FileToBe> files = make_files(sheets, options, paper, faces, loaded.show.title.value, style, progress);
  if (style.has_errors()) return refuse(style, loaded, desk);
  const fs::path folder = options.out.empty() ? fs::path(options.show.stem().string() + "-paper") : options.out;
  std::vector<std::string> names;  // one a sheet
  for (const Sheet& sheet : sheets)
    names.push_back(options.one_file ? "packet.pdf" : std::string(sheet.kind->name) + ".pdf");
  write_files(std::move(files), folder, loaded.sources, desk);
  tell_written(sheets, names, folder, options.duplex, words.front(), desk);
  for (const Skipped& one : skipped) desk.out << on_screen("skipped {}: {}\n", one.document, one.reason);
  desk.out << summary(loaded.catalogue, plan, findings, units);
  return exit_code(plan, findings);
}

}  // namespace dunnage
