import { fc, test } from "@fast-check/vitest";
import { type Build, fields, InputError, readBuild, withField } from "trialfit";
import { expect, it } from "vitest";
import { generateBuildFile } from "../catalog/generateBuilds.ts";
import { type RawBuild, withField as setField, withoutField } from "./builds.ts";

const SEED = 4242;
const number = fc.nat({ max: 400 });
const path = fc.constantFrom(...fields.keys());
/** What nobody should write into a field. */
const wrong = fc.constantFrom<unknown>(
  "",
  "7",
  "7 furlongs",
  "88.5 mm ± 0.01",
  null,
  [],
  {},
  { value: "88.5 mm", length: "3 mm" },
  { value: "88.5 mm", made: "by hand" },
  { readings: { "1": "88.5 mm", "9": "88.6 mm" } },
  [{ speed: "3000 rpm" }],
);

/** A build, with the order of what is in it, or what is wrong with it. */
function outcome(read: () => Build) {
  try {
    const build = read();
    return { ...build, values: [...build.values], confirmations: [...build.confirmations] };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems;
  }
}

const file = (at: number) => generateBuildFile(SEED, at) as RawBuild;
const entryOf = (raw: RawBuild, at: string): unknown => {
  const [part = "", field] = at.split(".");
  return field === undefined ? raw[part] : (raw[part] as Record<string, unknown> | undefined)?.[field];
};
const without = (raw: RawBuild, at: string): RawBuild => {
  if (at.includes(".")) return withoutField({ [at.split(".")[0]!]: {}, ...raw }, at);
  const { [at]: _, ...rest } = raw;
  return rest;
};
const whole = (raw: RawBuild, at: string, entry: unknown) =>
  entry === undefined ? without(raw, at) : setField(raw, at, entry);

test.prop([number, number, path], { numRuns: 120 })(
  "an entry of another build: as if the whole file had been read",
  (one, other, at) => {
    const raw = file(one);
    const entry = entryOf(file(other), at);
    expect(outcome(() => withField(readBuild(raw), at, entry))).toStrictEqual(
      outcome(() => readBuild(whole(raw, at, entry))),
    );
  },
);

test.prop([number, path, wrong], { numRuns: 120 })(
  "what cannot be read: the same problems as of the whole file",
  (one, at, entry) => {
    const raw = file(one);
    expect(outcome(() => withField(readBuild(raw), at, entry))).toStrictEqual(
      outcome(() => readBuild(whole(raw, at, entry))),
    );
  },
);

it("takes names, whole parts, confirmations and unknown fields as the whole file does", () => {
  const raw = file(3);
  const seen = { seen: "yes", by: "J. B.", on: "2026-03-14", how: "looked" };
  const tries: readonly (readonly [string, unknown])[] = [
    ["name", "Another"],
    ["name", ""],
    ["block", { bore: "88.5 mm" }],
    ["block", undefined],
    ["block.boar", "88.5 mm"],
    ["blok.bore", "88.5 mm"],
    ["confirmations.caps-drawn-down-evenly", seen],
    ["confirmations.caps-drawn-down-evenly", undefined],
    ["confirmations.caps-drawn-down-evenly", { ...seen, seen: "perhaps" }],
    ["confirmations", { "caps-drawn-down-evenly": seen }],
    ["block.cylinders", "1"],
  ];
  for (const [at, entry] of tries)
    expect(
      outcome(() => withField(readBuild(raw), at, entry)),
      at,
    ).toStrictEqual(outcome(() => readBuild(whole(raw, at, entry))));
});
