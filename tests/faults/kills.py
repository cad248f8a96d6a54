"""kill -9 at random moments, while several clients add, hold and use pieces (PROMISES: an acknowledged command is on
disk; a retry with its key does nothing twice). Each client keeps its own record, outside of the daemon.

NUTWARD_KILLS: how many kills, 200 if unset.
"""
import itertools
import os
import random
import statistics
import threading
import time

import shop

KILLS = int(os.environ.get("NUTWARD_KILLS", "200"))
PATIENCE = float(os.environ.get("NUTWARD_PATIENCE", "1"))  # a sanitizer's daemon takes longer to start
CLIENTS = 3
LONGEST_LIFE_S = 0.12  # of a daemon after it is ready
VERIFY_EVERY = 25


class Bench(threading.Thread):
    """One client with a wire and a job of its own. Every command has its own key, every piece its own length."""

    def __init__(self, number, client):
        super().__init__(daemon=True)
        self.number = number
        self.wire = f"wire{number}"
        client.done("define-wire", name=self.wire, crown_width="2.4 mm", crown_height="1.2 mm", tang_depth="1.6 mm")
        self.job = client.done("new-job", wire=self.wire, scale="645 mm", frets=20, nut_width="44 mm",
                               far_width="55.5 mm")["job"]
        slots = client.ask(f"slots?job={self.job}")["data"]["slots"]
        self.cut_nm = [round(s["cut_mm"] * 1e6) for s in slots]
        self.random = random.Random(number)
        self.lengths = itertools.count(1)
        self.keys = itertools.count(1)
        self.pending = None            # (key, command, body) that may or may not have happened
        self.acknowledged = []         # (key, command, body, answer)
        self.tin = {}                  # length_nm -> job that holds it, None if nobody does
        self.used = {}                 # slot -> length_nm of the piece that its fret was made of
        self.ever = set()              # every length that came into the tin
        self.ids = {}                  # length_nm -> piece
        self.retried = 0               # commands sent again after a kill
        self.wrong = None
        self.socket = None
        self.wake = threading.Condition()

    def length_for(self, slot):
        # 2 mm over what is cut, and 10 nm more with every piece: no two have the same length.
        return self.cut_nm[slot - 1] + 2_000_000 + 10 * next(self.lengths)

    def next_command(self):
        """What a person would do next: add, hold, use, let go, scrap; now and then a fret comes out short."""
        free = [nm for nm, job in self.tin.items() if job is None]
        held = [nm for nm, job in self.tin.items() if job is not None]
        slot = self.random.randint(1, 20)
        if len(held) > 10:
            return "let-go", {"piece": self.ids[self.random.choice(held)]}, None
        if len(free) > 50 or (free and self.random.random() < 0.15):
            return "scrap", {"piece": self.ids[self.random.choice(free)]}, None
        if slot in self.used and self.random.random() < 0.7:
            nm = self.length_for(slot)
            return "came-short", {"job": self.job, "slot": slot, "length_mm": nm / 1e6, "ends": "raw"}, nm
        if free and self.random.random() < 0.3:
            return "hold", {"piece": self.ids[self.random.choice(free)], "job": self.job}, None
        fitting = [nm for nm in self.tin if nm // 10**4 == (self.cut_nm[slot - 1] + 2_000_000) // 10**4]
        if fitting and slot not in self.used:
            return "use", {"piece": self.ids[self.random.choice(fitting)], "job": self.job, "slot": slot}, None
        nm = self.length_for(slot)
        return "add", {"wire": self.wire, "length_mm": nm / 1e6}, nm

    def learn(self, command, body, nm, answer):
        """The same change in the record outside."""
        of_id = {piece: length for length, piece in self.ids.items()}
        if command == "add":
            self.tin[nm] = None
            self.ids[nm] = answer["data"]["pieces"][0]
            self.ever.add(nm)
        elif command == "came-short":
            del self.used[body["slot"]]
            self.tin[nm] = None
            self.ids[nm] = answer["data"]["piece"]
            self.ever.add(nm)
        else:
            length = of_id[body["piece"]]
            if command in ("hold", "let-go"):
                self.tin[length] = self.job if command == "hold" else None
            else:
                del self.tin[length]
            if command == "use":
                self.used[body["slot"]] = length

    def one(self, client):
        if self.pending is None:
            key = f"bench-{self.number}-{next(self.keys)}"
            self.pending = (key, *self.next_command())
        else:
            self.retried += 1
        key, command, body, nm = self.pending
        reply = client.do(command, body, key)
        if reply.status != 200:
            raise AssertionError(f"{key} {command} {body}: {reply}")
        self.acknowledged.append((key, command, body, reply.body))
        self.learn(command, body, nm, reply.json)
        self.pending = None

    def run(self):
        while True:
            with self.wake:
                self.wake.wait_for(lambda: self.socket is not None)
                if self.socket == "end":
                    return
                client = shop.Client(self.socket)
            try:
                while True:
                    self.one(client)
            except shop.Gone:
                with self.wake:
                    self.socket = None if self.socket != "end" else "end"
                    self.wake.notify_all()
            except BaseException as wrong:  # told to the main thread, which fails the test
                self.wrong = wrong
                return

    def go(self, socket):
        with self.wake:
            self.socket = socket
            self.wake.notify_all()

    def rest(self):
        """Waits until the client has noticed that the daemon is gone."""
        with self.wake:
            self.wake.wait_for(lambda: self.socket is None or self.wrong, 30)
        if self.wrong:
            raise self.wrong


class Kills(shop.ShopCase):
    def lines(self):
        """Of the journal. Not the revision: a reminder that falls due meanwhile moves that, and is nobody's doing."""
        with shop.database(self.home) as file:
            return file.execute("SELECT count(*) FROM journal").fetchone()[0]

    def assert_as_recorded(self, client, bench):
        """Nothing acknowledged is missing, and nothing happened that nobody asked for: but for the one command that
        has not been answered, which may have happened."""
        pieces = client.ask(f"stock?wire={bench.wire}")["data"]["pieces"]
        there = {round(p["length_mm"] * 1e6): p["job"] for p in pieces}
        self.assertEqual(len(there), len(pieces), "one length, and so one command, made two pieces")
        slots = client.ask(f"job?job={bench.job}")["data"]["open_slots"]
        used = set(range(1, 21)) - set(slots)
        if there == bench.tin and used == set(bench.used):
            return
        self.assertIsNotNone(bench.pending, f"{there} {used} is not {bench.tin} {bench.used}")
        # Something is different, so the pending one must have happened, whole: its retry brings the first answer.
        key, command, body, nm = bench.pending
        before = self.lines()
        reply = client.do(command, body, key)
        self.assertEqual(reply.status, 200, reply)
        self.assertEqual(self.lines(), before, f"{key} {command} {body} was done twice, or half before")
        bench.acknowledged.append((key, command, body, reply.body))
        bench.learn(command, body, nm, reply.json)
        bench.pending = None
        bench.found_done += 1
        self.assertEqual((there, used), (bench.tin, set(bench.used)))

    def assert_repeats_do_nothing(self, client, bench, rng):
        if not bench.acknowledged:
            return
        key, command, body, answer = rng.choice(bench.acknowledged[-200:])
        before = self.lines()
        again = client.do(command, body, key)
        self.assertEqual((again.status, again.body), (200, answer))
        self.assertEqual(self.lines(), before)

    def assert_file_as_recorded(self, benches, lines_before):
        """The same from outside of the programs: the pieces and the journal in the file."""
        with shop.database(self.home) as file:
            for bench in benches:
                lengths = file.execute(
                    "SELECT m.length_nm FROM movement m JOIN wire w ON w.id = m.wire WHERE w.name = ? "
                    "AND m.to_place = 'tin' AND m.pieces = 1", (bench.wire,)).fetchall()
                made = sum(1 for _, command, _, _ in bench.acknowledged if command in ("add", "came-short"))
                self.assertEqual(len(lengths), made, bench.wire)
            lines = file.execute("SELECT count(*) FROM journal").fetchone()[0]
            self.assertEqual(lines - lines_before, sum(len(b.acknowledged) for b in benches))

    def test_nothing_acknowledged_is_lost_and_nothing_is_done_twice_over_kills_at_random_moments(self):
        rng = random.Random(20)
        began = time.monotonic()
        daemon = self.started()
        client = daemon.client()
        benches = [Bench(number, client) for number in range(CLIENTS)]
        for bench in benches:
            bench.found_done = 0
            bench.start()
        lines_before = 2 * CLIENTS  # a wire and a job each
        client.close()
        ready = []
        for kill in range(1, KILLS + 1):
            for bench in benches:
                bench.go(daemon.socket)
            time.sleep(rng.uniform(0, LONGEST_LIFE_S))
            daemon.kill()
            for bench in benches:
                bench.rest()
            daemon.gone()
            if kill % VERIFY_EVERY == 0 or kill == KILLS:
                self.assert_all_well()
            daemon = shop.Daemon(self.home)
            self.addCleanup(daemon.gone)
            ready.append(daemon.ready())
            client = daemon.client()
            for bench in benches:
                self.assert_as_recorded(client, bench)
                self.assert_repeats_do_nothing(client, bench, rng)
            client.close()
        client = daemon.client()
        for bench in benches:
            bench.go("end")
            if bench.pending:
                bench.one(client)
            self.assert_as_recorded(client, bench)
        client.close()
        daemon.stop()
        self.assert_all_well()
        self.assert_file_as_recorded(benches, lines_before)
        done = sum(len(b.acknowledged) for b in benches)
        retried, found = sum(b.retried for b in benches), sum(b.found_done for b in benches)
        print(f"\n{KILLS} kills in {time.monotonic() - began:.1f} s; {done} commands acknowledged; of those that a kill cut "
              f"off {found} had been done and {retried} had not; ready again after {statistics.median(ready) * 1e3:.0f} ms "
              f"(median), {max(ready) * 1e3:.0f} ms (most)", flush=True)
        self.assertGreater(done, KILLS, "the clients hardly worked: this shows nothing")
        self.assertGreater(retried, 0, "no command was cut off before it was done: this shows nothing")
        self.assertLessEqual(statistics.median(ready), 1.0 * PATIENCE)


if __name__ == "__main__":
    shop.main()
