// What the daemon answers is as schema/http/nutward.json describes it:
//   node answers.mjs NUTWARDD DIALOGUES SOURCE      DIALOGUES: the program that runs tests/dialogues
// Asks every question and does every command (calls.txt), says every example and every sentence of the dialogues, goes
// wrong in every way that can be gone wrong in, and judges whatever comes back; also what the dialogues' own shops answer.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Description } from "./description.mjs";
import { Shop } from "./shop.mjs";

const [nutwardd, dialogues, source] = process.argv.slice(2);
const description = new Description(join(source, "schema/http/nutward.json"));
const taken = new Set(); // operations that were answered with 200 and judged
const statuses = new Map();
let judged = 0;
const complaints = [];

function complain(about, found) {
  for (const one of found) complaints.push(`${about}: ${one}`);
}

// Judges one answer; `status` is the one it should have (undefined: any).
function judge(method, target, answer, status, about = `${method} ${target}`) {
  const path = target.split("?")[0];
  ++judged;
  statuses.set(answer.status, (statuses.get(answer.status) ?? 0) + 1);
  complain(about, description.answer(method, path, answer).map((c) => `${c} in ${answer.status} ${answer.body.slice(0, 400)}`));
  if (status !== undefined && answer.status !== status)
    complain(about, [`${answer.status}, not ${status}: ${answer.body.slice(0, 400)}`]);
  if (answer.status === 200) taken.add(`${method} ${description.template(path)}`);
  return answer;
}

const now = Date.now();
const filled = (text) => text
  .replace(/DAY([+-]\d+)/g, (_, n) => new Date(now + n * 86400e3).toISOString().slice(0, 10))
  .replace(/HOURS([+-]\d+)/g, (_, n) => new Date(now + n * 3600e3).toISOString().replace(/\.\d+/, ""));

async function play(shop, line) {
  const [, wanted, name, query = "", json] = /^(?:(\d+) )?([a-z-]+)(\?\S+)? (\{.*\})$/.exec(line);
  const status = Number(wanted ?? 200);
  const sent = JSON.parse(filled(json));
  if (!description.has(`/v1/ask/${name}`)) {
    const answer = judge("POST", `/v1/do/${name}${query}`, await shop.post(`/v1/do/${name}${query}`, sent), status, line);
    if (answer.status === 200) complain(line, description.request("POST", `/v1/do/${name}`, sent));
    return;
  }
  const target = `/v1/ask/${name}?${new URLSearchParams(sent)}`;
  const answer = judge("GET", target, await shop.send("GET", target), status, line);
  if (answer.status === 200) complain(line, description.request("GET", `/v1/ask/${name}`, sent));
}

const lines = (file) => readFileSync(file, "utf8").split("\n").filter((line) => line !== "" && !line.startsWith("#"));

async function say(shop, text, conversation) {
  judge("POST", "/v1/say", await shop.post("/v1/say", conversation ? { text, conversation } : { text }), 200, `say "${text}"`);
}

async function sentences(shop) {
  const help = JSON.parse((await shop.send("GET", "/v1/ask/help")).body);
  for (const { name } of help.data.rows) {
    const { data } = JSON.parse((await shop.send("GET", `/v1/ask/help?topic=${name}`)).body);
    for (const example of data.examples) await say(shop, example);
  }
  const folder = join(source, "tests/dialogues");
  for (const file of readdirSync(folder).filter((name) => name.endsWith(".txt"))) {
    for (const line of lines(join(folder, file)).filter((l) => /^(>|shop) /.test(l)))
      await say(shop, line.slice(line.indexOf(" ") + 1), file);
  }
}

