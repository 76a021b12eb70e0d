#!/usr/bin/env bash
# What a teacher does: class sets, results, cases by hand; machines from the shop's own history;
# the same seed giving the same bytes in every form.
. "$PULLCORD_SOURCE/tests/practice/lib.sh"

for who in ben carl; do
  practice --as $who --seed 5 --level free -- "spark-test" "compression" "give up" "yes"
  printf '%s\n' "$out" | sed "s/ --as $who//" > "$work/$who"
  "$PULLCORD" practice debrief --as $who --html | sed "s/of $who,//" > "$work/$who.html"
  "$PULLCORD" practice debrief --as $who --json | grep -v "apprentice" > "$work/$who.json"
done
for what in "" .html .json; do
  cmp -s "$work/ben$what" "$work/carl$what" || { bad=$((bad + 1)); echo "the same seed gave other bytes: $what"; }
done
grep -q '<svg' "$work/ben.html" || { bad=$((bad + 1)); echo "no picture in the page"; }
grep -qE 'src=|href=|<script' "$work/ben.html" && { bad=$((bad + 1)); echo "the page needs something else"; }

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
practice --as kai --case "$work/case.json" --level free -- "quit"
says "A tiller."
# such a machine as one of a set
printf '{"pullcord": "practice-set-1", "name": "by-hand", "knowledge": "0000000000000000", "runs": [{"number": 1, "seed": "3", "kind": "one", "case": %s}]}' \
  "$(cat "$work/case.json")" > "$work/hand.json"
practice --as kai --new --set "$work/hand.json" -- "declare main-jet-blocked, 60 %" yes
says "by-hand, machine 1"
says "That is the end of this one"
ends_with 0 "$PULLCORD" practice score "$work/hand.json"
says "kai,1,yes,main-jet-blocked,yes"

# machines as they come to this shop: nothing yet; then two tillers with blocked jets and a saw
ends_with 66 "$PULLCORD" practice --history --as ida
says "This shop has no jobs yet"
for class in tiller tiller chainsaw; do
  fault=$([ $class = tiller ] && echo main-jet-blocked || echo fuel-stale)
  "$PULLCORD" job open $class "will not start" > /dev/null || bad=$((bad + 1))
  "$PULLCORD" job add last repair $fault > /dev/null || bad=$((bad + 1))
  "$PULLCORD" job add last proof $fault passed > /dev/null || bad=$((bad + 1))
  "$PULLCORD" job add last service all done > /dev/null || bad=$((bad + 1))
  "$PULLCORD" job close last repaired > /dev/null || bad=$((bad + 1))
done
ends_with 66 "$PULLCORD" practice --history --class generator --as ida
says "no proved job of such a machine"
practice --history --seed 6 --as ida --level free -- "compression" "quit"
says "Drawn as machines come to this shop (3 proved jobs)"
told=$(printf '%s\n' "$out" | grep 'The owner says')
grep -q '"shop-rates"' "$XDG_STATE_HOME/pullcord/practice/ida/run-1.json" || { bad=$((bad + 1)); echo "rates are not kept"; }
"$PULLCORD" practice set --seed 8 --count 3 --history > "$work/own.json" || bad=$((bad + 1))
[ "$(grep -c '"shop-jobs"' "$work/own.json")" = 3 ] || { bad=$((bad + 1)); echo "a set without the shop's rates"; }
grep '"machine"' "$work/own.json" | grep -qvE 'tiller|chainsaw' && { bad=$((bad + 1)); echo "a machine that never came"; }
# the history goes on; the run stays as it was
"$PULLCORD" learned off > /dev/null
practice --as ida -- "compression" "give up" "no"
says "$told"
ends_with 0 "$PULLCORD" practice replay 1 --as ida
says "as it was kept"
ends_with 66 "$PULLCORD" practice --history --as ida --new
says "switched off"
finish
