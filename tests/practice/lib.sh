# lib.sh - what the scripts of this folder share.
. "$PULLCORD_SOURCE/tests/cli/lib.sh"

# practice OPTIONS -- LINE... - one conversation; its output goes to $out
practice() {
  local options=()
  while [ "$1" != -- ]; do options+=("$1"); shift; done
  shift
  out=$(printf '%s\n' "$@" | "$PULLCORD" practice "${options[@]}" 2>&1)
}

# A machine by hand, so that what it shows does not change with every figure of the knowledge; its
# owner's words are $words.
words="It goes up and down."
cat > "$work/mower.json" << CASE
{"pullcord": "practice-case-1", "machine": "walk-behind-mower", "complaint": "hunts",
 "words": "$words", "faults": ["main-jet-blocked"],
 "results": {"compression": 44, "fuel-look-and-smell": "stale", "spark-test": "jumps"}}
CASE
