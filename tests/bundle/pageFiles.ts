import { existsSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { gzipSync } from "node:zlib";

/** A file that a page asks for. */
export interface PageFile {
  /** From the folder of the site. */
  readonly path: string;
  readonly bytes: number;
  /** Compressed as servers do at their best. */
  readonly gzip: number;
}

/** What a page and its workers may load: script and data, each file once. */
export interface PageFiles {
  readonly scripts: readonly PageFile[];
  readonly data: readonly PageFile[];
}

const INLINE =
  /<script(?![^>]*\ssrc=)(?![^>]*type="(?:speculationrules|application)[^>]*)[^>]*>([\s\S]*?)<\/script>/g;
const SCRIPT_OF_PAGE = /<script\b[^>]*?\ssrc="\/?([^"]+\.js)"/g;
/** Names of files in a script, in whatever way it asks for them. */
const NAMED = /["'`]([\w./-]+\.(?:js|json))["'`]/g;

/**
 * Every script that can come to run on a page of a built site, and the data that these scripts name: what the page
 * starts, what that imports, at once or later, and workers.
 * @param folder of the built site
 * @param page path of its HTML file in it
 * @param apart what is not followed: files that this page names and does not load itself
 * @throws Error when the page starts no script
 */
export function pageFiles(folder: string, page: string, apart = /^$/): PageFiles {
  const found = new Map<string, PageFile>();
  const keep = (path: string, bytes: Uint8Array) =>
    found.set(path, { path, bytes: bytes.length, gzip: gzipSync(bytes, { level: 9 }).length });
  const read = (path: string): void => {
    if (found.has(path) || !existsSync(`${folder}/${path}`)) return;
    const bytes = readFileSync(`${folder}/${path}`);
    keep(path, bytes);
    if (!path.endsWith(".js") || apart.test(path)) return;
    for (const [, name] of bytes.toString().matchAll(NAMED)) {
      // A worker is named from the top of the site, a module from beside itself.
      for (const base of ["", posix.dirname(path)]) read(posix.join(base, name!).replace(/^\//, ""));
    }
  };
  const html = readFileSync(`${folder}/${page}`, "utf8");
  for (const [, name] of html.matchAll(SCRIPT_OF_PAGE)) read(name!);
  if (found.size === 0) throw new Error(`${page} starts no script`);
  const inline = [...html.matchAll(INLINE)].map(([, text]) => text!).join("\n");
  if (inline !== "") keep("inline.js", Buffer.from(inline));
  const all = [...found.values()].sort((a, b) => b.gzip - a.gzip);
  return {
    scripts: all.filter(({ path }) => path.endsWith(".js")),
    data: all.filter(({ path }) => path.endsWith(".json")),
  };
}
