// SPDX-License-Identifier: MIT
// Text in, messages out: every mistake of a kit and of a show on one screen.
#pragma once

#include <string>
#include <vector>

#include "read/cross_check.h"
#include "read/kit_file.h"
#include "read/show_file.h"
#include "read/toml_file.h"

namespace dunnage {

inline const std::string small_house = "[house]\nname = \"The house\"\n";
/// A kit that is in order, to which a test adds what it is about.
inline const std::string small_kit = small_house +
                                     "[[item]]\ncode = \"MIC\"\nname = \"Vocal mic\"\nserves = [\"vocal\"]\n"
                                     "[[case]]\ncode = \"BOX\"\nname = \"Mic box\"\nform = \"box\"\n"
                                     "holds = [{ item = \"MIC\", count = 2 }]\n";
inline const std::string small_show = "kit = \"kit\"\n[show]\ntitle = \"Evening\"\ndate = 2027-06-19\n";

/// What is told of kit files k1.toml, k2.toml ...
inline std::string told_of_kit(const std::vector<std::string>& texts, const Surroundings& around = {}) {
  Sources sources;
  Diagnostics diagnostics;
  std::vector<NamedText> files;
  for (const std::string& text : texts) files.emplace_back("k" + std::to_string(files.size() + 1) + ".toml", text);
  if (auto kit = read_kit_texts("kit", files, sources, diagnostics))
    cross_check(make_catalogue(*kit), nullptr, diagnostics, around);
  return render(diagnostics, sources);
}

/// What is told of a kit and the show show.toml.
inline std::string told(const std::string& kit_text, const std::string& show_text) {
  Sources sources;
  Diagnostics diagnostics;
  const auto show = read_show_text("show.toml", show_text, sources, diagnostics);
  const auto kit = read_kit_texts("kit", {{"k1.toml", kit_text}}, sources, diagnostics);
  if (show && kit) cross_check(make_catalogue(*kit), &*show, diagnostics);
  return render(diagnostics, sources);
}

}  // namespace dunnage
