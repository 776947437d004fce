import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { inletMachIndex } from "./inletMachIndex.ts";

test("example and boundary", () => {
  const input = {
    bore: 86.5 * mm,
    valves: 2,
    valveDiameter: 35 * mm,
    meanPistonSpeed: 23.19,
    flowCoefficient: 0.36,
    speedOfSound: 357.6,
  };
  near(inletMachIndex(input), 0.5501, 1e-4);
  refuses(() => inletMachIndex({ ...input, valves: 0 }), "valves");
  refusesNonFinite(inletMachIndex, input);
});
