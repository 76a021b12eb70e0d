#!/usr/bin/env bash
# "pullcord work" as people use it: every example of the help, statuses, messages, other locales;
# and docs/arithmetic.md has each calculation with its example.
. "$(dirname "$0")/../cli/lib.sh"
page=$PULLCORD_SOURCE/docs/arithmetic.md

in_page() { # how, what
  grep -q "$1" -- "$2" "$page" || { bad=$((bad + 1)); echo "docs/arithmetic.md has no line \"$2\""; }
}

# The list in the help: "name values: what it is for".
count=0
while IFS= read -r line; do
  call=${line%%: *}
  # shellcheck disable=SC2086
  ends_with 0 "$PULLCORD" work $call
  says "Leaves out: "
  says "Source: "
  # shellcheck disable=SC2086
  ends_with 0 "$PULLCORD" work $call --json
  says '"work-1"'
  in_page -x "## ${call%% *}"
  in_page -xF "pullcord work $call"
  count=$((count + 1))
done < <("$PULLCORD" work --help | sed -n '/^oil-refill/,/^$/p' | grep ': ')
[ "$count" -ge 25 ] || { bad=$((bad + 1)); echo "only $count examples in the help"; }
[ "$(grep -c '^## ' "$page")" = "$((count + 4))" ] ||
  { bad=$((bad + 1)); echo "docs/arithmetic.md has headings beside the $count calculations and its own four"; }

ends_with 0 "$PULLCORD" work premix 50:1 5 L
says "100 mL = 3.381 US fl oz = 3.52 UK fl oz [computed]"
ends_with 0 "$PULLCORD" work "compression" "8.5:1" "5000 ft" "68 degF"
says "exponent 1.3 (not"
ends_with 0 "$PULLCORD" work air -100 m
says "102.5 kPa"
ends_with 0 "$PULLCORD" work nozzle-flow 1.3 mm 150 bar
says "caution"

ends_with 64 "$PULLCORD" work
says "pullcord work --help"
ends_with 64 "$PULLCORD" work premx 50:1 5 L
says 'did you mean "premix"'
ends_with 64 "$PULLCORD" work premix
says "For example: premix 50:1 5 L"
ends_with 64 "$PULLCORD" work premix 50:1 5 L 6 L
says "one value too many"
ends_with 64 "$PULLCORD" work premix 50:1 5 L --jsno
says 'did you mean "--json"'
# shellcheck disable=SC2046
ends_with 64 "$PULLCORD" work premix $(seq 30)
says "one operand too many"
ends_with 65 "$PULLCORD" work premix 50:1 5
says "has no unit"
ends_with 65 "$PULLCORD" work premix 50:1 5 psi
says "a volume is expected"
ends_with 65 "$PULLCORD" work compression 40:1
says "outside what this holds for, 3:1 to 15:1"
ends_with 65 "$PULLCORD" work oil-refill -5 mL
says "cannot be right"
ends_with 65 "$PULLCORD" work premix $'50:1\x1b[2J' 5 L
silent_on $'\x1b'

# the same bytes in any locale, and no job or knowledge needed
one=$("$PULLCORD" work jet 0.70 mm 1 kPa blocked=20%)
two=$(LC_ALL=de_DE.UTF-8 PULLCORD_KNOWLEDGE=/nonexistent "$PULLCORD" work jet 0.70 mm 1 kPa blocked=20%)
[ "$one" = "$two" ] || { bad=$((bad + 1)); echo "another locale, another answer"; }
[ ! -e "$XDG_STATE_HOME" ] || { bad=$((bad + 1)); echo "arithmetic left something in the state folder"; }
finish
