"""Two benches that want the same piece, and what a daemon's end does to a conversation and to the clients it serves."""
import json
import re
import subprocess
import threading
import time

import shop

TIMES = 50


class OnePieceTwoBenches(shop.ShopCase):
    def both(self, daemon, bodies):
        """Sends the `use`s at once, each over its own connection."""
        barrier = threading.Barrier(len(bodies))
        replies = [None] * len(bodies)

        def one(at, client):
            client.send("GET", "/v1/health")  # connected already, so that both really race
            barrier.wait()
            replies[at] = client.do("use", bodies[at])

        clients = [self.client_of(daemon) for _ in bodies]
        threads = [threading.Thread(target=one, args=pair) for pair in enumerate(clients)]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()
        for client in clients:
            client.close()
        return replies

    def test_of_two_clients_that_use_one_piece_at_once_exactly_one_gets_it_and_the_other_is_told(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        slots = {s["slot"]: s for s in client.ask("slots?job=1")["data"]["slots"]}
        first_won = 0
        for n in range(TIMES):
            length = max(slots[1]["cut_mm"], slots[2]["cut_mm"]) + 1 + n * 0.001
            piece = client.done("add", wire="medium", length_mm=round(length, 6))["pieces"][0]
            before = client.revision()
            replies = self.both(daemon, [{"piece": piece, "job": 1, "slot": slot} for slot in (1, 2)])
            won = [r for r in replies if r.status == 200]
            lost = [r for r in replies if r.status != 200]
            self.assertEqual((len(won), len(lost)), (1, 1), replies)
            self.assertEqual(client.revision(), before + 1)
            slot = won[0].json["data"]["slot"]
            self.assert_refusal(lost[0], f"Piece {piece}", f"slot {slot}", "job 1", status=409)
            first_won += slot == 1
            taken = {1, 2} - set(client.ask("job?job=1")["data"]["open_slots"])
            self.assertEqual(taken, {slot})
            client.done("undo")
        print(f"\nthe first of two won {first_won} of {TIMES} times", flush=True)
        daemon.stop()
        self.assert_all_well()


class Restart(shop.ShopCase):
    def test_a_conversation_does_not_outlive_the_daemon_but_what_it_did_does(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        found = client.say("what fits slot 3 of job 1", "bench")
        self.assertEqual(found["kind"], "fit", found)
        client.done("hold", piece=found["data"]["pieces"][0]["piece"], job=1)
        # With the context there, "use it" is clear: the other conversation proves that the words are.
        client.say("what fits slot 5 of job 1", "other")
        self.assertEqual(client.say("use it", "other")["kind"], "done")
        before = self.stands(client)
        daemon.stop()

        daemon = self.started()
        client = self.client_of(daemon)
        revision = client.revision()
        lost = client.say("use it", "bench")
        self.assertEqual(lost["kind"], "unclear", lost)
        self.assertEqual(client.revision(), revision)
        self.assertEqual(self.stands(client), before)

    @staticmethod
    def stands(client):
        """What the job and its wire's stock are; not the clock times of its plan, which goes on while the daemon is down."""
        asked = json.dumps([client.ask("stock?wire=medium"), client.ask("job?job=1")])
        return re.sub(r"\d\d:\d\d(:\d\dZ)?", "then", asked)

    def test_the_client_says_how_to_start_a_daemon_that_is_not_there(self):
        self.with_demo()
        asked = [shop.NUTWARD, "--home", str(self.home), "what is due"]
        none = subprocess.run(asked, capture_output=True, text=True, timeout=30)
        self.assertEqual((none.returncode, none.stdout), (69, ""), none)
        self.assertIn("nutwardd --home", none.stderr)
        self.started()
        there = subprocess.run(asked, capture_output=True, text=True, timeout=30)
        self.assertEqual((there.returncode, there.stderr), (0, ""), there)
        self.assertIn("job 5", there.stdout)


class Shutdown(shop.ShopCase):
    def test_sigterm_ends_an_idle_daemon_within_three_seconds_with_exit_0_and_no_socket_left(self):
        self.with_demo()
        daemon = self.started()
        idle = self.client_of(daemon)
        idle.revision()  # a connection that stays open holds nothing up
        self.assertLess(daemon.stop(), 3)
        self.assertFalse(daemon.socket.exists())
        self.assert_all_well()

    def test_sigterm_amid_work_ends_within_three_seconds_and_keeps_every_acknowledged_command(self):
        self.with_demo()
        daemon = self.started()
        done = []

        def work(number):
            client = daemon.client()
            try:
                for n in range(100000):
                    client.done("add", wire="tall", length_mm=100 + number * 100 + n / 1000)
                    done.append(1)
            except (shop.Gone, AssertionError):
                pass  # the end; what was acknowledged is in `done`
            finally:
                client.close()

        threads = [threading.Thread(target=work, args=(n,)) for n in range(3)]
        for thread in threads:
            thread.start()
        time.sleep(0.5)
        took = daemon.stop()
        for thread in threads:
            thread.join()
        self.assertLess(took, 3)
        self.assertGreater(len(done), 10)
        with shop.database(self.home) as file:
            there = file.execute("SELECT count(*) FROM piece WHERE length_nm >= 100000000 AND place = '' "
                                 "AND wire = (SELECT id FROM wire WHERE name = 'tall')").fetchone()[0]
        # A command that was being answered may have been done, its answer lost: at most one for each client.
        self.assertIn(there - len(done), range(4))
        self.assert_all_well()


if __name__ == "__main__":
    shop.main()
