// SPDX-License-Identifier: MIT
// `dunnage clash`: which cases two shows want on the same days.
#include <fmt/format.h>

#include <filesystem>
#include <memory>

#include "base/error.h"
#include "compare/clash.h"
#include "plan/plan_show.h"
#include "run/commands.h"
#include "run/load_show.h"
#include "run/on_screen.h"

namespace dunnage {

namespace {

void check_comparable(const std::vector<std::unique_ptr<Loaded>>& shows, const ClashOptions& options) {
  namespace fs = std::filesystem;
  for (std::size_t i = 0; i < shows.size(); ++i) {
    if (!shows[i]->show.date)
      throw UsageError(options.shows[i].string() + " has no date; add date = 2027-06-19 to its [show]");
    std::error_code error;
    for (std::size_t j = 0; j < i; ++j)
      if (fs::equivalent(options.shows[i], options.shows[j], error))
        throw UsageError(options.shows[i].string() + " is named twice; a show cannot clash with itself");
    if (i > 0 && !fs::equivalent(shows[i]->catalogue.kit.folder, shows[0]->catalogue.kit.folder, error))
      throw UsageError(options.shows[i].string() + " names another kit than " + options.shows[0].string() +
                       "; only shows of one kit can clash");
  }
}

}  // namespace

int clash_shows(const ClashOptions& options, Desk& desk) {
  std::vector<std::unique_ptr<Loaded>> shows;
  bool good = true;
  for (const std::filesystem::path& file : options.shows) {
    shows.push_back(std::make_unique<Loaded>());
    good = load_show(file, *shows.back(), desk.err) && good;
  }
  if (!good) return 1;
  check_comparable(shows, options);
  std::vector<Plan> plans;
  for (const auto& show : shows) plans.push_back(plan_show(show->catalogue, show->show));
  std::vector<Planned> planned;
  for (std::size_t i = 0; i < shows.size(); ++i) planned.push_back({&shows[i]->catalogue, &shows[i]->show, &plans[i]});
  const std::vector<Clash> found = clashes(planned);
  for (const Clash& clash : found)
    desk.out << on_screen("{} ({}): {} and {} both want it from {} to {}; {}\n", clash.code, clash.name,
                          shows[clash.first]->show.title.value, shows[clash.second]->show.title.value, clash.from.iso(),
                          clash.to.iso(),
                          clash.instead.empty() ? "nothing else owned would do" : clash.instead + " would do");
  if (found.empty()) desk.out << "No case is wanted by two of these shows at the same time.\n";
  return found.empty() ? 0 : 2;
}

}  // namespace dunnage
