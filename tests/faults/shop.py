"""The real programs for fault tests: a daemon on a home of its own, and HTTP over its Unix socket by hand.

Each script is called as SCRIPT NUTWARDD NUTWARD [what unittest takes]. Exit 77: nothing of it could be tried here.
"""
import contextlib
import http.client
import json
import os
import pathlib
import shutil
import signal
import socket
import sqlite3
import subprocess
import sys
import tempfile
import time
import unittest

NUTWARDD = NUTWARD = None
# What a sanitizer or the runtime prints when a program is broken rather than refusing.
ALARMS = ("Sanitizer", "runtime error:", "terminate called", "Assertion", "std::bad_", "core dumped")


def main(module="__main__"):
    global NUTWARDD, NUTWARD
    if len(sys.argv) < 3:
        raise SystemExit("usage: SCRIPT NUTWARDD NUTWARD [TEST ...]")
    # The scripts import this file under its own name: both names must mean one module.
    NUTWARDD, NUTWARD = (os.path.abspath(path) for path in sys.argv[1:3])
    program = unittest.main(module=module, argv=[sys.argv[0], *sys.argv[3:]], verbosity=2, exit=False)
    result = program.result
    if not result.wasSuccessful():
        sys.exit(1)
    sys.exit(77 if result.testsRun == len(result.skipped) else 0)


class Gone(Exception):
    """The connection broke before the answer was there."""


class Reply:
    def __init__(self, status, headers, body):
        self.status, self.headers, self.body = status, headers, body

    @property
    def json(self):
        return json.loads(self.body)

    def __repr__(self):
        return f"{self.status} {self.body[:600]!r}"


class Connection(http.client.HTTPConnection):
    """http.client, connected to a Unix socket."""

    def __init__(self, path, timeout=20):
        super().__init__("nutward", timeout=timeout)
        self.path = path

    def connect(self):
        self.sock = socket.socket(socket.AF_UNIX, socket.SOCK_STREAM)
        self.sock.settimeout(self.timeout)
        try:
            self.sock.connect(str(self.path))
        except OSError:
            self.close()
            raise


class Client:
    """One connection that stays open. Everything that breaks is Gone: nothing is sent again behind one's back."""

    def __init__(self, path, timeout=20):
        self.connection = Connection(path, timeout)

    def close(self):
        self.connection.close()

    def send(self, method, target, body=None, headers=None):
        try:
            self.connection.request(method, target, body, headers or {})
            answer = self.connection.getresponse()
            return Reply(answer.status, answer.headers, answer.read())
        except (OSError, http.client.HTTPException) as broken:
            self.close()
            raise Gone(repr(broken)) from broken

    def post(self, target, body, key=None):
        headers = {"Content-Type": "application/json"}
        if key:
            headers["Idempotency-Key"] = f'"{key}"'
        data = body if isinstance(body, bytes) else json.dumps(body).encode()
        return self.send("POST", target, data, headers)

    def do(self, command, body, key=None):
        return self.post(f"/v1/do/{command}", body, key)

    def done(self, command, **body):
        """A command that must succeed; its data."""
        reply = self.do(command, body)
        if reply.status != 200 or reply.json["kind"] != "done":
            raise AssertionError(f"{command} {body} was not done: {reply}")
        return reply.json["data"]

    def say(self, text, conversation="", key=None):
        reply = self.post("/v1/say", {"text": text, "conversation": conversation}, key)
        if reply.status != 200:
            raise AssertionError(f"\"{text}\": {reply}")
        return reply.json

    def ask(self, question):
        reply = self.send("GET", f"/v1/ask/{question}")
        if reply.status != 200:
            raise AssertionError(f"{question}: {reply}")
        return reply.json

    def settled(self):
        """Waits until what the daemon does by itself after its start (telling what is due already) is done."""
        before = None
        while before != (before := self.revision()):
            time.sleep(0.3)

    def revision(self):
        return self.send("GET", "/v1/health").json["revision"]


