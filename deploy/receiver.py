#!/usr/bin/env python3
"""A small receiver of webhooks, for the demo and for trying things out.

    receiver.py PORT SECRETFILE

Listens on 127.0.0.1 and prints `listening PORT` when ready (PORT 0 takes a free one), then one line for each message:
`verified TYPE "TEXT" id=ID` or `refused REASON id=ID`. SECRETFILE holds one or more secrets as `whsec_...`, one a line.
Signatures are checked as Standard Webhooks 1.0.0 says. Answers 204, or 401 to what it refuses. Ends on SIGTERM.
Needs nothing but Python 3.
"""
import base64
import hashlib
import hmac
import http.server
import json
import signal
import sys
import threading
import time

TOLERANCE_S = 5 * 60
LARGEST_BODY = 256 * 1024


def read_secrets(path):
    with open(path, encoding="ascii") as file:
        lines = [line.strip() for line in file if line.strip()]
    if not lines or not all(line.startswith("whsec_") for line in lines):
        raise SystemExit(f"{path} must hold secrets as whsec_..., one a line.")
    return [base64.b64decode(line[len("whsec_"):], validate=True) for line in lines]


def verify(headers, body, keys, now=None):
    """None if the message is genuine and fresh, else what is wrong with it."""
    message, timestamp = headers.get("webhook-id"), headers.get("webhook-timestamp")
    signatures = headers.get("webhook-signature")
    if not message or not timestamp or not signatures:
        return "a webhook header is missing"
    if not timestamp.isascii() or not timestamp.isdigit():
        return "the timestamp is not a number"
    if abs((time.time() if now is None else now) - int(timestamp)) > TOLERANCE_S:
        return "the timestamp is more than five minutes off"
    signed = f"{message}.{timestamp}.".encode() + body
    for key in keys:
        want = "v1," + base64.b64encode(hmac.new(key, signed, hashlib.sha256).digest()).decode()
        if any(hmac.compare_digest(want.encode(), got.encode()) for got in signatures.split(" ")):
            return None
    return "no signature matches"


def describe(body):
    """`TYPE "TEXT"`, escaped so that a message cannot drive the terminal."""
    try:
        message = json.loads(body)
        return f'{json.dumps(message.get("type", "-"))[1:-1]} {json.dumps(message.get("text", ""))}'
    except (ValueError, AttributeError, TypeError):
        return "- (not a JSON object)"


def handler(keys):
    lock = threading.Lock()

    class Receiver(http.server.BaseHTTPRequestHandler):
        protocol_version = "HTTP/1.1"
        timeout = 15

        def do_POST(self):
            length = self.headers.get("Content-Length", "")
            if not length.isdigit() or int(length) > LARGEST_BODY:
                self.close_connection = True
                return self.answer(413 if length.isdigit() else 411)
            body = self.rfile.read(int(length))
            wrong = verify(self.headers, body, keys)
            identity = json.dumps(self.headers.get("webhook-id", "-"))[1:-1]
            self.answer(401 if wrong else 204)
            with lock:
                print(f"refused {wrong} id={identity}" if wrong else f"verified {describe(body)} id={identity}", flush=True)

        def answer(self, status):
            self.send_response(status)
            if status != 204:
                self.send_header("Content-Length", "0")
            self.end_headers()

        def log_message(self, *_):
            pass

    return Receiver


def main(arguments):
    if len(arguments) != 2 or not arguments[0].isdigit():
        raise SystemExit("usage: receiver.py PORT SECRETFILE")
    keys = read_secrets(arguments[1])
    server = http.server.ThreadingHTTPServer(("127.0.0.1", int(arguments[0])), handler(keys))
    # shutdown() waits for serve_forever(), which this thread is in: so it is asked for from another one.
    signal.signal(signal.SIGTERM, lambda *_: threading.Thread(target=server.shutdown).start())
    print(f"listening {server.server_address[1]}", flush=True)
    try:
        server.serve_forever()
    except KeyboardInterrupt:
        pass
    server.server_close()


if __name__ == "__main__":
    main(sys.argv[1:])
