import { quantities } from "../../derive/generated/quantities.ts";
import { withDefaults } from "../../derive/withDefaults.ts";
import { type EvaluateOptions, evaluation } from "../../evaluate.ts";
import type { StopSignal } from "../../live/refine.ts";
import { takeTurns } from "../../live/takeTurns.ts";
import { asBuild } from "../../read/asBuild.ts";
import type { Build } from "../../read/Build.ts";
import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import { InputError } from "../../read/Problem.ts";
import { withField } from "../../read/withField.ts";
import { readAims } from "./readAims.ts";
import type { Solution, SolvedAim, SolvedField } from "./Solution.ts";
import { type AimReached, solveAims } from "./solveAims.ts";
import type { Wanted } from "./Wanted.ts";
import { writeSize } from "./writeSize.ts";

/** What `solve` is at: the sizes, or the rules with the sizes that it found. */
export type SolvePhase = "sizes" | "rules";

export interface SolveOptions extends EvaluateOptions {
  /** Hears what is being done, when it begins. */
  readonly told?: (phase: SolvePhase) => void;
  /** When it is aborted, the work ends with its reason at the next breath. */
  readonly signal?: StopSignal;
}

/** Refuses a build that does not say what is to be found, or from what. */
function refuse({ file = "build" }: Build, found: string, expected: string): never {
  throw new InputError([{ file, line: undefined, column: undefined, field: "", found, expected }]);
}

function wantedOf(build: Build): readonly Wanted[] {
  if (build.wanted.size === 0)
    refuse(build, "no dimension that is to be found", 'at least one dimension written as "?"');
  if (build.aims.size === 0) refuse(build, "no aims", 'aims, such as aims: { compressionRatio: "10.5" }');
  return [...build.wanted].map(([path, one]) => ({ path, ...one }));
}

function fieldsOf(
  wanted: readonly Wanted[],
  exact: readonly number[],
  sizes: readonly number[],
): readonly SolvedField[] {
  return wanted.map(({ path, unit, place }, index) => ({
    path,
    label: fieldLabel(path),
    exact: exact[index]!,
    value: sizes[index]!,
    unit,
    text: writeSize(sizes[index]!, unit, fields.get(path)!.spec, place),
  }));
}

function aimOf({ aim, value, met }: AimReached): SolvedAim {
  const { name, unit, decimals } = quantities.get(aim.id)!;
  const { id, kind, value: wanted, allowance } = aim;
  return {
    id,
    name,
    kind,
    wanted,
    allowance,
    ...(value === undefined ? {} : { reached: value }),
    met,
    unit,
    decimals,
  };
}

/**
 * Finds the dimensions that a build marks as wanted (`"?"`), so that its `aims` are met, in steps that can be ordered or
 * machined, and judges the build with them.
 * @param input a build from `readBuildText`, or plain data in the shape of a build file
 * @throws InputError when the input is not a build, wants nothing, or states no aim that can be read; what `evaluate`
 * throws for its options
 */
export async function solve(input: unknown, options: SolveOptions = {}): Promise<Solution> {
  const { told, signal, ...how } = options;
  const build = asBuild(input);
  const wanted = wantedOf(build);
  const aims = readAims(build, quantities);
  told?.("sizes");
  const solved = await takeTurns(solveAims(withDefaults(build), quantities, wanted, aims), signal);
  const head = { build: build.name };
  switch (solved.state) {
    case "missing":
    case "aimless":
      return { ...head, ...solved };
    case "conflict": {
      const { conflict, bySteps, sizes, reached } = solved;
      const ids = conflict.map(({ id }) => id);
      return {
        ...head,
        state: "conflict",
        conflict: ids,
        bySteps,
        fields: fieldsOf(wanted, sizes, sizes),
        aims: reached.map(aimOf),
      };
    }
    case "solved": {
      const found = fieldsOf(wanted, solved.exact, solved.sizes);
      const whole = found.reduce((one, { path, text }) => withField(one, path, text), build);
      const { family } = solved;
      told?.("rules");
      const judging = evaluation(whole, how);
      for await (const piece of judging.work()) await takeTurns(piece, signal);
      return {
        ...head,
        state: "solved",
        fields: found,
        aims: solved.reached.map(aimOf),
        ...(family === undefined
          ? {}
          : {
              family: {
                freedom: family.freedom,
                moves: family.moves.map((move) => ({ ...move, label: fieldLabel(move.path) })),
                members: family.members.map((sizes) => fieldsOf(wanted, sizes, sizes)),
              },
            }),
        report: await judging.report(),
      };
    }
  }
}
