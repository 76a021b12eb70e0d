#!/usr/bin/env bash
# The bench conversation in an 80 by 24 terminal, and in one that can do nothing.
. "$(dirname "$0")/lib.sh"
command -v tmux > /dev/null || { echo "tmux is not installed: not tried in a terminal"; exit 77; }
# tmux puts its sockets here, and every run has a server of its own: one that is just going down takes new
# sessions with it
export TMUX_TMPDIR=$work
session=0
tm() { tmux -L "bench-$session" -f /dev/null "$@"; }
trap 'tm kill-server 2> /dev/null; rm -rf "$work"' EXIT

# waits until the screen shows the text; the screen goes to $out
screen() {
  for _ in $(seq 300); do
    out=$(tm capture-pane -p 2> /dev/null)
    case $out in *"$1"*) return 0 ;; esac
    sleep 0.1
  done
  bad=$((bad + 1)); printf 'the screen never showed: %s\n%s\n\n' "$1" "$out"
}
# waits until the last line written is the prompt with this behind it: older prompts stay on the screen
prompt() {
  for _ in $(seq 300); do
    out=$(tm capture-pane -p 2> /dev/null)
    [ "$(printf '%s\n' "$out" | grep . | tail -n 1)" = "bench>${1:+ $1}" ] && return 0
    sleep 0.1
  done
  bad=$((bad + 1)); printf 'the prompt never stood last with: %s\n%s\n\n' "${1-}" "$out"
}
type_line() { tm send-keys -l -- "$1"; tm send-keys Enter; }

run() {
  tm kill-server 2> /dev/null
  session=$((session + 1))
  tm new-session -d -x 80 -y 24 "env $1 '$PULLCORD' ${2-}; sleep 60"
}

# where no terminal can be opened at all (a container without /dev/pts) there is nothing to try
run "TERM=xterm" "--version"
tm capture-pane -p > /dev/null 2>&1 || { echo "no terminal can be opened here"; exit 77; }

run "XDG_STATE_HOME='$XDG_STATE_HOME' XDG_DATA_HOME='$XDG_DATA_HOME' TERM=xterm"
screen "What machine is it?"
type_line "tiller"
screen "What does the owner say"
type_line "starts, then dies"
prompt
says "Most likely:"
says "don't know"
tm send-keys -l "compr"; tm send-keys Tab
screen "compress"
tm send-keys C-u
prompt
type_line "spark jumps"
screen "Noted: spark"
prompt
# nothing is wider than the screen, and the question stands right above the prompt
[ "$(printf '%s\n' "$out" | awk 'length($0) > 80' | wc -l)" = 0 ] || { bad=$((bad + 1)); echo "wider than 80 columns"; }
says "don't know"
# Up brings the last line back
tm send-keys Up
prompt "spark jumps"
tm send-keys C-u
prompt
tm send-keys C-d
screen "The job is kept"

# a dumb terminal, no colour: the same talk, no escape sign
run "XDG_STATE_HOME='$XDG_STATE_HOME' TERM=dumb NO_COLOR=1" "| tee '$work/dumb'"
screen "A job was left open"
type_line "yes"
prompt
type_line "quit"
screen "The job is kept"
if grep -q "$(printf '\033')" "$work/dumb"; then bad=$((bad + 1)); echo "escape signs in a dumb terminal"; fi
finish
