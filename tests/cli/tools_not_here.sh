#!/usr/bin/env bash
# Tools that the shop lacks: a check is not asked for, or costs the minutes to borrow its tool.
. "$(dirname "$0")/lib.sh"
own=$XDG_DATA_HOME/pullcord/facts/mine
mkdir -p "$own"
lacks() { printf '(deffacts tools-not-here "what this shop lacks"\n  %s)\n' "$1" > "$own/tools.clp"; }
case=$work/case.json
cat > "$case" << 'CASE'
{"pullcord": "case-1", "machine": {"class": "tiller"}, "complaint": "hunts",
 "results": [{"check": "fuel-age", "result": "fresh"}, {"check": "air-filter-look", "result": "clean"}]}
CASE

# options - the steps that are compared, with their minutes, go to $out
options() {
  ends_with 0 "$PULLCORD" assess --json "$case"
  out=$(printf '%s' "$out" | /usr/bin/python3 -c 'import json, sys
for o in json.load(sys.stdin)["plan"]["options"]: print(o["id"], "%g" % o["minutes"], "min")')
}

options
says "intake-spray 6 min"
lacks '(no-tool (name "Cleaner Spray"))'
ends_with 65 "$PULLCORD" vet
says "no check or repair needs a tool called"
spray="water mist or low-flash leak spray with straw" # as the check calls it
lacks "(no-tool (name \"$spray\"))"
options
silent_on "intake-spray"
lacks "(no-tool (name \"$spray\") (borrow 2))"
options
says "intake-spray 8 min"
bench tiller hunts yes 'how intake spray' quit
says "with straw is not in the shop"
finish
