// npm run bench: install what is missing, build, time what a full build's quantities cost, and how soon a report
// follows a change.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=trialfit", "--output-logs=errors-only"]);
tool("time the quantities", ["node", "tests/bench/runQuantities.ts"]);
tool("time how soon a report follows a change", ["node", "tests/bench/runLive.ts"]);
tool("time the search of parts lists", ["node", "tests/bench/runSearch.ts"]);
console.log(`\nDone in ${total()}.`);
