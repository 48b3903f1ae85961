#!/bin/sh
# SPDX-License-Identifier: MIT
# Installs what is missing of the Debian packages that building needs, and with "testing" those that testing needs
# besides. Does nothing, and needs no rights, when all are there.
set -eu

packages="g++ cmake ninja-build pkg-config libhpdf-dev libdeflate-dev libqrcodegencpp-dev libtomlplusplus-dev libcli11-dev
  nlohmann-json3-dev libfmt-dev libcsv-dev libfreetype-dev coinor-libcbc-dev fonts-noto-core fonts-noto-extra fonts-jetbrains-mono
  fonts-dejavu-core"
if [ "${1:-}" = testing ]; then
  packages="$packages catch2 qpdf poppler-utils mupdf-tools zbar-tools zxing-cpp-tools python3 python3-jsonschema mandoc bsdextrautils zsh fish
    clang clang-format clang-tidy libclang-rt-14-dev gcovr libglpk-dev"
fi

missing=
for package in $packages; do
  state=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
  [ "$state" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

as_root=
if [ "$(id -u)" -ne 0 ]; then
  if ! command -v sudo >/dev/null 2>&1; then
    echo "install.sh: these Debian packages are missing, and neither root nor sudo is here:$missing" >&2
    exit 1
  fi
  as_root=sudo
fi
echo "Installing:$missing"
# Recommended packages are left out: none is needed here, and they would double what is fetched.
$as_root env DEBIAN_FRONTEND=noninteractive apt-get update -q
# shellcheck disable=SC2086 # a list of names
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing
