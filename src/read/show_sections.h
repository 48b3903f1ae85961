// SPDX-License-Identifier: MIT
// The sections of a show file, one room for each group.
#pragma once

#include "model/show.h"
#include "read/table_reader.h"

namespace dunnage {

inline constexpr int most_count = 9999;  ///< of anything that a show asks for

/// [show]: what is known about the show as a whole.
void read_show_facts(TableReader& section, Show& show);
/// [site], [[time]], [forecast], [[place]], [[team]].
void read_site_sections(TableReader& top, Show& show);
/// [[use]]: structures that stand, with ballast and what they carry.
void read_use_sections(TableReader& top, Show& show);
/// [[want]], [[input]], [[mix]], [[run]]: what the show asks for.
void read_demand_sections(TableReader& top, Show& show);
/// [[supply]], [[circuit]], [[load]].
void read_power_and_load_sections(TableReader& top, Show& show);
void read_people_sections(TableReader& top, Show& show);

}  // namespace dunnage
