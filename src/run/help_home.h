// SPDX-License-Identifier: MIT
// Help on bringing a kit in and counting it home, and lists that go to other programs.
#pragma once

#include <string>

#include "run/commands.h"

namespace dunnage {

int help_import(Desk& desk);
int help_tally(Desk& desk);
int help_editor(Desk& desk);
int help_man(Desk& desk);
/// The kit's sections ("case", "item") as a spreadsheet.
int list_as_csv(const ListOptions& options, const std::string& section, Desk& desk);

}  // namespace dunnage
