"""What the meta tests share: the project's files as text, C++ taken apart a little, and the runner.

A rule is a function from a tree ({path: text}) to complaints ("path:line: sentence"). The runner first gives it each
planted violation on top of a small lawful tree and wants the complaint that belongs to it, then the lawful tree alone
and wants none, and only then judges the project.
"""

import re
import subprocess
import sys
from pathlib import Path

BENCH = "units board wire pieces cutting press level hours agenda supply draw".split()
OTHERS = "shop store talk remind serve page".split()
PARTS = BENCH + OTHERS

# Raw strings, strings, characters and comments, in one pass so that none hides in another. The quote of a digit
# separator follows a digit, which is how it is told from a character.
_TOKEN = re.compile(
    r'R"(?P<mark>[^()\s\\]{0,16})\((?P<raw>.*?)\)(?P=mark)"'
    r'|"(?P<text>(?:\\.|[^"\\\n])*)"'
    r"|(?<![\w])'(?:\\.|[^'\\\n])+'"
    r"|(?P<comment>//[^\n]*|/\*.*?\*/)",
    re.S,
)
_INCLUDE = re.compile(r'^[ \t]*#[ \t]*include[ \t]*(["<])([^">]+)[">]', re.M)


def project(root):
    """Every file that is or would be committed, by its path from the root. Bytes that are not UTF-8 are replaced."""
    listed = subprocess.run(
        ["git", "-C", root, "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        check=True, capture_output=True,
    ).stdout.decode()
    paths = sorted(p for p in set(listed.split("\0")) if p and (Path(root) / p).is_file())
    return {p: (Path(root) / p).read_bytes().decode("utf-8", "replace") for p in paths}


def cpp(tree, *folders):
    """The C++ files below the folders, all of them if none is named."""
    for path, text in tree.items():
        if path.endswith((".cpp", ".hpp")) and (not folders or path.startswith(tuple(f + "/" for f in folders))):
            yield path, text


def part(path):
    """The folder of daemon/ that a file belongs to; None for daemon/main.cpp and what is elsewhere."""
    steps = path.split("/")
    return steps[1] if steps[0] == "daemon" and len(steps) > 2 else None


def includes(text):
    """(line, name, quoted) of every #include that is not commented out."""
    for found in _INCLUDE.finditer(without_comments(text)):
        yield line_of(text, found.start(2)), found.group(2), found.group(1) == '"'


def without_comments(text):
    """Comments become blanks; line numbers and offsets stay."""
    return _TOKEN.sub(lambda m: _blank(m.group()) if m.group("comment") else m.group(), text)


def code_only(text):
    """Comments and the insides of literals become blanks."""
    def hide(m):
        whole = m.group()
        return _blank(whole) if m.group("comment") else whole[0] + _blank(whole[1:-1]) + whole[-1]
    return _TOKEN.sub(hide, text)


def literals(text):
    """(line, text) of every string literal, neighbours that the compiler would join as one."""
    bare = without_comments(text)
    joined, end = None, None
    for found in _TOKEN.finditer(bare):
        if found.group("text") is None and found.group("raw") is None:
            continue
        value = found.group("raw") if found.group("raw") is not None else found.group("text")
        if joined and not bare[end:found.start()].strip():
            joined = (joined[0], joined[1] + value)
        else:
            if joined:
                yield joined
            joined = (line_of(text, found.start()), value)
        end = found.end()
    if joined:
        yield joined


def line_of(text, offset):
    return text.count("\n", 0, offset) + 1


def _blank(text):
    return re.sub(r"[^\n]", " ", text)


def judge(rule, lawful, planted, warnings=None):
    """Runs one rule as a program: self-test, then the project named by the first argument. Exits 1 on a complaint.

    `planted` is a list of (path, text, fragment): with that file in the lawful tree, a complaint must contain the
    fragment and the path. A text of None removes the file. `warnings` is a second rule whose complaints are printed only.
    """
    blind = []
    for path, text, fragment in planted:
        tree = dict(lawful)
        tree.pop(path, None)
        if text is not None:
            tree[path] = text
        heard = rule(tree)
        if not any(fragment in c and path in c for c in heard):
            blind.append(f"planted in {path}: {text!r:.90}; wanted a complaint with {fragment!r}, heard {heard}")
    if rule(lawful):
        blind.append(f"the lawful tree drew {rule(lawful)}")
    if blind:
        print("This check does not work:", *blind, sep="\n  ")
        sys.exit(1)

    tree = project(sys.argv[1])
    if not any(path.startswith("daemon/") for path in tree):
        sys.exit(f"{sys.argv[1]} holds no daemon/: wrong folder, or git does not trust it.")
    for line in warnings(tree) if warnings else []:
        print("warning:", line)
    complaints = rule(tree)
    print(*complaints, sep="\n")
    print(f"{len(planted)} planted violations found; {len(tree)} files read; {len(complaints)} complaints.")
    sys.exit(1 if complaints else 0)
