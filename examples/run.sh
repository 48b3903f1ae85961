#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds the program and prints both example packets and the kit's labels under examples/out/.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh
[ -f build/build.ninja ] || cmake -S . -B build -G Ninja -DCMAKE_BUILD_TYPE=Release -DDUNNAGE_TESTS=OFF
cmake --build build

# 0: done. 2: done, and the paper says what is over, short or not checked. All else stops the run.
run() {
  echo
  echo "\$ dunnage $*"
  status=0
  build/bin/dunnage "$@" || status=$?
  case $status in
    0) echo "-- done" ;;
    2) echo "-- done, with findings: a limit is exceeded, a check was not made, or something is short (exit 2)" ;;
    *) echo "-- failed (exit $status)" >&2
       exit "$status" ;;
  esac
}

mkdir -p examples/out
before=build/before-printing
: > "$before"
run print examples/outdoor-evening.toml --out examples/out/outdoor-evening
run print examples/indoor-afternoon.toml --units metric --paper a4 --out examples/out/indoor-afternoon
run label examples/kit --out examples/out/labels.pdf

echo
echo "Written:"
find examples/out -type f -newer "$before" | LC_ALL=C sort
