#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds and runs the benchmarks.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing
[ -f build-test/build.ninja ] ||
  cmake -S . -B build-test -G Ninja -DCMAKE_BUILD_TYPE=Release -DDUNNAGE_WERROR=ON
cmake --build build-test --target bench_cover
build-test/bin/bench_cover