// The judge must be able to find fault: with a field too many, one too few, one of another type, another kind, another
// status, another media type.
async function planted(shop) {
  const good = await shop.send("GET", "/v1/ask/fit?slot=3&job=1");
  const faults = {
    "a field too many": (a) => (a.data.colour = "red"),
    "a field too many, deeper": (a) => (a.data.pieces[0].colour = "red"),
    "a field too few": (a) => delete a.data.need.cut_mm,
    "a null where none may be": (a) => (a.data.need.cut_mm = null),
    "a text for a number": (a) => (a.data.wire = "2"),
    "a word that is none of the options": (a) => (a.data.pieces[0].kind = "plank"),
    "another kind": (a) => (a.kind = "place"),
    "a choice of nothing known": (a) => (a.choices[0].call.row = "saw"),
    "a choice with an argument too many": (a) => (a.choices[0].call.with.colour = 1),
  };
  for (const [what, spoil] of Object.entries(faults)) {
    const answer = JSON.parse(good.body);
    spoil(answer);
    if (description.answer("GET", "/v1/ask/fit", { ...good, body: JSON.stringify(answer) }).length === 0)
      complain("the judge", [`it passes ${what}`]);
  }
  for (const [what, spoilt] of Object.entries({ "another status": { status: 201 }, "another type": { headers: { "content-type": "text/html" } } })) {
    if (description.answer("GET", "/v1/ask/fit", { ...good, ...spoilt }).length === 0) complain("the judge", [`it passes ${what}`]);
  }
  const due = await shop.send("GET", "/v1/ask/jobs");
  const undated = due.body.replace(/"due_at":"[^"]*"/, '"due_at":"tomorrow"');
  if (undated === due.body || description.answer("GET", "/v1/ask/jobs", { ...due, body: undated }).length === 0)
    complain("the judge", ["it passes a time that is none"]);
}

async function lists(shop) {
  const two = { calls: [{ do: "hold", with: { piece: 20, job: 1 } }, { do: "add", with: { wire: "medium", count: 2 } }, { do: "undo" }] };
  judge("POST", "/v1/do", await shop.post("/v1/do", two), 422);
  two.calls.pop();
  complain("a list", description.request("POST", "/v1/do", two));
  judge("POST", "/v1/do", await shop.post("/v1/do", two, { headers: { "Idempotency-Key": '"a"' } }), 200);
  judge("POST", "/v1/do", await shop.post("/v1/do", two, { headers: { "Idempotency-Key": '"a"' } }), 200, "the same again");
  two.calls.pop();
  judge("POST", "/v1/do", await shop.post("/v1/do", two, { headers: { "Idempotency-Key": '"a"' } }), 422, "the key again");
  judge("POST", "/v1/do", await shop.post("/v1/do", two), 200, "a list of one");
  judge("POST", "/v1/do", await shop.post("/v1/do", { calls: [] }), 422);
}

