import { pinClearanceHot } from "../../pinClearanceHot.ts";

export const pinInBossClearanceHot = pinClearanceHot({
  id: "pinInBossClearanceHot",
  name: "Pin in the boss, hot",
  symbol: "C_pbh",
  cold: ["C_pb", "pinInBossClearance"],
  expansion: ["alpha_p", "piston.expansion"],
  meaning: "Clearance of the piston pin in the piston’s boss at full load: the boss outgrows the pin.",
  valid: "pin and boss at one temperature",
  given: { C_pb: "18 um", d_p: "22 mm", alpha_p: "22.3e-6 1/K", T_pin: "150 degC" },
  expect: "47.5 um",
});
