process.env.ASTRO_TELEMETRY_DISABLED = "1";

import preact from "@astrojs/preact";
import starlight from "@astrojs/starlight";
import { defineConfig } from "astro/config";
import { apiReferences } from "./config/apiReferences.ts";
import { everyPage } from "./config/everyPage.ts";
import { offline } from "./config/offline.ts";
import { prettyPages } from "./config/prettyPages.ts";
import { securityPolicy } from "./config/securityPolicy.ts";
import { shrinkScripts } from "./config/shrinkScripts.ts";
import { sidebar } from "./config/sidebar.ts";
import { viteOptions } from "./config/viteOptions.ts";

const { SITE_URL, SITE_BASE } = process.env;
const own = (name: string) => `./src/overrides/${name}.astro`;

export default defineConfig({
  ...(SITE_URL === undefined ? {} : { site: SITE_URL }),
  ...(SITE_BASE === undefined ? {} : { base: SITE_BASE }),
  trailingSlash: "always",
  vite: viteOptions,
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
    prettyPages(),
    everyPage(SITE_BASE),
    securityPolicy(),
    shrinkScripts(),
    offline(SITE_BASE),
  ],
});
