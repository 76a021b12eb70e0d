#!/usr/bin/env bash
# Jobs as they are exported fit docs/schema/job-1.json, whatever kinds of entries they hold.
. "$(dirname "$0")/../cli/lib.sh"
/usr/bin/python3 -c 'import jsonschema' 2> /dev/null || { echo "python3-jsonschema is not installed: not checked"; exit 77; }
export PULLCORD_NOW=1790000000
bench tiller "runs only on choke" "owner blue" "spark jumps" "compression 427 kPa, fairly" "back compression" \
  "has bowl-drain" "complaint hunts" "fixed fuel-stale" no "fixed main-jet-blocked" yes "minutes 20" "part gasket" \
  "note done" "refit 1" "service oil plug filter fuel leaks stop done" "service speed found it races" close yes 1 yes
says "Closed: repaired"
"$PULLCORD" job reopen "$("$PULLCORD" job list --all | awk 'NR == 2 {print $1}')" came back > /dev/null
bench no chainsaw "?" quit
"$PULLCORD" job export --all --to "$work/jobs" > /dev/null
/usr/bin/python3 - "$PULLCORD_SOURCE/docs/schema/job-1.json" "$work/jobs" << 'PY' || bad=$((bad + 1))
import json, sys
import jsonschema
schema = json.load(open(sys.argv[1]))
jsonschema.Draft7Validator.check_schema(schema)
validator = jsonschema.Draft7Validator(schema)
wrong, kinds = 0, set()
for line in open(sys.argv[2]):
    job = json.loads(line)
    kinds |= {entry["kind"] for entry in job["entries"]}
    for error in validator.iter_errors(job):
        wrong += 1
        print("/".join(map(str, error.absolute_path)), error.message[:200])
    for spoil in ("id", "opened", "entries"):
        if validator.is_valid({k: v for k, v in job.items() if k != spoil}):
            wrong += 1
            print("a job without", spoil, "is let through")
    for entry in job["entries"]:
        if validator.is_valid({**job, "entries": [{**entry, "body": {"odd": 1}}]}) and entry["kind"] != "machine":
            wrong += 1
            print("a body without its members is let through:", entry["kind"])
want = {"owner", "words", "machine", "complaint", "result", "took-back", "off", "on", "advice", "repair", "proof",
        "minutes", "part", "note", "service", "closed", "reopened"}
if kinds != want:
    wrong += 1
    print("kinds of entries:", sorted(kinds ^ want))
sys.exit(wrong > 0)
PY
finish
