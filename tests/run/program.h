// SPDX-License-Identifier: MIT
// The whole program in one call, and what it said.
#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "base/error.h"
#include "run/run.h"

namespace dunnage {

struct Ran {
  int code = -1;
  std::string out, err;
};

inline Ran program(const std::vector<std::string>& arguments) {
  std::ostringstream out, err;
  Ran ran;
  try {
    ran.code = run(arguments, SHARE_DIR, out, err);
  } catch (const WorldError& e) {
    ran.code = 3;
    err << "error: " << e.what() << '\n';
  }
  ran.out = out.str();
  ran.err = err.str();
  return ran;
}

inline std::string example(const std::string& name) { return std::string(PROJECT_DIR) + "/examples/" + name; }

/// `text` with every occurrence of the project's folder taken away, so that it reads the same everywhere.
inline std::string without_folder(std::string text) {
  const std::string folder = std::string(PROJECT_DIR) + "/";
  for (std::size_t at; (at = text.find(folder)) != std::string::npos;) text.erase(at, folder.size());
  return text;
}

}  // namespace dunnage
