import { pinClearanceHot } from "../../pinClearanceHot.ts";

export const pinInSmallEndClearanceHot = pinClearanceHot({
  id: "pinInSmallEndClearanceHot",
  name: "Pin in the small end, hot",
  symbol: "C_psh",
  cold: ["C_ps", "pinInSmallEndClearance"],
  expansion: ["alpha_r", "connectingRod.expansion"],
  meaning:
    "Clearance of the piston pin in the small end at full load. A titanium rod grows less than the pin and closes it; an aluminium rod opens it.",
  valid: "a thin bush that follows the rod; pin and small end at one temperature",
  given: { C_ps: "12 um", d_p: "20 mm", alpha_r: "8.9e-6 1/K", T_pin: "110 degC" },
  expect: "6.4 um",
});
