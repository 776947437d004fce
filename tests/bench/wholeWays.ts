import { readFileSync } from "node:fs";
import {
  BriefJudge,
  type Build,
  type CompiledRule,
  evaluate,
  type FieldValue,
  readBuildText,
} from "trialfit";
import type { Timed } from "./rounds.ts";

const DEMOS = ["harrow-eight", "larkspur-hill"] as const;

const demos = DEMOS.map((name) =>
  readBuildText(
    readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8"),
    name,
  ),
);

function scaled(value: FieldValue, scale: number): FieldValue {
  if (value.kind !== "dimension" || Number.isInteger(value.nominal)) return value;
  const { nominal, low, high } = value;
  return { ...value, nominal: nominal * scale, low: low * scale, high: high * scale };
}

let made = 0;

/** A demo build with every size moved by parts in a thousand million: nothing is remembered of it. */
function anew(): Build {
  made += 1;
  const build = demos[made % demos.length]!;
  return {
    ...build,
    values: new Map([...build.values].map(([path, value]) => [path, scaled(value, 1 + made * 1e-9)])),
  };
}

/** Refuses where the public evaluation and the brief one do not say the same of a demo build. */
async function compare(brief: BriefJudge, build: Build): Promise<void> {
  const { verdicts } = await evaluate(build);
  const said = await brief.judge(build);
  const words = { fails: said.fails, open: said.open, unknown: [...said.unknown, ...said.toConfirm] };
  for (const [word, ids] of Object.entries(words)) {
    const expected = verdicts.filter(({ verdict }) => verdict === word).map(({ rule }) => rule);
    if ([...ids].sort().join() !== [...expected].sort().join())
      throw new Error(`${build.name}, ${word}: ${ids.join()}; expected ${expected.join()}`);
  }
}

/**
 * The public ways from the fields of whole builds, beside those that get facts: with quantities, bands and, of
 * `evaluate`, every reason and the report.
 * @throws Error where their verdicts differ
 */
export async function wholeWays(rules: readonly CompiledRule[]): Promise<readonly Timed[]> {
  const brief = new BriefJudge(rules);
  for (const build of demos) await compare(brief, build);
  return [
    {
      name: "evaluate, the whole report of a demo build, as it was asked before",
      builds: 1,
      run: (n: number) => evaluate(demos[n % demos.length]!),
    },
    {
      name: "evaluate, the whole report of a demo build, every size another",
      builds: 1,
      run: () => evaluate(anew()),
    },
    {
      name: "BriefJudge, a demo build from its fields, every size another",
      builds: 1,
      run: () => brief.judge(anew()),
    },
  ];
}
