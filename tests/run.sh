#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds with warnings as errors and runs every test; ends with the runner's summary.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing
[ -f build-test/build.ninja ] ||
  cmake -S . -B build-test -G Ninja -DCMAKE_BUILD_TYPE=Release -DDUNNAGE_WERROR=ON
cmake --build build-test
ctest --test-dir build-test --output-on-failure -j "$(nproc)"
