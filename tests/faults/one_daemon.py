"""One daemon a home: the second is refused, of many that start at once one wins, a stale socket needs no hand; and homes
that cannot be used are refused without being touched."""
import hashlib
import os
import pathlib
import shutil
import socket
import subprocess
import time

import shop

RACES = int(os.environ.get("NUTWARD_RACES", "200"))
STARTERS = 3


def digests(home):
    """What each file of the home holds, but for the lock, which every start may write its number into."""
    return {p.name: hashlib.sha256(p.read_bytes()).hexdigest() for p in pathlib.Path(home).iterdir()
            if p.is_file() and p.name != "nutward.lock"}


class OneDaemon(shop.ShopCase):
    def test_a_second_daemon_on_the_same_home_is_refused_and_harms_nothing(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        before = client.revision()
        code, said = shop.refused_start(self.home)
        self.assertEqual(code, 1)
        self.assertIn(f"already open: process {daemon.process.pid} has it", said)
        self.assertEqual(shop.verified(self.home)[0], 1)  # nor is it verified while in use
        self.assertEqual(client.revision(), before)
        fresh = self.client_of(daemon)  # the socket is still the first one's
        self.assertEqual(fresh.revision(), before)

    def test_a_folder_without_a_shop_is_not_verified_and_nothing_is_made_in_it(self):
        for folder in (self.home, self.home / "nowhere"):
            before = sorted(self.home.iterdir()) if self.home.exists() else None
            code, said = shop.verified(folder)
            self.assertEqual(code, 2)
            self.assertIn(f"There is no shop in {folder}", said)
            self.assertEqual(sorted(self.home.iterdir()) if self.home.exists() else None, before)

    def test_of_many_daemons_started_at_once_exactly_one_serves_and_a_killed_ones_socket_needs_no_hand(self):
        for race in range(RACES):
            # Each race finds the socket that the kill -9 of the one before has left; now and then a new home.
            if race % 20 == 0:
                home = self.folder / f"h{race}"
            else:
                self.assertTrue((home / "nutward.sock").exists())
            daemons = [shop.Daemon(home) for _ in range(STARTERS)]
            try:
                self.one_winner(daemons)
            finally:
                for daemon in daemons:
                    daemon.gone()

    def one_winner(self, daemons):
        deadline = time.monotonic() + 60
        while sum(d.process.poll() is None for d in daemons) > 1 and time.monotonic() < deadline:
            time.sleep(0.001)
        running = [d for d in daemons if d.process.poll() is None]
        self.assertEqual(len(running), 1, [d.said() for d in daemons])
        winner, = running
        winner.ready()
        for daemon in daemons:
            if daemon is not winner:
                self.assertEqual(daemon.ended(), 1)
                self.assertIn("is already open", daemon.said())
        client = winner.client()
        client.connection.connect()
        pid = int.from_bytes(client.connection.sock.getsockopt(socket.SOL_SOCKET, socket.SO_PEERCRED, 4), "little")
        client.close()
        self.assertEqual(pid, winner.process.pid)
        winner.kill()


class Homes(shop.ShopCase):
    def test_a_newer_database_is_refused_and_untouched_byte_for_byte(self):
        self.with_demo()
        with shop.database(self.home) as file:
            file.execute("PRAGMA user_version = 99")
        before = digests(self.home)
        code, said = shop.refused_start(self.home)
        self.assertEqual(code, 1)
        for words in ("newer version", "99", "nothing in it was touched", "Install the newer version"):
            self.assertIn(words, said)
        self.assertEqual(digests(self.home), before)
        self.assertFalse((self.home / "nutward.sock").exists())

    def test_a_newer_database_whose_daemon_was_killed_is_untouched_too_with_its_log(self):
        self.with_demo()
        daemon = self.started()
        client = self.client_of(daemon)
        client.done("add", wire="medium", length_mm=50)
        daemon.kill()
        with shop.database(self.home) as file:  # a change of the version that stands in the log only
            file.execute("PRAGMA wal_autocheckpoint = 0")
            file.execute("PRAGMA user_version = 99")
            copy = self.folder / "copy"
            shutil.copytree(self.home, copy, ignore=shutil.ignore_patterns("*.sock", "*-shm"))
        self.assertGreater((copy / "shop.db-wal").stat().st_size, 0)
        before = digests(copy)
        code, said = shop.refused_start(copy)
        self.assertEqual(code, 1)
        self.assertIn("newer version", said)
        self.assertEqual(digests(copy), before)

    def test_a_file_that_is_no_shop_is_refused_and_untouched(self):
        for content, words in ((b"Not a database at all, only words.\n" * 100, "is not a database"),
                               (None, "is the database of another program")):
            with self.subTest(words):
                shutil.rmtree(self.home, ignore_errors=True)
                self.home.mkdir()
                if content is None:
                    with shop.database(self.home) as file:
                        file.execute("CREATE TABLE theirs (x)")
                        file.commit()
                else:
                    (self.home / "shop.db").write_bytes(content)
                before = digests(self.home)
                code, said = shop.refused_start(self.home)
                self.assertEqual(code, 1)
                self.assertIn(words, said)
                self.assertIn("Give the home of a shop, or an empty folder for a new one.", said)
                self.assertEqual(digests(self.home), before)

    def test_a_home_below_a_file_is_refused_with_what_would_do(self):
        (self.folder / "file").write_text("x")
        for home in (self.folder / "file", self.folder / "file" / "h"):
            with self.subTest(str(home.name)):
                code, said = shop.refused_start(home)
                self.assertEqual(code, 1)
                self.assertIn(str(self.folder / "file"), said)
                self.assertIn("Give a folder that this user may write in", said)

    def test_a_home_that_this_user_may_not_write_is_refused_and_untouched(self):
        self.with_demo()
        before = digests(self.home)
        if os.geteuid() == 0:  # root may write everywhere: but not on a disk mounted for reading only
            mount = subprocess.run(["mount", "-t", "tmpfs", "-o", "ro,size=1m", "none", str(self.home)], capture_output=True)
            if mount.returncode != 0:
                self.skipTest("this root may not mount")
            self.addCleanup(subprocess.run, ["umount", "-l", str(self.home)])
        else:
            self.home.chmod(0o555)
            self.addCleanup(self.home.chmod, 0o755)
        code, said = shop.refused_start(self.home)
        self.assertEqual(code, 1)
        self.assertIn(str(self.home), said)
        self.assertIn("Give a folder that this user may write in", said)
        if os.geteuid() != 0:
            self.assertEqual(digests(self.home), before)

    def test_the_demo_is_not_loaded_over_a_shop_that_is_in_use(self):
        self.with_demo()
        code, said = shop.refused_start(self.home, "--demo")
        self.assertEqual(code, 1)
        self.assertIn("The demo goes into an empty home", said)
        self.assert_all_well()

    def test_a_socket_path_that_the_system_cannot_take_is_refused_with_what_would_do(self):
        code, said = shop.refused_start(self.folder / ("long" * 30))
        self.assertEqual(code, 1)
        self.assertIn("Choose a home with a shorter path", said)

    def test_a_configuration_that_is_wrong_is_refused_with_exit_2(self):
        self.home.mkdir()
        for text, words in (("[door", "line 1"), ("[door]\ncolour = \"red\"\n", "door.group"),
                            ("[receivers]\nnetworks = \"10.0.0.0/99\"\n", "10.0.0.0/99")):
            with self.subTest(text):
                (self.home / "nutward.toml").write_text(text)
                code, said = shop.refused_start(self.home)
                self.assertEqual(code, 2, said)
                self.assertIn(words, said)
                self.assertFalse((self.home / "shop.db").exists())


if __name__ == "__main__":
    shop.main()
