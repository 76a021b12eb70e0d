#!/usr/bin/env bash
# What practice keeps and prints fits the schemas under docs/schema, and these would notice if not.
. "$PULLCORD_SOURCE/tests/practice/lib.sh"
/usr/bin/python3 -c 'import jsonschema' 2> /dev/null || { echo "python3-jsonschema is not installed: not checked"; exit 77; }
unset PULLCORD_NOW
forms=$work/forms; mkdir -p "$forms"
kept=$XDG_STATE_HOME/pullcord/practice
cat > "$work/case.json" <<'CASE'
{"pullcord": "practice-case-1", "machine": "tiller", "has": ["bowl-drain"], "lacks": [], "complaint": "runs-on-choke-only",
 "words": "Without the choke it dies.", "faults": ["main-jet-blocked", "fuel-stale"], "seed": "3", "results": {"spark-test": "jumps", "compression": 62}}
CASE
# guided with words and certainties, and steps that gave away; unsafe; open; by hand; by the shop's history; a set
practice --as ann --seed 14 --class walk-behind-mower --system fuel --level guided -- "compression" "good \"enough\" <b>" 1 \
  "open air box" "repair fuel-stale, 50 %" yes "run" "lead off" "wipe" "declare main-jet-blocked, 70 %" yes "no"
practice --as ann --new --seed 3 --class chainsaw --level free -- "spark test" 1 "starting fluid" "no"
practice --as ann --new --seed 9 --level worked -- "" "" "" "" "" "" "" "" "" "" "" "" "" "" "no"
practice --as ann --new --case "$work/case.json" --level free -- "compression" "give up" "no"
"$PULLCORD" job open tiller "will not start" > /dev/null
"$PULLCORD" job add last repair main-jet-blocked > /dev/null
"$PULLCORD" job add last proof main-jet-blocked passed > /dev/null
"$PULLCORD" job add last service all done > /dev/null
"$PULLCORD" job close last repaired > /dev/null
"$PULLCORD" practice set --seed 7 --count 2 --history > "$forms/practice-set-1.own.json"
"$PULLCORD" practice set --seed 7 --count 2 --class tiller --kind one > "$forms/practice-set-1.json"
practice --as ann --new --set "$forms/practice-set-1.own.json" -- "declare nothing, 20 %" "give up"
practice --as bea --set "$forms/practice-set-1.own.json" -- "quit"
n=0
for run in "$kept"/ann/run-*.json "$kept"/bea/run-1.json; do
  n=$((n + 1)); cp "$run" "$forms/practice-1.$n.json"
done
for n in 1 2 3 4 5; do "$PULLCORD" practice debrief $n --as ann --json > "$forms/debrief-1.$n.json"; done
for who in ann bea nobody; do "$PULLCORD" practice progress --as $who --json > "$forms/progress-1.$who.json"; done
"$PULLCORD" practice score "$forms/practice-set-1.own.json" --json > "$forms/practice-results-1.json"
cp "$work/case.json" "$forms/practice-case-1.json"
/usr/bin/python3 -B - "$PULLCORD_SOURCE/docs/schema" "$forms" "$PULLCORD" << 'PY' || bad=$((bad + 1))
import copy, json, pathlib, subprocess, sys
import jsonschema
wrong, count, seen = 0, {}, set()


def complain(text):
    global wrong
    wrong += 1
    print("FAILED:", text)


def members(document, at=()):
    if isinstance(document, dict):
        for name, value in document.items():
            yield at + (name,)
            yield from members(value, at + (name,))
    elif isinstance(document, list):
        for i, value in enumerate(document[:1]):
            yield from members(value, at + (i,))


def inside(document, at):
    for step in at:
        document = document[step]
    return document


def free(at):  # members whose names are ids, or that are a form of their own
    return any(name in ("shop-rates", "results", "case") for name in at[:-1] if isinstance(name, str)) and "score" not in at


forms = {}
for path in sorted(pathlib.Path(sys.argv[2]).iterdir()):
    name = path.name.split(".")[0]
    if name not in forms:
        schema = json.loads((pathlib.Path(sys.argv[1]) / f"{name}.json").read_text())
        jsonschema.Draft7Validator.check_schema(schema)
        forms[name] = jsonschema.Draft7Validator(schema)
    form, document = forms[name], json.loads(path.read_text())
    count[name] = count.get(name, 0) + 1
    for e in form.iter_errors(document):
        complain(f"{path.name}: {'/'.join(map(str, e.absolute_path))}: {e.message[:200]}")
    required = set()
    for at in members(document):
        seen.add((name, at[-1]))
        if name != "practice-results-1" and free(at):
            continue
        spoilt = copy.deepcopy(document)
        inside(spoilt, at[:-1])[at[-1]] = None
        if form.is_valid(spoilt):
            complain(f"{path.name}: the schema lets {at} be null")
        spoilt = copy.deepcopy(document)
        inside(spoilt, at[:-1])["surprise"] = 1
        if form.is_valid(spoilt) and "has" not in at:
            complain(f"{path.name}: the schema lets a new member stand beside {at}")
    for member in form.schema["required"]:
        if form.is_valid({k: v for k, v in document.items() if k != member}):
            complain(f"{path.name}: the schema does not miss {member}")
want = {"practice-1": 6, "debrief-1": 5, "progress-1": 3, "practice-set-1": 2, "practice-results-1": 1, "practice-case-1": 1}
if count != want:
    complain(f"not the files that were to come: {count}")
for need in (("practice-1", "shop-rates"), ("practice-1", "case"), ("practice-1", "expect"), ("practice-1", "brier"),
             ("debrief-1", "reading"), ("debrief-1", "basis"), ("debrief-1", "brier"), ("debrief-1", "text"),
             ("progress-1", "sure"), ("practice-results-1", "score")):
    if need not in seen:
        complain(f"no sample has {need}")
for name in forms:  # every member that a schema knows at its top is in some sample
    for member in set(forms[name].schema["properties"]) - {m for n, m in seen if n == name}:
        if (name, member) not in (("practice-1", "machine"),):
            complain(f"{name}: no sample has {member}")

# what the program refuses for its form the schema refuses, and the other way round
good = json.loads((pathlib.Path(sys.argv[2]) / "practice-case-1.json").read_text())
cases = [(good, True), ({k: v for k, v in good.items() if k != "results"}, True), ({**good, "faults": []}, True),
         ({**good, "result": {}}, False), ({**good, "seed": 3}, False), ({**good, "seed": "x"}, False),
         ({**good, "has": "bowl-drain"}, False), ({**good, "results": []}, False), ({**good, "pullcord": "case-1"}, False),
         ({**good, "machine": 1}, False), ({**good, "results": {"spark-test": []}}, False),
         ({**good, "words": "So 'ill' it is"}, True), ({**good, "words": ""}, False), ({**good, "words": "a\nb"}, False),
         ({**good, "words": "x" * 201}, False), ({k: v for k, v in good.items() if k != "complaint"}, False)]
for case, valid in cases:
    place = pathlib.Path(sys.argv[2]).parent / "tried.json"
    place.write_text(json.dumps(case))
    ended = subprocess.run([sys.argv[3], "practice", "case", "--case", str(place)], capture_output=True, text=True)
    formed = ended.returncode == 0 or "point away" in ended.stderr
    if formed != valid or forms["practice-case-1"].is_valid(case) != valid:
        complain(f"program and schema are not of one mind: {formed} {json.dumps(case)[:200]} {ended.stderr[:200]}")
print(f"{sum(count.values())} documents, {len(cases)} cases")
sys.exit(wrong > 0)
PY
finish
