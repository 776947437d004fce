import { fileURLToPath } from "node:url";
import type { Plugin, UserConfig } from "vite";
import { constantsApart } from "./apart/constantsApart.ts";
import { chunkName } from "./chunkName.ts";
import { leaveOut } from "./leaveOut/leaveOut.ts";
import { standIns } from "./standIns.ts";

const at = (path: string) => fileURLToPath(new URL(`../src/${path}`, import.meta.url));

/** A worker has no page to put styles on; the page that starts it brings them. */
function noStyles(): Plugin {
  return {
    name: "no-styles",
    enforce: "pre",
    resolveId: (id: string) => (id.endsWith(".css") ? "\0no-styles" : undefined),
    load: (id: string) => (id === "\0no-styles" ? "export {};" : undefined),
  };
}

/**
 * What most of those that a worker starts ask for: one file, which asks for none of the others, since what it asks for
 * is asked for by as many. Files that ask for each other would wait for each other's data for ever.
 */
const base = { name: "base", minShareCount: 5, priority: 1 };

/**
 * What several of those that a worker starts ask for: together where the same ask for it, and what is small with what is
 * asked for by nearly the same. A file for each difference would cost more than it spares, and what is put together with
 * too little in common makes circles.
 */
const shared = {
  name: "shared",
  minShareCount: 2,
  entriesAware: true,
  entriesAwareMergeThreshold: 20_000,
};

const chunkFileNames = ({ name }: { readonly name: string }) => `_astro/${chunkName(name)}-[hash].js`;

/** How scripts and workers of the site are built. */
export const viteOptions: UserConfig = {
  worker: {
    format: "es",
    rolldownOptions: { output: { chunkFileNames, codeSplitting: { groups: [base, shared] } } },
    plugins: () => [noStyles(), standIns(), leaveOut(), constantsApart()],
  },
  resolve: {
    alias: [
      {
        // The frame asks for the search's interface on every page; ours waits until somebody opens the search.
        find: /^@pagefind\/default-ui$/,
        replacement: at("scripts/PagefindUI.ts"),
      },
    ],
  },
};
