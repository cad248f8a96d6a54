// The real daemon with its demo shop, and requests to it: well-formed ones, and bytes as told.
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import http from "node:http";
import net from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";

const pause = (ms) => new Promise((done) => setTimeout(done, ms));

export class Shop {
  static async open(nutwardd) {
    const shop = new Shop();
    shop.folder = mkdtempSync(join(tmpdir(), "nw-")); // short: a socket's path may have 107 bytes
    shop.home = join(shop.folder, "h");
    shop.socket = join(shop.home, "nutward.sock");
    shop.log = "";
    shop.daemon = spawn(nutwardd, ["--home", shop.home, "--demo", "--http", "127.0.0.1:0"], { stdio: ["ignore", "pipe", "pipe"] });
    shop.daemon.stderr.on("data", (bytes) => (shop.log += bytes));
    shop.ended = new Promise((done) => shop.daemon.on("exit", (code, signal) => done(code ?? signal)));
    const address = /127\.0\.0\.1:(\d+)/;
    for (let i = 0; i < 1200 && !address.test(shop.log) && shop.daemon.exitCode === null; ++i) await pause(50);
    if (!address.test(shop.log)) throw new Error(`The daemon did not come up: ${shop.log}`);
    shop.port = Number(address.exec(shop.log)[1]);
    shop.token = readFileSync(join(shop.home, "http.token"), "utf8").trim();
    shop.agent = new http.Agent({ keepAlive: true, maxSockets: 1 });
    return shop;
  }

  // SIGTERM; the daemon must end well.
  async close() {
    this.agent.destroy();
    this.daemon.kill("SIGTERM");
    const code = await this.ended;
    rmSync(this.folder, { recursive: true, force: true });
    if (code !== 0) throw new Error(`The daemon ended with ${code}: ${this.log}`);
  }

  send(method, target, { body, headers = {}, tcp = false } = {}) {
    const where = tcp ? { host: "127.0.0.1", port: this.port } : { socketPath: this.socket, agent: this.agent };
    const said = { Host: tcp ? `127.0.0.1:${this.port}` : "shop", ...headers };
    if (body !== undefined) said["Content-Length"] = Buffer.byteLength(body);
    return new Promise((done, fail) => {
      const request = http.request({ ...where, method, path: target, headers: said }, (response) => {
        const parts = [];
        response.on("data", (part) => parts.push(part));
        response.on("end", () => done({ status: response.statusCode, headers: response.headers, body: Buffer.concat(parts).toString() }));
      });
      request.on("error", fail);
      request.end(body);
    });
  }

  post(target, value, more = {}) {
    const headers = { "Content-Type": "application/json", ...more.headers };
    return this.send("POST", target, { ...more, headers, body: typeof value === "string" ? value : JSON.stringify(value) });
  }

  // What comes back for these bytes until the daemon hangs up.
  raw(bytes) {
    return new Promise((done, fail) => {
      let got = "";
      const connection = net.connect(this.socket, () => connection.write(bytes));
      connection.on("data", (part) => (got += part));
      connection.on("error", fail);
      connection.on("close", () => {
        const [head, body = ""] = got.split("\r\n\r\n");
        const [line, ...fields] = head.split("\r\n");
        const headers = Object.fromEntries(fields.map((f) => [f.slice(0, f.indexOf(":")).toLowerCase(), f.slice(f.indexOf(":") + 1).trim()]));
        done({ status: Number(line.split(" ")[1]), headers, body });
      });
    });
  }
}
