import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** What a page has to load. */
export interface BundleSize {
  /** Bytes of the minified script, and of it compressed. */
  readonly script: number;
  readonly gzip: number;
  /** Packages and files of ours that are in it. */
  readonly inputs: readonly string[];
  readonly text: string;
}

/**
 * Bundles an entry of the package for a page, from the sources of all packages.
 * @param entry `index` or `evaluator`
 */
export async function bundleSize(entry: "index" | "evaluator"): Promise<BundleSize> {
  const { outputFiles, metafile } = await build({
    entryPoints: [at(`packages/core/src/${entry}.ts`)],
    bundle: true,
    minify: true,
    format: "esm",
    platform: "browser",
    metafile: true,
    write: false,
    outdir: "out",
    alias: {
      "@trialfit/mechanics": at("packages/mechanics/src/index.ts"),
      "@trialfit/rules": at("rules/src/index.ts"),
    },
  });
  const { text, contents } = outputFiles[0]!;
  const used = Object.values(metafile.outputs)[0]!.inputs;
  return {
    script: contents.length,
    gzip: gzipSync(contents).length,
    inputs: Object.keys(used).filter((path) => used[path]!.bytesInOutput > 0),
    text,
  };
}
