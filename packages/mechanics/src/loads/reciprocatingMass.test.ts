import { test } from "vitest";
import { near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { reciprocatingMass } from "./reciprocatingMass.ts";

test("example and boundary", () => {
  const input = { piston: 0.33, pin: 0.116, rings: 0.012, retainers: 0.006, rodSmallEnd: 0.17 };
  near(reciprocatingMass(input), 0.634, 1e-12);
  refuses(() => reciprocatingMass({ ...input, rings: -0.01 }), "rings");
  refusesNonFinite(reciprocatingMass, input);
});