async function door(shop) {
  const json = { "Content-Type": "application/json" };
  const bearer = { Authorization: `Bearer ${shop.token}` };
  judge("GET", "/v1/health", await shop.send("GET", "/v1/health"), 200);
  judge("GET", "/v1/ask/nothing", await shop.send("GET", "/v1/ask/nothing"), 404);
  judge("POST", "/v1/do/nothing", await shop.post("/v1/do/nothing", {}), 404);
  judge("GET", "/v2", await shop.send("GET", "/v2"), 404);
  judge("DELETE", "/v1/say", await shop.send("DELETE", "/v1/say"), 405);
  judge("GET", "/v1/do/use", await shop.send("GET", "/v1/do/use"), 405);
  judge("POST", "/v1/say", await shop.send("POST", "/v1/say", { body: "{}", headers: { "Content-Type": "text/plain" } }), 415);
  judge("POST", "/v1/say", await shop.post("/v1/say", "{"), 422, "broken JSON");
  judge("POST", "/v1/say", await shop.post("/v1/say", { text: 1 }), 422, "no text");
  judge("POST", "/v1/say", await shop.post("/v1/say", { text: "x", mood: "y" }), 422, "a field too many");
  judge("POST", "/v1/do/use", await shop.post("/v1/do/use", "[]"), 422, "a list for an object");
  judge("POST", "/v1/say", await shop.post("/v1/say", JSON.stringify({ text: "x".repeat(300 * 1024) })), 413);
  judge("GET", "/v1/health", await shop.send("GET", "/v1/health", { headers: { "X-Long": "x".repeat(9000) } }), 431);
  judge("GET", "/v1/ask/fit", await shop.send("GET", "/v1/ask/fit?slot=%zz"), 422);
  judge("GET", "/v1/health", await shop.send("GET", `/v1/health?token=${"0".repeat(64)}`), 400);

  const framed = async (bytes, status) => {
    const [method, target] = bytes.split(" ");
    judge(method, target, await shop.raw(bytes), status, bytes.split("\r\n")[0]);
  };
  await framed("GET /v1/health HTTP/1.1\r\n\r\n", 400);
  await framed("GET /v1/health HTTP/9.9\r\nHost: shop\r\n\r\n", 505);
  await framed("POST /v1/say HTTP/1.1\r\nHost: shop\r\n\r\n", 411);
  await framed("POST /v1/say HTTP/1.1\r\nHost: shop\r\nExpect: tea\r\nContent-Length: 0\r\n\r\n", 417);
  await framed("POST /v1/say HTTP/1.1\r\nHost: shop\r\nTransfer-Encoding: gzip\r\n\r\n", 501);

  const tcp = { tcp: true };
  judge("GET", "/v1/ask/due", await shop.send("GET", "/v1/ask/due", { tcp: true, headers: bearer }), 200, "over TCP");
  judge("GET", "/v1/ask/due", await shop.send("GET", "/v1/ask/due", tcp), 401);
  judge("GET", "/v1/ask/due", await shop.send("GET", "/v1/ask/due", { tcp: true, headers: { ...bearer, Host: "shop.example" } }), 421);
  judge("GET", "/v1/ask/due", await shop.send("GET", "/v1/ask/due", { tcp: true, headers: { ...bearer, Origin: "http://a.example" } }), 403);
  const granted = judge("POST", "/v1/tokens", await shop.post("/v1/tokens", { name: "tablet", role: "look" }), 200);
  judge("POST", "/v1/tokens", await shop.post("/v1/tokens", { name: "tablet", role: "look" }), 409);
  judge("GET", "/v1/tokens", await shop.send("GET", "/v1/tokens"), 200);
  judge("GET", "/v1/tokens", await shop.send("GET", "/v1/tokens", { tcp: true, headers: bearer }), undefined, "tokens over TCP");
  const looks = { Authorization: `Bearer ${JSON.parse(granted.body).data.token}`, ...json };
  judge("POST", "/v1/do/undo", await shop.post("/v1/do/undo", {}, { tcp: true, headers: looks }), 403);
  judge("DELETE", "/v1/tokens/tablet", await shop.send("DELETE", "/v1/tokens/tablet"), 200);
  judge("DELETE", "/v1/tokens/tablet", await shop.send("DELETE", "/v1/tokens/tablet"), 422);
}

// What the dialogues answer in shops of their own, as it would be sent.
function recorded() {
  const folder = mkdtempSync(join(tmpdir(), "nw-"));
  try {
    const file = join(folder, "answers");
    execFileSync(dialogues, ["--record", file, join(source, "tests/dialogues")], { stdio: ["ignore", "ignore", "inherit"] });
    const answers = lines(file);
    for (const answer of answers) {
      ++judged;
      complain("a dialogue", description.judgedAsItsKind("/components/schemas/said-answer", JSON.parse(answer)).map((c) => `${c} in ${answer.slice(0, 600)}`));
    }
    if (answers.length < 100) complain("the dialogues", [`they gave ${answers.length} answers only`]);
  } catch (error) {
    complain("the dialogues", [error.message]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const shop = await Shop.open(nutwardd);
try {
  const late = shop.raw("GET /v1/health HTTP/1.1\r\nHost: sh"); // 408 when its time is up
  await planted(shop);
  for (const line of lines(join(source, "tests/described/calls.txt"))) await play(shop, line);
  await lists(shop);
  await sentences(shop);
  await door(shop);
  recorded();
  judge("GET", "/v1/health", await late, 408, "half a request");
} finally {
  await shop.close();
}
for (const operation of description.operations()) {
  if (!taken.has(operation))
    complain(operation, ["no answer of it was judged: add a call to tests/described/calls.txt that is taken in the demo shop"]);
}
console.log(`${judged} answers judged; ${[...statuses].sort().map(([s, n]) => `${n} with ${s}`).join(", ")}.`);
for (const complaint of complaints.slice(0, 60)) console.error(complaint);
if (complaints.length > 0) {
  console.error(`${complaints.length} complaints. Where a row's data has changed, change its \`gives\`, then: sh schema/http/describe.sh BUILD`);
  process.exit(1);
}
