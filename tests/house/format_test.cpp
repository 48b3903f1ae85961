// SPDX-License-Identifier: MIT
// Every source file has the one shape that .clang-format gives, so that a change shows what it changes and nothing
// else.
#include <catch2/catch.hpp>

#include "../shell.h"

using namespace dunnage;

TEST_CASE("every source file is as clang-format leaves it") {
  const std::string find = "find " PROJECT_DIR "/src " PROJECT_DIR "/tests -name '*.cpp' -o -name '*.h'";
  CHECK(shell(find + " | wc -l").out > "1");
  const Said said =
      shell(find + " | xargs clang-format --dry-run --Werror --style=file 2>&1 | grep 'error:' | cut -d: -f1,2");
  CHECK(said.out == "");
}
