"""A full disk stops writing, not reading; and it goes on by itself when there is room again. The home lies on a small
tmpfs, which takes the right to mount: without it, nothing here can be tried (exit 77)."""
import errno
import os
import subprocess
import time

import shop

SIZE = 24 * 1024 * 1024


class FullDisk(shop.ShopCase):
    def setUp(self):
        super().setUp()
        self.disk = self.folder / "d"
        self.disk.mkdir()
        try:
            mount = subprocess.run(["mount", "-t", "tmpfs", "-o", f"size={SIZE}", "none", str(self.disk)],
                                   capture_output=True)
        except FileNotFoundError:
            self.skipTest("there is no mount")
        if mount.returncode != 0:
            self.skipTest("this user may not mount")
        self.addCleanup(subprocess.run, ["umount", "-l", str(self.disk)])
        self.home = self.disk / "h"
        self.ballast = self.disk / "ballast"

    def fill(self, keep=0):
        """Takes all room but `keep` bytes."""
        with open(self.ballast, "ab", buffering=0) as file:
            try:
                while True:
                    file.write(b"\0" * 65536)
            except OSError as full:
                self.assertEqual(full.errno, errno.ENOSPC)
            if keep:
                os.truncate(self.ballast, max(0, file.tell() - keep))

    def add_until_full(self, client, first, most=20000):
        """Adds pieces until the disk is full: (how many were acknowledged, the refusal)."""
        for n in range(most):
            reply = client.do("add", {"wire": "tall", "length_mm": first + n / 1000}, key=f"{first}-{n}")
            if reply.status != 200:
                return n, reply
        self.fail(f"{most} pieces fit: the disk does not fill up")

    def test_writes_get_507_and_reads_go_on_until_there_is_room_and_then_it_works_by_itself(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        client.settled()
        for first in (100, 300, 500):  # more than once: nothing is used up by having been full
            self.fill(keep=300_000)
            done, refusal = self.add_until_full(client, first)
            self.assert_refusal(refusal, "no room left on the shop's disk", "Make room", status=507)
            before = client.revision()
            stock = client.ask("stock?wire=tall")
            for _ in range(20):
                again = client.do("add", {"wire": "tall", "length_mm": first + done / 1000}, key=f"{first}-{done}")
                self.assert_refusal(again, "Make room", status=507)
            # The same change, with a key too: one that touches fewer pages may still have room in the log that is there.
            said = client.post("/v1/say", {"text": f"add {first + done / 1000:.3f} mm of tall to the tin"}, f"said-{first}")
            self.assertIn("no room", said.json["text"], said)
            self.assertEqual(client.ask("fit?job=1&slot=3")["kind"], "fit")
            self.assertEqual(client.ask("stock?wire=tall"), stock)
            self.assertEqual(client.revision(), before)
            self.assertEqual(self.client_of(daemon).revision(), before)  # a new connection too

            self.ballast.unlink()
            again = client.do("add", {"wire": "tall", "length_mm": first + done / 1000}, key=f"{first}-{done}")
            self.assertEqual(again.status, 200, again)
            self.assertEqual(client.revision(), before + 1)
            with self.subTest("each piece once"):
                there = [round(p["length_mm"] * 1000) for p in client.ask("stock?wire=tall")["data"]["pieces"]]
                self.assertEqual(len(there), len(set(there)))
        daemon.stop()
        self.assert_all_well()

    def test_a_daemon_killed_on_a_full_disk_has_lost_nothing_once_there_is_room(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        client.settled()
        self.fill(keep=200_000)
        done, refusal = self.add_until_full(client, 100)
        self.assertEqual(refusal.status, 507, refusal)
        before = client.revision()
        daemon.kill()
        # Started while full, it either serves what there is, or says what is wrong and ends.
        full = shop.Daemon(self.home)
        self.addCleanup(full.gone)
        deadline = time.monotonic() + 20
        while full.process.poll() is None and not full.socket.exists() and time.monotonic() < deadline:
            time.sleep(0.01)
        try:
            full.ready(20)
            self.assertEqual(self.client_of(full).revision(), before)
            full.kill()
        except AssertionError:
            self.assertEqual(full.ended(), 1)
            self.assertRegex(full.said(), "[Nn]o (room|space)")
        self.ballast.unlink()
        daemon = self.started()
        self.assertEqual(self.client_of(daemon).revision(), before)
        daemon.stop()
        self.assert_all_well()
        with shop.database(self.home) as file:
            there = file.execute("SELECT count(*) FROM piece WHERE length_nm BETWEEN 100000000 AND 107000000 AND place = '' "
                                 "AND wire = (SELECT id FROM wire WHERE name = 'tall')").fetchone()[0]
        self.assertEqual(there, done)

    def test_a_home_that_does_not_fit_is_refused_with_what_would_do(self):
        for keep in (0, 4096, 40_000, 120_000):
            with self.subTest(keep=keep):
                self.fill(keep=keep)
                home = self.disk / f"h{keep}"
                code, said = shop.refused_start(home)
                self.assertEqual(code, 1, said)
                self.assertRegex(said, "[Nn]o (room|space)")
                self.assertFalse((home / "nutward.sock").exists())
                self.ballast.unlink()
                fresh = self.started(home=home)  # what was begun there is no hindrance
                fresh.stop()
                self.assert_all_well(home)


if __name__ == "__main__":
    shop.main()
