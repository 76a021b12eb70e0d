# terminal.sh - a terminal of 80 by 24 for tests, in a tmux server of their own. Sourced after lib.sh.
#
# A machine with much else to do is slow and may lose the server, so everything waits for what the
# screen shows and never for a time; a server that does not come up is tried again under another name;
# and one that is lost ends the attempt, and the whole talk is held once more from the beginning.
# Where no terminal can be opened at all the test is skipped (77).
command -v tmux > /dev/null || { echo "tmux is not installed: not tried in a terminal"; exit 77; }
sockets=$(mktemp -d) # a short path of our own: sockets take no long ones
patience=120         # seconds until something that does not show is taken for missing
session=0

tm() { tmux -u -f /dev/null -S "$sockets/$session" "$@"; }

# Ends the server of this session, and waits until it answers no more.
close_terminal() {
  tm kill-server 2> /dev/null || return 0
  for _ in $(seq 100); do
    tm has-session 2> /dev/null || return 0
    sleep 0.1
  done
}
close_all() {
  local at
  for at in "$sockets"/*; do
    [ ! -S "$at" ] || { session=${at##*/}; close_terminal; }
  done
}
trap 'close_all; rm -rf "$work" "$sockets"' EXIT

# open_terminal COMMAND - runs it in a new terminal; its last screen stays when it has ended
open_terminal() {
  close_terminal
  for _ in 1 2 3 4 5; do
    session=$((session + 1))
    if tm start-server \; set-option -g remain-on-exit on \; new-session -d -x 80 -y 24 "$1" 2> "$sockets/why" &&
      tm has-session 2> /dev/null; then
      return 0
    fi
    tm kill-server 2> /dev/null
    sleep 1
  done
  echo "no terminal can be opened here: $(cat "$sockets/why")"
  exit 77
}

# What is on the screen goes to $out. A server that is gone ends the attempt.
look() {
  out=$(tm capture-pane -p 2> /dev/null) && return
  tm has-session 2> /dev/null && return
  echo "the terminal was lost"
  exit 75
}

# wait_until CONDITION WORD... - until the function says yes of what is on the screen; or says what
# was missing
wait_until() {
  local until=$((SECONDS + patience))
  while :; do
    look
    "$@" && return 0
    [ "$SECONDS" -lt "$until" ] || break
    sleep 0.1
  done
  bad=$((bad + 1)); printf 'the screen never showed: %s\n%s\n\n' "${*:2}" "$out"
}
last_line() { printf '%s\n' "$out" | grep -v '^ *$' | tail -n 1; }
shows() { case $out in *"$1"*) return 0 ;; *) return 1 ;; esac; }
ends_in() { [ "$(last_line)" = "$1" ]; }
stands_at() { case $(last_line) in "$1"*) shows "$2" ;; *) return 1 ;; esac; }

type_line() { tm send-keys -l -- "$1"; tm send-keys Enter; }

# nothing on the screen is wider than it
fits() {
  [ "$(printf '%s\n' "$out" | awk 'length($0) > 80' | wc -l)" = 0 ] || { bad=$((bad + 1)); echo "wider than 80 columns"; }
}

# hold TALK - holds the talk (a function that ends with finish); once more from the beginning, with a
# state of its own, when the terminal was lost on the way
hold() {
  local status
  for attempt in 1 2 3; do
    ( "$1" )
    status=$?
    [ "$status" = 75 ] || exit "$status"
    close_all
    rm -rf "$XDG_STATE_HOME" "$XDG_DATA_HOME"
    session=$((100 * attempt))
  done
  echo "the terminal was lost every time: not tried in a terminal"
  exit 77
}
