// npm run catalog:seen: how often each rule holds, fails, lacks inputs, stays out, over the demo builds and 1,000 drawn
// from them.
import { mkdirSync } from "node:fs";
import { install, root, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=trialfit", "--output-logs=errors-only"]);
mkdirSync(`${root}.cache/test-results`, { recursive: true });
tool("judge the builds", ["node", "tests/catalog/runSeen.ts", `${root}.cache/test-results/seen.json`]);
console.log(`\nDone in ${total()}.`);
