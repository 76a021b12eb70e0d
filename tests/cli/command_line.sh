#!/usr/bin/env bash
# The command line: help everywhere, statuses as documented, output that breaks.
. "$(dirname "$0")/lib.sh"
demo=$work/case.json
cat > "$demo" << 'CASE'
{"pullcord": "case-1", "machine": {"class": "tiller"}, "complaint": "starts then dies",
 "results": [{"check": "spark-test", "result": "jumps"}]}
CASE

for command in "" assess list show vet print; do
  # shellcheck disable=SC2086
  ends_with 0 "$PULLCORD" $command --help
  says "pullcord"
done
ends_with 0 "$PULLCORD" --version
says "CLIPS 6.30"
says "knowledge"
ends_with 64 "$PULLCORD" asses
says 'did you mean "assess"'
ends_with 64 "$PULLCORD" assess --jsno "$demo"
says 'did you mean "--json"'
ends_with 64 "$PULLCORD" assess
ends_with 64 "$PULLCORD" assess "$demo" "$demo"
ends_with 66 "$PULLCORD" assess "$work/nothing.json"
ends_with 66 "$PULLCORD" assess "$work"
ends_with 0 "$PULLCORD" assess "$demo"
says "Next"
ends_with 0 "$PULLCORD" assess --json "$demo"
says '"answer-1"'
ends_with 0 bash -c "'$PULLCORD' assess - < '$demo'"
ends_with 64 "$PULLCORD" list fauls
says 'did you mean "faults"'
ends_with 65 "$PULLCORD" show main-jet-bloked
says 'did you mean "main-jet-blocked"'
ends_with 0 "$PULLCORD" show main-jet-blocked
says "looks like"
ends_with 0 "$PULLCORD" show faa-h-8083-32
says "rests on it"
ends_with 78 env PULLCORD_KNOWLEDGE="$work/none" "$PULLCORD" list faults
says "PULLCORD_KNOWLEDGE"

# mistakes in a case are told with their line and what was meant
mistake() { # line of the results, what is said
  printf '{"pullcord": "case-1", "machine": {"class": "tiller"},\n "results": [\n%s]}\n' "$1" > "$work/mistake.json"
  ends_with 65 "$PULLCORD" assess "$work/mistake.json"
  says "$work/mistake.json:$2"
}
mistake '{"check": "spark-tst", "result": "jumps"}' '3: there is no check "spark-tst"; did you mean "spark-test"?'
mistake '{"check": "spark-test", "result": "jmps"}' '3: "jmps" is not a result of spark-test; did you mean "jumps"?'
mistake '{"check": "spark-test", "result": "jumps"},
{"check": "spark-test", "result": "none"}' '4: check spark-test is given twice'
mistake '{"check": "compression", "reading": "900 bar"}' '3: "900 bar" cannot be'
mistake '{"check": "compression", "reading": "62 ohm"}' '3: 62 ohm is a resistance; a pressure is expected'
mistake '{"check": "compression", "reading": 62}' '3: the reading of compression wants to be a text with its unit'
# units of every measured check, choices of every other, and what readings can be: all a program needs
ends_with 0 "$PULLCORD" list checks --json
says '"possible":'
says '"quantity":'
ends_with 65 bash -c "printf '{\"pullcord\": \"case-2\"}' | '$PULLCORD' assess -"
says 'standard input:'

# the same case, the same bytes, in another locale and order of files
"$PULLCORD" assess --json "$demo" > "$work/one"
LC_ALL=C "$PULLCORD" assess --json "$demo" > "$work/two"
cmp -s "$work/one" "$work/two" || { bad=$((bad + 1)); echo "another locale, another answer"; }

# a full disk is said
if [ -w /dev/full ]; then
  ends_with 74 bash -c "'$PULLCORD' list checks > /dev/full"
  says "cannot be written"
fi
finish
