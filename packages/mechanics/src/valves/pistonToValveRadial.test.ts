import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  centredCrank,
  deg,
  mm,
  near,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { pistonTravel } from "../kinematics/pistonTravel.ts";
import { pistonToValveAxialAt } from "./pistonToValveAxial.ts";
import { pistonToValveRadial, valvePocketRoom } from "./pistonToValveRadial.ts";
import { constantCurve, inletCurve } from "./valves.test-support.ts";

const pocket = {
  pocketRadius: 18.9 * mm,
  valveRadius: 17.5 * mm,
  pocketOffset: 0.2 * mm,
  valveTilt: 12 * deg,
};
const valve = {
  ...pocket,
  crank: centredCrank,
  curve: inletCurve,
  shutValveDistance: 4.8 * mm,
  pocketDepth: 3.5 * mm,
};

test("example", () => {
  near(valvePocketRoom({ ...pocket, travel: 1 * mm }) / mm, 1.392, 5e-4);
  near(valvePocketRoom({ ...pocket, travel: 0 }) / mm, 1.2, 1e-9);
});

test("a valve that stays above the crown cannot meet the wall", () => {
  expect(pistonToValveRadial({ ...valve, pocketDepth: 2.15 * mm })).toBeUndefined();
});

test("a valve held below the crown is caught with the piston lowest before it leaves", () => {
  const held = { ...valve, pocketOffset: -0.2 * mm, curve: constantCurve(2 * mm) };
  const found = pistonToValveRadial(held)!;
  // It leaves the crown where the piston has fallen by (3.5 - 4.8 + 2) / cos 12.
  const travel = (0.7 * mm) / Math.cos(12 * deg);
  near(found.clearance, 1.2 * mm - travel * Math.sin(12 * deg), 1e-9);
  near(pistonTravel(centredCrank, found.angle), travel, 1e-9);
});

property.prop([between(-1e-3, 1e-3), between(-0.4, 0.4), between(1e-3, 4.5e-3)], { numRuns: 60 })(
  "agrees with angles taken one by one",
  (pocketOffset, valveTilt, pocketDepth) => {
    const input = { ...valve, pocketOffset, valveTilt, pocketDepth };
    let least = Number.POSITIVE_INFINITY;
    for (let i = -6000; i <= 6000; i++) {
      const angle = (i / 100) * deg;
      if (pistonToValveAxialAt(input, angle) >= pocketDepth) continue;
      const across = pocketOffset - pistonTravel(centredCrank, angle) * Math.sin(valveTilt);
      least = Math.min(least, 1.4 * mm - Math.abs(across));
    }
    const found = pistonToValveRadial(input)?.clearance ?? Number.POSITIVE_INFINITY;
    if (Number.isFinite(found) && Number.isFinite(least)) near(found, least, 2e-6);
    // A dip shorter than the sweep's steps may be seen by one of the two only.
    else expect(pocketDepth).toBeLessThan(2.5e-3);
  },
);

test("boundary", () => {
  refuses(() => pistonToValveRadial({ ...valve, pocketDepth: 0 }), "pocketDepth");
  refuses(() => valvePocketRoom({ ...pocket, travel: -1e-9 }), "travel");
  refuses(() => valvePocketRoom({ ...pocket, valveRadius: 0, travel: 0 }), "valveRadius");
  refusesNonFinite(valvePocketRoom, { ...pocket, travel: 0 });
  refusesNonFinite(pistonToValveRadial, valve);
});
