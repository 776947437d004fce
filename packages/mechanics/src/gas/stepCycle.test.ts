import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, nearly } from "../check/support.test-support.ts";
import { cycles } from "./cycle.test-support.ts";
import { prepareCycle } from "./prepareCycle.ts";
import { stepCycle } from "./stepCycle.ts";

const begun = (cycle: ReturnType<typeof prepareCycle>) => {
  const pressures = new Float64Array(cycle.angles.length);
  pressures[0] = cycle.pressure;
  return pressures;
};

property.prop([cycles, between(0, 1)])("steps in two runs are the steps of one", ({ cycle, heat }, share) => {
  const prepared = prepareCycle(cycle);
  const last = prepared.angles.length - 1;
  const [whole, parted] = [begun(prepared), begun(prepared)];
  const lost = stepCycle(prepared, heat, whole, 0, last);
  const middle = Math.round(share * last);
  const first = stepCycle(prepared, heat, parted, 0, middle);
  const rest = stepCycle(prepared, heat, parted, middle, last);
  expect([...parted]).toEqual([...whole]);
  nearly(first + rest, lost, 1e-9);
});

property.prop([cycles])(
  "without walls or heat the gas comes back to its adiabat, and heat only adds",
  ({ cycle, heat }) => {
    const { walls: _, ...open } = cycle;
    const even = prepareCycle({ ...open, burntRatio: open.freshRatio });
    const last = even.angles.length - 1;
    const run = (joules: number) => {
      const pressures = begun(even);
      expect(stepCycle(even, joules, pressures, 0, last)).toBe(0);
      return pressures;
    };
    const [cold, warm, hot] = [run(0), run(heat), run(2 * heat)];
    cold.forEach((pressure, i) => {
      nearly(pressure * (even.volumes[i]! / even.volumes[0]!) ** open.freshRatio, even.pressure, 1e-9);
      expect(warm[i]!).toBeGreaterThanOrEqual(pressure * (1 - 1e-12));
      // Twice the heat does twice as much.
      nearly(hot[i]! - pressure + 1, 2 * (warm[i]! - pressure) + 1, 1e-6);
    });
  },
);

property.prop([cycles, fc.boolean()])(
  "a prepared cycle burns from nothing to nearly all, in the cylinder's volumes",
  ({ cycle }, isOpen) => {
    const { walls, ...open } = cycle;
    const prepared = prepareCycle(isOpen ? open : { ...open, walls: walls! });
    const { angles, volumes, middleVolumes, shares, firstHalf, secondHalf } = prepared;
    expect(angles.length).toBeGreaterThan(100);
    for (let i = 0; i + 1 < angles.length; i++) {
      expect(angles[i + 1]!).toBeGreaterThan(angles[i]!);
      expect(shares[i + 1]!).toBeGreaterThanOrEqual(shares[i]!);
      const falls = volumes[i + 1]! < volumes[i]!;
      // Whatever is compressed in a step gains pressure over both halves of it, but at the turn.
      if ((middleVolumes[i]! - volumes[i]!) * (volumes[i + 1]! - middleVolumes[i]!) > 0)
        expect(firstHalf[i]! * secondHalf[i]! > 1).toBe(falls);
    }
    expect(shares[0]!).toBeGreaterThanOrEqual(0);
    expect(shares.at(-1)!).toBeLessThanOrEqual(1);
  },
);
