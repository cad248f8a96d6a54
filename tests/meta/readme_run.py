"""What README.md's "Run a shop" says to type is typed: its sentences one after the other to a new shop, its curl lines to the
demo shop. Each must be answered or done, by the real programs, through a shell.

    readme_run.py README NUTWARDD NUTWARD
"""
import json
import os
import pathlib
import re
import socket
import subprocess
import sys
import tempfile
import time


def commands(readme):
    """What is to be typed, in the order of the text: (sentences, curl lines, lines of the daemon)."""
    section = re.search(r"^## Run a shop\n(.*?)^## ", readme, re.S | re.M).group(1)
    typed = re.findall(r"^    (.+)$|`((?:nutward|nutwardd) [^`]+)`", section, re.M)
    lines = [indented or inline for indented, inline in typed]
    return ([line for line in lines if line.startswith("nutward ")],
            [line for line in lines if "curl " in line],
            [line for line in lines if line.startswith("nutwardd ")])


class Shop:
    def __init__(self, folder, name, nutwardd, *options):
        self.home = folder / name
        self.process = subprocess.Popen([nutwardd, "--home", str(self.home), *options], stderr=subprocess.DEVNULL)
        for _ in range(300):
            if (self.home / "nutward.sock").exists():
                return
            time.sleep(0.1)
        sys.exit("The daemon did not begin to listen.")

    def stop(self):
        self.process.terminate()
        self.process.wait(timeout=10)


def free_port():
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return s.getsockname()[1]


def run(line, path):
    return subprocess.run(["sh", "-c", line], capture_output=True, text=True, timeout=60, check=False,
                          env={**os.environ, "PATH": f"{path}:{os.environ['PATH']}"})


def kind_of(text):
    try:
        return json.loads(text).get("kind")
    except ValueError:
        return None


def wrong_sentence(line, path):
    got = run(line, path)
    if got.returncode == 0 and kind_of(got.stdout) not in (None, "unclear", "refused"):
        return None
    return f"$ {line}\n{got.stdout}{got.stderr}"


def wrong_curl(line, home, port):
    line = line.replace("DIR", str(home)).replace("127.0.0.1:8765", f"127.0.0.1:{port}")
    got = run(re.sub(r"\bcurl ", "curl -sS -w '\\n%{http_code}' ", line, count=1), "/nonexistent")
    body, _, status = got.stdout.rpartition("\n")
    if got.returncode == 0 and status.startswith("2") and kind_of(body) not in (None, "unclear", "refused"):
        return None
    return f"$ {line}\n{got.stdout}{got.stderr}"


def main():
    readme, nutwardd, nutward = sys.argv[1:4]
    sentences, curls, daemons = commands(pathlib.Path(readme).read_text(encoding="utf-8"))
    if len(sentences) < 12 or len(curls) < 3 or not any("--verify" in line for line in daemons):
        sys.exit(f"README.md has {len(sentences)} sentences, {len(curls)} curl lines and {daemons}: too few.")
    wrong = []
    with tempfile.TemporaryDirectory() as name:
        folder, port = pathlib.Path(name), free_port()
        new, demo = Shop(folder, "new", nutwardd), Shop(folder, "demo", nutwardd, "--demo", "--http", f"127.0.0.1:{port}")
        (folder / "bin").mkdir()
        typed = folder / "bin" / "nutward"
        typed.write_text(f'#!/bin/sh\nexec "{nutward}" --home "{new.home}" --conversation readme --json "$@"\n')
        typed.chmod(0o755)
        try:
            # That this notices a sentence and an address that nobody understands.
            if not wrong_sentence("nutward frobnicate the third wire", folder / "bin"):
                sys.exit("This check takes anything for an answer.")
            if not wrong_curl("curl --unix-socket DIR/nutward.sock http://shop/v1/ask/nothing", demo.home, port):
                sys.exit("This check takes any response for a good one.")
            # Over TCP it is the demo shop that listens.
            over_tcp = (f'"{nutward}" --json', str(demo.home), f"127.0.0.1:{port}")
            sentences = [line.replace("nutward", over_tcp[0], 1).replace("DIR", over_tcp[1]).replace("127.0.0.1:8765", over_tcp[2])
                         if "--http" in line else line for line in sentences]
            wrong += [w for line in sentences if (w := wrong_sentence(line, folder / "bin"))]
            wrong += [w for line in curls if (w := wrong_curl(line, demo.home, port))]
        finally:
            new.stop()
            demo.stop()
        for line in daemons:
            if "--verify" not in line:
                continue
            got = run(line.replace("nutwardd", nutwardd, 1).replace("DIR", str(new.home)), "/nonexistent")
            if got.returncode != 0:
                wrong.append(f"$ {line}\n{got.stdout}{got.stderr}")
    print(*wrong, sep="\n")
    print(f"{len(sentences)} sentences and {len(curls)} curl lines, {len(wrong)} not taken.")
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
