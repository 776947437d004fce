// npm run lighthouse: install what is missing, build, have Lighthouse (fetched, about 135 MB) score some pages of the site.
import { install, tool, total } from "./steps.mjs";

install();
tool("build packages and site", ["turbo", "run", "build", "--output-logs=errors-only"]);
tool("score the pages", ["node", "tests/lighthouse/runLighthouse.ts"]);
console.log(`\nDone in ${total()}.`);
