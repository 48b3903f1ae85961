#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds and runs the benchmarks, and prints one table. Without an argument all of them; else those named:
# cover, qr, load, sheets, labels, packet, label-growth, kit-growth, input-growth. load takes each 10th published
# instance of container loading, about six minutes; load-all takes every one, about an hour.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing
[ -f build-test/build.ninja ] ||
  cmake -S . -B build-test -G Ninja -DCMAKE_BUILD_TYPE=Release -DDUNNAGE_WERROR=ON
cmake --build build-test --target dunnage dunnage_fonts bench_speed floor_sheets floor_labels bench_cover bench_qr bench_load

speed=
cover=$([ $# -eq 0 ] && echo yes || echo no)
qr=$cover
load=$([ $# -eq 0 ] && echo 10 || echo 0)
for part in "$@"; do
  case $part in
    cover) cover=yes ;;
    qr) qr=yes ;;
    load) load=10 ;;
    load-all) load=1 ;;
    sheets | labels | packet | label-growth | kit-growth | input-growth) speed="$speed $part" ;;
    *) echo "bench.sh: there is no benchmark \"$part\"" >&2; exit 1 ;;
  esac
done
if [ $# -eq 0 ] || [ -n "$speed" ]; then
  work=$(mktemp -d)
  trap 'rm -rf "$work"' EXIT
  # shellcheck disable=SC2086 # a list of names
  build-test/bin/bench_speed build-test/bin/dunnage build-test/bin build-test/share/dunnage/fonts . "$work" $speed
fi
if [ "$cover" = yes ]; then build-test/bin/bench_cover; fi
if [ "$qr" = yes ]; then build-test/bin/bench_qr; fi
if [ "$load" != 0 ]; then build-test/bin/bench_load ../shared/reference/data "$load"; fi
