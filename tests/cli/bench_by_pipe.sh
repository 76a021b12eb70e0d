#!/usr/bin/env bash
# The bench conversation, typed with mistakes, in odd units, taken back and gone on with.
. "$(dirname "$0")/lib.sh"

# machine and complaint, both misspelt, confirmed
bench "tilerr" "1" "it wont run unles I hold the choke" "1" "causes" "quit"
says "tiller"
says "runs only on choke or primer"
says "main jet"
says "The job is kept"

# gone on with: the same machine and complaint; results by name, by number, in odd units
bench "yes" "spark jumps" "compression 427 kPa, fairly" "plug gap 0,030 in" "path" "quit"
says "A job was left open: tiller, runs only on choke or primer, 0 results"
says "Noted: spark across a fixed gap: jumps every time"
says "Noted: cranking compression: 61.93 psi (not quite sure)"
says "Noted: plug gap: 0.762 mm"
says "most believed"

# kept: three results; one is taken back; don't know counts nothing
bench "yes" "back plug gap" "?" "path" "quit"
says "3 results"
says "Taken back: plug gap"
says "don't know"

# what is not understood gets help, and nothing is lost
bench "yes" "banana" "gap 62 psi" "compression 99999 psi" "9" "gap 0.030 furlong" "has a spoiler" "quit"
says "Type help"
says "62 psi is a pressure; a length is expected"
says "I know no part called"
silent_on "Noted: cranking compression: 99999"

# why, how, next, help
bench "yes" "why" "how spark-test" "next" "help" "quit"
says "to begin with: the base rate"
says "CAUTION"
says "minutes"
says "how to make the check"

# cautions come before the way to do it
order=$(printf '%s\n' "yes" "how spark-test" "quit" | "$PULLCORD" 2>&1 | grep -nE '^  CAUTION|^   1\. ' | sed -n '1p;$p')
case $order in
  *CAUTION*"  1. "*) ;;
  *) [ "$(printf '%s' "$order" | head -n 1 | grep -c CAUTION)" = 1 ] || { bad=$((bad + 1)); echo "steps before cautions: $order"; } ;;
esac

# a new job leaves the old one open; nothing is thrown away
bench "no" "chainsaw" "will not start" "quit"
says "It stays open as"
ends_with 0 "$PULLCORD" job list
says "tiller"
says "chainsaw"

# a store that was damaged is said, and left alone or put aside, not thrown away
store=$XDG_STATE_HOME/pullcord/jobs.db
cp "$store" "$work/whole.db"
printf 'this is no store' > "$store"
cp "$store" "$work/damaged.db"
ends_with 65 "$PULLCORD" < /dev/null
says "damaged"
cmp -s "$store" "$work/damaged.db" || { bad=$((bad + 1)); echo "the damaged store was changed"; }
bench "yes" "tiller" "?" "quit"
says "put aside as"
says "The job is kept"
cmp -s "$XDG_STATE_HOME/pullcord/jobs-aside-1.db" "$work/damaged.db" || { bad=$((bad + 1)); echo "the damaged store is gone"; }
ends_with 0 "$PULLCORD" job restore "$work/whole.db"
says "kept as"
ends_with 0 "$PULLCORD" job list
says "chainsaw"

# the lid closed in mid-job: every entry that was taken is on disk
mkfifo "$work/in"
"$PULLCORD" < "$work/in" > "$work/log" 2>&1 &
pid=$!
exec 3> "$work/in"
printf 'no\nsnow thrower\nwill not start\nspark-test none\n' >&3
for _ in $(seq 50); do grep -q "Noted: spark" "$work/log" && break; sleep 0.1; done
sleep 0.2
kill -9 "$pid" 2>/dev/null
exec 3>&-
wait "$pid" 2>/dev/null
bench "yes" "path" "quit"
says "3 jobs are open"
says "snow thrower, will not start, 1 result"
says "spark across a fixed gap: no"

# two-stroke: nothing of a four-stroke is ever offered
bench "no" "string trimmer" "weak under load" "causes" "quit"
silent_on "valve"
silent_on "bowl"
finish
