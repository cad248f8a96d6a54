// Programs of other people that judge what the sentence layer makes of a text:
//   node judges.mjs dates|letters|utf8 < LINES       one line comes out for each that goes in
// NODE_PATH names the folder that holds the package chrono-node; the others need ICU alone, which comes with node.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

// require, not import: only require looks into NODE_PATH.
const require = createRequire(import.meta.url);

const judges = {
  // SECONDS TAB forward|nearest TAB PHRASE, in the zone of TZ: the instant that it means, in seconds; "-" where no such
  // thing, or not all of it, is read.
  dates() {
    const chrono = require("chrono-node");
    return (line) => {
      const [now, way, phrase] = line.split("\t");
      const read = chrono.parse(phrase, new Date(1000 * now), { forwardDate: way === "forward" });
      return read.length === 1 && read[0].text === phrase ? String(read[0].date().getTime() / 1000) : "-";
    };
  },

  // A code point in hex: its lower case (NFC), itself composed (NFC) and decomposed (NFD), all as UTF-8 in hex, and what it is:
  // l a letter or mark, z a space, d a dash, o of our scripts, c without a shape of its own.
  letters() {
    return (line) => {
      const c = String.fromCodePoint(parseInt(line, 16));
      const is = kinds.filter(([, of]) => of.test(c)).map(([kind]) => kind);
      return [hex(c.toLowerCase().normalize("NFC")), hex(c.normalize("NFC")), hex(c.normalize("NFD")), is.join("") || "-"].join(" ");
    };
  },

  // Bytes in hex: 1 where they are UTF-8.
  utf8() {
    const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
    return (line) => {
      try {
        decoder.decode(Buffer.from(line, "hex"));
        return "1";
      } catch {
        return "0";
      }
    };
  },
};

const hex = (text) => Buffer.from(text, "utf8").toString("hex");
const kinds = [
  ["l", /[\p{L}\p{M}]/u],
  ["z", /\p{Z}/u],
  ["d", /\p{Pd}/u],
  ["o", /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}]/u],
  ["c", /\p{Cf}/u],
];

const judge = judges[process.argv[2]]();
const lines = readFileSync(0, "utf8").split("\n").slice(0, -1);
process.stdout.write(lines.map((line) => judge(line) + "\n").join(""));
