"""Bad input through the real door: each gets a clear error that says what would do, and changes nothing."""
import os
import subprocess

import shop

JOB = {"wire": "medium", "scale_mm": 645, "frets": 20, "nut_width_mm": 44, "far_width_mm": 55.5}
LENGTH_WOULD_DO = "Give a length such as 52.4 mm or 2 1/16 in."

# (command, body, words of the refusal with what would do)
VALUES = [
    # A wrong unit.
    ("add", {"wire": "medium", "length": "52.4 lb"}, ["“lb” is a unit of force", LENGTH_WOULD_DO]),
    ("add", {"wire": "medium", "length": "52.4 parsec"}, ["“parsec” is not a unit of length", "such as 52.4 mm"]),
    ("add", {"wire": "medium", "length_n": 52.4}, ["'add' takes no 'length_n'", "It takes: wire, length_mm"]),
    ("pressed", {"job": 5, "load": "20 mm"}, ["“mm” is a unit of length", "Give"]),
    # Lengths that are none, or of no piece.
    ("add", {"wire": "medium", "length_mm": -52.4}, ["-52.4 mm", "from 1 to 2000 mm"]),
    ("add", {"wire": "medium", "length_mm": 0}, ["0 mm", "from 1 to 2000 mm"]),
    ("add", {"wire": "medium", "length_mm": 0.999999}, ["out of range", "from 1 to 2000 mm"]),
    ("add", {"wire": "medium", "length_mm": 2000.000001}, ["out of range", "from 1 to 2000 mm"]),
    ("add", {"wire": "medium", "length_mm": 1e308}, ["length", "mm"]),
    ("add", {"wire": "medium", "length_mm": 2**63}, ["length", "mm"]),
    ("add", {"wire": "medium", "length_mm": -(2**63)}, ["length", "mm"]),
    ("add", {"wire": "medium", "length": "nan"}, ["“nan” is not a number", LENGTH_WOULD_DO]),
    ("add", {"wire": "medium", "length": "inf mm"}, ["inf", LENGTH_WOULD_DO]),
    ("add", {"wire": "medium", "length_mm": True}, ["length", "Give"]),
    ("add", {"wire": "medium", "length_mm": {"x": 1}}, ["length", "Give"]),
    ("add", {"wire": "medium", "length_mm": [52.4, -1]}, ["-1", "from 1 to 2000 mm"]),
    ("add", {"wire": "medium", "count": 501}, ["501", "500"]),
    ("add", {"wire": "medium", "count": -1}, ["-1", "from 1 to 500"]),
    ("add", {"wire": "medium", "count": 1.5}, ["not a whole number"]),
    ("came-short", {"job": 1, "slot": 1, "length_mm": 2500}, ["2500", "2000"]),
    # Things that are not there.
    ("add", {"wire": "unobtainium", "length_mm": 50}, ["'unobtainium'", "There are: brass, broad, medium"]),
    ("add", {"wire": 99, "length_mm": 50}, ["no wire 99"]),
    ("hold", {"piece": 1, "job": 99}, ["no job 99"]),
    ("hold", {"piece": 9999, "job": 1}, ["no piece 9999", "Give its id"]),
    ("hold", {"piece": 2**62, "job": 1}, ["no piece"]),
    ("drop-receiver", {"receiver": "nobody"}, ["no such receiver"]),
    # A slot that the board does not have.
    ("use", {"piece": 1, "job": 1, "slot": 21}, ["no slot 21", "slots 1-20"]),
    ("use", {"piece": 1, "job": 1, "slot": 0}, ["0", "slot"]),
    ("use", {"piece": 1, "job": 1, "slot": -3}, ["-3", "slot"]),
    ("use", {"piece": 1, "job": 1, "slot": 3.5}, ["not a whole number"]),
    ("measured", {"job": 1, "slot": 21, "length_mm": 50}, ["no slot 21", "slots 1-20"]),
    ("pressed", {"job": 5, "slots": [1, 2, 23]}, ["23", "1-22"]),
    # Boards that are none.
    ("new-job", {**JOB, "nut_width_mm": 55.5, "far_width_mm": 44}, ["does not narrow toward the body", "Measure both again"]),
    ("new-job", {**JOB, "radius_mm": 25}, ["radius of 25 mm", "half the width would do"]),
    ("new-job", {**JOB, "nut_radius_mm": 400, "far_radius_mm": 25}, ["radius", "half the width would do"]),
    ("new-job", {**JOB, "scale_mm": 64500}, ["64500", "from 100 to 2000 mm"]),
    ("new-job", {**JOB, "frets": 49}, ["49", "from 1 to 48"]),
    ("new-job", {**JOB, "frets": 0}, ["0", "from 1 to 48"]),
    ("new-job", {**JOB, "humidity": 101}, ["101", "0 to 100"]),
    ("new-job", {**JOB, "far_slot": 21}, ["21"]),
    ("new-job", {k: v for k, v in JOB.items() if k != "scale_mm"}, ["scale"]),
    # Times.
    ("new-job", {**JOB, "due": "2020-01-01"}, ["1 Jan 2020 is over already", "Give a day still to come."]),
    ("set-due", {"job": 5, "due": "2020-01-01"}, ["1 Jan 2020 is over already", "Give a day still to come."]),
    ("set-due", {"job": 5, "due": "2027-02-30"}, ["2027-02-30"]),
    ("set-due", {"job": 5, "due": "soon"}, ["soon"]),
    ("pressed", {"job": 5, "at": "2099-01-01T00:00:00Z"}, ["still to come", "up to now"]),
    ("pressed", {"job": 5, "at": "2001-01-01T00:00:00Z"}, ["over five years ago", "Check the year."]),
    ("pressed", {"job": 5, "at": "yesterday-ish"}, ["yesterday-ish", "Give a time with its zone"]),
    # Texts.
    ("define-wire", {"name": "x" * 5000}, ["name"]),
    ("add", {"wire": "medium", "length_mm": 50, "place": "x" * 5000}, ["place"]),
    ("scrap", {"piece": 1, "why": "x" * 100000}, ["why"]),
    ("add", {"wire": "medium", "length_mm": 50, "place": 5}, ["place"]),
    # Settings and addresses.
    ("set", {"setting": "zone", "to": "Mars/Phobos"}, ["Mars/Phobos"]),
    ("set", {"setting": "zone", "to": "../../etc/passwd"}, ["cannot have that name", "Europe/Berlin"]),
    ("set", {"setting": "colour", "to": "red"}, ["colour"]),
    ("set", {"setting": "trim_limit", "to": "-1 mm"}, ["-1"]),
    ("open-hours", {"days": "mon", "hours": "25:00-26:00"}, ["25:00"]),
    ("open-hours", {"days": "mon", "hours": "13:00-9:00"}, ["13:00"]),
    ("add-receiver", {"name": "w", "url": "file:///etc/passwd"}, ["http"]),
    ("add-receiver", {"name": "w", "url": "not an address"}, ["http"]),
]

