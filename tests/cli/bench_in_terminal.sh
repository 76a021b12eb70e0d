#!/usr/bin/env bash
# The bench conversation in an 80 by 24 terminal, and in one that can do nothing: the leading causes,
# the question, why it is asked and its cautions are on the screen at every turn, without scrolling back.
. "$(dirname "$0")/lib.sh"
. "$(dirname "$0")/terminal.sh"

prompt() { wait_until ends_in "bench>${1:+ $1}"; }
screen() { wait_until shows "$1"; }

# types a line at a prompt that an old one may look like: sent only when its words are seen, so that
# the next bare prompt is a new one
enter() {
  tm send-keys -l -- "$1"
  prompt "$1"
  tm send-keys Enter
}

# the whole of a turn is there
whole() {
  prompt
  says "Most likely:"
  says "Next ("
  says "? don't know"
  fits
}
in_order() {
  local before after
  before=$(printf '%s\n' "$out" | grep -n -m 1 -- "$1" | cut -d : -f 1)
  after=$(printf '%s\n' "$out" | grep -n -m 1 -- "$2" | cut -d : -f 1)
  [ -n "$before" ] && [ -n "$after" ] && [ "$before" -lt "$after" ] ||
    { bad=$((bad + 1)); printf '%s does not stand before %s:\n%s\n' "$1" "$2" "$out"; }
}

talk() {
  open_terminal "env XDG_STATE_HOME='$XDG_STATE_HOME' XDG_DATA_HOME='$XDG_DATA_HOME' TERM=screen '$PULLCORD'"
  screen "What machine is it?"
  type_line "tiller"
  screen "What does the owner say"
  # two complaints in one breath bring many cautions: all of the turn is on the screen all the same
  type_line "it wont run unless choke is on and it is hard to pull"
  wait_until stands_at "which?" "runs only on choke"
  type_line "1"
  wait_until shows "And this as well"
  type_line "y"
  whole
  says "CAUTION"
  says "why: it tells"
  in_order "CAUTION" "Next ("
  tm send-keys -l "compr"; tm send-keys Tab
  screen "compress"
  tm send-keys C-u
  prompt
  enter "compression 62psi, spark jumps"
  wait_until shows "cranking compression 62 psi"
  whole
  # Up brings the last line back
  tm send-keys Up
  prompt "compression 62psi, spark jumps"
  tm send-keys C-u
  prompt
  # what shows more than a screenful stops after each; what is typed there goes on as the next line,
  # and the question stands there again
  type_line "help"
  wait_until stands_at "[enter goes on" "how to make the check"
  type_line "why"
  wait_until stands_at "[enter goes on" "db"
  type_line "q"
  whole
  # ctrl-c in the middle of a line: what was entered is kept, and goes on
  tm send-keys -l "half a wo"
  prompt "half a wo"
  tm send-keys C-c
  screen "What was entered is kept"
  open_terminal "env XDG_STATE_HOME='$XDG_STATE_HOME' XDG_DATA_HOME='$XDG_DATA_HOME' TERM=screen '$PULLCORD'"
  screen "A job was left open: tiller, runs only on choke or primer, 2 results"
  type_line "yes"
  whole
  # a screen of another size is taken as it is
  tm resize-window -x 64 -y 30
  prompt
  enter "?"
  whole
  [ "$(printf '%s\n' "$out" | awk 'length($0) > 64' | wc -l)" = 0 ] || { bad=$((bad + 1)); echo "wider than 64 columns"; }
  # where it cannot all fit, what leads still stands above the question
  tm resize-window -x 80 -y 18
  prompt
  enter "look and smell of the fuel stale"
  whole
  tm send-keys C-d
  screen "The job is kept"

  # a dumb terminal, no colour: the same talk, no escape sign
  open_terminal "env XDG_STATE_HOME='$XDG_STATE_HOME' TERM=dumb NO_COLOR=1 '$PULLCORD' | tee '$work/dumb'"
  screen "A job was left open"
  type_line "yes"
  prompt
  type_line "quit"
  screen "The job is kept"
  if grep -q "$(printf '\033')" "$work/dumb"; then bad=$((bad + 1)); echo "escape signs in a dumb terminal"; fi
  finish
}
hold talk
