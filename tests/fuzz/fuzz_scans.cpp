// SPDX-License-Identifier: MIT
// A list of scans against the outdoor example.
#include <cassert>
#include <sstream>

#include "compare/tally.h"
#include "export/tally_json.h"
#include "ground.h"
#include "read/scans.h"

extern "C" int LLVMFuzzerTestOneInput(const uint8_t* data, std::size_t size) {
  using namespace dunnage;
  if (size > most_fuzzed) return -1;
  Sources sources;
  Diagnostics told;
  const Ground& g = ground();
  const std::string bytes(reinterpret_cast<const char*>(data), size);
  const auto scans = read_scans("back.txt", bytes, Stage::back, g.catalogue, sources, told);
  const Tally result = tally(g.catalogue, g.plan, scans, {Stage::back});
  assert(result.missing.size() <= result.expected.size());
  tally_json(g.catalogue, result);
  return 0;
}
