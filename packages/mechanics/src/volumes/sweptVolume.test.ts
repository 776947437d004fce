import { test } from "vitest";
import { cm3, mm, near, offsetCrank, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { engineDisplacement, sweptVolume } from "./sweptVolume.ts";

test("examples and boundary", () => {
  const cylinder = { bore: 86.5 * mm, stroke: pistonStroke(offsetCrank) };
  near(sweptVolume(cylinder) / cm3, 552.399, 5e-4);
  near(engineDisplacement({ ...cylinder, cylinders: 4 }) / cm3, 2209.6, 0.05);
  refuses(() => engineDisplacement({ ...cylinder, cylinders: 2.5 }), "cylinders");
  refusesNonFinite(sweptVolume, cylinder);
  refusesNonFinite(engineDisplacement, { ...cylinder, cylinders: 4 });
});
