"""Every example of "pullcord work --help" as JSON, against docs/schema/work-1.json."""
import copy
import json
import os
import re
import subprocess
import sys
from pathlib import Path

import jsonschema

PROGRAM = os.environ["PULLCORD"]
SCHEMA = json.loads((Path(os.environ["PULLCORD_SOURCE"]) / "docs/schema/work-1.json").read_text())
jsonschema.Draft7Validator.check_schema(SCHEMA)
FORM = jsonschema.Draft7Validator(SCHEMA)
wrong = []


def run(*words):
    return subprocess.run([PROGRAM, "work", *words], capture_output=True, text=True, timeout=60)


def must_not_fit(document, what):
    if FORM.is_valid(document):
        wrong.append(f"the schema allows {what}")


help_text = run("--help").stdout.split("Each with an")[1]
calls = re.findall(r"^([a-z][a-z-]+ [^:]*(?::1[^:]*)?): ", help_text, flags=re.M)
for call in calls:
    done = run(*call.split(), "--json")
    if done.returncode != 0:
        wrong.append(f"{call}: {done.stderr}")
        continue
    answer = json.loads(done.stdout)
    wrong.extend(f"{call}: {e.message[:120]}" for e in FORM.iter_errors(answer))
    for at in ("calculation", "values", "results", "leaves_out", "source"):
        less = copy.deepcopy(answer)
        del less[at]
        must_not_fit(less, f"{call} without {at}")
    more = copy.deepcopy(answer)
    more["results"][0]["surprise"] = 1
    must_not_fit(more, f"{call} with a surprise")
if len(calls) < 25:
    wrong.append(f"only {len(calls)} examples were found")
for text in wrong[:30]:
    print("FAILED:", text)
print(f"{len(calls)} examples, {len(wrong)} wrong")
sys.exit(1 if wrong else 0)
