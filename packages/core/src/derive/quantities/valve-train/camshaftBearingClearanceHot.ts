import { driveGapHot } from "../../valves/driveGapHot.ts";

export const camshaftBearingClearanceHot = driveGapHot({
  id: "camshaftBearingClearanceHot",
  name: "Camshaft bearing clearance, hot",
  symbol: "C_camh",
  meaning:
    "Clearance of the camshaft in its bearings at full load. An aluminium head or block grows away from the camshaft, and more oil runs off.",
  cold: ["C_cam", "camshaft.bearingClearance"],
  size: ["D_cam", "camshaft.journalDiameter"],
  valid: "a camshaft of steel or iron as hot as what holds it; thin bearings that follow their bores",
  given: { C_cam: "0.060 mm", D_cam: "48 mm" },
  expect: ["0.056 mm", "0.101 mm"],
});
