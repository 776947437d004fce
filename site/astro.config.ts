process.env.ASTRO_TELEMETRY_DISABLED = "1";

import { fileURLToPath } from "node:url";
import preact from "@astrojs/preact";
import starlight from "@astrojs/starlight";
import { defineConfig } from "astro/config";
import { apiReferences } from "./config/apiReferences.ts";
import { offline } from "./config/offline.ts";
import { securityPolicy } from "./config/securityPolicy.ts";
import { sidebar } from "./config/sidebar.ts";

const { SITE_URL, SITE_BASE } = process.env;
const own = (name: string) => `./src/overrides/${name}.astro`;

export default defineConfig({
  ...(SITE_URL === undefined ? {} : { site: SITE_URL }),
  ...(SITE_BASE === undefined ? {} : { base: SITE_BASE }),
  trailingSlash: "always",
  vite: {
    worker: {
      // A worker has no page to put styles on; the page that starts it brings them.
      plugins: () => [
        {
          name: "no-styles-in-workers",
          enforce: "pre",
          resolveId: (id: string) => (id.endsWith(".css") ? "\0no-styles" : undefined),
          load: (id: string) => (id === "\0no-styles" ? "export {};" : undefined),
        },
      ],
    },
    resolve: {
      // The frame asks for the search's interface on every page; ours waits until somebody opens the search.
      alias: [
        {
          find: /^@pagefind\/default-ui$/,
          replacement: fileURLToPath(new URL("./src/scripts/PagefindUI.ts", import.meta.url)),
        },
      ],
    },
  },
  integrations: [
    preact({ include: ["**/site/src/**/*.tsx"] }),
    starlight({
      title: "trialfit",
      description: "Will this set of engine parts fit, live and last? Asked before the parts are ordered.",
      favicon: "/favicon.svg",
      customCss: [
        "./src/styles/palette.css",
        "./src/styles/type.css",
        "./src/styles/frame.css",
        "./src/styles/sheet.css",
        "./src/styles/print.css",
      ],
      components: {
        Header: own("Header"),
        Hero: own("Hero"),
        Footer: own("Footer"),
      },
      routeMiddleware: "./src/routeData.ts",
      expressiveCode: {
        themes: ["github-dark-default", "github-light-default"],
        // A file shows its name.
        frames: { extractFileNameFromCode: false },
        defaultProps: {
          frame: "none",
          wrap: true,
          overridesByLang: { "yaml,ts,python,html": { frame: "code" } },
        },
        styleOverrides: {
          borderRadius: "2px",
          borderColor: "var(--line-strong)",
          codeBackground: "var(--sheet)",
          codeFontFamily: "var(--mono)",
          frames: {
            shadowColor: "transparent",
            editorTabBarBackground: "var(--paper)",
            editorTabBarBorderColor: "var(--line-strong)",
            editorTabBarBorderBottomColor: "var(--line-strong)",
            editorActiveTabBackground: "var(--sheet)",
            editorActiveTabForeground: "var(--ink-2)",
            editorActiveTabBorderColor: "var(--line-strong)",
            editorActiveTabIndicatorTopColor: "var(--blue)",
            editorActiveTabIndicatorBottomColor: "transparent",
          },
        },
      },
      pagination: false,
      credits: false,
      plugins: apiReferences.map((reference) => reference.plugin),
      sidebar,
    }),
    securityPolicy(),
    offline(SITE_BASE),
  ],
});
