"""Which source files may be compiled as one: together.py MOST FILE... prints groups, a line each, files separated by ';'.

Compiling ten files as one takes a third of the time, since what they include is read once. But then what a file keeps to
itself (its unnamed namespace, its using-declarations, its macros) is seen by the others after it. So two files go together
only where no name that one keeps to itself occurs as a word in the other, whatever it means there, or is declared by one of
our headers that the other includes, but for the same using-declaration; and where both use the same namespaces whole. The
order of the files decides; who belongs to no group is compiled alone.
"""
import functools
import os
import re
import sys

COMMENT_OR_TEXT = re.compile(r'//[^\n]*|/\*.*?\*/|R"(\w*)\(.*?\)\1"|"(?:\\.|[^"\\\n])*"', re.S)
WORD = re.compile(r"[A-Za-z_]\w*")
ROOT = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))


@functools.lru_cache(maxsize=None)
def read(path):
    """A file without comments and texts, and the headers of ours that it includes."""
    with open(path, encoding="utf-8") as file:
        whole = file.read()
    places = (os.path.dirname(path), ROOT + "/daemon", ROOT + "/tests", ROOT)
    included = []
    for name in re.findall(r'^#include "([^"]+)"', whole, re.M):
        included += [p for p in (os.path.normpath(f"{place}/{name}") for place in places) if os.path.isfile(p)][:1]
    return COMMENT_OR_TEXT.sub(lambda m: '""' if m.group(0)[0] in 'R"' else " ", whole), tuple(included)


def unnamed(text):
    """The text within unnamed namespaces. Files are as clang-format leaves them: what closes one stands alone on its line."""
    inside = []
    for begin in re.finditer(r"^namespace \{$", text, re.M):
        rest = text[begin.end() :]
        # Of the brackets at the margin the first that closes more than was opened; the others end functions.
        ends = (m.start() for m in re.finditer(r"^\}(?![;\w])", rest, re.M))
        end = next((e for e in ends if rest.count("{", 0, e) <= rest.count("}", 0, e)), len(rest))
        inside.append(rest[:end])
    return "\n".join(inside)


def declared(text):
    """Of the lines that begin at the margin, the names they may declare: rather too many than too few. And using-declarations."""
    names, usings = set(), {}
    for line in text.split("\n"):
        if not line or line[0] in " }#)":
            continue
        found = re.match(r"using ([\w:]*?(\w+));", line)
        if found:
            usings[found.group(2)] = found.group(1)
            continue
        found = re.match(r"(?:struct|class|enum class|enum|union|using) (\w+)", line)
        if found:
            names.update([found.group(1), *re.findall(r"(\w+)(?=\s*[{=;])", line)])
        elif "(" in line and line.find("(") < (line.find("=") % 1000):
            names.update(re.findall(r"(\w+)$", line[: line.find("(")]))
        elif not line.startswith("namespace"):
            names.update(re.findall(r"(\w+)(?=\s*(?:[{=,;\[]|$))", line))
    return {n for n in names if not n.isdigit()} - {"false", "true", "namespace", "const", "string_view"}, usings


@functools.lru_cache(maxsize=None)
def of_headers(paths, near):
    """What these headers and those that they include declare, and where; of those below the folder `near`."""
    seen, waiting, names = set(), list(paths), {}
    while waiting:
        path = waiting.pop()
        if path not in seen:
            seen.add(path)
            text, included = read(path)
            for name in declared(text)[0] if path.startswith(near) else ():
                names.setdefault(name, set()).add(path)
            waiting += included
    return names


class File:
    def __init__(self, path):
        self.path = path
        text, included = read(path)
        self.words = set(WORD.findall(text))
        self.whole = set(re.findall(r"^using namespace ([\w:]+);", text, re.M))
        # What other folders declare stands in other namespaces, which concerns who uses these whole.
        folder = os.path.relpath(os.path.dirname(path), ROOT).split(os.sep)[:2]  # daemon/shop of daemon/shop/questions
        self.seen = of_headers(included, ROOT if self.whole else os.path.join(ROOT, *folder) + os.sep)
        self.names, self.usings = declared(unnamed(text))
        self.names |= set(re.findall(r"^#define (\w+)", text, re.M))
        self.usings.update((last, all_of_it) for all_of_it, last in re.findall(r"^using ([\w:]*?(\w+));", text, re.M))

    def bears(self, other):
        return self.whole == other.whole and self.alone_beside(other) and other.alone_beside(self)

    def alone_beside(self, other):
        if self.names & other.words or (self.names - self.seen.keys()) & other.seen.keys():
            return False
        # A name of two headers of which the other includes one means that one there, and would mean ours.
        if any(n in self.seen and self.seen[n] - other.seen[n] for n in other.words & other.seen.keys()):
            return False
        return all(
            other.usings.get(name) == whole or name not in other.words and (name in self.seen or name not in other.seen)
            for name, whole in self.usings.items()
        )


def groups(files, most):
    out = []
    for file in files:
        for group in out:
            if len(group) < most and all(file.bears(other) for other in group):
                group.append(file)
                break
        else:
            out.append([file])
    return out


if __name__ == "__main__":
    for group in groups([File(path) for path in sys.argv[2:]], int(sys.argv[1])):
        print(";".join(file.path for file in group))
