"""A person at a terminal, for the tests: the real nutward on a pseudo-terminal, and what its screen got."""

import fcntl
import os
import pty
import re
import select
import signal
import struct
import termios
import time
import unittest

# One step of what a terminal is sent: a sequence with its number, or a character.
STEP = re.compile(r"\x1b\[\??(?P<n>[0-9]*)[0-9;]*(?P<do>[A-Za-z@])|\x1b[()].|\x1b[=>]|(?P<char>.)", re.S)
CTRL_C, CTRL_D, TAB, ENTER, UP = b"\x03", b"\x04", b"\t", b"\r", b"\x1b[A"


def shown(written):
    """What stands on a terminal without a lower edge: the sequences that xterm's description lists for one line."""
    rows, row, column = [[]], 0, 0
    for step in STEP.finditer(written):
        n, do, char = int(step["n"] or 1), step["do"], step["char"]
        line = rows[row]
        if char == "\n":
            row += 1
            if row == len(rows):
                rows.append([])
        elif char == "\r":
            column = 0
        elif char == "\b":
            column = max(0, column - 1)
        elif char and char >= " ":
            line.extend(" " * (column - len(line)))
            line[column:column + 1] = [char]
            column += 1
        elif do == "A":
            row = max(0, row - n)
        elif do == "C":
            column += n
        elif do == "D":
            column = max(0, column - n)
        elif do == "G":
            column = n - 1
        elif do == "K":
            del line[column:]
        elif do == "J":
            del line[column:], rows[row + 1:]
        elif do == "P":
            del line[column:column + n]
        elif do == "@":
            line[column:column] = " " * n
    return "\n".join("".join(line) for line in rows)


class Terminal:
    """One nutward at work. `screen` is all that it wrote so far, `text` what of it stands on the screen."""

    def __init__(self, program, *arguments, term="xterm", environment=None):
        self.screen = ""
        self.seen = 0
        whole = {"TERM": term, "LC_ALL": "C.UTF-8", "PATH": os.environ["PATH"], **(environment or {})}
        try:
            self.process, self.line = pty.fork()
        except OSError as error:  # a container or chroot without /dev/pts
            raise unittest.SkipTest(f"no pseudo-terminal to be had here: {error}") from error
        if self.process == 0:
            try:
                os.execve(program, [program, *arguments], whole)
            finally:
                os._exit(127)
        fcntl.ioctl(self.line, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 100, 0, 0))
        self.code = None

    @property
    def text(self):
        return shown(self.screen)

    def type(self, what):
        os.write(self.line, what if isinstance(what, bytes) else what.encode())

    def say(self, sentence):
        """Types a sentence and waits for the prompt after what came of it; returns what was written meanwhile."""
        self.type(sentence.encode() + ENTER)
        self.wait_for(sentence)
        return self.prompted()

    def _take(self, seconds):
        if not select.select([self.line], [], [], seconds)[0]:
            return False
        try:
            got = os.read(self.line, 65536)
        except OSError:  # the other end is closed
            got = b""
        self.screen += got.decode("utf-8", "replace")
        return bool(got)

    def wait_for(self, words, within=20):
        """Waits until the words stand in the text after what was waited for before; returns the text up to them."""
        deadline = time.monotonic() + within
        while True:
            found = self.text.find(words, self.seen)
            if found >= 0:
                passed = self.text[self.seen:found]
                self.seen = found + len(words)
                return passed
            if time.monotonic() > deadline or not self._alive_take():
                raise AssertionError(f"{words!r} did not come; there was {self.text[self.seen:]!r} after {self.text[:self.seen]!r}")

    def _alive_take(self):
        if self._take(0.2):
            return True
        return self.code is None and not self._ended()

    def _ended(self):
        done, status = os.waitpid(self.process, os.WNOHANG)
        if done:
            self.code = os.waitstatus_to_exitcode(status)
        return bool(done)

    def prompted(self, within=20):
        return self.wait_for("\n> ", within)

    def ended(self, within=20):
        """Waits for nutward to end by itself; returns its exit code."""
        deadline = time.monotonic() + within
        while self.code is None and not self._ended():
            self._take(0.05)
            if time.monotonic() > deadline:
                raise AssertionError(f"nutward did not end; it wrote {self.text!r}")
        while self._take(0):
            pass
        return self.code

    def gone(self):
        """For clean-up."""
        if self.code is None and not self._ended():
            os.kill(self.process, signal.SIGKILL)
            os.waitpid(self.process, 0)
        os.close(self.line)
