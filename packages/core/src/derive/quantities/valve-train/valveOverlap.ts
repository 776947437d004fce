import { quantity } from "../../Quantity.ts";

export const valveOverlap = quantity({
  id: "valveOverlap",
  name: "Valve overlap",
  symbol: "theta_o",
  unit: "deg",
  decimals: 1,
  system: "valve-train",
  meaning:
    "Crank angle for which both valves are above the checking lift about top dead centre; negative when they never are together.",
  inputs: { theta_io: "inletOpening", theta_ec: "exhaustClosing" },
  formula: "theta_io + theta_ec",
  compute: ({ theta_io, theta_ec }) => theta_io + theta_ec,
  shape: "monotone",
  valid: "durations of both valves at one checking lift",
  sources: [{ id: "definition" }],
  examples: [{ given: { theta_io: "28 deg", theta_ec: "22 deg" }, expect: "50.0 deg" }],
});
