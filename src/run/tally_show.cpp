// SPDX-License-Identifier: MIT
// `dunnage tally`: what was scanned, held against what the show sends.
#include <fmt/format.h>

#include "base/error.h"
#include "check/rules.h"
#include "compare/tally.h"
#include "document/return_sheet.h"
#include "export/pdf_file.h"
#include "export/tally_json.h"
#include "layout/lay_out.h"
#include "read/csv_text.h"
#include "read/faces_file.h"
#include "read/scans.h"
#include "run/commands.h"
#include "run/file_set.h"
#include "run/house_style.h"
#include "run/load_show.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

std::string seen_words(const Seen& seen) {
  return on_screen("{} in list {}{} ({})",
                   seen.stage == Stage::out      ? "going out"
                   : seen.stage == Stage::loaded ? "loaded"
                                                 : "back",
                   seen.list, seen.time.empty() ? "" : ", " + seen.time, seen.place.words());
}

class Report {
 public:
  Report(const Catalogue& c, const Tally& tally) : c_(c), tally_(tally) {}

  std::string text() {
    out_ = on_screen("{}: {} of {} are in, from {} scans\n", name(tally_.stage),
                     tally_.expected.size() - tally_.missing.size(), tally_.expected.size(), tally_.scans);
    missing();
    head("not clear, and not counted", tally_.unclear.size());
    for (const UnknownCode& one : tally_.unclear)
      line(one.units.empty() ? on_screen("{}: \"{}\": did you mean \"{}\"?", one.place.words(), one.typed, one.nearest)
                             : on_screen("{}: \"{}\" is one of {}: which?", one.place.words(), one.typed,
                                         fmt::join(one.units, ", ")));
    head("extra: not in the plan", tally_.extra.size());
    for (std::size_t i = 0; i < tally_.extra.size(); ++i)
      line(unit(tally_.extra[i]) + ": seen " + seen_words(tally_.extra_seen[i]));
    head("seen in two lists", tally_.twice.size());
    for (const auto& [one, places] : tally_.twice) {
      std::string where;
      for (const Seen& seen : places) where += (where.empty() ? "" : "; ") + seen_words(seen);
      line(unit(one) + ": " + where);
    }
    head("not ours", tally_.not_ours.size());
    for (const UnknownCode& one : tally_.not_ours) line(on_screen("{}: \"{}\"", one.place.words(), one.typed));
    head("notes", tally_.notes.size());
    for (const Scan& scan : tally_.notes) line(on_screen("{}: {} ({})", scan.typed, scan.note, scan.place.words()));
    return out_;
  }

 private:
  void head(const char* title, std::size_t count) {
    if (count > 0) out_ += on_screen("{} ({}):\n", title, count);
  }
  void line(const std::string& text) { out_ += "  " + shown(text) + "\n"; }
  std::string unit(int one) const {
    return c_.units[static_cast<std::size_t>(one)].code + "  " + c_.case_at(one).name.value;
  }

  void missing() {
    head("missing", tally_.missing.size());
    for (const MissingUnit& one : tally_.missing)
      line(on_screen("{}: {}{}{}", unit(one.unit), one.last ? "last seen " + seen_words(*one.last) : "never seen",
                     one.pulled_by.empty() ? "" : "; pulled by " + one.pulled_by,
                     one.like < 0 ? ""
                                  : "; " + c_.units[static_cast<std::size_t>(one.like)].code +
                                        ", one like it, was seen and was not in the plan"));
  }

  const Catalogue& c_;
  const Tally& tally_;
  std::string out_;
};

/// Every list of a stage that was named. A list that cannot be read is told.
void read_lists(const std::vector<std::filesystem::path>& files, Stage stage, Loaded& loaded, Diagnostics& told,
                std::vector<Scan>& scans, std::vector<Stage>& stages) {
  for (const std::filesystem::path& file : files) {
    const auto bytes = load_bytes(file.string(), loaded.sources, told);
    if (!bytes) continue;
    stages.push_back(stage);
    for (Scan& scan : read_scans(file.string(), *bytes, stage, loaded.catalogue, loaded.sources, told))
      scans.push_back(std::move(scan));
  }
}

/// The return sheet with what was scanned. False where its layout has mistakes, which are told.
bool write_sheet(const TallyOptions& options, Loaded& loaded, const Plan& plan, const Findings& findings,
                 const Tally& result, Desk& desk) {
  const House& house = loaded.catalogue.kit.house;
  Diagnostics style;
  const std::string revision =
      revision_of(loaded.sources, "tally", loaded.show.revision ? loaded.show.revision->value : "");
  const std::vector<Words> words = load_words_for(desk.share, {}, loaded.catalogue.kit, loaded.sources, style);
  const Layout layout = load_layout_for(desk.share, loaded.catalogue.kit.folder, "return-sheet", loaded.sources, style);
  const Faces faces(read_faces(desk.share / "fonts"));
  if (!style.has_errors()) {
    Context context{loaded.catalogue, loaded.show, plan, findings, words.front(), house.units, house.meter,
                    revision,         {},          {},   {},       &result};
    const Made made = return_sheet(context);
    if (const auto* skipped = std::get_if<Skipped>(&made))
      throw UsageError("there is no return sheet: " + skipped->reason);
    const auto [width, height] = sides(house.paper);
    std::vector<LayoutProblem> problems;
    const Pages pages = lay_out(std::get<Document>(made), layout, width, height, faces, problems);
    tell(problems, style);
    if (!style.has_errors()) {
      refuse_to_replace(options.sheet, loaded.sources);
      FileSet files(options.sheet.parent_path(), desk.err);
      files.add_paper(options.sheet.filename().string(), pdf_bytes({pages}, faces, {}));
      files.commit();
      return true;
    }
  }
  desk.err << render(style, loaded.sources);
  return false;
}

}  // namespace

int tally_show(const TallyOptions& options, Desk& desk) {
  Loaded loaded(desk.share);
  if (!load_show(options.show, loaded, desk.err)) return 1;
  Diagnostics told;
  std::vector<Scan> scans;
  std::vector<Stage> stages;
  read_lists(options.out, Stage::out, loaded, told, scans, stages);
  read_lists(options.loaded, Stage::loaded, loaded, told, scans, stages);
  read_lists(options.back, Stage::back, loaded, told, scans, stages);
  if (stages.empty() && !told.has_errors())
    throw UsageError("name at least one list of scans: --out, --loaded or --back FILE");
  desk.err << render(told, loaded.sources);
  if (told.has_errors()) return 1;
  const Plan plan = plan_whole(loaded.catalogue, loaded.show);
  const Tally result = tally(loaded.catalogue, plan, scans, stages);
  if (!options.sheet.empty() &&
      !write_sheet(options, loaded, plan, check_all(loaded.catalogue, loaded.show, plan), result, desk))
    return 1;
  desk.out << (options.json ? tally_json(loaded.catalogue, result) : Report(loaded.catalogue, result).text());
  if (!options.sheet.empty() && !options.json)
    desk.out << on_screen("{}  return sheet, filled in\n", options.sheet.string());
  return result.missing.empty() ? 0 : 2;
}

}  // namespace dunnage
