import { cylinderVolumeAt } from "@trialfit/mechanics";
import { volumeAt } from "../../volumeAt.ts";

export const volumeAtSpark = volumeAt({
  id: "volumeAtSpark",
  name: "Cylinder volume at the spark",
  symbol: "V_sp",
  meaning:
    "Volume of the charge when it is lit. Between the spark and top dead centre the piston still presses it into the clearance volume while the flame grows.",
  event: ["theta_sp", "combustion.sparkTiming", "-28 deg"],
  angle: "theta_sp",
  volume: (cylinder, angle) => cylinderVolumeAt({ ...cylinder, angle }),
  valid: "spark as set at the power target",
  expect: "110.9 cm3",
});
