#!/bin/sh
# SPDX-License-Identifier: MIT
# Feeds each reader with mangled texts: sh tests/fuzz.sh [SECONDS each, 30 unless said] [TARGET ...]
# Builds into build-fuzz/ with Clang, AddressSanitizer and UndefinedBehaviorSanitizer. Texts begin as the examples, the
# layouts and tests/fuzz/corpus/. A text that breaks a target is kept in build-fuzz/found/, and the script fails.
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
cd "$here/.."
seconds=${1:-30}
[ $# -eq 0 ] || shift
targets=${*:-kit show layout words csv scans reckon}

sh examples/install.sh testing
[ -f build-fuzz/build.ninja ] ||
  cmake -S . -B build-fuzz -G Ninja -DCMAKE_C_COMPILER=clang -DCMAKE_CXX_COMPILER=clang++ \
    -DDUNNAGE_FUZZ=ON -DDUNNAGE_SANITIZE=address,undefined
cmake --build build-fuzz
work=$PWD/build-fuzz
program=$work/bin/dunnage

# One text a file, named after where it comes from.
seed() {
  mkdir -p "$work/seeds/$1"
  cat > "$work/seeds/$1/$2"
}
for kit in examples/kit examples/begin/us/kit examples/begin/metric/kit; do
  cat $kit/*.toml | seed kit "$(echo $kit | tr / -)"
done
for show in examples/*.toml; do seed show "$(basename "$show")" < "$show"; done
for layout in layouts/*.toml layouts/stock/*.toml; do seed layout "$(basename "$layout")" < "$layout"; done
for words in layouts/words/*.toml; do seed words "$(basename "$words")" < "$words"; done
head -12 examples/gear.csv | seed csv gear
for section in cases items; do "$program" list $section examples/kit --csv | head -12 | seed csv $section; done
printf 'code;mass\nFOH-1;27,5 kg\nBAG-7;36 lb\nBAG;35\n' | seed csv weights
printf 'BAG-1\n2027-06-19 22:10:03,"FOH-1  Front-of-house trunk"\nmass 83 lb\ndamaged: wheel\nBAG-2 22:11 strap torn\n' | seed scans list
"$program" reckon | sed -n 's/^ *dunnage reckon //p' | while read -r line; do
  # Our own examples, quoted as for a shell.
  eval "printf '%s\n' $line" | seed reckon "${line%% *}"
done
# Keys and units as words for the fuzzer to put in.
{ "$program" list kit-keys; "$program" list show-keys; "$program" list units; } | grep -o '[A-Za-z_][A-Za-z_]*' | sort -u | sed 's/.*/"&"/' > "$work/words.dict"

broken=
for target in $targets; do
  mkdir -p "$work/corpus/$target" "$work/found"
  case $target in kit | words) longest=64000 ;; reckon) longest=2000 ;; csv) longest=4000 ;; *) longest=20000 ;; esac
  log=$work/fuzz-$target.log
  # A short run begins alike each time, so that what it finds is of the change.
  seed=$([ "$seconds" -le 60 ] && echo 1 || echo 0)
  # In a folder of its own, where nothing can be spoilt.
  (mkdir -p "$work/cwd" && cd "$work/cwd" &&
    "$work/bin/fuzz_$target" -max_total_time="$seconds" -timeout=120 -rss_limit_mb=3000 -max_len="$longest" \
      -dict="$work/words.dict" -artifact_prefix="$work/found/$target-" -print_final_stats=1 -seed="$seed" \
      "$work/corpus/$target" "$here/fuzz/corpus/$target" "$work/seeds/$target") > "$log" 2>&1 || broken="$broken $target"
  echo "fuzz $target: $(sed -n 's/^stat::number_of_executed_units: *//p' "$log") executions in $seconds s"
done
for target in $broken; do
  echo "fuzz $target FOUND (build-fuzz/fuzz-$target.log, build-fuzz/found/):" >&2
  grep -m 3 -E 'ERROR|SUMMARY|Assertion|runtime error' "$work/fuzz-$target.log" >&2 || tail -5 "$work/fuzz-$target.log" >&2
done
[ -z "$broken" ]
