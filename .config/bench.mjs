// npm run bench: install what is missing, build, time what a full build's quantities cost.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=trialfit", "--output-logs=errors-only"]);
tool("time the quantities", ["node", "tests/bench/runQuantities.ts"]);
console.log(`\nDone in ${total()}.`);
