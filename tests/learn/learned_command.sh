#!/usr/bin/env bash
# The command "learned" as a person uses it: nothing yet, one proved job, switches, export.
set -u
state=$(mktemp -d) || exit 1
trap 'rm -rf "$state"' EXIT
export XDG_STATE_HOME=$state PULLCORD_KNOWLEDGE=$PULLCORD_SOURCE PULLCORD_NOW=1000000 PULLCORD_BY=test
wrong=0

expect() { # what pattern text
  if ! grep -q -- "$2" <<<"$3"; then
    printf 'FAILED: %s: no "%s" in:\n%s\n' "$1" "$2" "$3"
    wrong=1
  fi
}

expect "before any job" "0 closed jobs" "$("$PULLCORD" learned)"
[[ -e $state/pullcord/jobs.db ]] && { echo "FAILED: only looking made a store"; wrong=1; }

faults=$("$PULLCORD" list faults)
fault=${faults%%[[:space:]]*}
"$PULLCORD" job open tiller "will not start" >/dev/null || wrong=1
"$PULLCORD" job add last repair "$fault" >/dev/null || wrong=1
"$PULLCORD" job add last proof "$fault" passed >/dev/null || wrong=1
"$PULLCORD" job add last service all done >/dev/null || wrong=1
"$PULLCORD" job close last repaired >/dev/null || wrong=1

said=$("$PULLCORD" learned)
expect "one job" "1 closed job, 1 counted" "$said"
expect "its class" "^tiller: 1 job" "$said"
expect "one class" "No counted job" "$("$PULLCORD" learned --class chainsaw)"
expect "unknown class" "did you mean \"tiller\"" "$("$PULLCORD" learned --class tillr 2>&1)"
expect "json" "\"fault\":.*\"$fault\"" "$("$PULLCORD" learned --json)"
bench() { printf 'quit\n' | "$PULLCORD" --new 2>&1; }
expect "the bench weighs with it" "1 proved job of this shop is weighed with" "$(bench)"
expect "off" "not weighed" "$("$PULLCORD" learned off)"
expect "off stays" "NOT weighed with" "$("$PULLCORD" learned)"
grep -q "weighed with" <<<"$(bench)" && { echo "FAILED: off, and the bench weighs with it"; wrong=1; }
expect "on" "are weighed with" "$("$PULLCORD" learned on)"
"$PULLCORD" learned reset >/dev/null || wrong=1
expect "after reset" "0 closed jobs" "$("$PULLCORD" learned)"
expect "export" "\"since\":.*\"1000000\"" "$("$PULLCORD" learned export)"
expect "nothing lost" "tiller" "$("$PULLCORD" job list --all)"
expect "wrong word" "not one of" "$("$PULLCORD" learned forget 2>&1)"
a=$("$PULLCORD" learned export | cksum) b=$("$PULLCORD" learned export | cksum)
[[ $a == "$b" ]] || { echo "FAILED: two exports differ"; wrong=1; }
exit $wrong
