"""The sample cards by their form: HTML that is whole, needs nothing and reads in order; JSON
by its schema; widths of text and Markdown; hostile text escaped; the same bytes twice."""
import json
import re
import unicodedata
from html.parser import HTMLParser
from pathlib import Path

import jsonschema

from common import NAMES, READERS, TOP, complain, finish, samples

VOID = {"meta", "col", "br"}
SHAPES = {"polyline", "polygon", "rect", "circle"}
ALLOWED = {"html", "head", "meta", "title", "style", "body", "main", "h1", "h2", "h3", "p", "div", "dl", "dt", "dd",
           "ul", "ol", "li", "span", "strong", "blockquote", "table", "caption", "colgroup", "col", "thead", "tbody",
           "tr", "th", "td", "figure", "figcaption", "svg", "desc", "text"} | SHAPES


class Page(HTMLParser):
    """Tags in order, with what is open; complains of what does not close."""

    def __init__(self, name):
        super().__init__()
        self.name, self.open, self.headings, self.ids, self.figures = name, [], [], [], []
        self.colours, self.dashes, self.words = set(), set(), []

    def handle_starttag(self, tag, attributes):
        a = dict(attributes)
        if tag not in ALLOWED:
            complain(f"{self.name}: a <{tag}>")
        if len(a) != len(attributes):
            complain(f"{self.name}: an attribute twice in <{tag}>")
        for key, value in a.items():
            if key.startswith("on") or key in ("href", "src", "xlink:href"):
                complain(f"{self.name}: <{tag} {key}={value}>")
        if tag == "html" and not a.get("lang"):
            complain(f"{self.name}: no language")
        if re.fullmatch("h[1-6]", tag):
            self.headings.append(int(tag[1]))
        if tag == "svg":
            self.figures.append(a)
            if a.get("role") != "img" or not a.get("aria-labelledby"):
                complain(f"{self.name}: a picture without role or name")
        if "id" in a:
            self.ids.append(a["id"])
        if tag == "text":
            self.colours.add(a["fill"])
        if tag == "polyline" and float(a["stroke-width"]) > 1.5:
            self.dashes.add(a.get("stroke-dasharray", ""))
        if tag == "th" and a.get("scope") != "col":
            complain(f"{self.name}: a table head without scope")
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attributes):
        self.handle_starttag(tag, attributes)
        self.handle_endtag(tag)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            complain(f"{self.name}: </{tag}> closes nothing that is open")

    def handle_data(self, data):
        self.words.append(data)


def contrast(colour):
    """Against white, by the formula of WCAG 2 (relative luminance), from memory."""
    def linear(c):
        c /= 255
        return c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4
    digits = colour[1:] if len(colour) == 7 else "".join(2 * d for d in colour[1:])
    r, g, b = (linear(int(digits[i:i + 2], 16)) for i in (0, 2, 4))
    return 1.05 / (0.2126 * r + 0.7152 * g + 0.0722 * b + 0.05)


def check_html(path):
    text = path.read_text(encoding="utf-8")
    page = Page(path.name)
    page.feed(text)
    page.close()
    if page.open:
        complain(f"{path.name}: never closed: {page.open}")
    if not text.startswith("<!DOCTYPE html>"):
        complain(f"{path.name}: no doctype")
    if page.headings[:1] != [1] or page.headings.count(1) != 1:
        complain(f"{path.name}: headings {page.headings[:3]} ...")
    if any(b > a + 1 for a, b in zip(page.headings, page.headings[1:])):
        complain(f"{path.name}: a level of headings is left out: {page.headings}")
    if len(set(page.ids)) != len(page.ids):
        complain(f"{path.name}: an id twice")
    for figure in page.figures:
        for name in figure["aria-labelledby"].split():
            if name not in page.ids:
                complain(f"{path.name}: the picture's {name} is not there")
    rest = re.sub(r'xmlns="[^"]*"', "", text)
    for word in ("http:", "https:", "url(", "@import", "<script", "javascript:"):
        if word in rest.lower():
            complain(f"{path.name}: needs something from outside: {word}")
    style = re.search(r"<style>(.*?)</style>", text, flags=re.S).group(1)
    for needed in ("@page", "@media print", "break-inside:avoid"):
        if needed not in style:
            complain(f"{path.name}: the style has no {needed}")
    colours = set(re.findall(r"[{;]color:(#\w+)", style)) | page.colours - {"#ffffff"}
    for colour in colours:
        if contrast(colour) < 4.5:
            complain(f"{path.name}: letters in {colour} have a contrast of {contrast(colour):.1f}")
    return page


