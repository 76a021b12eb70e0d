#!/usr/bin/env bash
# Jobs at the bench, days apart: several open at once, gone on with, proved, closed, come back.
. "$(dirname "$0")/../cli/lib.sh"
day() { export PULLCORD_NOW=$((1790000000 + $1 * 86400)); }
named() { "$PULLCORD" job list --all | awk -v what="$1" 'index($0, what) {print $1; exit}'; }

# Monday: two machines come in
day 0
bench tiller "runs only on choke" "owner the blue one" "spark jumps" quit
says "The job is kept"
bench no chainsaw "will not start" quit
says "It stays open as"

# Tuesday: the last one is offered, the other is taken by name
day 1
out=$(printf '%s\n' "" quit | "$PULLCORD" 2>&1)
says "2 jobs are open"
says "chainsaw, will not start, 0 results. Go on with it?"
tiller=$(named "the blue one")
saw=$(named chainsaw)
out=$(printf '%s\n' "compression 88 psi" "main-jet-look blocked" "minutes 15" quit | "$PULLCORD" bench "$tiller" --by Kim 2>&1)
says "Job $tiller: tiller"
says "1 result (the blue one)"
says "Noted: 15 minutes"
out=$(printf '%s\n' quit | "$PULLCORD" --job "$tiller" 2>&1)
says "3 results"
out=$("$PULLCORD" bench nosuch 2>&1 < /dev/null)
says 'no job is called "nosuch"'

# Wednesday: a first repair that does not cure it stays in the job as evidence; the second does
day 2
out=$(printf '%s\n' "fixed fuel-stale" no path "fixed main-jet-blocked" yes "part bowl gasket" "note owner told to drain it" close \
  no quit | "$PULLCORD" bench "$tiller" 2>&1)
says "So something else is wrong"
says "Proved: main jet blocked"
says "Still off"
says "The job is kept. \"pullcord\" goes on with it."
# quit in the middle of the proof run is neither passed nor failed
out=$(printf '%s\n' "fixed main-jet-blocked" quit | "$PULLCORD" bench "$tiller" 2>&1)
says "Not proved yet"
out=$(printf '%s\n' "fixed main-jet-blocked" yes refit "refit 1" "refit 1" "refit 1" "service oil plug filter fuel leaks stop done" \
  "service speed found it races" close repaired | "$PULLCORD" bench "$tiller" 2>&1)
says "Back on"
says "The service check is open: speed (found). Close it all the same?"
says "The job stays open"
# the service check asks what is open, and says what it did not understand
out=$(printf '%s\n' service fine "left no tachometer here" | "$PULLCORD" bench "$tiller" 2>&1)
says "Found before: it races"
says "Type done; found, and what; or left, and why."
says "speed: left, no tachometer here"
out=$(printf '%s\n' close 1 | "$PULLCORD" bench "$tiller" 2>&1)
says "Closed: repaired, confirmed: main jet"
ends_with 0 "$PULLCORD" job show "$tiller"
says "closed    repaired, confirmed main-jet-blocked"
says "proof     fuel stale"
says ": failed"
says "2026-09-22 14:13  result    cranking compression: 88 psi [Kim]"
says "Minutes: 15"
says "Part: bowl gasket"

# a closed job is not offered; it is found, and opened again when it comes back
day 20
bench "" quit
says "A job was left open: chainsaw"
ends_with 0 "$PULLCORD" job find drain
says "$tiller"
says "repaired"
out=$(printf '%s\n' no | "$PULLCORD" bench "$tiller" 2>&1)
says "Open it again?"
ends_with 0 "$PULLCORD" job list
silent_on tiller
out=$(printf '%s\n' yes "fixed main-jet-blocked" no quit | "$PULLCORD" bench "$tiller" 2>&1)
says "So something else is wrong"
ends_with 0 "$PULLCORD" job list
says tiller

# two programs on one job: what the other one added is taken in
mkfifo "$work/in"
"$PULLCORD" bench "$saw" < "$work/in" > "$work/log" 2>&1 &
pid=$!
exec 3> "$work/in"
for _ in $(seq 400); do grep -q "bench>" "$work/log" && break; sleep 0.1; done
ends_with 0 "$PULLCORD" job add "$saw" plug-look fuel-wet --by Kim
printf 'note from the bench\npath\nquit\n' >&3
exec 3>&-
wait "$pid"
out=$(cat "$work/log")
says "Another program added entries"
says "plug"
ends_with 0 "$PULLCORD" job show "$saw"
says "from the bench"
says "[Kim]"
finish
