"""The second door, on the real daemon: off unless asked for, loopback only, tokens, foreign pages, slow clients.

Called as door.py NUTWARDD NUTWARD [what unittest takes].
"""
import contextlib
import http.client
import os
import pathlib
import re
import socket
import stat
import subprocess
import time

import shop

ADDRESS = re.compile(r"and http://([\d.]+|\[::1\]):(\d+) for who bears a token")


class OverTcp(shop.Client):
    """A connection over TCP; `token`: what it bears on every request."""

    def __init__(self, host, port, token=None):
        self.connection = http.client.HTTPConnection(host, port, timeout=20)
        self.always = {"Authorization": f"Bearer {token}"} if token else {}

    def send(self, method, target, body=None, headers=None):
        return super().send(method, target, body, {**self.always, **(headers or {})})


def listening(pid):
    """The TCP ports that a process listens at, by what the kernel says."""
    own = set()
    for name in os.listdir(f"/proc/{pid}/fd"):
        with contextlib.suppress(OSError):
            own.add(os.readlink(f"/proc/{pid}/fd/{name}"))
    out = []
    for family in ("tcp", "tcp6"):
        if not os.path.exists(f"/proc/{pid}/net/{family}"):
            continue
        for line in pathlib.Path(f"/proc/{pid}/net/{family}").read_text().splitlines()[1:]:
            words = line.split()
            if words[3] == "0A" and f"socket:[{words[9]}]" in own:
                out.append(int(words[1].rsplit(":", 1)[1], 16))
    return out


