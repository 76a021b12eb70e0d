#!/usr/bin/env bash
# Stored jobs from the command line: each verb, what it refuses, and two stores.
. "$(dirname "$0")/../cli/lib.sh"
export PULLCORD_NOW=1790000000

ends_with 0 "$PULLCORD" job list
says "No job is kept yet"
ends_with 0 "$PULLCORD" job open tiller "starts then dies" --owner "the blue one" --by Kim
name=$(sed -n 's/^Job \([a-z0-9]*\):.*/\1/p' <<< "$out")
says "starts"
ends_with 65 "$PULLCORD" job open zeppelin
ends_with 64 "$PULLCORD" job opne tiller
says 'did you mean "open"'
ends_with 64 "$PULLCORD" job add "$name"
ends_with 0 "$PULLCORD" job add "$name" spark-test jumps
ends_with 0 "$PULLCORD" job add "$name" compression 427 kPa, fairly
ends_with 0 "$PULLCORD" job add "$name" cranking compression 60 psi
ends_with 65 "$PULLCORD" job add "$name" compression 60 furlong
ends_with 65 "$PULLCORD" job add "$name" banana 3
ends_with 0 "$PULLCORD" job add "$name" has bowl-drain
ends_with 0 "$PULLCORD" job add "$name" complaint hunts
ends_with 0 "$PULLCORD" job add "$name" off air-box
ends_with 65 "$PULLCORD" job add "$name" off air-bxo
says 'did you mean "air-box"'
ends_with 0 "$PULLCORD" job add "$name" minutes 12
ends_with 64 "$PULLCORD" job add "$name" minutes -3
ends_with 0 "$PULLCORD" job add "$name" part carburettor gasket
ends_with 0 "$PULLCORD" job back "$name"
says "Taken back: cranking compression"
ends_with 65 "$PULLCORD" job back "$name" compression
ends_with 0 "$PULLCORD" job show "$name"
says "spark across a fixed gap: jumps every time"
says "took-back cranking compression"
says "[Kim]"

ends_with 65 "$PULLCORD" job close "$name" repaired
says "still off"
ends_with 64 "$PULLCORD" job close "$name" mended
ends_with 0 "$PULLCORD" job add "$name" repair main-jet-blocked
says "proof: "
says "Run it as the owner told it, and this stays away: starts,"
says "carburettor bowl, then carburettor, then air filter" # the reverse of the way off
says "service check: oil, plug, filter, fuel, leaks, stop switch, speed"
ends_with 0 "$PULLCORD" job add "$name" proof main-jet-blocked passed
ends_with 65 "$PULLCORD" job close "$name" repaired --covers-off
says "service check open: oil, plug, filter, fuel, leaks, stop-switch, speed."
ends_with 0 "$PULLCORD" job add "$name" service oil, plug and filter done --by Kim
ends_with 64 "$PULLCORD" job add "$name" service oli done
says 'did you mean "oil"'
ends_with 64 "$PULLCORD" job add "$name" service fuel found
says "say what was found"
ends_with 64 "$PULLCORD" job add "$name" service speed left
ends_with 64 "$PULLCORD" job add "$name" service done
ends_with 64 "$PULLCORD" job add "$name" service leaks
ends_with 0 "$PULLCORD" job add "$name" service fuel found water in the bowl
ends_with 0 "$PULLCORD" job add "$name" service leaks stop switch done
ends_with 0 "$PULLCORD" job add "$name" service speed left no tachometer here
ends_with 65 "$PULLCORD" job close "$name" repaired --covers-off
says "service check open: fuel (found)."
ends_with 0 "$PULLCORD" job show "$name"
says "service   oil done [Kim]"
says "service   speed left: no tachometer here"
says "Service check open: fuel (found: water in the bowl)"
ends_with 0 "$PULLCORD" job close "$name" repaired --covers-off --service-open
says "Confirmed: main jet"
says "pullcord card $name"
ends_with 0 "$PULLCORD" job show "$name"
says "check open: fuel"
ends_with 0 "$PULLCORD" job reopen "$name" fuel tank to be drained
ends_with 0 "$PULLCORD" job add "$name" service fuel done drained
ends_with 0 "$PULLCORD" job close "$name" repaired --covers-off
ends_with 65 "$PULLCORD" job close "$name" repaired --covers-off
ends_with 65 "$PULLCORD" job add "$name" spark-test none
says "reopen"
ends_with 0 "$PULLCORD" job add "$name" proof main-jet-blocked failed
says "open again"
ends_with 0 "$PULLCORD" job show "$name"
says "Service check open: oil, plug, filter, fuel, leaks, stop-switch, speed"
ends_with 0 "$PULLCORD" job list
says "the blue one"
ends_with 0 "$PULLCORD" job close "$name" handed over --covers-off
ends_with 0 "$PULLCORD" job reopen "$name" came back
ends_with 65 "$PULLCORD" job reopen "$name"
ends_with 0 "$PULLCORD" job find GASK
says "$name"

# one job and all jobs as JSON, into another bench's store and back: the same bytes
ends_with 0 "$PULLCORD" job open chainsaw will not start
"$PULLCORD" job export --all > "$work/all"
ends_with 0 "$PULLCORD" job export "$name" --to "$work/one"
[ "$(stat -c %a "$work/one")" = 600 ] || { bad=$((bad + 1)); echo "an export can be read by others"; }
grep -qF "$(cat "$work/one")" "$work/all" || { bad=$((bad + 1)); echo "one job is not as among all"; }
first=$XDG_STATE_HOME
XDG_STATE_HOME=$work/second
ends_with 0 "$PULLCORD" job import "$work/all"
says "2 jobs and"
"$PULLCORD" job export --all | cmp -s - "$work/all" || { bad=$((bad + 1)); echo "import and export changed bytes"; }
ends_with 0 "$PULLCORD" job import - < "$work/all"
says "0 jobs and 0 entries"
ends_with 66 "$PULLCORD" job import "$work/nothing"
echo '{"pullcord":"job-9"}' > "$work/odd"
ends_with 65 "$PULLCORD" job import "$work/odd"
says "odd:1:"

# backup, restore and merge
ends_with 0 "$PULLCORD" job open "string trimmer" weak under load
ends_with 0 "$PULLCORD" job backup "$work/second.db"
XDG_STATE_HOME=$first
ends_with 0 "$PULLCORD" job merge "$work/second.db"
ends_with 0 "$PULLCORD" job merge "$work/second.db"
says "0 entries were new"
ends_with 0 "$PULLCORD" job list
says "trimmer"
ends_with 65 "$PULLCORD" job merge "$work/odd"
ends_with 66 "$PULLCORD" job restore "$work/nothing"
ends_with 0 "$PULLCORD" job restore "$work/second.db"
says "kept as"
finish
