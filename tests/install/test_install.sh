#!/usr/bin/env bash
# Installs into a DESTDIR, moves the tree somewhere else and runs it there; looks for the man
# page, completion, licence and examples; installs a second time over an older version; and
# uninstalls, leaving a person's own files.
set -u
: "${PULLCORD_SOURCE:?}" "${PULLCORD_BUILD:?}"
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
    head -n 20 "$work/out"
    failed=$((failed + 1))
  fi
}

# Nothing of the build tree or of this person's own knowledge may help.
moved() {
  env -i PATH=/usr/bin:/bin HOME="$work/home" LANG=C "$work/moved/bin/pullcord" "$@"
}
says() { # pattern, then a command
  local pattern=$1
  shift
  "$@" | grep -qE -- "$pattern"
}
lacks() { ! "$@"; }

umask 077 # root's own may be as strict as this
mkdir "$work/home"
export DESTDIR=$work/dest
install() { cmake --install "$PULLCORD_BUILD" --prefix /usr; }
check 'installs into DESTDIR' install
check 'nothing lands outside the prefix' test "$(ls "$DESTDIR")" = usr
mv "$DESTDIR/usr" "$work/moved"

fingerprint=$("$PULLCORD_BUILD/bin/pullcord" --version | grep knowledge)
check 'the build itself finds its knowledge' test -n "$fingerprint"
check '--version runs where it was moved' says '^pullcord [0-9]+\.[0-9]+' moved --version
check 'its knowledge is that of the build' says "^${fingerprint}\$" moved --version
check 'vet finds nothing to mend' moved vet
check 'no link leads out of the tree' test -z "$(find "$work/moved" -type l)"
examples=$work/moved/share/doc/pullcord/examples
check 'the demo cases are there' says '\.json$' ls "$examples"
for file in "$examples"/*.json; do
  check "assesses ${file##*/}" says 'Most likely' moved assess "$file"
done

page=$(find "$work/moved/share/man/man1" -name 'pullcord.1*')
check 'the man page is there' test -s "${page:-/nowhere}"
read_page() { case $1 in *.gz) gzip -dc "$1" ;; *) cat "$1" ;; esac; }
check 'it is what the program prints' cmp <(read_page "$page") <(moved print man)
if command -v man >/dev/null; then
  show_page() { MANROFFSEQ='' LC_ALL=C.UTF-8 man --warnings -E UTF-8 -l -Tutf8 -Z "$page"; }
  check 'man finds nothing wrong with it' test -z "$(show_page 2>&1 >/dev/null)"
else
  printf 'skipped man finds nothing wrong with it: there is no man here\n'
fi
completion=$work/moved/share/bash-completion/completions/pullcord
check 'the completion is there' cmp "$completion" <(moved print completion)
complete_as() { # words typed; prints what is offered
  bash -c 'source "$1"; shift; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); compopt() { :; }
           _pullcord; printf "%s\n" "${COMPREPLY[@]}"' - "$completion" "$@"
}
check 'it completes a command' says '^assess$' complete_as pullcord as
check 'it completes an operand' says '^complaints$' complete_as pullcord list comp
check 'the guide to the knowledge is there' test -s "$work/moved/share/doc/pullcord/knowledge-guide.md"
check 'the schema of a case is there' test -s "$work/moved/share/doc/pullcord/schema/case-1.json"
check 'the licence is there' cmp "$PULLCORD_SOURCE/LICENSE" "$work/moved/share/doc/pullcord/copyright"
check 'our folders can be entered by all' test -z \
  "$(find "$work"/moved/share/{pullcord,doc/pullcord} -type d ! -perm -0555)"
check 'files can be read by all' test -z "$(find "$work/moved" -type f ! -perm -0444)"
check 'nobody else may write' test -z "$(find "$work/moved" -perm /0022)"

# Once more, over an older version that still had a file this one no longer has, with
# somebody's own file beside it.
mv "$work/moved" "$DESTDIR/usr"
share=$DESTDIR/usr/share/pullcord
printf 'facts/of-an-older-version.clp\nrules/../../kept.clp\n' >>"$share/installed-files"
touch -d yesterday "$share/installed-files" # cmake takes files of the same second for the same
touch "$share/facts/of-an-older-version.clp" "$share/facts/own.clp" "$DESTDIR/usr/share/kept.clp"
check 'installs over an older version' install
check 'the old file is gone' lacks test -e "$share/facts/of-an-older-version.clp"
check 'an own file stays' test -e "$share/facts/own.clp"
check 'a file outside the folder stays' test -e "$DESTDIR/usr/share/kept.clp"
check 'the list names what is there' test "$(cd "$share" && find facts rules -name '*.clp' ! -name own.clp |
  LC_ALL=C sort)" = "$(LC_ALL=C sort "$share/installed-files")"
check 'uninstalls' cmake --build "$PULLCORD_BUILD" --target uninstall
check 'only the two own files are left' test "$(cd "$DESTDIR" && find . -type f | LC_ALL=C sort)" = \
  './usr/share/kept.clp
./usr/share/pullcord/facts/own.clp'
check 'a second uninstall says there is nothing' lacks cmake --build "$PULLCORD_BUILD" --target uninstall

printf '%d failed\n' "$failed"
((failed == 0))
