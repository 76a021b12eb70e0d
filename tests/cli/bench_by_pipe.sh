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

# several results on one line; the reading before the name; a slip in an answer is asked back
bench "yes" "spark jumps, plug gap 0.030 in and compression 7 bar, fairly" "path" "quit"
says "Noted: spark across a fixed gap: jumps every time."
says "Noted: plug gap: 0.762 mm."
says "Noted: cranking compression: 101.5 psi (not quite sure)."
bench "yes" "0.76mm plug gap" "62psi compression" "oil-look" "milkyy" "yes" "quit"
says "Noted: plug gap: 0.76 mm."
says "Noted: cranking compression: 62 psi."
says "Asked now: look and smell of the oil."
says "You mean: milky?"
says "Noted: look and smell of the oil: milky."
# when only a part of it is known nothing is noted, and that is said
bench "yes" "spark jumps, banana, compression 70 psi" "path" "quit"
says "nothing is noted"
silent_on "Noted: cranking compression"
# what cannot be on any machine is asked for again
bench "yes" "compression 900 bar" "compression -5 psi" "plug gap 76 mm" "quit"
says '"900 bar" cannot be: cranking compression is between 0'
says '"-5 psi" cannot be'
says '"76 mm" cannot be: plug gap is between 0 and 5 mm on any machine.'
silent_on "Noted"
# which fl oz is asked, a reading of nothing that is measured here is said, what is typed at a question
# instead of its answer goes on as the next line
bench "yes" "22 fl oz" "62 psi" "WHY" "quit"
says "may be US fl oz or UK fl oz"
says "What was measured?"
says "in all: the chance that it is there is"
# words that begin like a command are no command: nothing is begun anew
bench "yes" "machine was out in the rain" "new plug fitted" "machine" "no" "quit"
silent_on "What machine is it?"
says "Begin again with another machine?"
# back: only among what was entered, by number too
bench "yes" "back coil" "back 1" "back 99" "quit"
says 'No result was entered for "coil"'
says "Taken back: "
says 'No result was entered for "99"'

# a line without an end is cut, and takes no memory
if (ulimit -v 120000; "$PULLCORD" --version) > /dev/null 2>&1; then # not under the sanitizers, which want more
  out=$( (printf 'yes\n'; head -c 200000000 /dev/zero | tr '\0' x; printf '\nquit\n') |
    (ulimit -v 120000; "$PULLCORD" 2>&1))
  says "The job is kept"
fi

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
# the second prompt: the entry was taken
for _ in $(seq 600); do [ "$(grep -c 'bench>' "$work/log")" -ge 2 ] && break; sleep 0.1; done
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
