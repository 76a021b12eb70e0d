"""The schemas under docs/schema fit what the program takes and gives, both ways: what it
prints is valid, what it takes is valid, what it refuses for its form is not.
Usage: check_schemas.py HOW-MANY-CASES"""
import copy
import json
import re
import sys

import jsonschema

from common import TOP, complain, finish, load, run, tables

LEAST = {"pullcord": "case-1", "machine": {"class": "tiller"}}
RESULT = {"check": "spark-test", "result": "none"}
FIGURE = {"check": "compression", "low": "80 psi", "high": "110 psi"}


def case(**members):
    return {**copy.deepcopy(LEAST), **members}


# Good and bad forms of a case; the program and the schema must be of one mind about each.
GOOD = [
    LEAST,
    case(machine={}),
    case(machine={"class": "tiller", "has": ["bowl-drain"], "lacks": ["oil-cutout"], "note": 1}),
    case(complaint="starts then dies", complaints=["weak", "hunts"]),
    case(complaints=[], results=[], spec=[], note={"any": ["thing"]}),
    case(results=[RESULT, {"check": "compression", "reading": "62 psi", "sure": 0.5, "note": None}]),
    case(results=[{"check": "spark-test", "result": "2"}, {"check": "plug-look", "result": "dont-know"}]),
    case(results=[{"check": "compression", "reading": "88"}], spec=[{**FIGURE, "from": "book"}]),
    case(covers_off=["air-box", "carburettor"], repaired=["fuel-stale"]),
    case(given={}), case(given={"altitude": "5000 ft", "temperature": "20 degC", "poles": "2"}),
    case(results=[{"check": "compression", "reading": "60 psi"}], spec=[{**FIGURE, "from": "measured"}],
         given={"altitude": "1500 m"}),
] + [case(results=[{**RESULT, "sure": s}])
     for s in ("sure", "fairly", "Fairly sure", "fairly-sure", "unsure", "NOT SURE", "not-sure", 0, 1, 0.25)]
BAD = [
    [], "case", 3, None, {},
    {"machine": {}}, {"pullcord": "case-1"}, {"pullcord": "case-2", "machine": {}}, {"pullcord": 1, "machine": {}},
    case(machine=None), case(machine="tiller"), case(machine={"class": None}), case(machine={"kind": "tiller"}),
    case(machine={"has": "bowl-drain"}), case(machine={"lacks": [1]}), case(machine={"has": None}),
    case(complaint=["weak"]), case(complaint=""), case(complaint=None), case(complaints="weak"),
    case(complaints=[3]), case(results={}), case(results=None), case(results=["spark-test"]),
    case(results=[{"check": "spark-test"}]), case(results=[{"result": "none"}]),
    case(results=[{"check": 1, "result": "none"}]), case(results=[{**RESULT, "reading": "2"}]),
    case(results=[{"check": "spark-test", "result": 2}]), case(results=[{"check": "spark-test", "result": ""}]),
    case(results=[{"check": "compression", "reading": 62}]), case(results=[{**RESULT, "when": "now"}]),
    case(spec={}), case(spec=[{"check": "compression", "low": "80 psi"}]),
    case(spec=[{"check": "compression", "high": "80 psi"}]), case(spec=[{"low": "1 psi", "high": "2 psi"}]),
    case(spec=[{**FIGURE, "low": 80}]), case(spec=[{**FIGURE, "unit": "psi"}]), case(spec=["compression"]),
    case(result=[RESULT]), case(complain="weak"), case(complaints=["weak"] * 21),
    case(covers_off="air-box"), case(covers_off=[1]), case(covers_off=None), case(repaired={}), case(repaired=[None]),
    case(given=[]), case(given=None), case(given={"altitude": 1500}), case(given={"height": "1500 m"}),
    case(given={"poles": ""}), case(machine={"spec": 3}), case(machine={"spec": ""}),
] + [case(results=[{**RESULT, "sure": s}])
     for s in ("certain", "", "fairlysure", " sure", 1.01, -0.1, None, True, ["sure"])]


def errors(validator, document):
    return [f"{'/'.join(map(str, e.absolute_path)) or 'top'}: {e.message[:160]}"
            for e in validator.iter_errors(document)]


said = set()


def check_valid(validator, document, what):
    """Says what does not fit, but each kind of misfit once."""
    for text in errors(validator, document):
        kind = re.sub(r"\d+", "", text)
        if kind not in said:
            complain(f"{what} does not fit its schema: {text}")
        said.add(kind)


def check_members(schema):
    """The members that the reader of cases lists are those of the schema, object by object."""
    text = (TOP / "src/shop/casefile.c").read_text()
    taken = [frozenset(re.findall(r'"(\w+)"', names)) for names in re.findall(r"\bmembers\[\] = \{([^}]*)\}", text)]
    figures = schema["definitions"]["given"]["properties"]
    given = [frozenset(o["properties"]) for o in (schema, *schema["definitions"].values())
             if o.get("properties", figures) is not figures]
    for names in set(taken) ^ set(given):
        complain(f"only the program or only the case schema has an object of {sorted(names)}")


    table = set(re.findall(r'\] = \{"([a-z-]+)", "', (TOP / "src/model/given.c").read_text()))
    if table != set(figures):
        complain(f"only the program or only the case schema knows as given: {sorted(table ^ set(figures))}")


def check_forms(validator):
    for form in GOOD:
        text = json.dumps(form)
        done = run("assess", "-", "--json", text=text)
        if done.returncode != 0:
            complain(f"the program refuses {text}: {done.stderr.strip()}")
        check_valid(validator, form, f"the case {text}")
    for form in BAD:
        text = json.dumps(form)
        done = run("assess", "-", text=text)
        if done.returncode != 65:
            complain(f"the program ends with {done.returncode}, not 65, for {text}")
        if not errors(validator, form):
            complain(f"the schema allows {text}, which the program refuses: {done.stderr.strip()}")


