#!/usr/bin/env bash
# Practice by pipe: mistakes, impossible requests, leaving and coming back, the same seed giving
# the same bytes, unsafe acts, the examination of a class, and what is done with runs afterwards.
. "$PULLCORD_SOURCE/tests/cli/lib.sh"

# practice OPTIONS -- LINE... - one conversation; its output goes to $out
practice() {
  local options=()
  while [ "$1" != -- ]; do options+=("$1"); shift; done
  shift
  out=$(printf '%s\n' "$@" | "$PULLCORD" practice "${options[@]}" 2>&1)
}

one=(--as anna --seed 14 --class walk-behind-mower --system fuel --level free)

# wrong names, impossible requests, wrong numbers: help, and nothing spent
practice "${one[@]}" -- "banana" "checks fule" "checks fuel 2" "99" "open the bonnet" "repair" "declare" "points gap" \
  "declare main jet blocked, 180 %" "hint" "path" "quit"
says "The owner says: \"hunts\""
says "I know no check called \"banana\""
says "Checks that this machine can have"
says "There is no number 99"
says "I know no cover called"
says "Say which: repair"
says "Say which: declare"
says "from 0 to 100"
says "This machine has no contact-breaker points"
says "Hints are for the guided level"
says "Nothing was done yet"
silent_on " min)"
says "Kept."
silent_on "Gave away"

# leaving and coming back: what was done is there, asked again it is the same
practice --as anna -- "fuel-look-and-smell" "wipe" "compression" "quit"
says "Run 1 goes on (free, 0 steps done)"
first=$(printf '%s\n' "$out" | grep 'cranking compression: ')
practice --as anna -- "path" "compression" "quit"
says "Run 1 goes on (free, 2 steps done)"
says "look and smell of the fuel"
reading=$(printf '%s\n' "$first" | sed 's/.*compression: \([0-9.]* psi\).*/\1/')
says "cranking compression: $reading"

# declared wrongly: paid for, still the same, and on it goes
practice --as hans --seed 14 --class walk-behind-mower --system fuel --level free -- "declare fuel-stale, 40 %" "yes" "path" "quit"
says "declared fuel stale: still the same"
says "Kept."

# declared, with a certainty that has to be a number
practice --as anna -- "declare main jet blocked" "yes" "very" "70" "yes"
says "A number, please"
says "What you declared was it."
says "Brier 0.09"
says "THREE THINGS TO TAKE AWAY"
says "a check that could say nothing new"

# done again, the same; tried otherwise
ends_with 0 "$PULLCORD" practice replay 1 --as anna
says "as it was kept"
ends_with 0 "$PULLCORD" practice what-if 1 1 spark-test --as anna
says "Had you at step 1"
ends_with 64 "$PULLCORD" practice what-if 1 --as anna
ends_with 64 "$PULLCORD" practice debrief 7 --as anna
ends_with 64 "$PULLCORD" practice debreif --as anna
says "did you mean \"debrief\""

# the same seed, the same bytes
for who in ben carl; do
  printf '%s\n' "spark-test" "compression" "give up" "yes" | "$PULLCORD" practice --as $who --seed 5 --level free > "$work/$who" 2>&1
  "$PULLCORD" practice debrief --as $who --html | sed "s/of $who,//" > "$work/$who.html"
  "$PULLCORD" practice debrief --as $who --json > "$work/$who.json"
done
for what in "" .html .json; do
  cmp -s "$work/ben$what" "$work/carl$what" || { bad=$((bad + 1)); echo "the same seed gave other bytes: $what"; }
done
grep -q '<svg' "$work/ben.html" || { bad=$((bad + 1)); echo "no picture in the page"; }
grep -qE 'src=|href=|<script' "$work/ben.html" && { bad=$((bad + 1)); echo "the page needs something else"; }

# unsafe acts stop the run and explain; starting fluid in a four-stroke is merely not done
practice --as dora --seed 3 --class chainsaw --level free -- "starting fluid" "no"
says "Starting fluid in a two-stroke"
says "score 0 of"
practice --as dora --seed 3 --class tiller --level free --new -- "starting fluid" "quit"
says "That is not done here"
practice --as dora --seed 4 --class walk-behind-mower --level free --new -- "blade-look" "no"
says "The plug lead was still on"
practice --as dora --seed 4 --class walk-behind-mower --level free --new -- "lead off" "blade-look" "quit"
silent_on "hurts"

# guided: asked first, told afterwards
practice --as emil --seed 14 --class walk-behind-mower --system fuel --level guided -- "hint" "fuel-look-and-smell" "sour" "quit"
says "Best next:"
says "What do you expect this to show"
says "Right:"

# a worked example is read
practice --as fred --seed 5 --class string-trimmer --level worked -- "" "" "" "" "" "" "" "no"
says "A worked example: read how the best path goes"
says "Right: no step was expected to cost less"

# a class set: made, sat, scored
"$PULLCORD" practice set --seed 7 --count 2 --class tiller --kind one > "$work/set.json" || bad=$((bad + 1))
practice --as gina --set "$work/set.json" -- "hint" "spark-test" "give up"
says "set-7, machine 1"
says "Level: exam"
says "Hints are for the guided level"
silent_on "What was wrong"
practice --as gina --set "$work/set.json" -- "give up"
says "machine 2"
practice --as gina --set "$work/set.json" -- "quit"
says "begun every machine"
ends_with 0 "$PULLCORD" practice score "$work/set.json"
says "gina,1,yes,"
says "gina,2,yes,"
ends_with 0 "$PULLCORD" practice score "$work/set.json" --json
says '"apprentice"'

# a case by hand: solvable or not
cat > "$work/case.json" <<'CASE'
{"pullcord": "practice-case-1", "machine": "tiller", "complaint": "runs-on-choke-only", "faults": ["main-jet-blocked"], "seed": "3"}
CASE
ends_with 0 "$PULLCORD" practice case --case "$work/case.json"
says "Can be solved"
sed 's/main-jet-blocked/main-jet-blokced/' "$work/case.json" > "$work/bad.json"
ends_with 65 "$PULLCORD" practice case --case "$work/bad.json"
says "did you mean \"main-jet-blocked\""

# progress, and forgetting
ends_with 0 "$PULLCORD" practice progress --as anna
says "anna: 1 runs, 1 finished"
ends_with 0 "$PULLCORD" practice progress --as anna --json
says '"next-system"'
out=$(echo yes | "$PULLCORD" practice forget --as anna)
says "Deleted"
[ ! -e "$XDG_STATE_HOME/pullcord/practice/anna" ] || { bad=$((bad + 1)); echo "anna is not forgotten"; }
ends_with 64 "$PULLCORD" practice --as ../x
ends_with 64 "$PULLCORD" practice --level hard
ends_with 64 "$PULLCORD" practice --seed x
finish
