"""`nutward` alone on a terminal: typed at as a person would, against the real daemon on a demo shop.

Called as conversation.py NUTWARDD NUTWARD [what unittest takes].
"""

import os
import pathlib
import signal
import socket
import stat
import subprocess
import sys
import threading
import time

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "faults"))
import shop
from terminal import CTRL_C, CTRL_D, ENTER, TAB, UP, Terminal

SENTENCE = "use piece 4 in slot 3 of job 1"


class LosesFirstAnswer(threading.Thread):
    """Between nutward and the daemon: passes every request on, and loses the first answer: hangs up instead, or, if
    told to, keeps silent until nutward hangs up."""

    def __init__(self, own, daemon, silent=False):
        super().__init__(daemon=True)
        self.silent, self.has_answer = silent, threading.Event()
        self.listener = socket.socket(socket.AF_UNIX)
        self.listener.bind(str(own))
        self.listener.listen()
        self.there, self.dropped, self.keys = str(daemon), 0, []

    def run(self):
        while True:
            try:
                here = self.listener.accept()[0]
            except OSError:
                return
            with here, socket.socket(socket.AF_UNIX) as there:
                request = here.recv(65536)
                if not request:
                    continue  # only looked whether somebody listens
                there.connect(self.there)
                there.sendall(request)
                answer = b""
                while more := there.recv(65536):
                    answer += more
                self.keys += [line for line in request.split(b"\r\n") if line.lower().startswith(b"idempotency-key")]
                if self.dropped == 0:
                    self.dropped = 1
                    self.has_answer.set()
                    if self.silent:
                        here.recv(1)
                else:
                    here.sendall(answer)


