# lib.sh - what the scripts of this folder share. The rule engine stops by the clock; on a machine
# with much else to do that can happen to anything, so a conversation that was stopped so is held
# once more from where it began.
. "$PULLCORD_SOURCE/tests/cli/lib.sh"

# practice OPTIONS -- LINE... - one conversation; its output goes to $out
practice() {
  local options=() before=$work/before
  while [ "$1" != -- ]; do options+=("$1"); shift; done
  shift
  mkdir -p "$XDG_STATE_HOME"
  rm -rf "$before"; cp -r "$XDG_STATE_HOME" "$before"
  for _ in 1 2 3 4 5; do
    out=$(printf '%s\n' "$@" | "$PULLCORD" practice "${options[@]}" 2>&1)
    case $out in *"the rule engine "*" and was stopped"*) ;; *) return ;; esac
    rm -rf "$XDG_STATE_HOME"; cp -r "$before" "$XDG_STATE_HOME"
  done
}

# A machine by hand, so that what it shows does not change with every figure of the knowledge; its
# owner's words are $words.
words="It goes up and down."
cat > "$work/mower.json" << CASE
{"pullcord": "practice-case-1", "machine": "walk-behind-mower", "complaint": "hunts",
 "words": "$words", "faults": ["main-jet-blocked"],
 "results": {"compression": 44, "fuel-look-and-smell": "stale", "spark-test": "jumps"}}
CASE
