// node .config/compareVerdicts.mjs BASE HEAD: which verdicts on the demo builds differ between two built clones.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const DEMOS = "packages/core/demo";

/** The verdicts of one clone on its own demo builds: { build: { rule: verdict } }. */
async function verdictsOf(clone) {
  const { evaluate, readBuildText } = await import(
    pathToFileURL(resolve(clone, "packages/core/dist/index.js")).href
  );
  const demos = readdirSync(join(clone, DEMOS)).filter((name) => name.endsWith(".yaml"));
  const verdicts = {};
  for (const name of demos) {
    const report = await evaluate(readBuildText(readFileSync(join(clone, DEMOS, name), "utf8"), name));
    verdicts[name] = Object.fromEntries(report.verdicts.map(({ rule, verdict }) => [rule, verdict]));
  }
  return verdicts;
}

/** Every difference, a line each: `build.yaml: rule: holds, was fails`. */
export function compareVerdicts(base, head) {
  return Object.keys({ ...base, ...head })
    .sort()
    .flatMap((build) => {
      if (base[build] === undefined) return [`${build}: a new build`];
      if (head[build] === undefined) return [`${build}: no longer there`];
      return Object.keys({ ...base[build], ...head[build] })
        .sort()
        .filter((rule) => base[build][rule] !== head[build][rule])
        .map(
          (rule) =>
            `${build}: ${rule}: ${head[build][rule] ?? "gone"}, was ${base[build][rule] ?? "not there"}`,
        );
    });
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const clones = process.argv.slice(2);
  if (clones.length !== 2 || clones.some((clone) => !existsSync(join(clone, DEMOS)))) {
    console.error("node .config/compareVerdicts.mjs BASE HEAD: two built clones");
    process.exit(2);
  }
  const base = await verdictsOf(clones[0]);
  const head = await verdictsOf(clones[1]);
  const lines = compareVerdicts(base, head);
  console.log(
    lines.length === 0
      ? "No verdict on a demo build changes."
      : `Verdicts on the demo builds that change:\n${lines.join("\n")}`,
  );
}
