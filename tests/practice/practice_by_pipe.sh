#!/usr/bin/env bash
# Practice by pipe: mistakes, impossible requests, leaving and coming back, the same seed giving
# the same bytes, unsafe acts, the levels, and what an apprentice does with runs afterwards.
. "$PULLCORD_SOURCE/tests/practice/lib.sh"

one=(--as anna --case "$work/mower.json" --level free)

# wrong names, impossible requests, wrong numbers and units, not knowing: help, and nothing spent
practice "${one[@]}" -- "banana" "don't know" "checks fule" "checks fuel 2" "99" "checks spark" "open the bonnet" \
  "repair" "declare" "points gap" "repair reed" "declare main jet blocked, 180 %" "compression 6 kg" "no" "hint" \
  "starting fluid" "path" "quit"
says "What do you do first?"
says "I know no check called \"banana\""
says "Not knowing is where it starts"
says "No system and no check here is called \"fule\""
says "There is no number 99"
says "spark across a fixed gap"
says "I know no cover called"
says "Say which: repair"
says "Say which: declare"
says "from 0 to 100"
says "This machine has no contact-breaker points"
says "6 kg is a mass"
says "Here you need not give the reading"
says "Hints are for the guided level"
says "That is not done here"
says "Nothing was done yet"
says "Kept. To go on with it: pullcord practice --as anna"
says "[walk-behind mower, \"$words\" | 0 min | plug lead on]"
silent_on "So far"

# what is wrong is not told while the run goes on
ends_with 64 "$PULLCORD" practice debrief --as anna
says "this run is not over"

# leaving and coming back: what was done is there, asked again it is the same
practice --as anna -- "fuel-look-and-smell" "wipe" "compression" "quit"
says "Run 1 goes on (free, 0 steps done)"
says "So far: look and smell of the fuel"
says "cranking compression: 44 psi"
# something else, or leaving, at a question: nothing is done
practice --as anna -- "repair clean main jet" "path" "quit"
practice --as anna -- "path" "compression" "quit"
says "Run 1 goes on (free, 2 steps done)"
says "look and smell of the fuel"
says "cranking compression: 44 psi"

# declared, with a certainty that has to be a number
practice --as anna -- "declare main jet blocked" "yes" "very" "70" "yes"
says "A number, please"
says "What you declared was it."
says "Brier 0.09"
says "THE BEST PATH on this machine"
says "THREE THINGS TO TAKE AWAY"
says "a check that could say nothing new"
says "practice debrief --as anna --html"

# declared wrongly: paid for, still the same, and on it goes
practice --as hans --case "$work/mower.json" --level free -- "declare fuel-stale, 40 %" "yes" "quit"
says "declared fuel stale: still the same"
says "Kept."

# done again, the same; tried otherwise
ends_with 0 "$PULLCORD" practice replay 1 --as anna
says "as it was kept"
ends_with 0 "$PULLCORD" practice what-if 1 1 spark-test --as anna
says "Had you at step 1"
ends_with 64 "$PULLCORD" practice debrief 7 --as anna
ends_with 64 "$PULLCORD" practice debreif --as anna
says "did you mean \"debrief\""

# unsafe acts stop the run and explain; made safe first they do not
practice --as dora --seed 3 --class chainsaw --level free -- "starting fluid" "no"
says "Starting fluid in a two-stroke"
says "Score 0"
practice --as dora --seed 4 --class walk-behind-mower --level free --new -- "blade-look" "no"
says "The plug lead was still on"
practice --as dora --seed 4 --class walk-behind-mower --level free --new -- "lead off" "blade-look" "fuel-look-and-smell" "spark test" "no"
says "Petrol was let out there"
says "Petrol was let out and not wiped up"

# guided: asked first, told afterwards; back is not made, and a reading is judged first
practice --as emil --case "$work/mower.json" --level guided -- "hint" "compression" "back" \
  "fuel-look-and-smell" "" "how" "sour" "wipe" "compression" "don't know" "yes" "2" "quit"
says "Best next:"
says "It can show: "
says "Not done."
says "A few words will do"
says "end about"
says "It shows a number in psi"
says "What is that for this engine?"
says "sound is "
says "that you have read already"

# guided: a check, or what makes it safe, typed where an expectation was asked for is not taken for one; before what
# hurts one is asked once more, and yes stops the run all the same
practice --as emma --case "$work/mower.json" --level guided -- "blade-look" "lead off" "compression" "spark test" "jumps" "blade-look" "yes" "sharp" "no"
says "Stop and think: plug lead on"
says "The plug lead is off"
says "As you expected."
says "The plug lead was still on"

# a worked example is read
practice --as fred --seed 5 --class string-trimmer --level worked -- "" "" "" "" "" "" "" "" "" "" "" "" "" "" "" "" "" "" "" ""
says "A worked example: read how the best path goes"
says "Right: nothing better to do."
says "THREE THINGS TO TAKE AWAY"
says "Now one of your own"

# progress, and forgetting
ends_with 0 "$PULLCORD" practice progress --as anna
says "anna: 1 run, 1 finished"
out=$(echo yes | "$PULLCORD" practice forget --as anna)
says "Deleted"
[ ! -e "$XDG_STATE_HOME/pullcord/practice/anna" ] || { bad=$((bad + 1)); echo "anna is not forgotten"; }
ends_with 64 "$PULLCORD" practice --as ../x
ends_with 64 "$PULLCORD" practice --level hard
ends_with 64 "$PULLCORD" practice --seed x
finish
