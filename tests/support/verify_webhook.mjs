// Verifies one delivery with the `standardwebhooks` package, someone else's reading of the standard.
//   node verify_webhook.mjs SECRET < LINE      LINE: one line of tests/support/receiver.py
// NODE_PATH names the folder that holds the package. Exit 0: verified; 1: not; 2: the package is missing.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

// require, not import: only require looks into NODE_PATH.
const require = createRequire(import.meta.url);
let Webhook;
try {
  ({ Webhook } = require("standardwebhooks"));
} catch (error) {
  console.error(`standardwebhooks is not installed: ${error.message}`);
  process.exit(2);
}

const { headers, body } = JSON.parse(readFileSync(0, "utf8"));
try {
  new Webhook(process.argv[2]).verify(body, headers);
} catch (error) {
  console.error(`not verified: ${error.message}`);
  process.exit(1);
}
