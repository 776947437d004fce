import { quantity } from "../../Quantity.ts";

export const crownReserve = quantity({
  id: "crownReserve",
  name: "Reserve of the crown against yielding, hot",
  symbol: "S_cr",
  unit: "1",
  decimals: 2,
  system: "pistons",
  meaning: "Yield strength of the hot crown over its bending stress at peak pressure, edge built in.",
  inputs: { R_pw: "crownYieldHot", sigma_cb: "crownPlateStress" },
  formula: "R_pw / sigma_cb",
  compute: ({ R_pw, sigma_cb }) => R_pw / sigma_cb,
  shape: "monotone",
  valid: "for comparing pistons of one kind: ribs raise it, stress by heat lowers it",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_pw: "210 MPa", sigma_cb: "99 MPa" }, expect: "2.12" }],
  display: true,
});