def check_chart(page, series):
    """Lines are told apart without colour: no two share a pattern of dashes."""
    if len(page.dashes) < min(series, 2):
        complain(f"{page.name}: {series} lines but dashes {page.dashes}")


def check_lines(path, course):
    """The heavy line of the chart ends, begins and lies between as the JSON card says."""
    text = path.read_text(encoding="utf-8")
    chart = re.search(r'<svg[^>]*"chart-title chart-desc".*?</svg>', text, flags=re.S).group(0)
    lines = [(float(width), [tuple(map(float, p.split(","))) for p in points.split()])
             for points, width in re.findall(r'<polyline points="([^"]*)"[^>]*stroke-width="([\d.]+)"', chart)]
    grid = sorted({p[0][1] for _, p in lines if len(p) == 2 and p[0][1] == p[1][1] and p[1][0] - p[0][0] > 300})
    heavy = [p for width, p in lines if width > 2.5]
    if len(grid) != 5 or len(heavy) != 1:
        complain(f"{path.name}: {len(grid)} lines of the grid, {len(heavy)} heavy lines")
        return
    got = [(grid[-1] - y) / (grid[-1] - grid[0]) for _, y in heavy[0]]
    near = [name for name in course[0]["chances"]
            if len(got) == len(course) and all(abs(g - s["chances"][name]) < 0.005 for g, s in zip(got, course))]
    if not near or max(course[-1]["chances"], key=course[-1]["chances"].get) not in near:
        complain(f"{path.name}: the heavy line is not that of the leading cause: {got}")


def check_json(path, form):
    document = json.loads(path.read_text(encoding="utf-8"))
    for e in form.iter_errors(document):
        complain(f"{path.name}: {'/'.join(map(str, e.absolute_path))}: {e.message[:160]}")
    for x in document.get("weights", []):
        total = x["start_decibans"] + sum(w["decibans"] for w in x["evidence"])
        if abs(total - x["total_decibans"]) > 0.01:
            complain(f"{path.name}: the weights of {x['fault']} do not add up")
        chance = document["course"][-1]["chances"][x["fault"]]
        if abs(chance - 1 / (1 + 10 ** (-x["total_decibans"] / 10))) > 1e-4:
            complain(f"{path.name}: chart and weights of {x['fault']} differ")
    return document


def check_form_can_fail(form, document):
    for member in document:
        spoilt = dict(document)
        del spoilt[member]
        optional = {"job", "shop", "machine", "owner", "words", "opened", "closed", "who", "class", "minutes", "nothing_broken"}
        if member not in optional and form.is_valid(spoilt):
            complain(f"the schema does not miss {member}")
        if form.is_valid({**document, member: None}):
            complain(f"the schema lets {member} be null")
    if form.is_valid({**document, "surprise": 1}):
        complain("the schema lets a new member in")


def check_width(path):
    for number, line in enumerate(path.read_text(encoding="utf-8").split("\n"), 1):
        if len(line) > 78 and not (path.suffix == ".md" and line.startswith("|")):
            complain(f"{path.name}:{number}: {len(line)} columns")
        if line != line.rstrip():
            complain(f"{path.name}:{number}: ends with a space")


def check_controls(path):
    for c in set(path.read_text(encoding="utf-8")) - {"\n", "\t" if path.suffix == ".json" else "\n"}:
        if unicodedata.category(c) in ("Cc", "Cf"):
            complain(f"{path.name}: a control character {c!r}")


def check_escapes(folder):
    for reader in READERS:
        text = (folder / f"hostile-{reader}.html").read_text(encoding="utf-8")
        if "&lt;script&gt;alert(1)&lt;/script&gt; &quot;quoted&quot; &#39;single&#39; &amp; &amp;amp;" not in text:
            complain(f"hostile-{reader}.html: the words are not there as they were told")
        text = (folder / f"hostile-{reader}.md").read_text(encoding="utf-8")
        for bare in (r"(?<!\\)\*(?!\*(Caution|Outcome):|\*)(?<!\*\*)", r"<script", r"(?<!\\)`", r"(?<!\\)\[a", r"(?<!\\)_under"):
            for found in re.findall(rf".*?{bare}.*", text)[:1]:
                if not re.search(r"\*\*(Caution|Outcome):\*\*", found):
                    complain(f"hostile-{reader}.md: not escaped: {found[:100]}")
        if r"\# hash" not in text or r"\| pipe" not in text:
            complain(f"hostile-{reader}.md: hash or pipe not escaped")
        rows = {re.sub(r"\\.", "", line).count("|") for line in text.split("\n") if line.startswith("|")}
        if not rows <= {3, 4, 5}:
            complain(f"hostile-{reader}.md: rows with {rows} bars")


