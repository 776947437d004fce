/** tsc copies neither plain JavaScript nor data: the validator goes beside its declaration, the catalog as data too. */
import { copyFileSync } from "node:fs";

for (const name of ["validateRuleFile.js", "validateRuleFile.d.ts", "catalog.json"]) {
  copyFileSync(
    new URL(`../src/generated/${name}`, import.meta.url),
    new URL(`../dist/generated/${name}`, import.meta.url),
  );
}
