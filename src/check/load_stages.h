// SPDX-License-Identifier: MIT
// Axles, tongue, gross and sides of a vehicle at departure and after every stop.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/catalogue.h"
#include "model/finding.h"
#include "model/loading.h"
#include "model/plan.h"
#include "model/show.h"

namespace dunnage {

/// What a vehicle weighs where at each stage, and which of its plates or the train's that is above, in sentences.
struct StagedLoad {
  std::vector<LoadStage> stages;                 ///< departure, then each stop: of a van, also those of its trailer
  std::vector<std::pair<Length, Mass>> allowed;  ///< LoadingDetail::allowed
  std::vector<Sentence> missing;                 ///< what nobody typed, so that figures are absent
};
StagedLoad load_stages(const Catalogue& catalogue, const Show& show, const Plan& plan, const Loading& loading,
                       const VehicleLoading& vehicle);

/// The trailers behind a van that are loaded, or that the show lists.
std::vector<const Vehicle*> trailers_of(const Catalogue& catalogue, const Show& show, const Plan& plan,
                                        const Vehicle& van);
/// The stops that the show types for a vehicle.
std::vector<std::string> stops_of(const Show& show, const std::string& vehicle);
/// The stops of a van and of its trailer as one way: each once, both orders kept where they agree.
std::vector<std::string> one_way(const std::vector<std::string>& van, const std::vector<std::string>& trailer);

}  // namespace dunnage
