"""A reminder from the press to the receiver: signed, over outages of either side, and until the receiver says enough."""
import contextlib
import datetime
import http.server
import importlib.util
import json
import os
import pathlib
import queue
import threading
import time

import shop

PATIENCE = float(os.environ.get("NUTWARD_PATIENCE", "1"))  # a sanitizer's daemon takes longer to start

_place = pathlib.Path(__file__).resolve().parents[2] / "deploy" / "receiver.py"
_spec = importlib.util.spec_from_file_location("demo_receiver", _place)
demo_receiver = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(demo_receiver)


class Receiver:
    """A real receiver on loopback that keeps its port over being down. `answers` is what it says, the last for ever."""

    def __init__(self, answers=(204,)):
        self.answers, self.secret, self.got = list(answers), None, queue.Queue()
        self.server = None
        self.port = 0

    def up(self):
        outer = self

        class Handler(http.server.BaseHTTPRequestHandler):
            def do_POST(self):
                body = self.rfile.read(int(self.headers["Content-Length"]))
                answer = outer.answers.pop(0) if len(outer.answers) > 1 else outer.answers[0]
                outer.got.put((time.monotonic(), dict((k.lower(), v) for k, v in self.headers.items()), body))
                self.send_response(answer)
                self.send_header("Content-Length", "0")
                self.end_headers()

            def log_message(self, *_):
                pass

        self.server = http.server.ThreadingHTTPServer(("127.0.0.1", self.port), Handler)
        self.port = self.server.server_address[1]
        threading.Thread(target=self.server.serve_forever, args=(0.05,), daemon=True).start()
        return self

    def down(self):
        if self.server:
            self.server.shutdown()
            self.server.server_close()
            self.server = None

    def message(self, within):
        """The next message: (headers, JSON), its signature checked by what the demo's receiver does."""
        try:
            _, headers, body = self.got.get(timeout=within * PATIENCE)
        except queue.Empty:
            raise AssertionError(f"Nothing arrived within {within} s.") from None
        wrong = demo_receiver.verify(headers, body, demo_receiver_keys(self.secret))
        if wrong:
            raise AssertionError(f"{wrong}: {headers} {body}")
        return headers, json.loads(body)


def demo_receiver_keys(secret):
    import base64
    return [base64.b64decode(secret[len("whsec_"):], validate=True)]


def ago(hours):
    return (datetime.datetime.now(datetime.timezone.utc) - datetime.timedelta(hours=hours)).strftime("%Y-%m-%dT%H:%M:%SZ")


class Reminders(shop.ShopCase):
    def receiver(self, client, answers=(204,), name="wall"):
        receiver = Receiver(answers).up()
        self.addCleanup(receiver.down)
        receiver.secret = client.done("add-receiver", name=name, url=f"http://127.0.0.1:{receiver.port}/hook",
                                      wants=["recheck.due"])["secret"]
        return receiver

    def press(self, client):
        """Job 5 of the demo, whose frets are seated, reported as pressed 25 hours ago: its recheck is due."""
        client.done("pressed", job=5, at=ago(25))

    def assert_recheck(self, message):
        headers, body = message
        self.assertEqual(body["type"], "recheck.due")
        self.assertIn("job 5", body["text"])
        self.assertEqual(body["data"]["job"], 5)
        return headers["webhook-id"], body

    def test_a_job_pressed_a_day_ago_is_told_within_three_seconds_signed_and_once(self):
        self.with_demo()
        client = self.client_of(self.started())
        receiver = self.receiver(client)
        began = time.monotonic()
        self.press(client)
        _, body = self.assert_recheck(receiver.message(3))
        print(f"\ntold after {time.monotonic() - began:.2f} s", flush=True)
        self.assertEqual(body["data"]["sequence"], 1)
        with self.assertRaises(AssertionError):
            receiver.message(2)  # once is enough

    def test_a_receiver_that_fails_gets_the_same_message_again_after_five_seconds(self):
        self.with_demo()
        client = self.client_of(self.started())
        receiver = self.receiver(client, answers=(500, 204))
        self.press(client)
        first, _ = self.assert_recheck(receiver.message(3))
        at = time.monotonic()
        second, _ = self.assert_recheck(receiver.message(10))
        self.assertEqual(first, second)
        self.assertGreater(time.monotonic() - at, 4)

    def test_a_reminder_outlives_a_receiver_that_is_down_and_a_daemon_that_is_killed(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        receiver = self.receiver(client, answers=(500, 204))
        self.press(client)
        first, _ = self.assert_recheck(receiver.message(3))
        time.sleep(0.5)  # the failure is written down; the next attempt is in five seconds
        receiver.down()
        daemon.kill()
        time.sleep(6)  # both are down when it would have been
        receiver.up()
        began = time.monotonic()
        self.started()
        second, _ = self.assert_recheck(receiver.message(5))
        print(f"\ntold {time.monotonic() - began:.2f} s after the restart", flush=True)
        self.assertEqual(first, second)
        with self.assertRaises(AssertionError):
            receiver.message(2)

    def test_a_reminder_that_fell_due_while_the_daemon_was_down_is_told_at_its_start(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        receiver = self.receiver(client)
        # Due 4 s from now: 24 h after pressing. The shop is open today (the demo's extra opening).
        client.done("pressed", job=5, at=ago(24 - 4 / 3600))
        daemon.kill()
        with self.assertRaises(AssertionError):
            receiver.message(5)
        self.started()
        self.assert_recheck(receiver.message(3))

    def test_one_that_falls_due_while_all_are_up_comes_neither_early_nor_late(self):
        self.with_demo()
        client = self.client_of(self.started())
        receiver = self.receiver(client)
        pressed = datetime.datetime.now(datetime.timezone.utc).replace(microsecond=0) - datetime.timedelta(hours=24, seconds=-4)
        client.done("pressed", job=5, at=pressed.strftime("%Y-%m-%dT%H:%M:%SZ"))
        self.assert_recheck(receiver.message(8))
        late = time.time() - (pressed + datetime.timedelta(hours=24)).timestamp()
        self.assertGreaterEqual(late, 0)
        self.assertLess(late, 2)

    def test_a_receiver_that_answers_410_is_told_nothing_any_more_and_others_are(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        gone = self.receiver(client, answers=(410,), name="gone")
        self.press(client)
        self.assert_recheck(gone.message(3))
        stays = self.receiver(client, name="stays")
        # Pressed again with other frets: a new recheck, due at once too.
        client.done("pressed", job=5, slots=[3, 4], at=ago(25))
        self.assert_recheck(stays.message(3))
        with self.assertRaises(AssertionError):
            gone.message(7)  # neither the new one, nor the old one again after five seconds
        daemon.stop()
        with shop.database(self.home) as file:
            self.assertEqual(file.execute("SELECT disabled FROM receiver ORDER BY id").fetchall(), [(1,), (0,)])


if __name__ == "__main__":
    shop.main()
