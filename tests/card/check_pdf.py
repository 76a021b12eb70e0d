"""The PDF cards: pages of A4, words that can be found, a word on letters that are lacking."""
import re
import subprocess
from pathlib import Path

from common import NAMES, READERS, complain, finish, samples


def output(*words):
    return subprocess.run(words, capture_output=True, text=True, check=True).stdout


def main():
    kept = samples()
    folder = Path(kept.name)
    for name in NAMES:
        for reader in READERS:
            path = folder / f"{name}-{reader}.pdf"
            info = dict(re.findall(r"^(\w[\w ]*):\s+(.*)$", output("pdfinfo", str(path)), flags=re.M))
            pages = int(info["Pages"])
            if not 1 <= pages <= 20 or "A4" not in info["Page size"] or "Job card" not in info["Title"]:
                complain(f"{path.name}: {info}")
            if path.read_bytes() != (folder / f"{name}-{reader}-again.pdf").read_bytes():
                complain(f"{path.name}: other bytes the second time")
            text = " ".join(output("pdftotext", "-layout", str(path), "-").split())
            for words in ("CAUTION", "Job card", f"page {pages} of {pages}"):
                if words not in text:
                    complain(f"{path.name}: \"{words}\" is not there")
            if ("Windows code page 1252" in text) != (name == "letters"):
                complain(f"{path.name}: says or does not say that letters are lacking")
    text = " ".join(output("pdftotext", "-layout", str(folder / "mended-bench.pdf"), "-").split())
    for words in ("intake gasket leaks", "94 %", "Service check", "chance that it is there", "speaks against it"):
        if words not in text:
            complain(f"mended-bench.pdf: \"{words}\" is not there")
    text = " ".join(output("pdftotext", "-layout", str(folder / "letters-owner.pdf"), "-").split())
    if "Groß ?ukasz ???? ? 5 € – naïve" not in text:
        complain("letters-owner.pdf: letters are not shown as they should be")
    text = output("pdftotext", "-layout", str(folder / "hostile-owner.pdf"), "-")
    if "<script>alert(1)</script>" not in text:
        complain("hostile-owner.pdf: the words are not there as they were told")
    finish(f"{len(NAMES) * len(READERS)} PDFs")


main()