class Daemon:
    """One nutwardd; what it wrote to stderr is looked through whenever it has ended."""

    def __init__(self, home, *options, **popen):
        self.home = pathlib.Path(home)
        self.socket = self.home / "nutward.sock"
        self.log = tempfile.TemporaryFile()
        self.began = time.monotonic()
        self.process = subprocess.Popen([NUTWARDD, "--home", str(home), *options], stdin=subprocess.DEVNULL,
                                        stdout=self.log, stderr=self.log, **popen)

    def ready(self, within=60):
        """Waits for the first answer; returns the seconds from the start to it."""
        while True:
            client = Client(self.socket)
            with contextlib.suppress(Gone), contextlib.closing(client):
                if client.send("GET", "/v1/health").status == 200:
                    return time.monotonic() - self.began
            if self.process.poll() is not None:
                raise AssertionError(f"The daemon ended with {self.process.returncode}: {self.said()}")
            if time.monotonic() - self.began > within:
                self.kill()
                raise AssertionError(f"The daemon was not ready within {within} s: {self.said()}")
            time.sleep(0.002)

    def client(self):
        return Client(self.socket)

    def said(self):
        self.log.seek(0)
        return self.log.read().decode("utf-8", "replace")

    def ended(self, within=60):
        """Waits for it to end by itself; returns its exit code."""
        code = self.process.wait(within)
        text = self.said()
        for alarm in ALARMS:
            if alarm in text:
                raise AssertionError(f"The daemon broke:\n{text}")
        return code

    def kill(self):
        if self.process.poll() is not None:
            raise AssertionError(f"The daemon had ended by itself, with {self.process.returncode}:\n{self.said()}")
        self.process.kill()
        self.ended()

    def stop(self, within=60):
        """SIGTERM; returns the seconds that it took."""
        began = time.monotonic()
        if self.process.poll() is None:
            self.process.send_signal(signal.SIGTERM)
        code = self.ended(within)
        if code != 0:
            raise AssertionError(f"The daemon ended with {code} after SIGTERM:\n{self.said()}")
        return time.monotonic() - began

    def gone(self):
        """For clean-up: ends it if it still runs, and closes the log."""
        if self.process.poll() is None:
            self.process.kill()
            self.process.wait()
        self.log.close()


def refused_start(home, *options, within=60, **popen):
    """Starts a daemon that must not come up: (exit code, what it said)."""
    daemon = Daemon(home, *options, **popen)
    try:
        return daemon.ended(within), daemon.said()
    finally:
        daemon.gone()


def verified(home):
    """Runs nutwardd --verify: (exit code, what it said)."""
    return refused_start(home, "--verify")


class ShopCase(unittest.TestCase):
    """Every test has a home of its own: a copy of one demo shop, loaded once for each script, or none yet."""

    _demo = None

    @classmethod
    def demo_home(cls):
        if ShopCase._demo is None:
            folder = tempfile.mkdtemp(prefix="nw-")
            unittest.addModuleCleanup(cls._forget_demo)
            ShopCase._demo = pathlib.Path(folder) / "demo"
            daemon = Daemon(ShopCase._demo, "--demo")
            try:
                daemon.ready(120)
                client = daemon.client()
                client.settled()
                client.close()
                daemon.stop()
            finally:
                daemon.gone()
        return ShopCase._demo

    @classmethod
    def _forget_demo(cls):
        shutil.rmtree(ShopCase._demo.parent, ignore_errors=True)
        ShopCase._demo = None

    def setUp(self):
        # Short: a socket's path may have 107 bytes.
        self.folder = pathlib.Path(tempfile.mkdtemp(prefix="nw-"))
        self.addCleanup(shutil.rmtree, self.folder, ignore_errors=True)
        self.home = self.folder / "h"

    def with_demo(self):
        shutil.copytree(self.demo_home(), self.home, ignore=shutil.ignore_patterns("*.sock", "*.lock"))
        return self.home

    def started(self, *options, home=None, **popen):
        daemon = Daemon(home or self.home, *options, **popen)
        self.addCleanup(daemon.gone)
        daemon.ready(120)
        return daemon

    def client_of(self, daemon):
        client = daemon.client()
        self.addCleanup(client.close)
        return client

    def assert_all_well(self, home=None):
        code, said = verified(home or self.home)
        self.assertEqual((code, said), (0, "All is well.\n"))

    def assert_refusal(self, reply, *words, status=422):
        """A problem by RFC 9457 that holds these words and says what would do."""
        self.assertEqual(reply.status, status, reply)
        self.assertEqual(reply.headers["Content-Type"], "application/problem+json", reply)
        problem = reply.json
        self.assertEqual(problem["status"], status, reply)
        self.assertTrue(problem["detail"].endswith((".", "?")), reply)
        for word in words:
            self.assertIn(word, problem["text"] if "text" in problem else problem["detail"], reply)
        return problem


@contextlib.contextmanager
def database(home):
    """The file itself, read beside a daemon or when none has it: the view of somebody outside."""
    connection = sqlite3.connect(pathlib.Path(home) / "shop.db")
    try:
        yield connection
    finally:
        connection.close()
