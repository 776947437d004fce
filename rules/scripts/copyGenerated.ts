/** tsc does not copy plain JavaScript: the compiled validator goes beside its declaration. */
import { copyFileSync } from "node:fs";

for (const name of ["validateRuleFile.js", "validateRuleFile.d.ts"]) {
  copyFileSync(
    new URL(`../src/generated/${name}`, import.meta.url),
    new URL(`../dist/generated/${name}`, import.meta.url),
  );
}
