// npm run bench: install what is missing, build, time what a full build's quantities cost, how soon a report follows a
// change, how many builds a second are judged beside other rule libraries, and the memory of a stream of builds.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=@trialfit/cli", "--output-logs=errors-only"]);
tool("time the quantities", ["node", "tests/bench/runQuantities.ts"]);
tool("time how soon a report follows a change", ["node", "tests/bench/runLive.ts"]);
tool("time verdicts beside other rule libraries", ["node", "tests/bench/runVerdicts.ts"]);
tool("time changes of a build and walks over parts lists", ["node", "tests/bench/runFast.ts"]);
tool("watch the memory of a stream of builds", ["node", "tests/bench/runStream.ts"]);
tool("time the search of parts lists", ["node", "tests/bench/runSearch.ts"]);
console.log(`\nDone in ${total()}.`);
