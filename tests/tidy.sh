#!/bin/sh
# SPDX-License-Identifier: MIT
# Lets clang-tidy read src/ by the list in .clang-tidy; fails on anything it has to say. With folders, only those.
# A folder is read as one text, as it is compiled: its headers are read once.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
sh examples/install.sh testing
# Nothing is built here: what is wanted are the commands.
cmake -S . -B build-tidy -G Ninja -DCMAKE_C_COMPILER=clang -DCMAKE_CXX_COMPILER=clang++ -DDUNNAGE_TESTS=OFF \
  -DCMAKE_EXPORT_COMPILE_COMMANDS=ON > build-tidy.log
mv build-tidy.log build-tidy/
[ $# -gt 0 ] || set -- $(cd src && ls -d */)
for folder in "$@"; do find "build-tidy/src/$folder" -name '*.cxx'; done |
  xargs -P "$(nproc)" -n 1 clang-tidy -p build-tidy --quiet --checks=-bugprone-suspicious-include --warnings-as-errors='*' 2>/dev/null
echo "clang-tidy: $*: nothing to say"