def check_content(folder):
    """What each card must not be without."""
    for name in NAMES:
        for reader, titles in (("owner", ("What you told us", "What we found", "What we did", "What to watch",
                                          "How to store it", "For your safety")),
                               ("bench", ("The complaint", "Causes ", "Results in order", "Proof run",
                                          "Service check"))):
            for suffix in ("html", "md", "text"):
                text = (folder / f"{name}-{reader}.{suffix}").read_text(encoding="utf-8")
                at = [text.find(t) for t in titles]
                if min(at) < 0 or at != sorted(at):
                    complain(f"{name}-{reader}.{suffix}: sections at {at}")
        text = " ".join((folder / f"{name}-owner.text").read_text().split())
        if "CAUTION: Run it outdoors." not in text:
            complain(f"{name}-owner.text: no caution on carbon monoxide")
        if "starting fluid" not in text or "refuel" in text:
            complain(f"{name}-owner.text: cautions are not as they should be")
    text = " ".join((folder / "mended-bench.text").read_text().split())
    for words in ("minutes: 35 (listed: 40)", "parts used: intake gasket set", "Minutes of the whole job: 55.", "Passed.",
                  "[x] run as the owner told it, and it stays away: hunts or surges", "[ ] Oil: level", "[ ] Speed: idle",
                  "Air filter box:", "CAUTION: Open fuel only outdoors", "(estimate)", "counts 80 %"):
        if words not in text:
            complain(f"mended-bench.text: \"{words}\" is not there")
    if text.index("CAUTION:") > text.index("Carburettor off with links noted"):
        complain("mended-bench.text: the steps come before the cautions")
    if text.index("Carburettor: ") > text.index("Air filter box: "):
        complain("mended-bench.text: the box goes back before what lies under it")
    text = " ".join((folder / "in-vain-owner.text").read_text().split())
    for words in ("Not cured yet", "but it was not what you brought it in for"):
        if words not in text:
            complain(f"in-vain-owner.text: \"{words}\" is not there")
    document = json.loads((folder / "bounded-bench.json").read_text())
    if document["exact"] or document["weights"] or document["course"] or not document["ranking"]:
        complain("bounded-bench.json: weights, although they are not known")
    if "Too many unsound results to weigh exactly" not in (folder / "bounded-bench.text").read_text():
        complain("bounded-bench.text: does not say that weights are not known")
    if "Air filter box (off now)" not in (folder / "in-vain-bench.text").read_text():
        complain("in-vain-bench.text: does not say that the box is off")


def main():
    kept = samples()
    folder = Path(kept.name)
    schema = json.loads((TOP / "docs/schema/card-1.json").read_text())
    jsonschema.Draft7Validator.check_schema(schema)
    form = jsonschema.Draft7Validator(schema)
    for path in sorted(folder.iterdir()):
        if "-again." in path.name:
            continue
        if path.read_bytes() != path.with_name(path.stem + "-again" + path.suffix).read_bytes():
            complain(f"{path.name}: other bytes the second time")
        if path.suffix == ".pdf":
            continue
        check_controls(path)
        if path.suffix == ".html":
            page = check_html(path)
            figures = 0 if path.name.startswith(("empty", "bounded")) else 2 if "bench" in path.name else 1
            if len(page.figures) != figures:
                complain(f"{path.name}: {len(page.figures)} pictures, not {figures}")
            if figures:
                check_chart(page, 4)
        elif path.suffix == ".json":
            check_json(path, form)
        else:
            check_width(path)
    for name in ("mended", "in-vain", "long"):
        check_lines(folder / f"{name}-bench.html", check_json(folder / f"{name}-bench.json", form)["course"])
    check_form_can_fail(form, check_json(folder / "mended-bench.json", form))
    owner = check_json(folder / "mended-owner.json", form)
    if form.is_valid({**owner, "results": []}):
        complain("the schema lets results into the owner's card")
    check_escapes(folder)
    check_content(folder)
    finish(f"{len(NAMES)} jobs, {len(READERS)} readers, every format but PDF")


main()
