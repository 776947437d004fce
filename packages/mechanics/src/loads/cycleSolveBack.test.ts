import { goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, kN } from "../check/support.test-support.ts";
import { CYCLE_SAMPLES, cycleValue } from "./crankpinLoadCycle.ts";

/** Falls for a turn and rises for a turn. */
const samplesAt = (level: number) =>
  Float64Array.from(
    { length: CYCLE_SAMPLES },
    (_, k) => level * (1.2 + Math.cos((2 * Math.PI * k) / CYCLE_SAMPLES)),
  );
solvesBack(
  cycleValue,
  { level: goesAs(1, 1 * kN, 60 * kN), angle: rises(370 * deg, 700 * deg) },
  ({ level, angle }) => cycleValue(samplesAt(level), angle),
);
