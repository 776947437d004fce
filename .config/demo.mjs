// npm run demo: install what is missing, build, evaluate a demo build, say how to see the site.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator and the command", [
  "turbo",
  "run",
  "build",
  "--filter=@trialfit/cli",
  "--output-logs=errors-only",
]);
// 1 says that a stop rule does not hold: what this demo is there to show.
tool(
  "trialfit check packages/core/demo/larkspur-hill.yaml",
  ["trialfit", "check", "packages/core/demo/larkspur-hill.yaml"],
  {
    allowed: [1],
  },
);
console.log(`
That build is invented and has trouble on purpose; its sound neighbour:
    npx trialfit check packages/core/demo/harrow-eight.yaml
Change a number in one of the files (the stroke, the pin bore) and check it again.
The site with the rule catalog:
    npm run site
Done in ${total()}.`);
