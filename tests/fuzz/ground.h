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
#include "read/faces_file.h"
#include "read/words_file.h"
#include "run/load_show.h"

namespace dunnage {

/// Texts above this add time and find nothing that a shorter one does not.
inline constexpr std::size_t most_fuzzed = 20000;

struct Ground {
  Loaded loaded;
  Plan plan;
  Findings findings;
  Words words;
  const Catalogue& catalogue() const { return loaded.catalogue; }
  /// For documents of the ground's own show; `said` must outlive it.
  Context context(const Words& said) const {
    return {loaded.catalogue, loaded.show, plan, findings, said, UnitSystem::us, "mph", "7", {}, {}, {}};
  }
};

inline const Ground& ground() {
  static const Ground* const only = [] {
    auto* made = new Ground;
    std::ostringstream err;
    const bool read = load_show(PROJECT_DIR "/examples/outdoor-evening.toml", made->loaded, err);
    assert(read);
    (void)read;
    made->plan = plan_show(made->loaded.catalogue, made->loaded.show);
    made->findings = check_all(made->loaded.catalogue, made->loaded.show, made->plan);
    auto words = load_words(PROJECT_DIR "/layouts/words/en.toml", made->loaded.sources, made->loaded.diagnostics);
    assert(words);
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
