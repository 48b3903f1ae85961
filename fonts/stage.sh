#!/bin/sh
# SPDX-License-Identifier: MIT
# Copies the font files that faces.toml lists from where Debian's packages put them to one folder, and the list
# after them, so that the list is there only when all its files are.
set -eu

if [ $# -ne 1 ]; then
  echo "usage: stage.sh FOLDER" >&2
  exit 2
fi
folder=$1
here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
list=$here/faces.toml

mkdir -p "$folder"
rm -f "$folder/faces.toml"
# One face a line: file, source, package. A tab cannot stand in these values.
awk -F'"' '
  function flush() { if (file != "") print file "\t" from "\t" package; file = from = package = "" }
  /^\[\[face\]\]/ { flush() }
  /^file *=/ { file = $2 }
  /^from *=/ { from = $2 }
  /^package *=/ { package = $2 }
  END { flush() }
' "$list" > "$folder/faces.part"

tab=$(printf '\t')
failed=0
while IFS=$tab read -r file from package; do
  if [ ! -f "$from" ]; then
    echo "stage.sh: $from is missing: install the Debian package $package" >&2
    failed=1
  else
    cp "$from" "$folder/$file"
  fi
done < "$folder/faces.part"
rm -f "$folder/faces.part"
[ "$failed" -eq 0 ] || exit 1
cp "$list" "$folder/faces.toml"
