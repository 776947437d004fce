import { quantity } from "../../Quantity.ts";

export const smallEndReserve = quantity({
  id: "smallEndReserve",
  name: "Reserve of the small end against yielding",
  symbol: "S_se",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning: "Yield strength of the hot rod over the greatest stress of its small end at overspeed.",
  inputs: { R_rw: "rodYieldHot", sigma_sg: "smallEndStress" },
  formula: "R_rw / sigma_sg",
  compute: ({ R_rw, sigma_sg }) => R_rw / sigma_sg,
  shape: "guarded",
  valid: "as the stress; the small end as warm as the rod on average",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_rw: "995 MPa", sigma_sg: "280 MPa" }, expect: "3.55" }],
  display: true,
});
