"""The daemon by itself: from start to ready, resident memory of the demo, and wake-ups while nothing is due.

    daemon_bench.py NUTWARDD [full]      full: idle for 60 s and 20 starts; otherwise 5 s and 1

Times and memory are only printed. What can fail is a promise without a time in it: an idle daemon sleeps. A deadline of
the demo may fall into a window, so one undisturbed window out of three will do.
"""

import contextlib
import os
import re
import shutil
import signal
import socket
import statistics
import subprocess
import sys
import tempfile
import time


@contextlib.contextmanager
def daemon(program, home, *options):
    """The daemon, ready, and the seconds it took."""
    began = time.perf_counter()
    process = subprocess.Popen([program, "--home", home, *options], stderr=subprocess.DEVNULL)
    try:
        while not answers(home):
            if process.poll() is not None or time.perf_counter() - began > 60:
                sys.exit("daemon_bench: the daemon does not come up")
            time.sleep(0.0005)
        yield process.pid, time.perf_counter() - began
    finally:
        process.terminate()
        process.wait()


def answers(home):
    try:
        return b"200" in ask(home, "GET /v1/health HTTP/1.1\r\nHost: nutward\r\nConnection: close\r\n\r\n")[:12]
    except OSError:
        return False


def ask(home, request):
    with socket.socket(socket.AF_UNIX) as s:
        s.connect(os.path.join(home, "nutward.sock"))
        s.sendall(request.encode())
        return b"".join(iter(lambda: s.recv(65536), b""))


def say(home, sentence):
    body = f'{{"text": "{sentence}"}}'
    ask(home, "POST /v1/say HTTP/1.1\r\nHost: nutward\r\nConnection: close\r\nContent-Type: application/json\r\n"
        f"Content-Length: {len(body)}\r\n\r\n{body}")


def memory_mb(pid):
    with open(f"/proc/{pid}/status", encoding="ascii") as status:
        kb = dict(re.findall(r"^(VmRSS|RssAnon|RssFile|VmHWM):\s+(\d+) kB", status.read(), re.M))
    return {name: int(value) / 1024 for name, value in kb.items()}


def wakings(pid):
    """How often its threads have been given a processor so far, whatever for."""
    total = 0
    for thread in os.listdir(f"/proc/{pid}/task"):
        with open(f"/proc/{pid}/task/{thread}/status", encoding="ascii") as status:
            total += sum(map(int, re.findall(r"voluntary_ctxt_switches:\s+(\d+)", status.read())))
    return total


def system_calls(pid, seconds):
    """Counted by strace; None where it is missing or not allowed to look."""
    if shutil.which("strace") is None:
        return None
    with tempfile.NamedTemporaryFile("r") as out:
        strace = subprocess.Popen(["strace", "-f", "-q", "-o", out.name, "-p", str(pid)], stderr=subprocess.DEVNULL)
        time.sleep(1)  # to attach: each thread's interrupted wait is shown, and taken up again
        if strace.poll() is not None:
            return None
        before = len(out.read().splitlines())
        time.sleep(seconds)
        found = out.read().splitlines()
        strace.send_signal(signal.SIGINT)
        strace.wait()
    return None if before == 0 else found


def idle(pid, seconds):
    before = wakings(pid)
    time.sleep(seconds)
    woken = wakings(pid) - before
    print(f"Idle for {seconds} s: its threads woke {woken} times, target 0", flush=True)
    calls = system_calls(pid, seconds)
    if calls is None:
        print("  not measured with strace, which is missing or may not look")
    else:
        print(f"  and by strace, {seconds} s more: {len(calls)} system calls, target 0", *calls[:10], sep="\n    ")
    return woken == 0 and not calls


def starts(program, folder, count):
    """Starts on a home that is there; the milliseconds."""
    for n in range(count):
        with daemon(program, os.path.join(folder, "home")) as (_, took):
            yield took * 1000


def main(program, full):
    with tempfile.TemporaryDirectory(prefix="nutward-bench-") as folder:
        home = os.path.join(folder, "home")
        with daemon(program, home, "--demo") as (pid, took):
            print(f"From start to ready, the demo into an empty home: {took * 1000:.0f} ms")
            fresh = memory_mb(pid)
            for _ in range(200 if full else 20):
                for sentence in ("what fits slot 3 of job 1", "what is due", "stock", "jobs", "help"):
                    say(home, sentence)
            print("Resident memory of the demo, target 25 MB:")
            for when, mb in (("when ready", fresh), ("after being asked a while", memory_mb(pid))):
                print(f"  {when}: " + ", ".join(f"{name} {value:.1f} MB" for name, value in mb.items()))
            time.sleep(1)
            still = any(idle(pid, 60 if full else 5) for _ in range(3))
        took = list(starts(program, folder, 20 if full else 1))
        print(f"From start to ready, the demo's home as it is: median {statistics.median(took):.1f} ms ({len(took)} starts)")
    if not still:
        sys.exit("daemon_bench: the daemon does not sleep while nothing is due")


main(sys.argv[1], sys.argv[-1] == "full")
