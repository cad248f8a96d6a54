"""The two doors: what the TCP door costs who asks over the Unix socket, and what 500 slow clients of it do.

    door_bench.py NUTWARDD [full]

Times are only printed. What can fail is a promise without a time in it: under slow clients the Unix socket answers every
request, and the daemon's descriptors come back.
"""

import contextlib
import http.client
import os
import re
import shutil
import socket
import statistics
import subprocess
import sys
import tempfile
import threading
import time

QUESTION = "/v1/ask/fit?job=1&slot=3"


class Unix(http.client.HTTPConnection):
    def __init__(self, path):
        super().__init__("nutward", timeout=30)
        self.path = path

    def connect(self):
        self.sock = socket.socket(socket.AF_UNIX)
        self.sock.connect(self.path)


class Daemon:
    """One on a home of its own, ready; its log says where it listens over TCP."""

    def __init__(self, program, home, *options):
        self.home = home
        self.log = open(home + ".log", "w+", encoding="utf-8")
        self.process = subprocess.Popen([program, "--home", home, *options], stderr=self.log)
        while not os.path.exists(os.path.join(home, "nutward.sock")) or "serves" not in self.said():
            if self.process.poll() is not None:
                sys.exit("door_bench: the daemon does not come up: " + self.said())
            time.sleep(0.005)
        time.sleep(0.5)  # what it does by itself after its start

    def said(self):
        self.log.seek(0)
        return self.log.read()

    def unix(self):
        return Unix(os.path.join(self.home, "nutward.sock"))

    def address(self):
        host, port = re.search(r"http://([\d.]+):(\d+)", self.said()).groups()
        return host, int(port)

    def tcp(self):
        connection = http.client.HTTPConnection(*self.address(), timeout=30)
        connection.connect()
        connection.sock.setsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY, 1)
        return connection

    def bearer(self):
        with open(os.path.join(self.home, "http.token"), encoding="ascii") as file:
            return {"Authorization": "Bearer " + file.read().strip()}

    def descriptors(self):
        """Those of connections: the shop's files are opened once more whenever plans are worked out in the background."""
        folder = f"/proc/{self.process.pid}/fd"
        count = 0
        for name in os.listdir(folder):
            try:
                count += os.readlink(f"{folder}/{name}").startswith("socket:")
            except FileNotFoundError:
                pass  # closed meanwhile
        return count

    def stop(self):
        self.process.terminate()
        self.process.wait()
        self.log.close()


def timed(connection, count, headers=None):
    """Microseconds of each answer."""
    out = []
    for _ in range(count):
        began = time.perf_counter_ns()
        connection.request("GET", QUESTION, headers=headers or {})
        answer = connection.getresponse()
        answer.read()
        out.append((time.perf_counter_ns() - began) / 1000)
        if answer.status != 200:
            sys.exit(f"door_bench: answered with {answer.status}")
    return out


def shown(times):
    times = sorted(times)
    return f"p50 {statistics.median(times):.0f} µs, p99 {times[int(len(times) * 0.99)]:.0f} µs"


def doors(off, on, rounds, count):
    """Batches by turns, so that whatever else the machine does meets all alike."""
    ways = {"Unix socket, TCP door off": (off.unix(), None), "the same again": (off.unix(), None),
            "Unix socket, TCP door on": (on.unix(), None), "TCP": (on.tcp(), on.bearer())}
    times = {way: [] for way in ways}
    for _ in range(rounds):
        for way, (connection, headers) in ways.items():
            times[way] += timed(connection, count, headers)
    medians = {way: statistics.median(all_of) for way, all_of in times.items()}
    print(f"An answer ({QUESTION}), {rounds * count} by each way over an open connection:")
    for way, all_of in times.items():
        print(f"  {way}: {shown(all_of)}")
    base = medians["Unix socket, TCP door off"]
    print(f"  door on over off: {medians['Unix socket, TCP door on'] / base:.3f}"
          f" (noise: the same twice {medians['the same again'] / base:.3f}); TCP over Unix: "
          f"{medians['TCP'] / medians['Unix socket, TCP door on']:.3f}")


class Slow(threading.Thread):
    """Clients that connect over TCP, send half a head a byte at a time, and come again when they are hung up on."""

    def __init__(self, address, count):
        super().__init__()
        self.address, self.count = address, count
        self.ended = threading.Event()
        self.connected = threading.Event()
        self.made = 0

    def run(self):
        clients = [None] * self.count
        while not self.ended.is_set():
            for i, client in enumerate(clients):
                try:
                    if client is None:
                        clients[i] = client = socket.create_connection(self.address, timeout=5)
                        client.settimeout(5)
                        self.made += 1
                    client.send(b"G")
                except OSError:
                    with contextlib.suppress(OSError, AttributeError):
                        client.close()
                    clients[i] = None
            self.connected.set()
            self.ended.wait(0.5)
        for client in clients:
            if client is not None:
                client.close()


def slow_clients(on, count, asked):
    connection = on.unix()
    timed(connection, 100)
    before, descriptors = timed(connection, asked), on.descriptors()
    slow = Slow(on.address(), count)
    slow.start()
    slow.connected.wait()
    during, kept = [], []
    try:
        while len(during) < asked:
            during += timed(connection, 100)
            fresh = on.unix()  # who comes new gets in too
            kept += timed(fresh, 1)
            fresh.close()
            time.sleep(0.02)
        most = on.descriptors()
    finally:
        slow.ended.set()
        slow.join()
    print(f"The Unix socket beside {count} slow clients over TCP ({slow.made} connections made), target p99 100 ms:")
    print(f"  before: {shown(before)}\n  during: {shown(during)}\n  during, connecting anew: {shown(kept)}")
    for _ in range(200):
        after = on.descriptors()
        if after <= descriptors:
            break
        time.sleep(0.1)
    print(f"  the daemon's descriptors: {descriptors} before, {most} during, {after} after")
    if after > descriptors:
        sys.exit("door_bench: descriptors did not come back")


def main(program, full):
    with tempfile.TemporaryDirectory(prefix="nutward-bench-") as folder:
        homes = [os.path.join(folder, name) for name in ("off", "on")]
        Daemon(program, homes[0], "--demo").stop()
        shutil.copytree(homes[0], homes[1], ignore=shutil.ignore_patterns("*.sock", "*.lock"))
        off, on = Daemon(program, homes[0]), Daemon(program, homes[1], "--http", "127.0.0.1:0")
        try:
            doors(off, on, 100 if full else 5, 100 if full else 20)
            slow_clients(on, 500, 20000 if full else 500)
        finally:
            off.stop()
            on.stop()


main(sys.argv[1], sys.argv[-1] == "full")
