#!/usr/bin/env bash
# A practice run in an 80 by 24 terminal: where one stands can be read without scrolling back,
# mistakes get help, and after the program was killed the run goes on where it was.
. "$PULLCORD_SOURCE/tests/practice/lib.sh"
command -v tmux > /dev/null || { echo "tmux is not installed: not tried in a terminal"; exit 77; }
export TMUX_TMPDIR=$work
session=0
tm() { tmux -L "practice-$session" -f /dev/null "$@"; }
trap 'tm kill-server 2> /dev/null; rm -rf "$work"' EXIT

# waits until the last line that is not empty begins with $1 and the screen shows $2; it goes to $out
screen() {
  for _ in $(seq 600); do
    out=$(tm capture-pane -p 2> /dev/null)
    case $(printf '%s\n' "$out" | grep -v '^ *$' | tail -n 1) in
      "$1"*) case $out in *"$2"*) return 0 ;; esac ;;
    esac
    sleep 0.1
  done
  bad=$((bad + 1)); printf 'the screen never showed: %s with: %s\n%s\n\n' "$1" "$2" "$out"
}
prompt='practice>'
type_line() { tm send-keys -l -- "$1"; tm send-keys Enter; }
# told in full on the screen: whose machine and words, minutes, plug lead
stands() {
  says "[walk-behind mower, \"$words\" | $1"
  says "plug lead"
  [ "$(printf '%s\n' "$out" | awk 'length($0) > 80' | wc -l)" = 0 ] || { bad=$((bad + 1)); echo "wider than 80 columns"; }
}
run() {
  tm kill-server 2> /dev/null
  session=$((session + 1))
  tm start-server \; set-option -g remain-on-exit on \; new-session -d -x 80 -y 24 \
    "exec env XDG_STATE_HOME='$XDG_STATE_HOME' XDG_DATA_HOME='$XDG_DATA_HOME' TERM=xterm '$PULLCORD' practice $1"
}

run "--help"
sleep 0.5
tm capture-pane -p > /dev/null 2>&1 || { echo "no terminal can be opened here"; exit 77; }

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
for _ in $(seq 20); do
  type_line ""
  sleep 0.3
  out=$(tm capture-pane -p)
  case $out in *"The next machine"*) break ;; esac
done
says "THREE THINGS TO TAKE AWAY"
says "practice debrief --as anna"
finish
