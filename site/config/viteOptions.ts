import { fileURLToPath } from "node:url";
import type { Plugin, UserConfig } from "vite";
import { constantsApart } from "./apart/constantsApart.ts";
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

/** How scripts and workers of the site are built. */
export const viteOptions: UserConfig = {
  worker: { format: "es", plugins: () => [noStyles(), standIns(), leaveOut(), constantsApart()] },
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
