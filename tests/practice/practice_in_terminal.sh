#!/usr/bin/env bash
# A practice run in an 80 by 24 terminal: where one stands can be read without scrolling back,
# mistakes get help, and after the program was killed the run goes on where it was.
. "$PULLCORD_SOURCE/tests/practice/lib.sh"
. "$PULLCORD_SOURCE/tests/cli/terminal.sh"

# the last line that is not empty begins with $1 and the screen shows $2
screen() { wait_until stands_at "$1" "$2"; }
prompt='practice>'
# told in full on the screen: whose machine and words, minutes, plug lead
stands() {
  says "[walk-behind mower, \"$words\" | $1"
  says "plug lead"
  fits
}
run() {
  open_terminal "exec env XDG_STATE_HOME='$XDG_STATE_HOME' XDG_DATA_HOME='$XDG_DATA_HOME' TERM=xterm '$PULLCORD' practice $1"
}

changed() { [ "$out" != "$before" ]; }

talk() {
  run "--as anna --case $work/mower.json --level free"
  screen "$prompt" "What do you do first?"
  stands "0 min"
  type_line "banana"
  screen "$prompt" "I know no check called"
  stands "0 min"
  type_line "help"
  screen "$prompt" "never by luck"
  says "spark test         make a check" # the whole of the help is on the screen
  stands "0 min"
  type_line "checks fuel"
  screen "$prompt" "More: checks fuel 2"
  says "  1. "
  stands "0 min"
  type_line "compression"
  screen "$prompt" "So far: cranking compression: 44 psi"
  stands ""
  tm send-keys Up
  screen "practice> compression" "So far"
  tm send-keys C-u
  type_line "fuel-look-and-smell"
  screen "$prompt" "PETROL"
  stands ""
  type_line "repair clean main jet"
  screen "Do it?" "clean main jet and bowl: "
  # killed at a question: what was done is kept, what was asked is not done
  kill -9 "$(tm list-panes -F '#{pane_pid}')"
  run "--as anna"
  screen "$prompt" "Run 1 goes on (free, 2 steps done)"
  says "So far: cranking compression: 44 psi | look and smell of the fuel"
  says "PETROL"
  stands ""
  type_line "wipe"
  screen "$prompt" "Wiped up"
  type_line "declare main jet blocked, 80 %"
  screen "Do it?" "You declare: main jet blocked or gummed"
  type_line "yes"
  screen "See the debrief now?" "What you declared was it."
  # a screenful at a time
  type_line ""
  screen "[enter goes on" "YOUR PATH"
  says "DEBRIEF walk-behind mower: \"$words\""
  says "THE BEST PATH on this machine"
  until shows "The next machine"; do
    before=$out
    type_line ""
    wait_until changed
    [ "$bad" = 0 ] || break
  done
  says "THREE THINGS TO TAKE AWAY"
  says "practice debrief --as anna"
  finish
}
hold talk
