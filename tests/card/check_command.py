"""`pullcord card` as it is typed: formats, readers, files, and what it refuses."""
import json
import tempfile
from pathlib import Path

from common import TOP, card, complain, finish

CASE = str(TOP / "demo/tiller-3-found.json")
BEGIN = {"html": b"<!DOCTYPE html>", "md": b"# Job card", "text": b"Job card: tiller\n=", "json": b"{", "pdf": b"%PDF-1."}


def expect(done, status, words, what):
    if done.returncode != status or words not in done.stderr.decode():
        complain(f"{what}: ends with {done.returncode}: {done.stderr.decode().strip()}")


def main():
    for kind, begin in BEGIN.items():
        for reader in ("owner", "bench"):
            done = card(CASE, "--format", kind, "--for", reader)
            if done.returncode or not done.stdout.startswith(begin.replace(b": tiller\n=", b"") if reader == "bench" else begin):
                complain(f"{kind} for {reader}: {done.returncode} {done.stdout[:40]}")
    if card(CASE).stdout != card(CASE, "--format", "text", "--for", "owner").stdout:
        complain("without options it is not the owner's card as text")
    if card("-", text=Path(CASE).read_bytes()).stdout != card(CASE).stdout:
        complain("standard input does not give the same card")
    with tempfile.TemporaryDirectory() as folder:
        for end in ("html", "md", "txt", "json", "pdf"):
            path = Path(folder) / f"card.{end}"
            done = card(CASE, "--output", str(path))
            kind = "text" if end == "txt" else end
            if done.returncode or done.stdout or path.read_bytes() != card(CASE, "--format", kind).stdout:
                complain(f"--output card.{end}: {done.stderr.decode().strip()}")
        path = Path(folder) / "plain.pdf"
        card(CASE, "--output", str(path), "--format", "json")
        if json.loads(path.read_text())["words"] != "it keeps surging; will not run without choke":
            complain("--format does not come before the end of the file's name")
        expect(card(CASE, "--output", f"{folder}/card.doc"), 64, "says no format", "an unknown end")
        expect(card(CASE, "--output", f"{folder}/none/card.md"), 73, "none", "a folder that is not there")
    expect(card(CASE, "--format", "word"), 64, "there is no format", "an unknown format")
    expect(card(CASE, "--for", "me"), 64, "for the owner or for the bench", "an unknown reader")
    expect(card("/nonexistent.json"), 66, "nonexistent", "no such case")
    expect(card("-", text=b"{}"), 65, "", "no case")
    done = card(str(TOP / "demo/generator-left-in-the-rain.json"))
    text = " ".join(done.stdout.decode().split())
    for words in ("Stop: to be handed over", "licensed electrician", "Never plug a generator into house wiring",
                  "Run a generator outdoors only"):
        if words not in text:
            complain(f"the generator's card does not say \"{words}\"")
    text = card(str(TOP / "demo/tiller-1-complaint.json")).stdout.decode()
    if "Still looking" not in text or "Nothing is certain yet" not in text:
        complain("the card of a complaint alone does not say that nothing is certain")
    finish("the command line")


main()
