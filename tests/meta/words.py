"""Words that must not stand in the project: unfinished work, paths of one machine, hosts of a registry, and talk about
where an idea came from. The patterns are written so that they do not match themselves."""

import re

from tree import judge, line_of

EVERYWHERE = [
    (re.compile(r"transcrip[t]|seed documen[t]|practitioner sai[d]|youtub[e]", re.I), "tells where it came from"),
    (re.compile(r"/wor[k]/|/far[m]/|/roo[t]/|(?<![\w$}])/tm[p]/"), "is a path of one machine"),
    (re.compile(r"deb\.debia[n]\.org|registry\.npmj[s]|pypi\.or[g]"), "is the host of a registry"),
]
IN_CODE = [
    (re.compile(r"\b(TOD[O]|FIXM[E]|XX[X]|HAC[K]|stu[b]|not implemente[d]|placeholde[r])\b"), "is unfinished work"),
]
CODE = ("daemon/", "cli/", "schema/", "deploy/", "tests/", "seeds/", ".ci/", "CMakeLists.txt")


def rule(tree):
    complaints = []
    for path, text in tree.items():
        for pattern, what in EVERYWHERE + (IN_CODE if path.startswith(CODE) else []):
            for found in pattern.finditer(text):
                complaints.append(f"{path}:{line_of(text, found.start())}: \"{found.group()}\" {what}")
    return complaints


judge(
    rule,
    lawful={
        "daemon/main.cpp": "// hacksaw, stubborn, $TMPDIR/x, network/worker\n",
        "README.md": "A st" + "ub of wire may be named here.\n",
    },
    planted=[
        *(("daemon/units/a.cpp", f"// {a}{b}: later\n", "is unfinished work") for a, b in (
            ("TO", "DO"), ("FIX", "ME"), ("X", "XX"), ("HA", "CK"), ("st", "ub"), ("not imple", "mented"), ("place", "holder"))),
        ("tests/a.sh", "# TO" + "DO\n", ":1:"),
        *(("README.md", f"one\n{a}{b}\n", ":2:") for a, b in (
            ("the Trans", "cript says"), ("seed docu", "ment"), ("You", "Tube"), ("a practitioner ", "said"),
            ("/wo", "rk/main"), ("/ro", "ot/project"), ("/fa", "rm/x"), ("/t", "mp/build"), ("deb.deb", "ian.org"),
            ("registry.npm", "js.org"))),
    ],
)
