// node tests/catalog/runSeen.ts [FILE]: what every rule says over all builds, as a table, and as JSON in FILE.
import { writeFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { compileRules } from "trialfit";
import { countVerdicts, unseenWords } from "./countVerdicts.ts";
import { DRAWN, demoBuilds, seenBuilds } from "./seenBuilds.ts";

const rules = compileRules(ruleFiles);
const counts = countVerdicts(rules, seenBuilds(), false);
const file = process.argv[2];
if (file !== undefined)
  writeFileSync(
    file,
    `${JSON.stringify({ demos: demoBuilds.length, drawn: DRAWN, rules: Object.fromEntries(counts) }, null, 2)}\n`,
  );
console.table(Object.fromEntries(counts));
const unseen = rules.filter((rule) => unseenWords(rule, counts.get(rule.file.id)!).length > 0);
console.log(
  `${rules.length} rules, ${demoBuilds.length} demo builds and ${DRAWN} drawn from them, at nominal values.`,
);
for (const rule of unseen)
  console.log(`${rule.file.id}: never ${unseenWords(rule, counts.get(rule.file.id)!).join(", never ")}`);
if (unseen.length > 0) process.exitCode = 1;
