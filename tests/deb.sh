#!/bin/sh
# SPDX-License-Identifier: MIT
# Builds the Debian package, installs it into a fresh root that has no build tools, and prints a packet there. Needs
# root, debootstrap and Debian's archive; without them it unpacks the package and looks at what it needs and holds.
#   sh tests/deb.sh [BUILD-FOLDER]
set -eu

here=$(CDPATH='' cd -- "$(dirname -- "$0")" && pwd)
project=$(dirname -- "$here")
build=${1:-$project/build-deb}
[ -f "$build/build.ninja" ] ||
  cmake -S "$project" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DDUNNAGE_TESTS=OFF
cmake --build "$build"
rm -f "$build"/*.deb
(cd "$build" && cpack -G DEB >/dev/null)
deb=$(ls "$build"/*.deb)
echo "package: $deb"
dpkg-deb --field "$deb" Package Version Architecture Depends

root=$(mktemp -d)
log=$root.log
leave() {
  # Nothing is removed while a part of this system is mounted inside.
  if mountpoint -q "$root/proc"; then umount "$root/proc" || return 0; fi
  rm -rf "$root"
}
trap leave EXIT

in_a_fresh_root() {
  suite=$(. /etc/os-release && echo "$VERSION_CODENAME")
  mirror=$(sed -n 's/^URIs: *\([^ ]*\).*/\1/p; s/^deb \(\[[^]]*\] \)\{0,1\}\([^ ]*\) .* main.*/\2/p' /etc/apt/sources.list.d/*.sources /etc/apt/sources.list 2>/dev/null | head -n 1)
  if ! debootstrap --variant=minbase "$suite" "$root" "$mirror" >"$log" 2>&1; then
    echo "debootstrap failed; see $log" >&2
    exit 1
  fi
  # The fresh root goes the same way to the archive as this system does.
  cp -r /etc/apt/apt.conf.d/. "$root/etc/apt/apt.conf.d/" 2>/dev/null || true
  mountpoint -q "$root/proc" || mount -t proc proc "$root/proc"
  cp "$deb" "$root/tmp/dunnage.deb"
  chroot "$root" env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends /tmp/dunnage.deb >>"$log" 2>&1
  if chroot "$root" sh -c 'command -v g++ || command -v cmake || command -v make'; then
    echo "the root has build tools" >&2
    exit 1
  fi
  chroot "$root" sh -ec 'cd /tmp; dunnage --version; dunnage begin crew --units us; dunnage print crew/show.toml --out paper
    dunnage label crew/kit --out labels.pdf; ls -l paper/*.pdf labels.pdf'
  test "$(head -c 5 "$root/tmp/paper/pull-sheet.pdf")" = "%PDF-"
  test "$(head -c 5 "$root/tmp/labels.pdf")" = "%PDF-"
  chroot "$root" env DEBIAN_FRONTEND=noninteractive apt-get purge -y -q dunnage >>"$log" 2>&1
  test ! -e "$root/usr/share/dunnage"
  test ! -e "$root/usr/bin/dunnage"
  rm -f "$log"
  echo "installed, printed and removed again in a fresh root"
}

unpacked() {
  dpkg-deb -x "$deb" "$root"
  for file in usr/bin/dunnage usr/share/man/man1/dunnage.1 usr/share/dunnage/fonts/faces.toml usr/share/dunnage/layouts/cover.toml; do
    ls "$root/$file" >/dev/null
  done
  if ldd "$root/usr/bin/dunnage" | grep "not found"; then exit 1; fi
  (cd "$root" && usr/bin/dunnage begin crew && usr/bin/dunnage print crew/show.toml --out paper)
  echo "unpacked and printed; not tried in a fresh root"
}

# Called plainly: behind || or if, the shell would go on after a failure inside.
if [ "$(id -u)" -eq 0 ] && command -v debootstrap >/dev/null 2>&1; then
  in_a_fresh_root
else
  unpacked
fi
