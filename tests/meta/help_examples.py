"""The examples that `help` gives work on the demo shop: each is said to it as it stands, is answered by the very row that it is
an example of, and what was done is taken back before the next. After each, `why` gives reasons with a number in them, and `how` a next
step with a sentence for it.

    help_examples.py NUTWARDD NUTWARD
"""
import json
import pathlib
import re
import subprocess
import sys
import tempfile
import time


class Demo:
    def __init__(self, nutwardd, nutward, home):
        self.nutward, self.home, self.said = nutward, home, 0
        self.daemon = subprocess.Popen([nutwardd, "--home", str(home), "--demo"], stderr=subprocess.DEVNULL)
        for _ in range(300):
            if (home / "nutward.sock").exists():
                return
            time.sleep(0.1)
        sys.exit("The daemon did not begin to listen.")

    def say(self, sentence, conversation=None):
        """In a conversation of its own unless told which, so that nothing comes from the sentence before."""
        self.said += 1
        got = subprocess.run([self.nutward, "--home", str(self.home), "--json", "--conversation",
                              conversation or f"c{self.said}", sentence],
                             capture_output=True, text=True, timeout=60, check=False)
        try:
            return json.loads(got.stdout)
        except ValueError:
            sys.exit(f"{sentence!r}: {got.stdout}{got.stderr}")


# What must have been done before the examples of a row can be.
FIRST = {
    "after": ["job 3 waits for job 1"],
    "cancel-booking": ["I have the press from 14:00 to 15:00 tomorrow"],
    "day-on": ["Ines is off on 2027-01-04"],
    "drop-machine": ["define machine buffer"],
    "look-again": ["pressed job 1 25 hours ago"],
    "machine-up": ["the press is down", "sander 1 is down"],
    "reopen-day": ["closed on 2026-12-25", "closed on 2027-01-01"],
    "stop": ["started seating job 2"],
    "let-all-go": ["set aside everything for job 8"],
    "drop-receiver": ["add receiver wall at http://127.0.0.1:9000/hook"],
    "let-go": ["hold piece 1 for job 1"],
    "lost": ["fret 5 of job 1 measures 40 mm"],
    "rechecked": ["pressed job 1 25 hours ago"],
    "remade": ["fret 5 of job 1 measures 40 mm"],
    "return-person": ["retire Ines"],
    "shift": ["fret 9 of job 1 measures 52 mm"],
    "shifted": ["fret 9 of job 1 measures 52 mm"],
    "undo": ["scrap piece 1"],
    "use-several": ["add 2 pieces of medium 49.3 mm each"],
    "unmap-uid": ["uid 1001 is Ines"],
}


def done(demo, sentence):
    """The answer, with a yes where one is asked for."""
    answer = demo.say(sentence, "this")
    if [c["label"] for c in answer["choices"]] == ["yes, do it"]:
        answer = demo.say("yes", "this")
    return answer


def complaint(demo, row, example):
    """Why the example is none; None where it is. Leaves the shop as it was."""
    first = FIRST.get(row["name"], [])
    for sentence in first:
        if (answer := done(demo, sentence))["kind"] != "done":
            return f"{sentence!r} before it came to {answer['text']}"
    try:
        return of_this(demo, row, example)
    finally:
        for _ in first if row["name"] != "undo" else []:
            demo.say("undo")


# What no undo takes back.
FOR_GOOD = {"forget-not-understood"}


def unexplained(demo):
    why = demo.say("why", "this")["text"]
    if not re.search(r"[0-9]", why) or "no more to it" in why:
        return f"why says nothing: {why}"
    how = demo.say("how", "this")["text"]
    return None if re.search(r"'[^']+'", how) else f"how says nothing: {how}"


def of_this(demo, row, example):
    answer = done(demo, example)
    if answer["kind"] != (row["name"] if row["kind"] == "question" else "done"):
        return f"{answer['kind']}: {answer['text']}"
    if dull := unexplained(demo):
        if row["kind"] == "command" and row["name"] not in FOR_GOOD | {"undo"}:
            demo.say("undo")
        return dull
    if row["kind"] == "question" or row["name"] in FOR_GOOD:
        return None
    if row["name"] == "undo":
        return None if answer["text"].startswith("Taken back: ") else answer["text"]
    back = demo.say("undo")
    return None if back["kind"] == "done" else f"not taken back: {back['text']}"


def main():
    with tempfile.TemporaryDirectory() as folder:
        demo = Demo(*sys.argv[1:3], pathlib.Path(folder) / "shop")
        wrong, said = [], 0
        try:
            # That this notices an example of another row, one that is refused, and one that nobody understands.
            for row, kind, example in (("jobs", "question", "stock"), ("use", "command", "use piece 9999 in slot 1 of job 1"),
                                       ("use", "command", "frobnicate")):
                if not complaint(demo, {"name": row, "kind": kind}, example):
                    sys.exit(f"This check takes {example!r} for an example of {row!r}.")
            for row in demo.say("help")["data"]["rows"]:
                about = demo.say(f"help {row['name']}")["data"]
                for what in [row["what"], *(p["what"] for p in about["takes"])]:
                    if not what.strip():
                        wrong.append(f"{row['name']}: a description is missing")
                if not about["examples"]:
                    wrong.append(f"{row['name']}: it has no example")
                for example in about["examples"]:
                    said += 1
                    if why := complaint(demo, row, example):
                        wrong.append(f"{row['name']}: {example!r} came to {why}")
        finally:
            demo.daemon.terminate()
            demo.daemon.wait(timeout=10)
    print(*wrong, sep="\n")
    print(f"{said} examples, {len(wrong)} complaints.")
    sys.exit(1 if wrong or said < 50 else 0)


if __name__ == "__main__":
    main()
