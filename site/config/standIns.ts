import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const at = (name: string) => fileURLToPath(new URL(`../src/worker/standIns/${name}.ts`, import.meta.url));

/** Modules in place of which a worker takes one of ours, since they do far more than it asks of them. */
const packages: Readonly<Record<string, string>> = {
  "jsonpath-plus": at("noPaths"),
  eventemitter2: at("noListeners"),
  "hash-it": at("noHashes"),
  clone: at("plainCopy"),
  "preact-render-to-string": at("markup"),
  "preact/jsx-runtime": at("markup"),
};

/** The same for files within a package, by the end of their path: the text in their place. */
const files: Readonly<Record<string, string>> = {
  // Build files are read and written with the smallest schema of YAML: everything is a text.
  "/yaml/browser/dist/schema/tags.js": `
    import { map } from "./common/map.js";
    import { seq } from "./common/seq.js";
    import { string } from "./common/string.js";
    export const coreKnownTags = {};
    export function getTags(custom, name) {
      if (custom !== undefined || name !== "failsafe") throw new Error("a worker reads plain texts only");
      return [map, seq, string];
    }`,
  "/yaml/browser/dist/schema/yaml-1.1/merge.js": `
    export const merge = {};
    export const isMergeKey = () => false;
    export function addMergeToJSMap() {
      throw new Error("a worker merges no keys");
    }`,
  "/yaml/browser/dist/doc/applyReviver.js": `
    export function applyReviver() {
      throw new Error("a worker reads what is written");
    }`,
  "/yaml/browser/dist/parse/cst-visit.js": `
    export function visit() {
      throw new Error("a worker visits no tokens");
    }`,
  // Conditions of ours are put with operators of ours only (judge/runEngine.ts).
  "/json-rules-engine/dist/engine-default-operators.js": "export default [];",
  "/json-rules-engine/dist/engine-default-operator-decorators.js": "export default [];",
  "/json-rules-engine/dist/operator-decorator.js": `
    export default function NoDecorator() {
      throw new Error("operators are not decorated in a worker");
    }`,
  "/json-rules-engine/dist/debug.js": "export default () => {};",
  // The tests hold the shipped sets to this; a worker knows no others.
  "/core/dist/sets/checkSet.js": "export const checkSet = () => [];",
  // Nothing in a worker asks for engines drawn within the tolerances.
  "/core/dist/judge/sampleVerdicts.js": `
    export const MOST_DRAWS = 0;
    export function checkDrawing() {
      throw new Error("a worker draws no engines");
    }
    export const sampleInSteps = checkDrawing;
    export const sampleVerdicts = checkDrawing;`,
  "/core/dist/report/describeLikely.js": `
    export function likelyLines(verdict, { statistics }) {
      if (statistics !== undefined) spreadText();
      return [];
    }
    export function spreadText() {
      throw new Error("a worker draws no engines and explains no quantity");
    }
    export const rootSumSquareText = spreadText;
    export const sampledText = spreadText;`,
  // A worker knows the shipped rules only, which were validated when the catalog was built.
  "/generated/validateRuleFile.js": "export default () => true;",
};

/** Puts the stand-ins in place. @throws Error at the end of a build in which one of them stood in for nothing */
export function standIns(): Plugin {
  const unused = new Set([...Object.keys(packages), ...Object.keys(files)]);
  return {
    name: "stand-ins",
    enforce: "pre",
    resolveId(id) {
      const own = packages[id];
      if (own !== undefined) unused.delete(id);
      return own;
    },
    load(id) {
      const end = Object.keys(files).find((one) => id.endsWith(one));
      if (end === undefined) return undefined;
      unused.delete(end);
      return files[end];
    },
    generateBundle() {
      if (unused.size > 0)
        throw new Error(`nothing asks for ${[...unused].join(", ")}: no stand-in is needed`);
    },
  };
}
