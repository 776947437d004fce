import { quantities } from "../../derive/generated/quantities.ts";
import type { Steps } from "../../derive/Steps.ts";
import { withDefaults } from "../../derive/withDefaults.ts";
import { type EvaluateOptions, evaluation } from "../../evaluate.ts";
import type { StopSignal } from "../../live/refine.ts";
import { takeTurns } from "../../live/takeTurns.ts";
import { asBuild } from "../../read/asBuild.ts";
import type { Build } from "../../read/Build.ts";
import { fieldLabel } from "../../read/fieldCatalog.ts";
import { InputError } from "../../read/Problem.ts";
import { withField } from "../../read/withField.ts";
import { readAims } from "./readAims.ts";
import type { Solution } from "./Solution.ts";
import type { Solved } from "./Solved.ts";
import { solveAims } from "./solveAims.ts";
import { solvedAim } from "./solvedAim.ts";
import { solvedFields, solvedRange } from "./solvedFields.ts";
import { unsolvedOf } from "./unsolvedOf.ts";
import type { Aim, Wanted } from "./Wanted.ts";

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

/** The sizes in one go, after a breath in which others hear that they are being looked for. */
function* sizesIn(build: Build, wanted: readonly Wanted[], aims: readonly Aim[]): Steps<Solved> {
  yield;
  return solveAims(withDefaults(build), quantities, wanted, aims);
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
  const solved = await takeTurns(sizesIn(build, wanted, aims), signal);
  const head = { build: build.name };
  switch (solved.state) {
    case "missing":
    case "aimless":
      return { ...head, ...solved };
    case "conflict":
      return { ...head, ...unsolvedOf(solved, wanted) };
    case "solved": {
      const found = solvedFields(wanted, solved.exact, solved.sizes);
      const whole = found.reduce((one, { path, text }) => withField(one, path, text), build);
      const { family, ranges } = solved;
      told?.("rules");
      const judging = evaluation(whole, how);
      for await (const piece of judging.work()) await takeTurns(piece, signal);
      return {
        ...head,
        state: "solved",
        fields: found,
        aims: solved.reached.map(solvedAim),
        ...(family === undefined
          ? {}
          : {
              family: {
                freedom: family.freedom,
                moves: family.moves.map((move) => ({
                  ...move,
                  label: fieldLabel(move.path),
                  unit: wanted.find(({ path }) => path === move.path)!.unit,
                })),
                members: family.members.map((sizes) => solvedFields(wanted, sizes, sizes)),
                reached: family.reached.map((aims) => aims.map(solvedAim)),
              },
            }),
        ...(ranges === undefined
          ? {}
          : { ranges: ranges.map((range, index) => solvedRange(wanted[index]!, range)) }),
        report: await judging.report(),
      };
    }
  }
}