class Door(shop.ShopCase):
    def opened(self, *options, at="127.0.0.1:0"):
        daemon = self.started("--http", at, *options)
        self.address = ADDRESS.search(daemon.said()).groups()
        return daemon

    def token(self):
        return (self.home / "http.token").read_text().strip()

    def over_tcp(self, token=None):
        client = OverTcp(self.address[0].strip("[]"), int(self.address[1]), token)
        self.addCleanup(client.close)
        return client

    def made_token(self, daemon, role, **more):
        reply = self.client_of(daemon).post("/v1/tokens", {"name": role, "role": role, **more})
        self.assertEqual(reply.status, 200, reply)
        return reply.json["data"]["token"]

    def test_it_is_off_unless_asked_for(self):
        daemon = self.started()
        self.assertEqual(listening(daemon.process.pid), [])
        self.assertFalse((self.home / "http.token").exists())

    def test_asked_for_it_says_where_and_the_owner_s_token_opens_it(self):
        daemon = self.opened()
        self.assertEqual(listening(daemon.process.pid), [int(self.address[1])])
        self.assertEqual(stat.S_IMODE((self.home / "http.token").stat().st_mode), 0o600)
        client = self.over_tcp(self.token())
        self.assertEqual(client.done("define-wire", name="medium"), {"wire": 1})
        self.assertEqual(client.say("stock")["kind"], "stock")
        daemon.stop()
        again = self.opened()
        self.assertEqual(self.over_tcp(self.token()).ask("stock")["kind"], "stock")
        said = daemon.said() + again.said()
        self.assertEqual(said.count("A new token is in"), 1)
        self.assertNotIn("nwt_", said)
        again.stop()
        self.assert_all_well()

    def test_a_token_of_somebody_who_retired_is_made_anew_and_a_retired_owner_gets_none(self):
        daemon = self.started()
        client = self.client_of(daemon)
        client.say("what is due")
        (owner,) = client.ask("persons")["data"]["persons"]
        client.done("new-person", name="Mara", role="lead")
        daemon.stop()
        daemon = self.opened()
        first = self.token()
        client = self.client_of(daemon)
        uid = os.getuid()
        client.done("map-uid", uid=uid, person="Mara")
        client.done("retire-person", person=owner["name"])
        self.assertEqual(self.over_tcp(first).send("GET", "/v1/health").status, 401)
        daemon.stop()
        again = self.opened()
        self.assertNotEqual(self.token(), first)
        self.assertEqual(self.over_tcp(self.token()).send("GET", "/v1/health").status, 200)
        client = self.client_of(again)  # whose answers are the last that Mara's uid gets
        client.done("new-person", name="Ines", role="lead", uid=uid + 1)
        client.done("retire-person", person="Mara")
        again.stop()
        code, said = shop.refused_start(self.home, "--http", "127.0.0.1:0")
        self.assertEqual(code, 1, said)
        self.assertIn(f"Mara has retired, and is uid {uid}.", said)

    def test_only_loopback_addresses_are_listened_at_and_nothing_is_made_for_another(self):
        for at, why in (("0.0.0.0:0", "other machines could reach"), ("[::]:0", "other machines could reach"),
                        ("192.0.2.1:0", "other machines could reach"), ("bench.example:80", "is no loopback address"),
                        ("127.0.0.1", "port is missing"), ("127.0.0.1:70000", "from 0 to 65535")):
            code, said = shop.refused_start(self.home, "--http", at)
            self.assertEqual(code, 2, said)
            self.assertIn(why, said)
            self.assertIn("127.0.0.1:8765", said)
            self.assertFalse(self.home.exists())

    def test_a_token_as_an_argument_is_refused_and_not_repeated(self):
        secret = "nwt_" + "5" * 64
        code, said = shop.refused_start(self.home, "--http", f"{secret}@127.0.0.1:80")
        self.assertEqual(code, 2)
        self.assertIn("never a token", said)
        self.assertNotIn("nwt_", said)

    def test_a_port_that_is_taken_is_said(self):
        with socket.create_server(("127.0.0.1", 0)) as other:
            at = f"127.0.0.1:{other.getsockname()[1]}"
            code, said = shop.refused_start(self.home, "--http", at)
        self.assertEqual(code, 1)
        self.assertIn(f"{at} cannot be listened at: Address already in use. Choose another port", said)
        self.assertFalse((self.home / "nutward.sock").exists())

    def test_the_configuration_opens_it_too_and_the_option_goes_before(self):
        self.home.mkdir()
        (self.home / "nutward.toml").write_text('[door]\nhttp = "127.0.0.1:0"\n')
        daemon = self.started()
        self.assertRegex(daemon.said(), ADDRESS)
        daemon.stop()
        with contextlib.suppress(OSError), socket.create_server(("::1", 0), family=socket.AF_INET6):
            self.opened(at="[::1]:0")
            self.assertEqual(self.address[0], "[::1]")
            self.assertEqual(self.over_tcp(self.token()).revision() >= 0, True)
        (self.home / "nutward.toml").write_text('[door]\nhttp = "0.0.0.0:80"\n')
        self.assertEqual(shop.refused_start(self.home)[0], 2)

    def test_nobody_gets_in_without_a_token_and_every_refusal_is_a_problem(self):
        daemon = self.opened()
        for token in (None, "", "nwt_" + "0" * 64, self.token()[:-1], "whsec_abc"):
            for method, target in (("GET", "/v1/health"), ("POST", "/v1/say"), ("GET", "/nothing"), ("DELETE", "/")):
                reply = self.over_tcp(token).send(method, target, b"" if method == "POST" else None)
                self.assert_refusal(reply, status=401)
                self.assertTrue(reply.headers["WWW-Authenticate"].startswith('Bearer realm="nutward"'))
        client = self.over_tcp(self.token())
        health = client.send("HEAD", "/v1/health")
        self.assertEqual((health.status, health.body), (200, b""))
        wrong = client.send("PUT", "/v1/health", b"")
        self.assert_refusal(wrong, status=405)
        self.assertEqual(wrong.headers["Allow"], "GET, HEAD")
        self.assert_refusal(client.send("GET", "/v1/nothing"), status=404)
        for kind in ("text/plain", "application/x-www-form-urlencoded", "multipart/form-data"):
            self.assert_refusal(client.send("POST", "/v1/say", b'{"text": "stock"}', {"Content-Type": kind}), status=415)
        self.assert_refusal(client.post("/v1/say", b"[" * 33), status=422)
        self.assertEqual(client.revision(), self.client_of(daemon).revision())

    def test_a_page_from_elsewhere_has_no_effect_even_with_a_token(self):
        daemon = self.opened()
        token, before = self.token(), self.client_of(daemon).revision()
        own = f"http://{self.address[0]}:{self.address[1]}"
        foreign = [({"Host": "evil.example"}, 421), ({"Host": f"evil.example:{self.address[1]}"}, 421),
                   ({"Host": "localhost"}, 421), ({"Origin": "http://evil.example"}, 403), ({"Origin": "null"}, 403),
                   ({"Origin": own.replace("http", "https")}, 403), ({"Sec-Fetch-Site": "cross-site"}, 403),
                   ({"Sec-Fetch-Site": "same-site", "Origin": own}, 403)]
        body = b'{"name": "medium"}'
        for headers, status in foreign:
            headers = {"Content-Type": "application/json", **headers}
            reply = self.over_tcp(token).send("POST", "/v1/do/define-wire", body, headers)
            self.assert_refusal(reply, status=status)
            self.assertFalse([name for name in reply.headers if name.lower().startswith("access-control")])
        self.assertEqual(self.client_of(daemon).revision(), before)
        headers = {"Content-Type": "application/json", "Origin": own, "Sec-Fetch-Site": "same-origin"}
        self.assertEqual(self.over_tcp(token).send("POST", "/v1/do/define-wire", body, headers).status, 200)

    def test_tokens_are_made_over_the_socket_shown_once_kept_nowhere_and_withdrawn(self):
        daemon = self.opened()
        tokens = {role: self.made_token(daemon, role) for role in ("look", "bench", "lead")}
        for role, token in tokens.items():
            client = self.over_tcp(token)
            self.assertEqual(client.do("define-wire", {"name": role}).status, 403 if role == "look" else 200)
            self.assertEqual(client.do("set", {"setting": "unit", "to": "mm"}).status, 200 if role == "lead" else 403)
            self.assert_refusal(client.post("/v1/tokens", {"name": "x", "role": "look"}), status=403)
            self.assert_refusal(self.over_tcp().send("GET", f"/v1/health?token={token}"), status=400)
        self.assert_refusal(self.client_of(daemon).post("/v1/tokens", {"name": "look", "role": "look"}), status=409)
        self.assertEqual(self.client_of(daemon).send("DELETE", "/v1/tokens/bench").status, 200)
        self.assert_refusal(self.over_tcp(tokens["bench"]).send("GET", "/v1/health"), status=401)
        self.assertEqual(self.over_tcp(tokens["lead"]).revision() > 0, True)
        daemon.stop()
        everything = daemon.said().encode() + b"".join(
            path.read_bytes() for path in self.home.iterdir() if path.is_file() and path.name != "http.token")
        for token in (*tokens.values(), self.token()):
            self.assertNotIn(token[4:].encode(), everything)
        again = self.opened()
        self.assert_refusal(self.over_tcp(tokens["bench"]).send("GET", "/v1/health"), status=401)
        self.assertEqual(self.over_tcp(tokens["lead"]).revision() > 0, True)
        again.stop()
        self.assert_all_well()

    def test_the_client_asks_over_tcp(self):
        self.with_demo()
        self.opened()
        url = f"http://{self.address[0]}:{self.address[1]}"
        ask = [shop.NUTWARD, "--http", url, "--token-file", str(self.home / "http.token"), "--no-color", "jobs"]
        ran = subprocess.run(ask, capture_output=True, text=True, timeout=30)
        self.assertEqual((ran.returncode, ran.stderr), (0, ""))
        self.assertIn("octave mandolin", ran.stdout)
        wrong = self.folder / "wrong"
        wrong.write_text("nwt_" + "0" * 64 + "\n")
        wrong.chmod(0o600)
        ask[4] = str(wrong)
        ran = subprocess.run(ask, capture_output=True, text=True, timeout=30)
        self.assertEqual((ran.returncode, ran.stdout), (77, ""))
        self.assertIn("no token that is good here", ran.stderr)

    def test_slow_clients_take_nothing_from_the_unix_socket(self):
        daemon = self.opened()
        fds = f"/proc/{daemon.process.pid}/fd"
        client = self.client_of(daemon)
        client.revision()
        before = len(os.listdir(fds))
        host, port = self.address[0], int(self.address[1])
        slow = []
        try:
            for n in range(500):
                slow.append(socket.create_connection((host, port), timeout=10))
                with contextlib.suppress(OSError):
                    slow[-1].send(b"POST /v1/say HTTP/1.1\r\nHost: " if n % 2 else b"G")
                if n % 10 == 0:
                    client.revision()
                    fresh = daemon.client()  # who comes new gets in too
                    self.assertEqual(fresh.send("GET", "/v1/health").status, 200)
                    fresh.close()
            # Of the default 64 connections at most 32 are served over TCP, and as many are being turned away.
            # A few more come and go: one just accepted, the answers' own.
            self.assertLessEqual(len(os.listdir(fds)), before + 64 + 16)
            try:
                turned_away = slow[-1].recv(4096)
            except ConnectionResetError:  # what the kernel says where the door hung up on unread bytes
                turned_away = b""
            # The door hangs up, with a refusal while it has room for that.
            self.assertTrue(turned_away == b"" or b" 503 " in turned_away, turned_away)
        finally:
            for one in slow:
                one.close()
        for _ in range(200):
            if len(os.listdir(fds)) <= before + 2:
                break
            time.sleep(0.05)
        # Of the 64 none is left; the daemon may have opened a file of its own meanwhile.
        self.assertLessEqual(len(os.listdir(fds)), before + 2)
        self.assertEqual(self.over_tcp(self.token()).revision(), client.revision())


if __name__ == "__main__":
    shop.main()
