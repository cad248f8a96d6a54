"""The manual pages and the shells' completions say what the programs' --help says, and work.

Called as manual.py NUTWARDD NUTWARD [what unittest takes].
"""

import os
import pathlib
import re
import shutil
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve()
sys.path.insert(0, str(HERE.parent.parent / "faults"))
import shop
from terminal import TAB, Terminal

DEPLOY = HERE.parent.parent.parent / "deploy"
MANUALS, COMPLETIONS = DEPLOY / "man", DEPLOY / "completions"
PAGES = {"nutward": "nutward.1", "nutwardd": "nutwardd.8"}
OPTION = re.compile(r"(?<![\w-])--?[a-z][a-z-]*")


def help_of(name):
    program = shop.NUTWARDD if name == "nutwardd" else shop.NUTWARD
    return subprocess.run([program, "--help"], capture_output=True, text=True, check=True, timeout=30).stdout


def described_options(name):
    """{("--home",): "The shop's home, ..."} of the section Options of --help."""
    section = help_of(name).split("\nOptions:", 1)[1].split("\n\nExit codes:")[0]
    out, last = {}, None
    for line in section.splitlines():
        if re.match(r"  \S", line):
            left, _, text = line.strip().partition("  ")
            last = tuple(OPTION.findall(left))
            out[last] = text.strip()
        elif line.strip() and last:
            out[last] += " " + line.strip()
    return out


def flat(text):
    """Words alone: quotes, dollars and how lines break differ between a terminal's help and a manual page."""
    return re.sub(r"\s+", " ", re.sub(r"[\"'`$‘’“”]", "", text))


def without_mandoc(test):
    return shop.unittest.skipIf(shutil.which("mandoc") is None, "mandoc is not installed")(test)


class Manual(shop.unittest.TestCase):
    def shown(self, page):
        text = subprocess.run(["mandoc", "-Tutf8", page], cwd=MANUALS, capture_output=True, text=True, check=True).stdout
        return flat(re.sub(".\b", "", text))  # bold and underlined by overstriking

    @without_mandoc
    def test_mandoc_finds_nothing_to_better(self):
        for page in PAGES.values():
            ran = subprocess.run(["mandoc", "-Tlint", page], cwd=MANUALS, capture_output=True, text=True)
            self.assertEqual((ran.stdout + ran.stderr, ran.returncode), ("", 0))

    @without_mandoc
    def test_each_page_has_the_options_of_help_and_no_others_each_in_the_same_words(self):
        for name, page in PAGES.items():
            source, shown = (MANUALS / page).read_text(), self.shown(page)
            in_page = set()
            for flags in re.findall(r"^\.It Fl (.*)$", source, re.M):
                in_page |= {f"-{flag}" for flag in re.findall(r"(?:(?<=, )|^)-?[a-z-]+", flags)}
            described = described_options(name)
            self.assertEqual(in_page, {option for options in described for option in options}, page)
            for options, text in described.items():
                if "-h" not in options and "--version" not in options:
                    wanted = flat(text).rstrip(".")
                    self.assertIn(wanted[0].upper() + wanted[1:], shown, page)

    @without_mandoc
    def test_the_page_has_the_exit_codes_of_help(self):
        codes = re.findall(r"^  (\d+) +(.*)$", help_of("nutward").split("Exit codes:")[1], re.M)
        self.assertEqual(len(codes), 6)
        section = (MANUALS / "nutward.1").read_text().split(".Sh EXIT STATUS")[1].split(".El")[0]
        self.assertEqual(re.findall(r"^\.It (\d+)\n(.*)$", section, re.M), codes)

    def test_the_completions_have_the_options_of_help_and_no_others(self):
        for name in PAGES:
            wanted = {option for options in described_options(name) for option in options}
            for file, options in completed_options(name).items():
                self.assertEqual(options, wanted, f"{file} for {name}")


