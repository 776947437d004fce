import { goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { bar, cm3, deg, mm } from "../check/support.test-support.ts";
import { indicatedWork, type PressureTrace, pressureAt } from "./pressureTrace.ts";

const step = deg;
const closed = { angles: new Float64Array(), pressures: new Float64Array() } as never;
/** A trace that falls from the firing top dead centre to the gas-exchange one, and rises from there. */
const traceAt = (level: number): PressureTrace => ({
  step,
  pressures: Float64Array.from({ length: 720 }, (_, k) => level * (1.2 + Math.cos((k * step) / 2))),
  closed,
  heat: 0,
});

solvesBack(
  pressureAt,
  { level: goesAs(1, 1 * bar, 60 * bar), angle: rises(370 * deg, 700 * deg) },
  ({ level, angle }) => pressureAt(traceAt(level), angle),
);
// From firing top dead centre down to bottom dead centre.
solvesBack(
  indicatedWork,
  {
    level: goesAs(1, 1 * bar, 60 * bar),
    bore: goesAs(2, 70 * mm, 110 * mm),
    throwRadius: rises(35 * mm, 55 * mm),
  },
  ({ level, bore, throwRadius }) =>
    indicatedWork(
      traceAt(level),
      { crank: { throwRadius, rodLength: 150 * mm, pinLineOffset: 0 }, bore, clearanceVolume: 60 * cm3 },
      0,
      Math.PI,
    ),
);
