"""What the checks of this folder share."""
import json
import os
import re
import subprocess
import sys
from pathlib import Path

PROGRAM = os.environ["PULLCORD"]
TOP = Path(os.environ["PULLCORD_SOURCE"])
BUILD = Path(os.environ["PULLCORD_BUILD"])

failures = []


def complain(text):
    failures.append(text)


def finish(checked):
    """checked: in words, how much was looked at."""
    for text in failures[:40]:
        print("FAILED:", text)
    if len(failures) > 40:
        print(f"... and {len(failures) - 40} more")
    print(f"{checked}: {len(failures)} wrong")
    sys.exit(1 if failures else 0)


def run(*words, text=None):
    """Runs the program; nobody's own knowledge or open job takes part."""
    env = dict(os.environ, XDG_DATA_HOME="/nonexistent/data", XDG_STATE_HOME="/nonexistent/state")
    return subprocess.run([PROGRAM, *words], input=text, capture_output=True, text=True, env=env, timeout=120)


def tables():
    """Rows of the program's tables by kind."""
    rows = {}
    out = subprocess.run([os.environ["PULLCORD_TABLES"]], capture_output=True, text=True, check=True).stdout
    for line in out.splitlines():
        kind, *fields = line.split("\t")
        rows.setdefault(kind, []).append(fields)
    return rows


def documents():
    return [TOP / "README.md", TOP / "DEVELOPERS.md", *sorted((TOP / "docs").rglob("*.md")),
            *sorted((TOP / "demo").glob("*.md"))]


def fences(path):
    """Fenced blocks of a document: (line, words after the fence, text)."""
    blocks, start, kind, body, indent = [], 0, None, [], 0
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        mark = re.match(r"( *)```(.*)$", line)
        if kind is None and mark:
            start, kind, body, indent = number, mark.group(2).split(), [], len(mark.group(1))
        elif mark:
            blocks.append((start, kind, "\n".join(body) + "\n"))
            kind = None
        elif kind is not None:
            body.append(line[indent:])
    if kind is not None:
        complain(f"{path.relative_to(TOP)}:{start}: this block is never closed")
    return blocks


def load(path):
    return json.loads(path.read_text(encoding="utf-8"))
