// SPDX-License-Identifier: MIT
// The whole program but for the world around it.
#pragma once

#include <filesystem>
#include <ostream>
#include <string>
#include <vector>

namespace dunnage {

/// Which of the streams end at a person's terminal: data for programs is kept harmless there too, and a bar on `err`
/// shows how far a long run is.
struct Watched {
  bool out = false, err = false;
};

/// Does what the arguments (without the program's name) ask for, with data from `share`. Returns the exit code: 0
/// fine; 1 input or command line wrong, nothing written; 2 done, but something is over, short or not checked.
/// What people read reaches the streams without a sign that a terminal would obey. Throws WorldError when the disk, a
/// font or a library fails.
int run(const std::vector<std::string>& arguments, const std::filesystem::path& share, std::ostream& out,
        std::ostream& err, Watched watched = {});

}  // namespace dunnage
