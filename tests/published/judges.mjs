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
};

const judge = judges[process.argv[2]]();
const lines = readFileSync(0, "utf8").split("\n").slice(0, -1);
process.stdout.write(lines.map((line) => judge(line) + "\n").join(""));
