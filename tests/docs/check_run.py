"""Runs the blocks of the documents that are marked as runnable (```sh run), those of one
document in one shell, as a reader would; what a following ```text shown block says must
then be on the screen, line by line and in this order."""
import os
import shutil
import subprocess
import tempfile
from pathlib import Path

from common import BUILD, PROGRAM, TOP, complain, documents, fences, finish

MARK = "=====pullcord-docs-block====="


def prepare():
    """A place like a checkout that was built with demo/run, in which nothing can be spoilt."""
    place = Path(tempfile.mkdtemp(prefix="pullcord-docs-"))
    for name in ("docs", "facts", "rules", "src", "tests", "demo"):
        (place / name).symlink_to(TOP / name)
    (place / "build").symlink_to(BUILD)
    return place


def run_blocks(path, blocks, place):
    """Output of each block; stops at the first that fails."""
    home = place / "home"
    home.mkdir(exist_ok=True)
    script = "".join(f"echo {MARK}{n}\n{body}" for n, (_, body) in enumerate(blocks))
    env = {"PATH": f"{Path(PROGRAM).parent}:/usr/bin:/bin", "HOME": str(home), "LC_ALL": "C.UTF-8",
           "TMPDIR": str(place)}
    for name in ("ASAN_OPTIONS", "UBSAN_OPTIONS"):
        if name in os.environ:
            env[name] = os.environ[name]
    done = subprocess.run(["bash", "-e", "-o", "pipefail", "-c", script], cwd=place, env=env, text=True,
                          stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, timeout=120)
    parts = done.stdout.split(MARK)[1:]
    if done.returncode != 0:
        line = blocks[len(parts) - 1][0] if parts else 0
        complain(f"{path.relative_to(TOP)}:{line}: ended with {done.returncode}: {done.stdout[-600:]}")
    return [part.partition("\n")[2] for part in parts]


def check_shown(path, line, wanted, output):
    rest = output
    for text in filter(None, map(str.strip, wanted.splitlines())):
        at = rest.find(text)
        if at < 0:
            complain(f"{path.relative_to(TOP)}:{line}: \"{text}\" is not shown (any more, or in this order)")
            return
        rest = rest[at + len(text):]


def check_document(path):
    """Returns how many blocks were run."""
    blocks, shown = [], []
    for line, kind, body in fences(path):
        if kind == ["sh", "run"]:
            blocks.append((line, body))
        elif kind == ["text", "shown"]:
            shown.append((len(blocks) - 1, line, body))
        elif "run" in kind or "shown" in kind:
            complain(f"{path.relative_to(TOP)}:{line}: a block marked {kind} is of no known kind")
    if not blocks:
        return 0
    place = prepare()
    try:
        outputs = run_blocks(path, blocks, place)
    finally:
        shutil.rmtree(place)
    for number, line, wanted in shown:
        if number < len(outputs):
            check_shown(path, line, wanted, outputs[number])
    return len(blocks)


count = sum(check_document(path) for path in documents())
if count < 8:
    complain(f"only {count} blocks are marked as runnable")
finish(f"{count} blocks")
