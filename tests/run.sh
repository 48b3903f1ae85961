#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds with warnings as errors and runs every test; ends with the runner's summary.
# `sh tests/run.sh all` first runs all tests under AddressSanitizer and UndefinedBehaviorSanitizer, with the figure of
# coverage, then each fuzz target for 30 s, then clang-tidy, and breaks system calls for five minutes; what would take a
# slow machine too long is left out, and said.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing

# configure FOLDER [cmake options]
configure() {
  folder=$1
  shift
  [ -f "$folder/build.ninja" ] || cmake -S . -B "$folder" -G Ninja -DDUNNAGE_WERROR=ON "$@"
}
told() { echo "== $(date -u +%H:%M:%S) $*"; }
# before MINUTES what COMMAND...: runs it where no more minutes have gone.
before() {
  gone=$((($(date +%s) - begun) / 60)) most=$1 what=$2
  shift 2
  if [ "$gone" -ge "$most" ]; then
    told "$what NOT RUN: $gone minutes have gone (by itself: $*)"
  else
    told "$what"
    "$@"
  fi
}

if [ "${1:-}" = all ]; then
  begun=$(date +%s)
  told "address and undefined behaviour, coverage"
  configure build-sanitize -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_FLAGS_DEBUG=-O1 -DCMAKE_C_FLAGS_DEBUG=-O1 \
    -DDUNNAGE_SANITIZE=address,undefined -DDUNNAGE_COVERAGE=ON
  cmake --build build-sanitize
  find build-sanitize -name '*.gcda' -delete
  # Published models of covers are the solver's work, not ours, and take minutes here.
  # A test that limits the size of a file limits the counts of coverage, too, and these complain.
  GCOV_ERROR_FILE=/dev/null ctest --test-dir build-sanitize --output-on-failure -j "$(nproc)" -E 'published covers'
  gcovr --root . --filter src/ --exclude-throw-branches --object-directory build-sanitize --txt build-sanitize/coverage.txt \
    --gcov-ignore-parse-errors build-sanitize
  told "coverage of src/ by lines: $(sed -n 's/^TOTAL *[0-9]* *[0-9]* *//p' build-sanitize/coverage.txt) (by file: build-sanitize/coverage.txt)"

  before 35 "fuzz targets, 30 s each" sh tests/fuzz.sh 30
  before 40 "clang-tidy" sh tests/tidy.sh
  told "plain"
fi

configure build-test -DCMAKE_BUILD_TYPE=Release
cmake --build build-test
[ "${1:-}" != all ] || before 60 "broken system calls, five minutes" build-test/bin/fault_run 300
ctest --test-dir build-test --output-on-failure -j "$(nproc)"
