#!/bin/sh
# SPDX-License-Identifier: MIT
# Lets clang-tidy read src/ by the list in .clang-tidy; fails on anything it has to say. With files, only those.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing
[ -f build-fuzz/build.ninja ] ||
  cmake -S . -B build-fuzz -G Ninja -DCMAKE_C_COMPILER=clang -DCMAKE_CXX_COMPILER=clang++ \
    -DDUNNAGE_FUZZ=ON -DDUNNAGE_SANITIZE=address,undefined
[ $# -gt 0 ] || set -- $(find src -name '*.cpp' | sort)
printf '%s\n' "$@" | xargs -P "$(nproc)" -n 4 clang-tidy -p build-fuzz --quiet --warnings-as-errors='*' 2>/dev/null
echo "clang-tidy: $# files, nothing to say"