# (body of the request, words): not JSON that could be a call.
BODIES = [
    (b"", ["wire"]),
    (b"{", ["not JSON", "Send one JSON object in UTF-8"]),
    (b'{"wire": "medium", "length_mm": 50', ["not JSON", "byte"]),
    (b'{"wire": "medium", "length_mm": NaN}', ["not JSON", "Send one JSON object"]),
    (b'{"wire": "medium", "length_mm": Infinity}', ["not JSON"]),
    (b'{"wire": "medium", "length_mm": 1e999}', ["beyond what a number can hold"]),
    (b'{"wire": "medium", "length_mm": 50} trailing', ["not JSON"]),
    (b'{"wire": "medium", "length_mm": 50, "length_mm": 60}', ["stands twice", "Send it once."]),
    (b'{"wire": "med\xffium", "length_mm": 50}', ["UTF-8"]),
    (b'{"wire": "medium", "length_mm": 50, "place": "\xed\xa0\x80"}', ["UTF-8"]),
    (b'{"wire": "medium", "length_mm": 50, "place": "\\ud800"}', ["not JSON"]),
    (b"\xef\xbb\xbf\xef\xbb\xbf{}", ["not JSON"]),
    (b'["wire", "medium"]', ["must be a JSON object"]),
    (b"17", ["must be a JSON object"]),
    (b"null", ["must be a JSON object"]),
    (b"[" * 100_000, ["nested deeper than 32 levels", "Send it flatter."]),
    (b'{"a":' * 40_000 + b"1" + b"}" * 40_000, ["nested deeper than 32 levels"]),
    (b'{"wire": "medium", "length_mm": ' + b"[" * 100_000 + b"]" * 100_000 + b"}", ["nested deeper than 32 levels"]),
]

