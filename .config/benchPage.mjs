// npm run bench:page: install what is missing, build, time in a browser how soon verdicts follow a keystroke.
import { install, tool, total } from "./steps.mjs";

install();
tool("build packages and site", ["turbo", "run", "build", "--output-logs=errors-only"]);
tool("time the workbench in a browser", ["node", "tests/bench/runPage.ts"]);
console.log(`\nDone in ${total()}.`);
