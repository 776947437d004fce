import { driveGapHot } from "../../valves/driveGapHot.ts";

export const followerInBoreHot = driveGapHot({
  id: "followerInBoreHot",
  name: "Follower in its bore, hot",
  symbol: "C_fbh",
  meaning:
    "Clearance of the follower or bucket in its bore at full load. Aluminium about a steel follower opens it, and a hydraulic one then loses its oil; iron keeps it as it is.",
  cold: ["C_fb", "followerInBore"],
  size: ["D_fb", "valveDrive.followerBodyDiameter"],
  valid: "a steel follower as hot as what holds it",
  given: { C_fb: "0.040 mm", D_fb: "21.39 mm" },
  expect: ["0.038 mm", "0.058 mm"],
});
