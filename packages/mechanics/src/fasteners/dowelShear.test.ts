import { test } from "vitest";
import { kN, MPa, mm, near, refuses } from "../check/support.test-support.ts";
import { dowelShear } from "./dowelShear.ts";

const ring = { dowels: 2, outerDiameter: 14 * mm, innerDiameter: 11 * mm, shearStrength: 200 * MPa };
test("example: two ring dowels", () => near(dowelShear(ring) / kN, 23.56, 0.005));
test("refusals", () => {
  refuses(() => dowelShear({ ...ring, innerDiameter: 14 * mm }), "innerDiameter");
  refuses(() => dowelShear({ ...ring, dowels: 1.5 }), "dowels");
});
