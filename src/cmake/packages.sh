# shellcheck shell=bash
# Sourced by demo/run and tests/run: sees to the Debian packages of packages.txt.
packages_list=$(dirname "${BASH_SOURCE[0]}")/packages.txt

packages_of() { # kinds, as "build|test"
  sed -nE "s/^($1) +([^ ]+) *\$/\2/p" "$packages_list"
}

packages_missing() { # kinds; prints those that are not installed
  local name

  command -v dpkg-query >/dev/null || return 0
  for name in $(packages_of "$1"); do
    [[ $(dpkg-query -W -f '${db:Status-Status}' "$name" 2>/dev/null) == installed ]] || printf '%s\n' "$name"
  done
}

# Installs what is missing. Needs root, or sudo.
packages_install() { # kinds
  local missing as_root=()

  mapfile -t missing < <(packages_missing "$1")
  command -v apt-get >/dev/null || {
    printf 'There is no apt-get here. Install what these Debian packages hold, then use --no-install:\n'
    packages_of "$1" | paste -sd ' '
    return 1
  }
  ((${#missing[@]} > 0)) || return 0
  if ((EUID != 0)); then
    command -v sudo >/dev/null || {
      printf 'Not root, and there is no sudo. Have this run, then use --no-install:\n  apt-get install %s\n' "${missing[*]}"
      return 1
    }
    as_root=(sudo)
  fi
  printf 'Installing: %s\n' "${missing[*]}"
  as_root+=(env DEBIAN_FRONTEND=noninteractive)
  "${as_root[@]}" apt-get -qq -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3 update ||
    printf 'The lists of packages could not be renewed; going on with those that are here.\n'
  "${as_root[@]}" apt-get -qq -y -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3 \
    -o Dpkg::Use-Pty=0 install --no-install-recommends "${missing[@]}" >/dev/null
}
