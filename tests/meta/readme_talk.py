"""The conversation in README.md is one that happens: each `$ nutward SENTENCE` is said to the demo shop, and what comes back
must be what stands there. Dates differ from day to day and are masked on both sides.

    readme_talk.py README NUTWARDD NUTWARD
"""
import json
import pathlib
import re
import shlex
import subprocess
import sys
import tempfile
import time

DATE = re.compile(r"\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) \d+ [A-Z][a-z]{2} \d{4}(?:, \d\d:\d\d)?")


def masked(text):
    return DATE.sub("<date>", text.strip())


def exchanges(readme):
    block = re.search(r"## A conversation.*?```\n(.*?)```", readme, re.S).group(1)
    parts = re.split(r"^\$ nutward (.*)\n", block, flags=re.M)
    return list(zip(parts[1::2], parts[2::2]))


def wait_for_plans(nutward, home):
    """Until the background has its best cut plan of every wire: what answers say of a plan hangs on it."""
    def asked(sentence):
        got = subprocess.run([nutward, "--home", str(home), "--conversation", "plans", "--json", sentence],
                             capture_output=True, text=True, timeout=30, check=True)
        return json.loads(got.stdout)
    wires = [wire["name"] for wire in asked("cut plan")["data"]["wires"]]
    until = time.monotonic() + 120
    while any("being worked on" in asked(f"cut plan for {wire}")["reason"] for wire in wires):
        if time.monotonic() > until:
            sys.exit("The cut plans are not done after two minutes.")
        time.sleep(0.2)


def main():
    readme, nutwardd, nutward = sys.argv[1:4]
    said = exchanges(pathlib.Path(readme).read_text(encoding="utf-8"))
    if len(said) < 5:
        sys.exit("README.md shows fewer than five exchanges.")
    wrong = 0
    with tempfile.TemporaryDirectory() as folder:
        home = pathlib.Path(folder) / "shop"
        daemon = subprocess.Popen([nutwardd, "--home", str(home), "--demo"], stderr=subprocess.DEVNULL)
        try:
            for _ in range(300):
                if (home / "nutward.sock").exists():
                    break
                time.sleep(0.1)
            for sentence, wanted in said:
                wait_for_plans(nutward, home)
                got = subprocess.run([nutward, "--home", str(home), "--conversation", "readme", "--no-color", *shlex.split(sentence)],
                                     capture_output=True, text=True, timeout=30, check=False)
                shown = got.stdout.replace(f"nutward --home {home} --conversation readme", "nutward")
                if masked(shown) != masked(wanted):
                    wrong += 1
                    print(f"$ nutward {sentence}\nREADME.md says:\n{wanted}\nthe shop said:\n{shown}{got.stderr}")
        finally:
            daemon.terminate()
            daemon.wait(timeout=10)
    print(f"{len(said)} exchanges, {wrong} not as README.md has them.")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
