"""A receiver of webhooks on loopback for tests: real sockets, well- and ill-behaved by the path of the URL.

    receiver.py SECRETFILE [CERTIFICATE KEY]      (with the last two: https)

Prints `listening PORT`, then one line of JSON for each whole request that it read:
{"path", "verified" (null or what is wrong), "headers" (names in lower case), "body"}. Ends when its stdin closes.
Paths: /good, /status/NNN[/RETRY-AFTER], and the names in MISBEHAVE below.
"""
import importlib.util
import json
import os
import socket
import ssl
import struct
import sys
import threading
import time
import urllib.parse

_place = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "deploy", "receiver.py")
_spec = importlib.util.spec_from_file_location("demo_receiver", _place)
demo = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(demo)

OK = b"HTTP/1.1 200 OK\r\n"
printing = threading.Lock()
arrivals = threading.Condition()
arrived = 0


def read_request(connection):
    data = b""
    while b"\r\n\r\n" not in data:
        got = connection.recv(65536)
        if not got:
            return None
        data += got
    head, body = data.split(b"\r\n\r\n", 1)
    lines = head.decode("latin-1").split("\r\n")
    headers = {name.lower(): value.strip() for name, value in (line.split(":", 1) for line in lines[1:])}
    while len(body) < int(headers.get("content-length", "0")):
        got = connection.recv(65536)
        if not got:
            return None
        body += got
    return urllib.parse.unquote(lines[0].split(" ")[1]), headers, body


def hang(connection):
    while connection.recv(65536):
        pass


def repeat(connection, piece, first=b"", pause=0.0):
    connection.sendall(first)
    while True:
        connection.sendall(piece)
        time.sleep(pause)


def then_hang(connection, data):
    connection.sendall(data)
    hang(connection)


def reset(connection):
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))


def after_another(connection):
    """Takes the message only a moment after another one has come and been answered."""
    with arrivals:
        before = arrived
        arrivals.wait_for(lambda: arrived > before)
    time.sleep(0.3)
    connection.sendall(b"HTTP/1.1 204 No Content\r\n\r\n")


def redirect(status):
    def answer(connection):
        location = f"http://127.0.0.1:{connection.getsockname()[1]}/good"
        connection.sendall(f"HTTP/1.1 {status} Elsewhere\r\nLocation: {location}\r\nContent-Length: 0\r\n\r\n".encode())
    return answer


MISBEHAVE = {
    "silent": hang,
    "after-another": after_another,
    "close": lambda c: None,
    "reset": reset,
    "garbage": lambda c: c.sendall(bytes(range(256)) * 8),
    "no-status-line": lambda c: c.sendall(b"thank you"),
    "trickled-headers": lambda c: repeat(c, b"X-Slow: 1\r\n", OK, 0.2),
    "endless-headers": lambda c: repeat(c, b"X-Filler: " + b"a" * 1000 + b"\r\n", OK),
    "endless-header-line": lambda c: repeat(c, b"a" * 4096, OK + b"X-Filler: "),
    "endless-status-line": lambda c: repeat(c, b"a" * 4096, b"HTTP/1.1 200 "),
    "endless-continue": lambda c: repeat(c, b"HTTP/1.1 100 Continue\r\n\r\n" * 50),
    "continue-then-silent": lambda c: then_hang(c, b"HTTP/1.1 100 Continue\r\n\r\n"),
    "redirect-302": redirect(302),
    "redirect-307": redirect(307),
    "redirect-308": redirect(308),
    "endless-body": lambda c: repeat(c, b"a" * 65536, OK + b"\r\n"),
    "endless-error-body": lambda c: repeat(c, b"a" * 65536, b"HTTP/1.1 500 No\r\n\r\n"),
    "trickled-body": lambda c: repeat(c, b"a", OK + b"\r\n", 0.2),
    "longer-than-sent": lambda c: c.sendall(OK + b"Content-Length: 1000\r\n\r\nshort"),
    "huge-length": lambda c: then_hang(c, OK + b"Content-Length: 999999999999999\r\n\r\nx"),
    "length-not-a-number": lambda c: c.sendall(OK + b"Content-Length: -5\r\n\r\n"),
    "bad-chunk": lambda c: c.sendall(OK + b"Transfer-Encoding: chunked\r\n\r\nzz\r\nno\r\n0\r\n\r\n"),
    "endless-chunks": lambda c: repeat(c, b"400\r\n" + b"a" * 1024 + b"\r\n", OK + b"Transfer-Encoding: chunked\r\n\r\n"),
}


def respond(connection, path):
    name, *rest = path.strip("/").split("/")
    if name == "good":
        connection.sendall(b"HTTP/1.1 204 No Content\r\n\r\n")
    elif name == "status":
        extra = f"Retry-After: {rest[1]}\r\n" if len(rest) > 1 else ""
        connection.sendall(f"HTTP/1.1 {rest[0]} As told\r\n{extra}Content-Length: 0\r\n\r\n".encode())
    else:
        MISBEHAVE[name](connection)


def serve(connection, keys, context):
    global arrived
    try:
        if context:
            connection = context.wrap_socket(connection, server_side=True)
        with connection:
            request = read_request(connection)
            if request is None:
                return
            path, headers, body = request
            line = {"path": path, "verified": demo.verify(headers, body, keys), "headers": headers,
                    "body": body.decode("utf-8", "replace")}
            with printing:
                print(json.dumps(line), flush=True)
            with arrivals:
                arrived += 1
                arrivals.notify_all()
            respond(connection, path)
    except OSError:
        pass  # the other side gave up, as it should


def main(arguments):
    keys = demo.read_secrets(arguments[0])
    context = None
    if len(arguments) == 3:
        context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
        context.load_cert_chain(arguments[1], arguments[2])
    listener = socket.create_server(("127.0.0.1", 0), backlog=256)
    print(f"listening {listener.getsockname()[1]}", flush=True)

    def accept():
        while True:
            connection, _ = listener.accept()
            threading.Thread(target=serve, args=(connection, keys, context), daemon=True).start()

    threading.Thread(target=accept, daemon=True).start()
    sys.stdin.read()


if __name__ == "__main__":
    main(sys.argv[1:])