def spread(items, count):
    """count of the items, evenly spread."""
    return items if len(items) <= count else [items[i * len(items) // count] for i in range(count)]


# Folders whose first case is always among those tried: between them every disposition.
ALWAYS = ("hand-over", "healthy", "near-limit", "two-faults")


def cases(count):
    """Cases of the demo, of the folders above, and `count` more."""
    for path in sorted((TOP / "demo").glob("*.json")):
        yield path, load(path)
    chosen = [min((TOP / "tests/cases" / folder).glob("*.json")) for folder in ALWAYS]
    rest = sorted(set((TOP / "tests/cases").rglob("*.json")) - set(chosen))
    for path in chosen + spread(rest, count):
        yield path, load(path)["case"]


def check_sums(answer, what):
    for e in answer["explanations"]:
        total = e["start_decibans"] + sum(x["decibans"] for x in e["evidence"])
        if abs(total - e["total_decibans"]) > 0.01:
            complain(f"{what}: the weights of {e['fault']} add to {total:.4f}, not {e['total_decibans']}")
    if any(r["chance"] > r["there"] + 1e-6 for r in answer["ranking"]):
        complain(f"{what}: something is behind the complaint more surely than it is there")
    if sum(t["chance"] for t in answer["together"]) > 1 + 1e-6:
        complain(f"{what}: the combinations of causes have more than all of the chance")


def check_answers(case_form, answer_form, count):
    """Returns an answer for each disposition met."""
    met = {}
    for path, document in cases(count):
        name = str(path.relative_to(TOP))
        check_valid(case_form, document, name)
        done = run("assess", "-", "--json", text=json.dumps(document))
        if done.returncode != 0:
            complain(f"{name}: {done.stderr.strip()}")
            continue
        answer = json.loads(done.stdout)
        check_valid(answer_form, answer, f"the answer to {name}")
        check_sums(answer, name)
        met.setdefault(answer["disposition"], answer)
    return met


def members(document, at=()):
    """Paths of all members of objects, deep down."""
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


# What an answer may be without.
OPTIONAL = {"source", "place", "rule", "why", "weakened_by", "sign", "asked_first_by", "may_destroy", "reuse", "chance_that_it_cures",
            "most_likely", "from", "card", "counts_as"}


def check_can_fail(answer_form, answer):
    """The schema notices a member that is missing, is of another type, or is new."""
    for at in list(members(answer)):
        spoilt = copy.deepcopy(answer)
        del inside(spoilt, at[:-1])[at[-1]]
        if at[-1] not in OPTIONAL and answer_form.is_valid(spoilt):
            complain(f"the answer schema does not miss {at}")
        spoilt = copy.deepcopy(answer)
        inside(spoilt, at[:-1])[at[-1]] = None
        if answer_form.is_valid(spoilt):
            complain(f"the answer schema lets {at} be null")
        spoilt = copy.deepcopy(answer)
        inside(spoilt, at[:-1])["surprise"] = 1
        if answer_form.is_valid(spoilt):
            complain(f"the answer schema lets a new member stand beside {at}")


def check_lists(form):
    kinds = next(words for name, _, words in tables()["command"] if name == "list").split()
    if set(kinds) != set(form.schema["properties"]) - {"pullcord"}:
        complain(f"list-1 does not have the kinds that the program lists: {kinds}")
    for kind in kinds:
        document = json.loads(run("list", kind, "--json").stdout)
        check_valid(form, document, f"the list of {kind}")
        if not document[kind]:
            complain(f"the list of {kind} is empty")


def check_vet(form):
    done = run("vet", "--json")
    document = json.loads(done.stdout)
    check_valid(form, document, "what vet prints")
    done = run("vet", str(TOP / "tests/docs/broken"), "--json")
    document = json.loads(done.stdout)
    check_valid(form, document, "what vet prints of broken files")
    if done.returncode != 65 or document["serious"] < 5:
        complain(f"vet ends with {done.returncode} and {document['serious']} for the broken files")
    kinds = set(form.schema["properties"]["problems"]["items"]["properties"]["kind"]["enum"])
    if kinds != kinds_in_sources():
        complain(f"kinds of problems only in the schema or only in the sources: {sorted(kinds ^ kinds_in_sources())}")


def kinds_in_sources():
    """Words for kinds of problems: the first text in each call that reports one."""
    call = r'\b(?:problem_add|[A-Z]+_SAY|say)\((?:[^"();]|\([^()]*\))*"([a-z-]+)"'
    return {kind for path in (TOP / "src").rglob("*.c") for kind in re.findall(call, path.read_text())}


def main(count):
    forms = {}
    for name in ("case-1", "answer-1", "list-1", "vet-1"):
        schema = load(TOP / "docs/schema" / f"{name}.json")
        jsonschema.Draft7Validator.check_schema(schema)
        forms[name] = jsonschema.Draft7Validator(schema)
    check_members(forms["case-1"].schema)
    check_forms(forms["case-1"])
    met = check_answers(forms["case-1"], forms["answer-1"], count)
    if set(met) != {"keep-looking", "repair", "nothing-broken", "hand-over"}:
        complain(f"the cases lead to {sorted(met)} only; take more")
    for disposition, answer in met.items():
        if disposition == "repair" or count >= 100: # it takes a second each
            check_can_fail(forms["answer-1"], answer)
    check_lists(forms["list-1"])
    check_vet(forms["vet-1"])
    finish(f"{len(GOOD) + len(BAD)} forms, {count} cases and some more, all lists")


main(int(sys.argv[1]))
