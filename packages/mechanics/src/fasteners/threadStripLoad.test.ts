import { test } from "vitest";
import { kN, MPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { engagementRatio, threadStripLoad } from "./threadStripLoad.ts";

const hole = { majorDiameter: 11 * mm, pitch: 1.25 * mm, engagement: 26 * mm, shearStrength: 200 * MPa };

test("examples and boundary", () => {
  near(threadStripLoad(hole) / kN, 157.2, 0.06);
  near(threadStripLoad({ ...hole, shearStrength: 150 * MPa }) / kN, 117.9, 0.06);
  nearly(engagementRatio(hole), 26 / 11);
  refuses(() => threadStripLoad({ ...hole, engagement: 0 }), "engagement");
  refusesNonFinite(threadStripLoad, hole);
  refusesNonFinite(engagementRatio, { engagement: 26 * mm, majorDiameter: 11 * mm });
});
