// npm run prove: install what is missing, then hold verdicts over tolerances to a great many engines within them.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=trialfit", "--output-logs=errors-only"]);
tool(
  "hold verdicts to engines",
  ["vitest", "run", "--config", ".config/vitest.ts", "tests/properties/certainVerdicts.test.ts"],
  { env: { TRIALFIT_PAIRS: process.env.TRIALFIT_PAIRS ?? "200000" } },
);
console.log(`\nDone in ${total()}.`);
