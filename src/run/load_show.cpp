// SPDX-License-Identifier: MIT
#include "run/load_show.h"

#include <algorithm>

#include "check/load_faults.h"
#include "document/documents.h"
#include "load/plan_load.h"
#include "plan/plan_show.h"
#include "read/cross_check.h"
#include "read/kit_file.h"
#include "read/show_file.h"
#include "run/house_style.h"

namespace dunnage {

std::vector<std::string> document_names() {
  std::vector<std::string> out;
  for (const DocumentKind& kind : document_kinds()) out.emplace_back(kind.name);
  return out;
}

namespace {

Surroundings around(const std::filesystem::path& share, const std::string& kit_folder) {
  if (share.empty()) return {document_names()};
  return {document_names(), style_names(share, kit_folder, "words"), style_names(share, kit_folder, "stock")};
}

bool finish(Loaded& loaded, std::ostream& err) {
  err << render(loaded.diagnostics, loaded.sources);
  return !loaded.diagnostics.has_errors();
}

}  // namespace

bool load_show(const std::filesystem::path& file, Loaded& loaded, std::ostream& err) {
  auto show = read_show(file, loaded.sources, loaded.diagnostics);
  if (!show || show->kit_folder.value.empty()) return finish(loaded, err);
  auto kit = read_kit(kit_folder_of(*show, file), loaded.sources, loaded.diagnostics, show->kit_folder.place);
  if (!kit) return finish(loaded, err);
  loaded.show = std::move(*show);
  loaded.catalogue = make_catalogue(std::move(*kit));
  cross_check(loaded.catalogue, &loaded.show, loaded.diagnostics, around(loaded.share, loaded.catalogue.kit.folder));
  return finish(loaded, err);
}

bool load_kit(const std::filesystem::path& folder, Loaded& loaded, std::ostream& err) {
  auto kit = read_kit(folder, loaded.sources, loaded.diagnostics);
  if (!kit) return finish(loaded, err);
  loaded.catalogue = make_catalogue(std::move(*kit));
  cross_check(loaded.catalogue, nullptr, loaded.diagnostics, around(loaded.share, loaded.catalogue.kit.folder));
  return finish(loaded, err);
}

std::vector<NamedText> texts_of(const Sources& sources) {
  std::vector<NamedText> out;
  for (const SourceFile& file : sources.files()) out.emplace_back(file.name, file.text);
  return out;
}

Plan plan_whole(const Catalogue& catalogue, const Show& show) {
  Plan plan = plan_show(catalogue, show);
  Loading loading = plan_load(catalogue, show, plan);
  for (const VehicleLoading& vehicle : loading.vehicles)
    for (const LoadedPiece& piece : vehicle.pieces) {
      std::string& rides = plan.rows[static_cast<std::size_t>(piece.unit)].vehicle;
      if (rides.empty()) rides = vehicle.vehicle;
    }
  judge_loading(catalogue, show, plan, loading);
  plan.loading = std::move(loading);
  return plan;
}

int exit_code(const Plan& plan, const Findings& findings) {
  const bool open = std::any_of(findings.list.begin(), findings.list.end(), [](const Finding& f) {
    return f.outcome == Outcome::over || f.outcome == Outcome::not_checked;
  });
  return open || !plan.shortages.empty() ? 2 : 0;
}

}  // namespace dunnage
