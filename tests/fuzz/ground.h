// SPDX-License-Identifier: MIT
// What a fuzzed text is held against: the outdoor example, planned and checked once.
#pragma once

#include <cassert>
#include <sstream>
#include <string>
#include <vector>

#include "check/rules.h"
#include "document/documents.h"
#include "font/faces.h"
#include "plan/plan_show.h"
#include "read/cross_check.h"
#include "read/faces_file.h"
#include "read/kit_file.h"
#include "read/show_file.h"
#include "read/words_file.h"

namespace dunnage {

/// Texts above this add time and find nothing that a shorter one does not.
inline constexpr std::size_t most_fuzzed = 20000;

struct Ground {
  Sources sources;
  Diagnostics diagnostics;
  Catalogue catalogue;
  Show show;
  Plan plan;
  Findings findings;
  Words words;
  /// For documents of the ground's own show; `said` must outlive it.
  Context context(const Words& said) const {
    return {catalogue, show, plan, findings, said, UnitSystem::us, "mph", "7", {}, {}, {}};
  }
};

inline const Ground& ground() {
  static const Ground* const only = [] {
    auto* made = new Ground;
    auto show = read_show(PROJECT_DIR "/examples/outdoor-evening.toml", made->sources, made->diagnostics);
    auto kit = read_kit(PROJECT_DIR "/examples/kit", made->sources, made->diagnostics);
    auto words = load_words(PROJECT_DIR "/layouts/words/en.toml", made->sources, made->diagnostics);
    assert(show && kit && words);
    made->show = std::move(*show);
    made->catalogue = make_catalogue(std::move(*kit));
    cross_check(made->catalogue, &made->show, made->diagnostics);
    assert(!made->diagnostics.has_errors());
    made->plan = plan_show(made->catalogue, made->show);
    made->findings = check_all(made->catalogue, made->show, made->plan);
    made->words = std::move(*words);
    return made;
  }();
  return *only;
}

inline const Faces& faces() {
  static const Faces* const only = new Faces(read_faces(SHARE_DIR "/fonts"));
  return *only;
}

/// Every document of a show in words. What they say is not judged: that they can be made is.
inline std::vector<Document> every_document(Context context) {
  std::vector<Document> out;
  for (const DocumentKind& kind : document_kinds()) {
    Made made = kind.make(context);
    if (auto* document = std::get_if<Document>(&made)) {
      context.made.push_back(document->title);
      out.push_back(std::move(*document));
    } else {
      context.skipped.push_back(std::get<Skipped>(std::move(made)));
    }
  }
  return out;
}

}  // namespace dunnage
