// SPDX-License-Identifier: MIT
// A language's text: every sheet of the outdoor example in it, and over the English one.
#include <cassert>
#include <sstream>

#include "document/two_languages.h"
#include "ground.h"

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  using namespace dunnage;
  if (size > 4 * most_fuzzed) return -1;
  Sources sources;
  Diagnostics diagnostics;
  auto words = read_words("fuzz.toml", std::string(reinterpret_cast<const char*>(data), size), sources, diagnostics);
  assert(words || diagnostics.has_errors());
  if (!words) return 0;
  words->by_key.insert(ground().words.by_key.begin(), ground().words.by_key.end());
  static const auto* const english = new std::vector<Document>(every_document(ground().context(ground().words)));
  std::vector<Document> said = every_document(ground().context(*words));
  assert(said.size() == english->size());
  for (std::size_t i = 0; i < said.size(); ++i) in_two_languages(std::move(said[i]), (*english)[i]);
  return 0;
}
