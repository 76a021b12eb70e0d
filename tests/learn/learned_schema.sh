#!/usr/bin/env bash
# What "learned export" prints fits docs/schema/learned-1.json: without a job, with one, and with
# enough for a curve; and the same history says the same in another store, taken in backwards.
. "$(dirname "$0")/../cli/lib.sh"
/usr/bin/python3 -c 'import jsonschema' 2> /dev/null || { echo "python3-jsonschema is not installed: not checked"; exit 77; }
export PULLCORD_KNOWLEDGE=$PULLCORD_SOURCE PULLCORD_NOW=1790000000
"$PULLCORD" learned export > "$work/none"
out=$(printf '%s\n' "runs only on choke" "main-jet-look blocked" "fixed main-jet-blocked" yes "service all done" quit |
  "$PULLCORD" bench "$("$PULLCORD" job open tiller "runs only on choke" | sed -n 's/^Job \([a-z0-9]*\):.*/\1/p')" 2>&1)
says "Proved: main jet"
ends_with 0 "$PULLCORD" job close last repaired --covers-off
"$PULLCORD" learned export > "$work/one"
# the same job 40 times over, each with ids of its own
"$PULLCORD" job export --all > "$work/job"
/usr/bin/python3 - "$work/job" > "$work/many" << 'PY'
import json, sys
job = json.loads(open(sys.argv[1]).readline())
digits = "0123456789abcdefghjkmnpqrstvwxyz"
for i in range(40):
    tail = digits[i // 32] + digits[i % 32]
    copy = {**job, "id": job["id"][:-2] + tail, "entries": []}
    for n, x in enumerate(job["entries"]):
        copy["entries"].append({**x, "uid": x["uid"][:-4] + tail + digits[n // 32] + digits[n % 32], "at": x["at"] + i})
    print(json.dumps(copy, separators=(",", ":"), ensure_ascii=False))
PY
XDG_STATE_HOME=$work/second
ends_with 0 "$PULLCORD" job import "$work/many"
"$PULLCORD" learned export > "$work/all"
XDG_STATE_HOME=$work/third
tac "$work/many" > "$work/backwards"
ends_with 0 "$PULLCORD" job import "$work/backwards"
"$PULLCORD" learned export | cmp - "$work/all" || { bad=$((bad + 1)); echo "the same jobs, taken in backwards, say something else"; }
/usr/bin/python3 - "$PULLCORD_SOURCE/docs/schema/learned-1.json" "$work/none" "$work/one" "$work/all" << 'PY' || bad=$((bad + 1))
import json, sys
import jsonschema
schema = json.load(open(sys.argv[1]))
jsonschema.Draft7Validator.check_schema(schema)
form = jsonschema.Draft7Validator(schema)
wrong = 0
for name in sys.argv[2:]:
    document = json.load(open(name))
    for error in form.iter_errors(document):
        wrong += 1
        print(name, "/".join(map(str, error.absolute_path)), error.message[:200])
    for member in document:
        if form.is_valid({k: v for k, v in document.items() if k != member}) or form.is_valid({**document, member: None}):
            wrong += 1
            print("the schema does not miss", member)
none, one, many = (json.load(open(n)) for n in sys.argv[2:])
if none["jobs"] or one["counted"] != 1 or one["past"]["count"] != 1 or "bins" in one["past"]:
    wrong += 1
    print("counts of no job and of one:", none["jobs"], one["counted"], one["past"])
if many["past"]["count"] != 40 or not many["past"]["bins"] or many["classes"][0]["shares"][0]["times"] != 40:
    wrong += 1
    print("counts of 40 jobs:", many["past"])
sys.exit(wrong > 0)
PY
finish
