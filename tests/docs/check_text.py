"""What the documents say can be found: commands and options that the program has, files and
links that are there, words defined once, and the tables they repeat."""
import glob
import re

from common import TOP, complain, documents, fences, finish, tables

rows = tables()
# The words that may follow each; none are said where it may be any name.
COMMANDS = {name: [] if operands == "[NAME]" else words.split() for name, operands, words in rows["command"]}
OPTIONS = {name: {**{r[1]: r[2] for r in rows["option"] if r[0] == name}, **{r[0]: r[1] for r in rows["global"]}, "-": ""}
           for name in COMMANDS}
checked = 0


def check_call(place, call):
    """One `pullcord ...` as written: does the program have that?"""
    global checked
    words = re.split(r"\s+", re.split(r"[|&;<>#)]", call)[0].strip().rstrip("\".,:"))
    name = next((w for w in words[1:] if not w.startswith("-")), "")
    name = name.strip("\"'")
    checked += 1
    if name and name not in COMMANDS:
        complain(f"{place}: there is no command \"pullcord {name}\"")
        return
    operands, value_next = [], False
    for word in words[1:]:
        if value_next:
            value_next = False
        elif not word.startswith("-") or word == "-":
            operands.append(word)
        elif word in OPTIONS[name]:
            value_next = bool(OPTIONS[name][word])
        else:
            complain(f"{place}: pullcord {name} has no option {word}")
    operand = operands[1] if len(operands) > 1 else ""
    known = COMMANDS[name]
    if operand and known and known != ["@file"] and operand not in known and not operand.isupper():
        complain(f"{place}: pullcord {name} does not take \"{operand}\"")


def check_calls(path, text, pattern):
    for number, line in enumerate(text.splitlines(), 1):
        for call in re.findall(pattern, line):
            check_call(f"{path.relative_to(TOP)}:{number}", call)


def check_links(path, text):
    for number, line in enumerate(text.splitlines(), 1):
        for target in re.findall(r"\]\(([^)#:]+)(?:#[^)]*)?\)", line):
            if not (path.parent / target).exists():
                complain(f"{path.relative_to(TOP)}:{number}: the link to {target} leads nowhere")


# Made by the build, or by the person, not in the checkout.
NOT_KEPT = re.compile(r"^(facts|rules)/mine|/$")


def check_paths(path, text):
    """Files named in backticks, where they begin with a folder of ours."""
    for number, line in enumerate(text.splitlines(), 1):
        for name in re.findall(r"`((?:src|facts|rules|tests|docs|demo|\.ci)/[^`\s<>]*)`", line):
            if NOT_KEPT.match(name):
                continue
            if not glob.glob(str(TOP / re.sub(r"\{[^}]*\}", "*", name))):
                complain(f"{path.relative_to(TOP)}:{number}: there is no {name}")


def check_words():
    path = TOP / "docs/words.md"
    seen = {}
    for number, line in enumerate(path.read_text().splitlines(), 1):
        head = re.match(r"\*\*(.+?)\*\*:", line)
        for word in head.group(1).split(", ") if head else []:
            if word in seen:
                complain(f"docs/words.md:{number}: \"{word}\" is also defined in line {seen[word]}")
            seen[word] = number
    for word in ("machine", "feature", "complaint", "check", "result", "reading", "sign", "fault", "cause",
                 "base rate", "belief", "blame", "weight", "deciban", "evidence", "cover", "repair", "proof run",
                 "caution", "basis", "bands", "spec card", "disposition", "job", "job card", "practice run"):
        if word not in seen:
            complain(f"docs/words.md does not define \"{word}\"")


def table_rows(path):
    """Rows of the tables of a document: cells without backticks."""
    for line in path.read_text().splitlines():
        if line.startswith("|"):
            yield [c.strip().strip("`") for c in line.strip("|").split("|")]


def check_repeated():
    """Tables that a document repeats are those of the program and of the files."""
    want = {(w, float(v)) for w, v in rows["chance"]}
    got = {(r[0], float(r[1])) for r in table_rows(TOP / "docs/knowledge-guide.md") if re.match(r"0\.\d+$", r[1])}
    if want != got:
        complain(f"docs/knowledge-guide.md: the chances in words differ: {sorted(want ^ got)}")
    text = (TOP / "facts/settings.clp").read_text()
    want = {(i, float(v)) for i, v in re.findall(r"\(setting \(id ([\w-]+)\) \(value ([\d.]+)\)", text)}
    got = {(r[0], float(r[1])) for r in table_rows(TOP / "docs/how-it-weighs.md")
           if len(r) > 1 and re.match(r"[\d.]+$", r[1])}
    if not want or want != got:
        complain(f"docs/how-it-weighs.md: the settings differ: {sorted(want ^ got)}")


def check_long_lines(path, text):
    for number, line in enumerate(text.splitlines(), 1):
        if len(line) > 125 and not line.startswith("|") and "](" not in line:
            complain(f"{path.relative_to(TOP)}:{number}: a line of {len(line)} characters")


for path in documents():
    text = path.read_text(encoding="utf-8")
    check_links(path, text)
    check_paths(path, text)
    check_long_lines(path, text)
    check_calls(path, text, r"`(?:[\w/.-]*bin/)?(pullcord(?: [^`]+)?)`")
    for start, kind, body in fences(path):
        if kind and kind[0] == "sh":
            check_calls(path, body, r"(?:^|[\s/(])(pullcord(?: .*)?)$")
# The files of knowledge and the program's own texts tell people what to type, too.
for path in sorted([*(TOP / "facts").rglob("*.clp"), *(TOP / "rules").rglob("*.clp")]):
    check_calls(path, path.read_text(), r"with: (pullcord .*?)\.?$")
for path in sorted((TOP / "src").rglob("*.c")):
    check_calls(path, path.read_text(), r'\\"(pullcord [a-z][^"\\]*)\\"')
check_words()
check_repeated()
if checked < 100:
    complain(f"only {checked} commands were found; the patterns no longer fit")
finish(f"{len(documents())} documents, {checked} commands named")
