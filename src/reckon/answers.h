// SPDX-License-Identifier: MIT
// The functions that answer, one for each row of the table of questions.
#pragma once

#include <string>
#include <vector>

#include "model/answer.h"
#include "reckon/inputs.h"

namespace dunnage {

using Problems = std::vector<std::string>;

void answer_lift(const Inputs& in, Answer& out, Problems& problems);
void answer_lift_team(const Inputs& in, Answer& out, Problems& problems);
void answer_wind_pressure(const Inputs& in, Answer& out, Problems& problems);
void answer_canopy_ballast(const Inputs& in, Answer& out, Problems& problems);
void answer_gust_from_ballast(const Inputs& in, Answer& out, Problems& problems);
void answer_tower_tip(const Inputs& in, Answer& out, Problems& problems);
void answer_sliding(const Inputs& in, Answer& out, Problems& problems);
void answer_heat_index(const Inputs& in, Answer& out, Problems& problems);
void answer_wind_chill(const Inputs& in, Answer& out, Problems& problems);
void answer_wbgt(const Inputs& in, Answer& out, Problems& problems);
void answer_water(const Inputs& in, Answer& out, Problems& problems);
void answer_lightning(const Inputs& in, Answer& out, Problems& problems);
void answer_voltage_drop(const Inputs& in, Answer& out, Problems& problems);
void answer_circuit(const Inputs& in, Answer& out, Problems& problems);
void answer_generator(const Inputs& in, Answer& out, Problems& problems);
void answer_noise_dose(const Inputs& in, Answer& out, Problems& problems);
void answer_ramp(const Inputs& in, Answer& out, Problems& problems);
void answer_vehicle_axles(const Inputs& in, Answer& out, Problems& problems);
void answer_tongue(const Inputs& in, Answer& out, Problems& problems);
void answer_tie_downs(const Inputs& in, Answer& out, Problems& problems);
void answer_unit(const Inputs& in, Answer& out, Problems& problems);

}  // namespace dunnage
