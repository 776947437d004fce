import { quantity } from "../../Quantity.ts";

export const bigEndCapReserve = quantity({
  id: "bigEndCapReserve",
  name: "Reserve of the big-end cap against yielding",
  symbol: "S_cap",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning: "Yield strength of the hot rod over the stress in the middle of its cap at overspeed.",
  inputs: { R_rw: "rodYieldHot", sigma_cap: "bigEndCapStress" },
  formula: "R_rw / sigma_cap",
  compute: ({ R_rw, sigma_cap }) => R_rw / sigma_cap,
  shape: "guarded",
  valid: "as the stress; cap and rod of one metal",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_rw: "995 MPa", sigma_cap: "359 MPa" }, expect: "2.77" }],
  display: true,
});
