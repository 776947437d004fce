import { trappedVolume } from "@trialfit/mechanics";
import { volumeAt } from "../../volumeAt.ts";

export const inletClosingVolume = volumeAt({
  id: "inletClosingVolume",
  name: "Cylinder volume at inlet closing",
  symbol: "V_ic",
  meaning:
    "Volume in which the charge is shut in when the inlet valve has closed: compression begins from it, not from bottom dead centre.",
  event: ["theta_ic", "camshaft.inletClosing", "68 deg"],
  angle: "theta_ic - pi",
  volume: (cylinder, inletClosing) => trappedVolume({ ...cylinder, inletClosing }),
  valid: "inlet closing taken at 0.15 to 0.25 mm of valve lift",
  expect: "487.3 cm3",
});
