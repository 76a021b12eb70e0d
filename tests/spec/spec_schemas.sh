#!/usr/bin/env bash
# Cards, and what "spec --json" prints, fit their schemas; the program and the card's schema are of one
# mind about the form of a card. Jobs with a card and given figures fit job-1.
. "$(dirname "$0")/../cli/lib.sh"
/usr/bin/python3 -c 'import jsonschema' 2> /dev/null || { echo "python3-jsonschema is not installed: not checked"; exit 77; }
cards=$XDG_DATA_HOME/pullcord/specs
mkdir -p "$cards"
cp "$PULLCORD_SOURCE/demo/specs/millrace-tiller.json" "$cards"
"$PULLCORD" spec new blank > "$work/said"
echo '{}' > "$cards/broken.json"
for how in "" --metric --us; do "$PULLCORD" spec millrace-tiller --json $how; done > "$work/shown"
"$PULLCORD" spec --json > "$work/list"
"$PULLCORD" job open tiller weak > "$work/said"
"$PULLCORD" job add last spec millrace-tiller > "$work/said"
"$PULLCORD" job add last given poles 2 > "$work/said"
"$PULLCORD" job add last spec none > "$work/said"
"$PULLCORD" job add last given poles none > "$work/said"
"$PULLCORD" job export last > "$work/job"
/usr/bin/python3 - "$PULLCORD" "$PULLCORD_SOURCE" "$work" "$cards" << 'PY' || bad=$((bad + 1))
import copy, json, subprocess, sys
from pathlib import Path
import jsonschema
program, source, work, cards = sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3]), Path(sys.argv[4])
wrong = 0
def complain(text):
    global wrong
    wrong += 1
    print(text)
def form(name):
    schema = json.loads((source / "docs/schema" / f"{name}.json").read_text())
    jsonschema.Draft7Validator.check_schema(schema)
    return jsonschema.Draft7Validator(schema)
card_form, spec_form, job_form = form("spec-card-1"), form("spec-1"), form("job-1")

card = json.loads((source / "demo/specs/millrace-tiller.json").read_text())
figure = {"what": "plug-gap", "value": "0.76 mm", "from": "plate"}
def with_figure(**changes):
    return {**card, "figures": [{k: v for k, v in {**figure, **changes}.items() if v is not None}]}
good = [card, json.loads((cards / "blank.json").read_text()), {**card, "figures": []}, with_figure(value=""),
        with_figure(value=None, low="0.7 mm", high="0.8 mm"), with_figure(value=None), with_figure(**{"from": "measured"}),
        with_figure(what="torque", of="plug", value="20 N.m"), with_figure(note="cold")]
bad = [{}, [], {**card, "pullcord": "spec-card-2"}, {**card, "name": ""}, {**card, "name": 3}, {**card, "also": "x"},
       {**card, "also": [""]}, {**card, "figures": {}}, {**card, "odd": 1}, {**card, "class": 1}, {**card, "name": "x" * 80},
       {k: v for k, v in card.items() if k != "name"}, {k: v for k, v in card.items() if k != "figures"},
       with_figure(what=None), with_figure(what="spark-gap"), with_figure(value=0.76), with_figure(**{"from": None}),
       with_figure(**{"from": ""}), with_figure(**{"from": "friend"}), with_figure(low="0.7 mm"), with_figure(odd=1),
       with_figure(what="torque", value="20 N.m"), with_figure(of="plug"), {**card, "figures": [3]},
       with_figure(note="x" * 200), {**card, "figures": [{"what": "torque"}] * 101}, {**card, "also": ["a"] * 13}]
for document in good + bad:
    (work / "card.json").write_text(json.dumps(document))
    done = subprocess.run([program, "spec", "check", str(work / "card.json")], capture_output=True, text=True)
    if (done.returncode == 0) != (document in good):
        complain(f"spec check ends with {done.returncode} for {document}: {done.stdout}")
    if card_form.is_valid(document) != (document in good):
        complain(f"the schema of cards does not agree: {document}")

decoder, text = json.JSONDecoder(), (work / "shown").read_text()
while text.strip():
    document, at = decoder.raw_decode(text.lstrip())
    text = text.lstrip()[at:]
    for error in spec_form.iter_errors(document):
        complain(f"a shown card: {'/'.join(map(str, error.absolute_path))} {error.message[:160]}")
    for name in document:
        if name not in ("class", "note") and spec_form.is_valid({k: v for k, v in document.items() if k != name}):
            complain(f"a shown card without {name} is let through")
    broken = copy.deepcopy(document)
    broken["figures"][0]["surprise"] = 1
    if spec_form.is_valid(broken):
        complain("a shown figure with a new member is let through")
listed = json.loads((work / "list").read_text())
for error in spec_form.iter_errors(listed):
    complain(f"the list: {error.message[:160]}")
if [("problem" in c) for c in listed["cards"]] != [False, True, False]:
    complain(f"the list of cards: {listed}")

job = json.loads((work / "job").read_text())
for error in job_form.iter_errors(job):
    complain(f"a job: {error.message[:160]}")
kinds = {e["kind"] for e in job["entries"]}
if not {"spec-card", "given", "spec", "took-back"} <= kinds:
    complain(f"kinds of entries: {sorted(kinds)}")
for entry in job["entries"]:
    if entry["kind"] in ("spec-card", "given", "spec") and job_form.is_valid({**job, "entries": [{**entry, "body": {"odd": 1}}]}):
        complain(f"a body without its members is let through: {entry['kind']}")
sys.exit(wrong > 0)
PY
finish
