import { test as property } from "@fast-check/vitest";
import { describe, expect, test } from "vitest";
import {
  between,
  centredCrank,
  cranks,
  deg,
  mm,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonTravel } from "../kinematics/pistonTravel.ts";
import {
  overlapWindow,
  pistonToValveAxial,
  pistonToValveAxialAt,
  pistonToValveAxialOver,
} from "./pistonToValveAxial.ts";
import { shiftLiftCurve } from "./shiftLiftCurve.ts";
import { standInLiftCurve } from "./standInLiftCurve.ts";
import { exhaustCurve, inletCurve, lobes } from "./valves.test-support.ts";

const valve = {
  crank: offsetCrank,
  curve: inletCurve,
  shutValveDistance: 4.8 * mm,
  valveTilt: 12 * deg,
};

test("examples: 2.207 mm at 5.5 degrees, and the least between the steps", () => {
  near(pistonToValveAxialAt(valve, 5.5 * deg) / mm, 2.207, 5e-4);
  const found = pistonToValveAxial(valve);
  near(found.clearance / mm, 2.20643, 5e-6);
  near(found.angle / deg, 5.38, 5e-3);
  // Without the offset of the pin, and with a shallower pocket.
  const centred = { ...valve, crank: centredCrank, shutValveDistance: 4.45 * mm };
  near(pistonToValveAxial(centred).clearance / mm, 1.84108, 5e-6);
});

test("the exhaust valve is nearest before top dead centre", () => {
  const found = pistonToValveAxial({ ...valve, curve: exhaustCurve });
  near(found.clearance / mm, 2.37914, 5e-6);
  near(found.angle / deg, -5.59, 5e-3);
});

test("a cam timed from the true dead centre is turned by the angle of that dead centre", () => {
  const curve = shiftLiftCurve(inletCurve, topDeadCentre(offsetCrank).angle);
  near(pistonToValveAxial({ ...valve, curve }).clearance / mm, 2.1911, 5e-5);
});

describe("properties", () => {
  property.prop([cranks, lobes, between(-0.6, 0.6)], { numRuns: 40 })(
    "never above any angle of a fine grid, and reached by one",
    (crank, lobe, valveTilt) => {
      const input = { ...valve, crank, valveTilt, curve: standInLiftCurve(lobe) };
      const { clearance, angle } = pistonToValveAxial(input);
      const over = pistonToValveAxialOver(input);
      for (let i = -600; i <= 600; i++) {
        const at = pistonToValveAxialAt(input, (i / 600) * overlapWindow);
        expect(over((i / 600) * overlapWindow)).toBe(at);
        expect(clearance).toBeLessThanOrEqual(at + 1e-12);
      }
      near(pistonToValveAxialAt(input, angle), clearance, 1e-15);
    },
  );

  property.prop([cranks, between(-0.6, 0.6), between(-0.5, 0.5)])(
    "is the distance of the pocket's floor from the valve's face, both moved as planes",
    (crank, valveTilt, angle) => {
      const [ux, uy] = [Math.sin(valveTilt), Math.cos(valveTilt)];
      const { lift } = inletCurve.at(angle);
      const facePoint = [-lift * ux + 0.007 * uy, -lift * uy - 0.007 * ux] as const;
      const floorPoint = [
        -valve.shutValveDistance * ux - 0.011 * uy,
        -valve.shutValveDistance * uy + 0.011 * ux - pistonTravel(crank, angle),
      ] as const;
      const distance = (facePoint[0] - floorPoint[0]) * ux + (facePoint[1] - floorPoint[1]) * uy;
      near(pistonToValveAxialAt({ ...valve, crank, valveTilt }, angle), distance, 1e-15);
    },
  );

  property.prop([between(0, 6)])("an inlet cam retarded is farther from the piston", (late) => {
    const later = { ...valve, curve: shiftLiftCurve(inletCurve, late * deg) };
    expect(pistonToValveAxial(later).clearance).toBeGreaterThanOrEqual(pistonToValveAxial(valve).clearance);
  });
});

test("boundary", () => {
  refuses(() => pistonToValveAxial({ ...valve, valveTilt: -90 * deg }), "valveTilt");
  refusesNonFinite(pistonToValveAxial, valve);
  refusesNonFinite(pistonToValveAxialAt, valve, 0.1);
});
