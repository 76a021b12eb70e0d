"""What the checks of this folder share."""
import os
import subprocess
import sys
import tempfile
from pathlib import Path

PROGRAM = os.environ["PULLCORD"]
TOP = Path(os.environ["PULLCORD_SOURCE"])
NAMES = ("mended", "in-vain", "hostile", "letters", "empty", "long", "bounded")
READERS = ("owner", "bench")

failures = []


def complain(text):
    failures.append(text)


def finish(checked):
    for text in failures[:40]:
        print("FAILED:", text)
    print(f"{checked}: {len(failures)} wrong")
    sys.exit(1 if failures else 0)


def samples():
    """A folder with every sample card in it; it goes when the object that is kept goes."""
    folder = tempfile.TemporaryDirectory(prefix="pullcord-cards-")
    subprocess.run([os.environ["PULLCORD_SAMPLES"], folder.name], check=True)
    return folder


def card(*words, text=None):
    return subprocess.run([PROGRAM, "card", *words], input=text, capture_output=True, timeout=60)
