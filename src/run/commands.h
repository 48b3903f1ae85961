// SPDX-License-Identifier: MIT
// One function a command: each a recipe that calls the verbs in order and returns the exit code.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

#include "run/options.h"

namespace dunnage {

/// Where a command finds its data and says its say.
struct Desk {
  std::filesystem::path share;  ///< layouts, words, stocks, fonts
  std::ostream& out;            ///< text for people: what a terminal would obey is spelled out
  std::ostream& data;           ///< text for programs, whose bytes are its own
  std::ostream& err;            ///< as `out`
  std::ostream* bar = nullptr;  ///< a person is watching: a bar shows how far a long run is
};

int print_packet(const PrintOptions& options, Desk& desk);
int check_show(const CheckOptions& options, Desk& desk);
int clash_shows(const ClashOptions& options, Desk& desk);
int say_why(const WhyOptions& options, Desk& desk);
int print_labels(const LabelOptions& options, Desk& desk);
int reckon_figure(const ReckonOptions& options, Desk& desk);
int list_things(const ListOptions& options, Desk& desk);
int help_topic(const HelpOptions& options, Desk& desk);
std::vector<std::string> help_topics();
int begin_kit(const BeginOptions& options, Desk& desk);
int import_table(const ImportOptions& options, Desk& desk);
int tally_show(const TallyOptions& options, Desk& desk);
int list_keys(const ListOptions& options, Desk& desk);

}  // namespace dunnage
