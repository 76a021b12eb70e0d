#!/usr/bin/env bash
# Builds and packs twice, in two folders, under two umasks: with SOURCE_DATE_EPOCH the .tar.gz
# and .deb must be the same bytes. (The .deb is packed under one umask, as cpack writes it into
# the frame of that file.) Then looks into both, and runs what the .tar.gz holds.
set -u
: "${PULLCORD_SOURCE:?}"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
failed=0

check() { # what it must be, then the command
  local what=$1
  shift
  if "$@" >"$work/out" 2>&1; then
    printf 'ok      %s\n' "$what"
  else
    printf 'FAILED  %s: %s\n' "$what" "$*"
    tail -n 20 "$work/out"
    failed=$((failed + 1))
  fi
}
says() { # pattern, then a command
  local pattern=$1
  shift
  "$@" | grep -qE -- "$pattern"
}
lacks() { ! "$@"; }

# The sources lie elsewhere each time, for no path may get into the program. (One copy is
# made of the checkout and that is copied on, as somebody may be working in it.)
export SOURCE_DATE_EPOCH=1700000000
pack() { # name umask
  local src=$work/$1/a-checkout
  umask "$2"
  mkdir -p "$src" && tar -C "$src" --no-same-permissions -xf "$work/checkout.tar" &&
    cmake -S "$src" -B "$work/$1/build" -C "$src/tests/profiles/release.cmake" &&
    cmake --build "$work/$1/build" -j "$(nproc)" && cd "$work/$1/build" && cpack -G TGZ && umask 022 && cpack -G DEB
}
check 'the checkout is copied' tar -C "$PULLCORD_SOURCE" --exclude=./.git --exclude='./build*' \
  -cf "$work/checkout.tar" .
check 'builds and packs' bash -c "$(declare -f pack); work=$work; pack one 022"
check 'builds and packs once more elsewhere' bash -c "$(declare -f pack); work=$work; pack another-place 077"

tgz=$(find "$work/one/build" -maxdepth 1 -name 'pullcord*.tar.gz')
deb=$(find "$work/one/build" -maxdepth 1 -name 'pullcord*.deb')
check 'there is a .tar.gz' test -s "${tgz:-/nowhere}"
check 'there is a .deb' test -s "${deb:-/nowhere}"
((failed == 0)) || exit 1
check 'both .tar.gz are the same bytes' cmp "$tgz" "$work/another-place/build/${tgz##*/}"
check 'both .deb are the same bytes' cmp "$deb" "$work/another-place/build/${deb##*/}"

mkdir "$work/unpacked"
check 'the .tar.gz unpacks' tar -xzf "$tgz" -C "$work/unpacked"
program=$(find "$work/unpacked" -path '*/bin/pullcord')
run() { env -i PATH=/usr/bin:/bin HOME="$work" "$program" "$@"; }
check 'its program runs' says '^knowledge [0-9a-f]{16}' run --version
check 'its knowledge is in order' run vet
check 'no path of the building machine is in it' lacks grep -qF "$work" "$program"

if command -v dpkg-deb >/dev/null; then
  check 'the .deb names itself' says '^pullcord$' dpkg-deb -f "$deb" Package
  check 'it depends on the JSON library' says 'libcjson1' dpkg-deb -f "$deb" Depends
  check 'it depends on the line editor' says 'libedit2' dpkg-deb -f "$deb" Depends
  for path in bin/pullcord share/pullcord/facts/complaints.clp share/pullcord/rules/core/applicability.clp \
    share/man/man1/pullcord.1.gz share/bash-completion/completions/pullcord share/doc/pullcord/copyright; do
    check "it holds $path" says " root/root .* \\./usr/$path\$" dpkg-deb -c "$deb"
  done
else
  printf 'skipped the inside of the .deb: there is no dpkg-deb here\n'
fi

printf '%d failed\n' "$failed"
((failed == 0))
