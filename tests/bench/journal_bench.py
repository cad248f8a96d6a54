"""A shop with a long journal: its histories (bench_journal), from start to ready, and what it takes to verify it.

    journal_bench.py NUTWARDD BENCH_JOURNAL [full]      full: 1,000,000 lines; otherwise 2,000

The baselines are of the same run: the start of an empty shop, and sha256sum over the same file. Times are only printed;
what fails is a verify that finds something, or a daemon that does not come up.
"""

import os
import shutil
import socket
import statistics
import subprocess
import sys
import tempfile
import time

HEALTH = b"GET /v1/health HTTP/1.1\r\nHost: nutward\r\nConnection: close\r\n\r\n"


def answers(home):
    try:
        with socket.socket(socket.AF_UNIX) as s:
            s.connect(os.path.join(home, "nutward.sock"))
            s.sendall(HEALTH)
            return b"200" in s.recv(65536)[:12]
    except OSError:
        return False


def start_ms(program, home):
    began = time.perf_counter()
    process = subprocess.Popen([program, "--home", home], stderr=subprocess.DEVNULL)
    try:
        while not answers(home):
            if process.poll() is not None or time.perf_counter() - began > 60:
                sys.exit("journal_bench: the daemon does not come up")
            time.sleep(0.0005)
        return (time.perf_counter() - began) * 1000
    finally:
        process.terminate()
        process.wait()


def seconds(command):
    began = time.perf_counter()
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    if done.returncode != 0:
        sys.exit(f"journal_bench: {command[0]} says {done.stdout}{done.stderr}")
    return time.perf_counter() - began


def met(value, target):
    return "met" if value <= target else "MISSED"


def main(program, bench, full):
    with tempfile.TemporaryDirectory(prefix="nutward-bench-") as folder:
        home, empty = os.path.join(folder, "home"), os.path.join(folder, "empty")
        subprocess.run([bench, home] + (["full"] if full else []), check=True)
        times = 10 if full else 1
        start_ms(program, empty)
        small, large = [], []
        for _ in range(times):
            small.append(start_ms(program, empty))
            large.append(start_ms(program, home))
        small, large = statistics.median(small), statistics.median(large)
        print(f"From start to ready: {large:.0f} ms, target 1000 ms: {met(large, 1000)}; "
              f"an empty shop {small:.0f} ms, ratio {large / small:.2f}")
        summer = shutil.which("sha256sum")
        sums, verifies = [], []
        for _ in range(3 if full else 1):
            sums.append(seconds([summer, os.path.join(home, "shop.db")]))
            verifies.append(seconds([program, "--home", home, "--verify"]))
        one, other = statistics.median(verifies), statistics.median(sums)
        print(f"nutwardd --verify: {one:.2f} s, target 10 s: {met(one, 10)}; sha256sum of the same file {other:.2f} s, "
              f"ratio {one / other:.2f}")


main(sys.argv[1], sys.argv[2], sys.argv[-1] == "full")
