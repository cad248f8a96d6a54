"""Cut plans over the daemon's life: made when it starts, the same after a restart or a kill, and never in the way of its end."""
import time

import shop

BOARD = dict(scale_mm=648, frets=22, nut_width_mm=43, far_width_mm=53.5)


class Plans(shop.ShopCase):
    def a_shop(self, client, jobs):
        """One wire, its wire and tin, and jobs on boards that differ by tenths of a millimetre."""
        client.done("define-wire", name="medium", stick_mm=610)
        client.done("receive", wire="medium", count=40)
        client.done("add", wire="medium", ends="raw", length_mm=[45 + n % 97 / 10 for n in range(45)])
        for n in range(jobs):
            client.done("new-job", wire="medium", **{**BOARD, "nut_width_mm": 41 + n % 29 / 10})

    def planned(self, client, within=60):
        """The plan of the first wire once it is stored and nothing has overtaken it."""
        deadline = time.monotonic() + within
        while True:
            answer = client.ask("cuts?wire=1")
            data = answer["data"]
            if data["planned_at"] and not data["brought_up_to_date"] and "being worked on" not in answer["reason"]:
                return data
            self.assertLess(time.monotonic(), deadline, answer["reason"])
            time.sleep(0.05)

    def test_a_plan_is_the_same_after_a_restart_and_after_a_kill(self):
        daemon = self.started()
        client = self.client_of(daemon)
        self.a_shop(client, 3)
        plan = self.planned(client)
        self.assertGreater(plan["from_pieces"], 0)
        daemon.stop()
        self.assert_all_well()
        for end in (shop.Daemon.kill, shop.Daemon.stop):
            daemon = self.started()
            self.assertEqual(self.client_of(daemon).ask("cuts?wire=1")["data"], plan)
            end(daemon)
        self.assert_all_well()

    def test_a_plan_that_is_lost_is_made_again_by_the_next_start(self):
        daemon = self.started()
        self.a_shop(self.client_of(daemon), 1)
        before = self.planned(self.client_of(daemon))
        daemon.stop()
        with shop.database(self.home) as db:
            db.execute("DELETE FROM plan")
            db.commit()
        self.assert_all_well()
        after = self.planned(self.client_of(self.started()))
        for field in ("frets", "short", "sticks", "new_wire_mm"):
            self.assertEqual(after[field], before[field])

    def test_the_daemon_ends_soon_in_the_middle_of_planning(self):
        daemon = self.started()
        self.a_shop(self.client_of(daemon), 100)
        began = time.monotonic()
        daemon.stop(within=20)
        self.assertLess(time.monotonic() - began, 10)
        self.assert_all_well()

    def test_reports_are_taken_while_plans_are_made_and_undone_in_spite_of_them(self):
        daemon = self.started()
        client = self.client_of(daemon)
        self.a_shop(client, 30)
        before = client.ask("stock?wire=1")["data"]
        for n in range(40):
            client.done("add", wire="medium", ends="raw", length_mm=[50 + n / 10])
        self.planned(client)
        for _ in range(40):
            client.done("undo")
        self.assertEqual(client.ask("stock?wire=1")["data"], before)
        self.planned(client)
        daemon.stop()
        self.assert_all_well()


if __name__ == "__main__":
    shop.main()
