import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import type { Plugin } from "vite";
import { chunkName } from "../chunkName.ts";
import { takeApart } from "./takeApart.ts";

/** A script with less than this in it [characters of JSON] is not worth a file more. */
const LEAST = 4_000;

const own = ["constantOf", "reachWithin", "takeApart", "constantsApart"].map(
  (name) => new URL(`./${name}.ts`, import.meta.url),
);
const way = createHash("sha256")
  .update(own.map((file) => readFileSync(file, "utf8")).join(""))
  .digest("hex");

function freeName(code: string, wish: string): string {
  let name = wish;
  while (code.includes(name)) name += "_";
  return name;
}

/**
 * Puts the constants of finished scripts into files of data beside them: the catalog of rules, labels, help, formulas,
 * examples, tables of numbers. A browser reads data many times faster than script, and only what computes is script.
 * Everything stays declared where it is declared.
 */
export function constantsApart(): Plugin {
  return {
    name: "constants-apart",
    enforce: "post",
    // Names of files follow what is in them: another way of taking them apart gives other files.
    augmentChunkHash: () => way,
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        for (const chunk of Object.values(bundle)) {
          if (chunk.type !== "chunk") continue;
          const names = { next: freeName(chunk.code, "next"), numbered: freeName(chunk.code, "kept") };
          const { code, inOrder, numbered } = takeApart(chunk.code, names);
          const source = JSON.stringify([inOrder, numbered]);
          if (source.length < LEAST) continue;
          const file = this.getFileName(
            this.emitFile({ type: "asset", name: `${chunkName(chunk.name)}.json`, source }),
          );
          const address = `new URL("./${file.slice(file.lastIndexOf("/") + 1)}",import.meta.url)`;
          const read = `await fetch(${address}).then(a=>{if(!a.ok)throw new Error(a.url+": "+a.status);return a.json()})`;
          chunk.code = `const[${names.next}s,${names.numbered}]=${read};let ${names.next}i=0;function ${names.next}(){return ${names.next}s[${names.next}i++]}${code}`;
        }
      },
    },
  };
}
