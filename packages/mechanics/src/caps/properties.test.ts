import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { counted, falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { between, deg, GPa, kN, mm, nearly, um } from "../check/support.test-support.ts";
import { capClampRatio, capSlipRatio } from "./mainCap.ts";
import { registerStress } from "./registerStress.ts";

solvesBack(capClampRatio, {
  bolts: counted(goesAs(1, 2, 6)),
  preload: goesAs(1, 20 * kN, 90 * kN),
  firingLoad: goesAs(-1, 10 * kN, 60 * kN),
  firingLineAngle: rises(5 * deg, 70 * deg),
});
// With a clamp of more than twice the load, so that more lean always leaves less friction for its push.
solvesBack(capSlipRatio, {
  bolts: counted(rises(2, 6)),
  preload: rises(20 * kN, 90 * kN),
  firingLoad: falls(10 * kN, 19 * kN),
  firingLineAngle: falls(5 * deg, 55 * deg),
  friction: goesAs(1, 0.08, 0.2),
});
solvesBack(registerStress, {
  elasticModulus: goesAs(1, 70 * GPa, 210 * GPa),
  interference: goesAs(1, 5 * um, 80 * um),
  width: goesAs(-1, 80 * mm, 200 * mm),
});

const cap = [between(20 * kN, 90 * kN), between(10 * kN, 60 * kN), between(deg, 80 * deg)] as const;
property.prop([...cap])("the two parts of the load add up to it", (preload, firingLoad, firingLineAngle) => {
  const input = { bolts: 2, preload, firingLoad, firingLineAngle };
  const clamp = 2 * preload;
  const down = clamp / capClampRatio(input);
  const sideways = (clamp - down) / capSlipRatio({ ...input, friction: 1 });
  nearly(Math.hypot(down, sideways), firingLoad);
});

property.prop([...cap])("a cap slips, if at all, when it lifts", (preload, firingLoad, firingLineAngle) => {
  const input = { bolts: 2, preload, firingLoad, firingLineAngle, friction: 0.15 };
  expect(capSlipRatio(input) > 0).toBe(capClampRatio(input) > 1);
});

property.prop([between(-80 * um, 0)])("a register with clearance presses nothing", (interference) => {
  expect(registerStress({ elasticModulus: 110 * GPa, interference, width: 120 * mm })).toBe(0);
});