class Conversation(shop.ShopCase):
    def setUp(self):
        super().setUp()
        self.with_demo()
        self.state = self.folder / "s"
        self.history = self.state / "nutward" / "history"

    def terminal(self, *arguments, term="xterm", home=None, program=None, **environment):
        terminal = Terminal(program or shop.NUTWARD, "--home", str(home or self.home), *arguments, term=term,
                            environment={"XDG_STATE_HOME": str(self.state), "HOME": str(self.folder), **environment})
        self.addCleanup(terminal.gone)
        return terminal

    def talking(self, *arguments, **how):
        daemon = self.started()
        terminal = self.terminal(*arguments, **how)
        terminal.prompted()
        return daemon, terminal

    def talking_through(self, **how):
        daemon = self.started()
        front = self.folder / "f"
        front.mkdir()
        between = LosesFirstAnswer(front / "nutward.sock", self.home / "nutward.sock", **how)
        self.addCleanup(between.listener.close)
        between.start()
        terminal = self.terminal(home=front)
        terminal.prompted()
        return daemon, between, terminal

    def leave(self, terminal):
        terminal.type(CTRL_D)
        self.assertEqual(terminal.ended(), 0, terminal.text)

    def uses_of_piece_4(self):
        """Read from outside, when no daemon has the shop."""
        with shop.database(self.home) as db:
            return db.execute("SELECT count(*) FROM journal WHERE json_extract(call, '$[0].do') = 'use'").fetchone()[0]

    def test_a_conversation_greets_prompts_answers_and_ends_with_ctrl_d(self):
        _, terminal = self.talking()
        self.assertIn("Ctrl-D ends.", terminal.text)
        self.assertIn("11 jobs are open.", terminal.say("jobs"))
        self.leave(terminal)
        self.assertTrue(terminal.text.endswith("\n> ^D\n"), terminal.text)

    def test_a_number_picks_a_choice_and_why_tells_the_reason(self):
        _, terminal = self.talking()
        answer = terminal.say("what fits slot 3 of job 1")
        self.assertIn("\n1. use it in slot 3 of job 1\n2. ", answer)
        self.assertIn("\nAnswer with its number.", answer)
        self.assertIn("It takes 46.59 mm to 47.69 mm", terminal.say("why"))
        self.assertIn("\nUsed the 47.50 mm short fret of medium (piece 4", terminal.say("1"))
        self.leave(terminal)

    def test_what_was_said_is_kept_for_its_owner_alone_and_found_again(self):
        _, terminal = self.talking()
        for sentence in ("jobs", "jobs", " stock of narrow", "stock of medium"):
            terminal.say(sentence)
        self.leave(terminal)
        self.assertEqual(self.history.read_text(), "jobs\nstock of medium\n")
        self.assertEqual(stat.S_IMODE(self.history.stat().st_mode), 0o600)
        self.assertEqual(stat.S_IMODE(self.history.parent.stat().st_mode), 0o700)
        self.history.chmod(0o644)
        again = self.terminal()
        again.prompted()
        again.type(UP + UP + ENTER)
        again.wait_for("11 jobs are open.")
        again.prompted()
        self.leave(again)
        self.assertEqual(stat.S_IMODE(self.history.stat().st_mode), 0o600)
        self.assertEqual(self.history.read_text(), "jobs\nstock of medium\njobs\n")

    def test_a_history_that_is_no_plain_file_is_left_alone_and_said(self):
        self.history.parent.mkdir(parents=True)
        target = self.folder / "other"
        target.write_text("not ours\n")
        self.history.symlink_to(target)
        _, terminal = self.talking()
        self.assertIn("is not kept for the next time", terminal.text)
        terminal.say("jobs")
        self.leave(terminal)
        self.assertEqual(target.read_text(), "not ours\n")

    def test_tab_finishes_a_command_and_the_name_of_a_wire(self):
        _, terminal = self.talking()
        terminal.type(b"stoc" + TAB)
        terminal.wait_for("stock ")
        terminal.type(b"of nar" + TAB)
        terminal.wait_for("narrow ")
        terminal.type(ENTER)
        self.assertIn("narrow", terminal.prompted())
        self.leave(terminal)
        self.assertEqual(self.history.read_text().rstrip(), "stock of narrow")

    def test_tab_finishes_a_person_a_bench_and_a_later_word_of_a_name(self):
        _, terminal = self.talking()
        terminal.type(b"jobs of Odi" + TAB)
        terminal.wait_for("Odile ")
        terminal.type(CTRL_C)
        terminal.prompted()
        terminal.type(b"jobs at the win" + TAB)
        terminal.wait_for("window ")
        terminal.type(CTRL_C)
        terminal.prompted()
        terminal.type(b"whose job is the mandoli" + TAB)
        terminal.wait_for("mandolin ")
        terminal.type(ENTER)
        self.assertIn("Ines does it", terminal.prompted())
        terminal.type(b"Tom" + TAB)
        terminal.wait_for("Tomo ")
        terminal.type(CTRL_C)
        terminal.prompted()
        self.leave(terminal)

    def test_tab_shows_what_could_be_meant_and_leaves_the_line(self):
        _, terminal = self.talking()
        terminal.type(b"job " + TAB)
        shown = terminal.wait_for("> job ")
        self.assertEqual(shown.split("\n")[-2].split(), sorted(str(n) for n in range(1, 12)), shown)
        terminal.type(b"5" + ENTER)
        self.assertIn("octave mandolin", terminal.prompted())
        terminal.type(b"rec" + TAB)
        self.assertEqual(terminal.wait_for("> rec").split("\n")[-2].split(),
                         ["receive", "received", "rechecked"])
        terminal.type(CTRL_C)
        terminal.prompted()
        self.leave(terminal)

    def test_tab_without_a_daemon_changes_nothing(self):
        daemon, terminal = self.talking()
        daemon.kill()
        terminal.type(b"sto" + TAB + b"ck" + CTRL_C)
        terminal.wait_for("stock")
        terminal.prompted()
        self.leave(terminal)

    def test_a_wire_named_in_this_conversation_is_finished_at_once(self):
        _, terminal = self.talking()
        terminal.type(b"stock of zo" + TAB + CTRL_C)
        terminal.prompted()
        terminal.say("define wire zope")
        terminal.type(b"stock of zo" + TAB)
        terminal.wait_for("zope ")
        terminal.type(CTRL_C)
        terminal.prompted()
        self.leave(terminal)

    def test_ctrl_c_clears_the_line(self):
        _, terminal = self.talking()
        terminal.type(b"scrap piece 4")
        terminal.wait_for("scrap piece 4")
        terminal.type(CTRL_C)
        self.assertIn("^C", terminal.prompted())
        self.assertIn("11 jobs are open.", terminal.say("jobs"))
        self.leave(terminal)
        self.assertEqual(self.history.read_text(), "jobs\n")

    def test_letters_beyond_ascii_are_typed_deleted_and_sent_in_any_locale(self):
        _, terminal = self.talking(LC_ALL="C")
        terminal.type("jobš\x7fs\r".encode())
        terminal.wait_for("11 jobs are open.")
        terminal.prompted()
        self.leave(terminal)
        self.assertEqual(self.history.read_text(), "jobs\n")

    def test_a_daemon_killed_midway_is_waited_for_and_the_sentence_done_once(self):
        daemon, terminal = self.talking()
        self.assertIn("11 jobs are open.", terminal.say("jobs"))
        daemon.kill()
        before = self.uses_of_piece_4()
        terminal.type(SENTENCE.encode() + ENTER)
        terminal.wait_for("What you said is kept, and asked once it is back; Ctrl-C gives that up.")
        terminal.wait_for(f"This starts it: nutwardd --home {self.home}")
        again = self.started()
        terminal.wait_for("The daemon is back.")
        self.assertIn("\nUsed the 47.50 mm short fret of medium (piece 4", terminal.prompted())
        self.leave(terminal)
        again.stop()
        self.assertEqual(self.uses_of_piece_4(), before + 1)
        self.assert_all_well()

    def test_a_daemon_killed_before_it_answers_has_done_the_sentence_once_in_the_end(self):
        daemon, terminal = self.talking()
        before_kill = daemon.process
        before_kill.send_signal(signal.SIGSTOP)
        terminal.type(SENTENCE.encode() + ENTER)
        terminal.wait_for(SENTENCE)
        time.sleep(0.3)  # the sentence is in the socket of a daemon that does not move
        daemon.kill()
        terminal.wait_for("went away before it answered")
        again = self.started()
        self.assertIn("\nUsed the 47.50 mm", terminal.prompted())
        self.leave(terminal)
        again.stop()
        self.assertEqual(self.uses_of_piece_4(), 1)

    def test_an_answer_that_got_lost_is_asked_for_again_with_the_same_key(self):
        daemon, between, terminal = self.talking_through()
        self.assertIn("\nUsed the 47.50 mm", terminal.say(SENTENCE))
        terminal.say("jobs")
        self.leave(terminal)
        daemon.stop()
        self.assertEqual(self.uses_of_piece_4(), 1)
        self.assertEqual(len(between.keys), 3)
        self.assertEqual(between.keys[0], between.keys[1])
        self.assertNotEqual(between.keys[1], between.keys[2])

    def test_ctrl_c_gives_up_waiting_and_nothing_is_sent_later(self):
        terminal = self.terminal()
        terminal.prompted()
        terminal.type(SENTENCE.encode() + ENTER)
        terminal.wait_for("is not there")
        terminal.type(CTRL_C)
        terminal.wait_for("Given up; it was not sent.")
        terminal.prompted()
        daemon = self.started()
        self.assertIn("11 jobs are open.", terminal.say("jobs"))
        self.leave(terminal)
        daemon.stop()
        self.assertEqual(self.uses_of_piece_4(), 0)

    def test_ctrl_c_gives_up_an_answer_that_does_not_come_and_saying_it_again_keeps_the_key(self):
        daemon, between, terminal = self.talking_through(silent=True)
        terminal.type(SENTENCE.encode() + ENTER)
        self.assertTrue(between.has_answer.wait(20))
        terminal.type(CTRL_C)
        terminal.wait_for("It may have been done.")
        terminal.prompted()
        self.assertIn("\nUsed the 47.50 mm", terminal.say(SENTENCE))
        terminal.say("jobs")
        self.leave(terminal)
        daemon.stop()
        self.assertEqual(self.uses_of_piece_4(), 1)
        self.assertEqual(between.keys[0], between.keys[1])
        self.assertNotEqual(between.keys[1], between.keys[2])

    def test_a_dumb_terminal_gets_no_control_sequences(self):
        _, terminal = self.talking(term="dumb")
        self.assertIn("\nUsed the 47.50 mm", terminal.say(SENTENCE))
        terminal.type(b"scrap piece 5")
        terminal.wait_for("scrap piece 5")
        terminal.type(CTRL_C)
        terminal.prompted()
        self.assertIn("11 jobs are open.", terminal.say("jobs"))
        self.leave(terminal)
        self.assertNotIn("\x1b", terminal.screen)
        self.assertNotIn("\x07", terminal.screen)
        self.assertEqual(self.history.read_text(), SENTENCE + "\njobs\n")

    def test_where_libedit_is_missing_the_terminals_own_line_is_used(self):
        whole = pathlib.Path(shop.NUTWARD).read_bytes()
        self.assertEqual(whole.count(b"libedit.so.2\0"), 1)
        without = self.folder / "nutward"
        without.write_bytes(whole.replace(b"libedit.so.2\0", b"no-such.so.2\0"))
        without.chmod(0o700)
        self.started()
        terminal = self.terminal(program=str(without))
        terminal.prompted()
        terminal.type(b"scrap piece 5")
        terminal.wait_for("scrap piece 5")
        terminal.type(CTRL_C)
        terminal.prompted()
        self.assertIn("\nUsed the 47.50 mm", terminal.say(SENTENCE))
        self.leave(terminal)
        self.assertEqual(self.history.read_text(), SENTENCE + "\n")

    def test_without_a_terminal_there_is_no_prompt_no_greeting_and_no_history(self):
        self.started()
        ran = subprocess.run([shop.NUTWARD, "--home", str(self.home)], input=b"jobs\n", capture_output=True, timeout=30,
                             env={"TERM": "xterm", "XDG_STATE_HOME": str(self.state)})
        self.assertEqual((ran.returncode, ran.stderr), (0, b""))
        self.assertTrue(ran.stdout.startswith(b"11 jobs are open.\n"), ran.stdout)
        self.assertFalse(self.state.exists())

    def test_a_single_sentence_loads_no_line_editor(self):
        self.started()
        _, terminal = None, self.terminal("jobs", LD_DEBUG="files")
        self.assertEqual(terminal.ended(), 0)
        self.assertIn("11 jobs are open.", terminal.text)
        self.assertNotIn("libedit", terminal.text)
        talking = self.terminal(LD_DEBUG="files")
        talking.prompted()
        self.leave(talking)
        self.assertIn("libedit", talking.text)

    def test_quiet_greets_nobody(self):
        _, terminal = self.started(), self.terminal("--quiet")
        terminal.wait_for("> ")
        self.leave(terminal)
        self.assertEqual(terminal.text, "> ^D\n")


if __name__ == "__main__":
    os.environ.pop("NUTWARD_HOME", None)
    shop.main()
