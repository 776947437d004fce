import { readdirSync, readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { BUILD_FORMAT, type Build, fields, readBuild, readBuildText } from "trialfit";
import { type Random, seeded } from "../../packages/core/src/derive/seeded.ts";
import { drawLayout, pick } from "./cylinderLayouts.ts";
import { drawField } from "./drawField.ts";
import { exampleEntries } from "./exampleEntries.ts";
import { drawManner } from "./Manner.ts";

const folder = new URL("../../packages/core/demo/", import.meta.url);

/** The demo builds, by the name of their file. */
export const demoBuilds: readonly Build[] = readdirSync(folder)
  .filter((name) => name.endsWith(".yaml"))
  .sort()
  .map((name) => readBuildText(readFileSync(new URL(name, folder), "utf8"), name));

/** Rules that a person answers. */
const asked = ruleFiles.filter(({ confirm }) => confirm !== undefined).map(({ id }) => id);

/** Share of the builds whose cylinders stand otherwise than in the build that they are drawn from. */
const NEW_LAYOUT = 0.6;
/** Distances of crankpins along the crankshaft [mm]. */
const SPACINGS = [60, 95, 112, 150] as const;

function drawConfirmations(answered: number, random: Random): Record<string, unknown> {
  return Object.fromEntries(
    asked
      .filter(() => random() < answered)
      .map((rule) => [
        rule,
        {
          seen: random() < 0.5 ? "yes" : "no",
          by: "a generator",
          on: "2026-01-01",
          how: "drawn, not looked at",
        },
      ]),
  );
}

type Draft = Record<string, Record<string, unknown>>;

/** Looks closer at some rules; what would change a field that another of them has set is not taken. */
function withExamples(draft: Draft, share: number, seed: number, number: number): void {
  const drawn = ruleFiles.map((file) => {
    const random = seeded(seed, `example of ${file.id}`, number);
    return { file, random, at: random() };
  });
  const closer = drawn.filter(({ at }) => at < share).sort((a, b) => a.at - b.at);
  const taken = new Set<string>();
  for (const entries of closer.flatMap(({ file, random }) => exampleEntries(file, random))) {
    if (entries.some(({ path }) => taken.has(path))) continue;
    for (const { path, text } of entries) {
      const [part = "", field] = path.split(".");
      if (field !== undefined) draft[part] = { ...draft[part], [field]: text };
      taken.add(path);
    }
  }
}

/** Puts what a new layout says in place of what the build says of it, where it says anything. */
function withLayout(draft: Draft, random: Random): void {
  const { block, crankshaft } = drawLayout(pick(SPACINGS, random), random);
  draft.block = { ...draft.block, ...block };
  draft.crankshaft = { ...draft.crankshaft, ...crankshaft };
}

/**
 * A whole build file as plain data, drawn from one of the demo builds: other sizes, words, cylinders, answers. It can be
 * read, but its parts need not go together.
 * @param seed whole number from 0 to 2³² − 1
 * @param number which of the builds, from 0; the same seed and number give the same build
 */
export function generateBuildFile(seed: number, number: number): Record<string, unknown> {
  const random = seeded(seed, "build", number);
  const { values } = pick(demoBuilds, random);
  const manner = drawManner(random);
  const draft: Draft = {};
  const top: Record<string, unknown> = {};
  for (const [path, { spec }] of fields) {
    const value = drawField(path, spec, values, manner, seeded(seed, path, number));
    if (value === undefined) continue;
    const [part = "", field] = path.split(".");
    if (field === undefined) top[part] = value;
    else draft[part] = { ...draft[part], [field]: value };
  }
  withExamples(draft, manner.closer, seed, number);
  if (random() < NEW_LAYOUT) withLayout(draft, random);
  const confirmations = drawConfirmations(random(), random);
  return { trialfit: BUILD_FORMAT, name: `Drawn build ${number}`, ...top, ...draft, confirmations };
}

/** The same, read. @throws InputError when a file was drawn that cannot be read: a fault of the generator */
export function generateBuild(seed: number, number: number): Build {
  return readBuild(generateBuildFile(seed, number), `drawn build ${number}`);
}