# (sentence, words): what a person may say wrongly. None of these may change anything.
SENTENCES = [
    ("add 52.4 lb of medium to the tin", ["lb"]),
    ("add 3 m of medium to the tin", ["2000 mm"]),
    ("add 0.2 mm of medium to the tin", ["1 to 2000 mm"]),
    ("add -5 mm of medium", []),
    ("add nan mm of medium", []),
    ("add 50 mm of unobtainium", []),
    ("what fits slot 99 of job 1", ["99"]),
    ("what fits slot 3 of job 99", ["99"]),
    ("job 5 is due 2020-01-01", ["2020"]),
    ("hold piece 9999 for job 1", ["9999"]),
    ("use the 512 of medium in slot 3 of job 1", []),
    ("", []),
    ("   \t ", []),
    ("\u202egnirts\u202c \x1b[2J", []),
    ("'; DROP TABLE piece; --", []),
    ("x" * 4000, []),
    ("add " + "50 mm and " * 2000 + "50 mm of medium", []),
    ("9" * 3000 + " mm of medium into the tin", []),
]


class BadInput(shop.ShopCase):
    def setUp(self):
        super().setUp()
        self.with_demo()
        self.daemon = self.started()
        self.client = self.client_of(self.daemon)
        self.before = self.client.revision()

    def tearDown(self):
        self.assertEqual(self.client.revision(), self.before)
        self.daemon.stop()
        self.assert_all_well()

    def assert_nothing_changed(self):
        after, self.before_was = self.client.revision(), self.before
        self.before = after  # so that each wrong one is reported once
        self.assertEqual(after, self.before_was, "something was changed")

    def test_a_value_that_cannot_be_is_refused_with_what_would_do(self):
        for command, body, words in VALUES:
            with self.subTest(command=command, body=repr(body)[:120]):
                reply = self.client.do(command, body)
                self.assert_nothing_changed()
                problem = self.assert_refusal(reply, *words)
                self.assertEqual(problem["kind"], "refused")
                self.assertTrue(problem.get("remedy"), f"nothing said what would do: {reply}")
                self.assertLess(len(reply.body), 4000)

    def test_the_same_in_a_list_undoes_what_came_before_it(self):
        good = {"do": "add", "with": {"wire": "medium", "length_mm": 50}}
        for command, body, words in VALUES[::7]:
            with self.subTest(command=command, body=repr(body)[:120]):
                reply = self.client.post("/v1/do", {"calls": [good, {"do": command, "with": body}]})
                self.assert_nothing_changed()
                self.assert_refusal(reply, *words)

    def test_a_body_that_is_no_call_is_refused_with_what_would_do(self):
        for body, words in BODIES:
            for target in ("/v1/do/add", "/v1/do", "/v1/say"):
                with self.subTest(target=target, body=body[:60]):
                    reply = self.client.post(target, body)
                    self.assert_nothing_changed()
                    # The words are those for a single call; the other two refuse it too, in words of their own.
                    problem = self.assert_refusal(reply, *(words if target == "/v1/do/add" else []))
                    self.assertTrue(problem.get("remedy"), f"nothing said what would do: {reply}")

    def test_a_sentence_that_cannot_be_is_answered_and_changes_nothing(self):
        for text, words in SENTENCES:
            with self.subTest(text=text[:60]):
                reply = self.client.post("/v1/say", {"text": text})
                self.assert_nothing_changed()
                self.assertIn(reply.status, (200, 422), reply)
                answer = reply.json
                self.assertIn(answer["kind"], ("unclear", "refused"), reply)
                self.assertTrue(answer["text"].strip())
                for word in words:
                    self.assertIn(word, answer["text"] + answer.get("reason", ""), reply)

    def test_a_sentence_of_invalid_utf8_is_refused(self):
        for bad in (b"\xff", b"\xc0\x80", b"\xed\xa0\x80", b"\xf4\x90\x80\x80", b"\xe2\x82"):
            with self.subTest(bad=bad):
                self.assert_refusal(self.client.post("/v1/say", b'{"text": "what is ' + bad + b'"}'), "UTF-8")
        client = subprocess.run([os.fsencode(shop.NUTWARD), b"--home", os.fsencode(self.home), b"what is \xff\xfe"],
                                capture_output=True, timeout=30)
        self.assertIn(client.returncode, (1, 2), client)
        self.assertNotIn(b"\xff", client.stdout + client.stderr)

    def test_a_question_that_cannot_be_answered_says_why(self):
        for target, words in (("fit?job=99&slot=3", ["no job 99"]), ("fit?job=1&slot=21", ["no slot 21", "1-20"]),
                              ("fit?job=1&slot=-1", ["slot"]), ("fit?job=1&slot=3&slot=4", ["slot"]),
                              ("fit?job=1&colour=red", ["colour"]), ("place?wire=medium&length=-3%20mm", ["-3"]),
                              ("place?wire=medium&length=9%20lb", ["lb"]), ("stock?wire=unobtainium", ["unobtainium"]),
                              ("stock?wire=%ff", []), ("stock?wire=%zz", ["hex"]), ("slots", ["job"])):
            with self.subTest(target=target):
                reply = self.client.send("GET", f"/v1/ask/{target}")
                problem = self.assert_refusal(reply, *words)
                self.assertTrue(problem.get("remedy"), f"nothing said what would do: {reply}")
                self.assertNotIn(b"\xff", reply.body)

    def test_what_is_too_much_or_in_the_wrong_place_has_its_own_status(self):
        client, post = self.client, self.client.post
        self.assert_refusal(client.send("GET", "/v1/nothing"), status=404)
        self.assert_refusal(client.send("GET", "/v1/ask/nothing"), "nothing", "/v1/ask/help", status=404)
        self.assert_refusal(post("/v1/do/nothing", {}), "nothing", "/v1/ask/help", status=404)
        not_allowed = client.send("GET", "/v1/say")
        self.assert_refusal(not_allowed, status=405)
        self.assertEqual(not_allowed.headers["Allow"], "POST")
        self.assert_refusal(client.send("POST", "/v1/say", b"{}", {"Content-Type": "text/plain"}), "application/json", status=415)
        self.assert_refusal(post("/v1/do/add", b" " * (256 * 1024 + 1)), status=413)
        fresh = self.client_of(self.daemon)  # the door closes after a body that is too long
        self.assert_refusal(fresh.do("add", {"wire": "medium", "length_mm": 50}, key="k" * 201), "Idempotency-Key")
        self.assert_refusal(self.client_of(self.daemon).post("/v1/say", {"text": "what is due", "conversation": "c" * 101}),
                            "conversation")
        self.client = self.client_of(self.daemon)

    def test_one_key_for_two_different_requests_is_refused(self):
        first = self.client.do("add", {"wire": "medium", "length_mm": 50}, key="same")
        self.assertEqual(first.status, 200, first)
        self.before += 1
        other = self.client.do("add", {"wire": "medium", "length_mm": 51}, key="same")
        self.assert_refusal(other, "was used for something else", "Use a new key")


if __name__ == "__main__":
    shop.main()
