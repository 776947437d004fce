// npm run prove: install what is missing, then hold verdicts over tolerances to a great many engines within them, the
// compiled rules to json-rules-engine, find the sizes of a thousand builds back, and hold remedies of many builds to
// what they promise.
import { install, tool, total } from "./steps.mjs";

install();
tool("build the evaluator", ["turbo", "run", "build", "--filter=trialfit", "--output-logs=errors-only"]);
tool(
  "hold verdicts to engines",
  ["vitest", "run", "--config", ".config/vitest.ts", "tests/properties/certainVerdicts.test.ts"],
  { env: { TRIALFIT_PAIRS: process.env.TRIALFIT_PAIRS ?? "200000" } },
);
tool(
  "hold compiled rules to json-rules-engine",
  [
    "vitest",
    "run",
    "--config",
    ".config/vitest.ts",
    "tests/differential/fastVerdicts.test.ts",
    "tests/differential/gradualJudge.test.ts",
  ],
  { env: { TRIALFIT_FAST_PAIRS: process.env.TRIALFIT_FAST_PAIRS ?? "1000000" } },
);
tool(
  "find sizes back",
  ["vitest", "run", "--config", ".config/vitest.ts", "tests/properties/solveRecovers.test.ts"],
  { env: { TRIALFIT_SOLVES: process.env.TRIALFIT_SOLVES ?? "1000" } },
);
tool(
  "hold remedies to what they promise",
  ["vitest", "run", "--config", ".config/vitest.ts", "tests/properties/remedies.test.ts"],
  { env: { TRIALFIT_REMEDIES: process.env.TRIALFIT_REMEDIES ?? "50" } },
);
console.log(`\nDone in ${total()}.`);
