#!/usr/bin/env bash
# One-shot assess with a complaint in the owner's words: what it was taken for, how sure, what else it
# may be, two complaints in one breath, and words that are no complaint.
set -u
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export XDG_DATA_HOME="$work" XDG_STATE_HOME="$work"
bad=0

assess() { # class, words, options
  printf '{"pullcord": "case-1", "machine": {"class": "%s"}, "complaint": "%s"}' "$1" "$2" \
    > "$work/case.json"
  out=$("$PULLCORD" assess ${3:-} "$work/case.json" 2>&1)
  status=$?
  flat=$(printf '%s' "$out" | tr -s ' \t\n' ' ')
}
says() {
  case $flat in *"$1"*) ;; *) bad=$((bad + 1)); echo "expected \"$1\", but it said: ${flat:0:400}" ;; esac
}
silent_on() { case $flat in *"$1"*) bad=$((bad + 1)); echo "should not say \"$1\": ${flat:0:400}";; esac; }
ends_with() { [ "$status" = "$1" ] || { bad=$((bad + 1)); echo "status $status, not $1: ${flat:0:200}"; }; }

assess ride-on-mower "leaks oil and shakes a lot"
ends_with 0
says '"leaks oil and shakes a lot" taken ('
says 'leaks oil (leaks-oil) and vibrates (vibrates).'
says 'If that is not it:'
assess ride-on-mower "leaks oil and shakes a lot" --json
says '"taken_for": ["leaks-oil", "vibrates"]'
says '"or_else": ["'

# what is denied, what is meant by other words, spelling
assess chainsaw "it refuses to stop" --json
says '"taken_for": ["will-not-stop"]'
assess chainsaw "it wont keep running" --json
says '"taken_for": ["starts-then-dies"]'
assess chainsaw "conks out wen I let go of the triger" --json
says '"taken_for": ["will-not-idle"]'

# a class by another of its names, word for word; nothing is guessed
assess strimmer "it refuses to stop" --json
ends_with 0
assess "trimmerr of mine" "it refuses to stop"
ends_with 65
says 'there is no machine class "trimmerr of mine"'

# the machine counts: only a generator gives no electricity
assess portable-generator "no power" --json
says '"no-output"'
assess chainsaw "no power" --json
says '"taken_for": ["weak"]'
silent_on '"no-output"'

# an id needs no explaining
assess chainsaw "weak"
silent_on 'taken ('
assess chainsaw "weak" --json
says '"words": []'

# no complaint
assess tiller "hello there"
ends_with 65
says 'matches no known complaint.'
says '"pullcord list complaints" shows them'

# long texts, other letters, nothing but marks
assess tiller "$(printf 'and then it stops again %.0s' $(seq 500))"
ends_with 0
assess tiller "''''''’’’’... !!"
ends_with 65
assess tiller "Жжж ééé $(printf 'x%.0s' $(seq 3000))"
ends_with 65

[ "$bad" = 0 ] || { echo "$bad not as expected"; exit 1; }