def completed_options(name):
    """{file: options} that the three files offer for a program."""
    bash = (COMPLETIONS / "nutward.bash").read_text()
    lists = {"nutward" if "--json" in words else "nutwardd": words for words in re.findall(r"compgen -W '([^']*)'", bash)}
    zsh = (COMPLETIONS / "_nutward").read_text().split("if [[ $service == nutwardd ]]")[1].split("\nelse\n")
    block = zsh[0 if name == "nutwardd" else 1]
    fish = set()
    for line in (COMPLETIONS / "nutward.fish").read_text().splitlines():
        if line.startswith(f"complete -c {name} "):
            fish |= {"--" + word for word in re.findall(r" -l ([a-z-]+)", line)}
            fish |= {"-" + word for word in re.findall(r" -s ([a-z])", line)}
    return {
        "nutward.bash": set(OPTION.findall(lists[name])),
        "_nutward": set(re.findall(r"'(--?[a-z-]+)\[", block)) | set(re.findall(r"\{(-h),(?:--help)\}", block))
        | set(re.findall(r"\{-h,(--help)\}", block)),
        "nutward.fish": fish,
    }


class Completions(shop.ShopCase):
    """Each shell itself, against a running shop."""

    def setUp(self):
        super().setUp()
        self.with_demo()
        self.started()
        programs = self.folder / "bin"
        programs.mkdir()
        (programs / "nutward").symlink_to(shop.NUTWARD)
        self.environment = {"PATH": f"{programs}:{os.environ['PATH']}", "HOME": str(self.folder), "TERM": "xterm",
                            "NUTWARD_HOME": str(self.folder / "none"), "LC_ALL": "C.UTF-8"}

    def ran(self, *command):
        return subprocess.run(command, env=self.environment, capture_output=True, text=True, timeout=60, check=True).stdout

    def cases(self):
        home = f"--home {self.home}"
        return [
            (f"nutward {home} stoc", ["stock"]),
            (f"nutward {home} --quiet help rec", ["receive", "rechecked"]),
            (f"nutward {home} stock of na", ["narrow"]),
            (f"nutward {home} job ", sorted(str(n) for n in range(1, 12))),
            ("nutward sto", []),  # nobody listens there
            ("nutward --no-i", ["--no-input"]),
            ("nutwardd --ver", ["--verify", "--version"]),
        ]

    @shop.unittest.skipIf(shutil.which("bash") is None, "bash is not installed")
    def test_bash(self):
        script = 'source "$1"; shift; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); _"$1"; printf "%s\\n" "${COMPREPLY[@]}"'
        for line, wanted in self.cases():
            got = self.ran("bash", "-c", script, "bash", str(COMPLETIONS / "nutward.bash"), *line.split(" "))
            self.assertEqual(sorted(got.split()), wanted, line)

    @shop.unittest.skipIf(shutil.which("fish") is None, "fish is not installed")
    def test_fish(self):
        for line, wanted in self.cases():
            got = self.ran("fish", "--no-config", "-c", f"source '{COMPLETIONS}/nutward.fish'; complete -C '{line}'")
            self.assertEqual(sorted(part.split("\t")[0] for part in got.splitlines()), wanted, line)

    @shop.unittest.skipIf(shutil.which("zsh") is None, "zsh is not installed")
    def test_zsh(self):
        for line, wanted in self.cases():
            terminal = Terminal(shutil.which("zsh"), "-f", environment=self.environment)
            self.addCleanup(terminal.gone)
            terminal.type(f"fpath=({COMPLETIONS} $fpath); autoload -Uz compinit; compinit -u -D; PS1='> '; echo rea''dy\r")
            terminal.wait_for("ready")
            terminal.prompted()
            terminal.type(line.encode() + TAB)
            if len(wanted) == 1:
                terminal.wait_for(line.rsplit(" ", 1)[0] + " " + wanted[0])
            elif wanted:  # zsh writes what all have in common, and shows the rest below
                terminal.type(TAB)
                for name in wanted:
                    terminal.wait_for(name)
            else:
                terminal.type(b"!")
                terminal.wait_for(line + "!")



if __name__ == "__main__":
    shop.main()
