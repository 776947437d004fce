import { pistonAlloys } from "../../../tables/alloys.ts";
import { hotShare, hotShareValid } from "../../hotShare.ts";
import { quantity } from "../../Quantity.ts";

export const bossReserve = quantity({
  id: "bossReserve",
  name: "Reserve of the pin bosses, hot",
  symbol: "S_bo",
  unit: "1",
  decimals: 2,
  system: "pins",
  meaning:
    "Yield strength of the hot piston over the greatest pressure of the pin in its bosses at peak pressure: below 1 the bores widen at their top.",
  inputs: {
    R_ps: "piston.yieldStrength",
    p_b: "bossPressure",
    T_p: "conditions.pistonTemperature",
  },
  choices: { alloy: "piston.alloy" },
  method:
    "Yield strength times what the table of strengths says is left of it, over 4/π times the boss pressure: the pin presses with the cosine of the angle from the top of the bore.",
  compute: ({ R_ps, p_b, T_p }, { alloy }) =>
    (R_ps * hotShare(pistonAlloys, alloy, "yield", T_p)) / ((4 / Math.PI) * p_b),
  shape: "monotone",
  valid: `a stiff pin: one that bends presses more on the inner edges; bosses as warm as the piston between crown and pin; ${hotShareValid}`,
  sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "table of strengths" }],
  examples: [
    { given: { R_ps: "372 MPa", p_b: "131.9 MPa", T_p: "150 degC", alloy: "2618" }, expect: "1.99" },
  ],
  display: true,
});
