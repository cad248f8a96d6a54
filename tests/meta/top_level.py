"""The top level of the project is what the design lists, all of it and nothing else."""

from tree import judge

DESIGNED = "CMakeLists.txt README.md DEVELOPERS.md daemon cli schema tests seeds deploy".split()
TOOLS = ".ci .clang-format .clang-tidy .gitignore".split()


def rule(tree):
    there = {path.split("/")[0] for path in tree}
    return [f"{name} is not in the design" for name in sorted(there - {*DESIGNED, *TOOLS})] + [
        f"{name} is missing" for name in DESIGNED + TOOLS if name not in there]


judge(
    rule,
    lawful={name if "." in name and name != ".ci" else f"{name}/a": "" for name in DESIGNED + TOOLS},
    planted=[
        ("notes.md", "", "notes.md is not in the design"),
        ("src", "", "src is not in the design"),
        (".vscode", "", ".vscode is not in the design"),
        ("README.md", None, "README.md is missing"),
        ("DEVELOPERS.md", None, "DEVELOPERS.md is missing"),
        (".clang-tidy", None, ".clang-tidy is missing"),
    ],
)
