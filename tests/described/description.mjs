// schema/http/nutward.json as a judge of what is sent and answered. The judging is done by ajv, which other people wrote.
// NODE_PATH names the folder that holds ajv and ajv-formats.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

const require = createRequire(import.meta.url); // require, not import: only require looks into NODE_PATH
const Ajv = require("ajv/dist/2020").default;
const addFormats = require("ajv-formats").default;

const escaped = (part) => part.replaceAll("~", "~0").replaceAll("/", "~1");

export class Description {
  constructor(file) {
    this.document = JSON.parse(readFileSync(file, "utf8"));
    this.ajv = new Ajv({ strict: true, strictRequired: false, strictTypes: false, allErrors: true });
    addFormats(this.ajv);
    // What OpenAPI has around the schemas is no keyword of theirs.
    this.ajv.addVocabulary(Object.keys(this.document));
    this.ajv.addSchema(this.document, "nutward", undefined, false);
    this.compiled = new Map();
  }

  // "/v1/tokens/tablet" is described as "/v1/tokens/{name}"; undefined where no such address is.
  template(path) {
    if (path in this.document.paths) return path;
    const folder = path.slice(0, path.lastIndexOf("/") + 1);
    return Object.keys(this.document.paths).find((t) => t.startsWith(`${folder}{`));
  }

  operations() {
    return Object.entries(this.document.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => `${method.toUpperCase()} ${path}`));
  }

  has(path) {
    return path in this.document.paths;
  }

  // Complaints about a value, by the schema at that pointer.
  judged(pointer, value) {
    if (!this.compiled.has(pointer)) this.compiled.set(pointer, this.ajv.compile({ $ref: `nutward#${pointer}` }));
    const valid = this.compiled.get(pointer);
    if (valid(value)) return [];
    // The branches of anyOf all complain; what they are about is what lies deepest.
    const deepest = [...valid.errors].sort((a, b) => b.instancePath.length - a.instancePath.length);
    return deepest.slice(0, 6).map((e) => `${e.instancePath || "/"} ${e.message} ${JSON.stringify(e.params)}`);
  }

  // Complaints about an answer: its status must be described for that operation, and its type and body be as that says.
  // Where no operation is at the address, the refusal must be one of those that all share.
  answer(method, path, { status, headers, body }) {
    const template = this.template(path);
    const operation = this.document.paths[template]?.[method.toLowerCase()];
    let pointer = `/paths/${escaped(template ?? "")}/${method.toLowerCase()}/responses/${status}`;
    let described = operation?.responses[status];
    if (operation === undefined || described?.$ref) {
      if (operation !== undefined && !described) return [`${status} is not described`];
      pointer = `/components/responses/${status}`;
      described = this.document.components.responses[status];
    }
    if (!described) return [`${status} is not described`];
    const type = headers["content-type"];
    const content = described.content[type];
    if (!content) return [`its type is ${type}, not ${Object.keys(described.content)}`];
    const missing = Object.entries(described.headers ?? {}).filter(([name, h]) => h.required && !headers[name.toLowerCase()]);
    if (missing.length > 0) return missing.map(([name]) => `it lacks the field ${name}`);
    let value;
    try {
      value = JSON.parse(body);
    } catch (error) {
      return [`its body is no JSON: ${error.message}`];
    }
    return this.judgedAsItsKind(`${pointer}/content/${escaped(type)}/schema`, value);
  }

  // Where any of many schemas would do, the complaints are those of the one that its kind names.
  judgedAsItsKind(pointer, value) {
    const found = this.judged(pointer, value);
    const own = `/components/schemas/${value.kind}-answer`;
    if (found.length === 0 || !(`${value.kind}-answer` in this.document.components.schemas)) return found;
    const ofItsKind = this.judged(own, value);
    return ofItsKind.length > 0 ? ofItsKind : found;
  }

  // Complaints about the body or query of a request that was taken.
  request(method, path, sent) {
    const template = this.template(path);
    const operation = this.document.paths[template][method.toLowerCase()];
    if (method === "POST")
      return this.judged(`/paths/${escaped(template)}/post/requestBody/content/application~1json/schema`, sent);
    const parameters = operation.parameters ?? [];
    return Object.entries(sent).flatMap(([name, value]) => {
      const at = parameters.findIndex((p) => p.name === name);
      if (at < 0) return [`the query's ${name} is not described`];
      return this.judged(`/paths/${escaped(template)}/get/parameters/${at}/schema`, value).map((c) => `${name}: ${c}`);
    });
  }
}
