"""Every command, option, exit status and environment variable of the program's own table is
in --help and the man page, and what the sources use is in the table."""
import re

from common import TOP, complain, finish, run, tables

# Set by the system, not for us: where a person's folders lie, and what the terminal can do.
OF_THE_SYSTEM = {"HOME", "TERM"}
# <sysexits.h>, for the names that the sources use.
SYSEXITS = {"EX_OK": 0, "EX_USAGE": 64, "EX_DATAERR": 65, "EX_NOINPUT": 66, "EX_SOFTWARE": 70, "EX_OSERR": 71,
            "EX_CANTCREAT": 73, "EX_IOERR": 74, "EX_TEMPFAIL": 75, "EX_NOPERM": 77, "EX_CONFIG": 78}


def plain(text):
    """roff or wrapped text as one line of words."""
    return re.sub(r"\s+", " ", text.replace("\\-", "-").replace("\\&", "").replace("\\e", "\\"))


def sections(man):
    """Text of each section of the man page."""
    parts = re.split(r"^\.SH (.+)$", man, flags=re.M)
    return dict(zip(parts[1::2], parts[2::2]))


def pairs(section):
    """Entries of a section: (term, text)."""
    return [(plain(t.replace('"', "")).strip(), plain(x).strip())
            for t, x in re.findall(r"^\.TP\n\.BI? (.+)\n((?:(?!\.TP).*\n?)*)", section, flags=re.M)]


def term(name, value):
    """An option as it is shown: with the name of its value, where it takes one."""
    return plain(f"{name} {value}").strip()


def check_pairs(man, section, rows):
    want = [(name, plain(what).strip()) for name, what in rows]
    got = pairs(man.get(section, ""))
    for row in want:
        if row not in got:
            complain(f"man page, {section}: \"{row[0]}: {row[1]}\" is not there")
    for row in got:
        if row not in want:
            complain(f"man page, {section}: \"{row[0]}: {row[1]}\" does not belong there")


def check_man(rows):
    text = run("print", "man").stdout
    man = sections(text)
    synopsis, commands = plain(man.get("SYNOPSIS", "")), man.get("COMMANDS", "")
    for name, operands, _ in rows["command"]:
        if plain(f"pullcord {name} .I {operands}" if operands else f"pullcord {name}").strip() not in synopsis:
            complain(f"man page, SYNOPSIS: \"pullcord {name} {operands}\" is not there")
        part = re.search(rf"^\.SS pullcord{' ' if name else ''}{name}\n((?:(?!\.SS).*\n?)*)", commands, flags=re.M)
        options = [(term(o, v), plain(h)) for c, o, v, h in rows["option"] if c == name]
        if not part:
            complain(f"man page, COMMANDS: {name or 'the conversation'} is not there")
        elif pairs(part.group(1)) != options:
            complain(f"man page: options of \"{name}\" are {pairs(part.group(1))}, not {options}")
    check_pairs(man, "OPTIONS", [(term(o, v), h) for o, v, h in rows["global"]])
    check_pairs(man, "EXIT STATUS", rows["status"])
    check_pairs(man, "ENVIRONMENT", rows["variable"])


def check_help(rows):
    whole = plain(run("--help").stdout)
    for name, _, _ in rows["command"]:
        page = plain(run(*([name] if name else []), "--help").stdout)
        if name and f" {name} " not in whole:
            complain(f"--help does not name the command {name}")
        for option in [r[1:] for r in rows["option"] if r[0] == name] + rows["global"]:
            if f" {term(*option[:2])} {plain(option[2])}" not in page:
                complain(f"\"pullcord {name} --help\" does not have {term(*option[:2])}: {option[2]}")
    if not run("nonsense").returncode == run("list").returncode == run("list", "faults", "--nonsense").returncode == 64:
        complain("a command line that is wrong does not end with 64")


def check_completion(rows):
    text = run("print", "completion").stdout
    for name, _, words in rows["command"]:
        for word in [name, *words.replace("@file", "").split()] + [r[1] for r in rows["option"] if r[0] == name]:
            if word and not re.search(rf"(?<![\w-]){re.escape(word)}(?![\w-])", text):
                complain(f"the completion does not know {word}")


def check_sources(rows):
    """What the sources read and return must be in the table."""
    statuses = {int(name) for name, _ in rows["status"]}
    variables = {name for name, _ in rows["variable"]} | OF_THE_SYSTEM
    used = set()
    for path in sorted((TOP / "src").rglob("*.[ch]")):
        text = path.read_text()
        for name in re.findall(r'getenv\("(\w+)"\)', text):
            used.add(name)
            if name not in variables:
                complain(f"{path.relative_to(TOP)} reads ${name}, which no help names")
        for name in re.findall(r"\bEX_[A-Z]+\b", re.sub(r"/\*.*?\*/", "", text, flags=re.S)):
            if SYSEXITS.get(name) not in statuses:
                complain(f"{path.relative_to(TOP)} uses {name}, which is not among the exit statuses")
    for name in sorted(variables - OF_THE_SYSTEM - used):
        complain(f"the help names ${name}, which nothing reads")


rows = tables()
check_man(rows)
check_help(rows)
check_completion(rows)
check_sources(rows)
finish(f"{len(rows['command'])} commands, {len(rows['status'])} statuses, {len(rows['variable'])} variables")
