import { quantity } from "../../Quantity.ts";

export const rodYieldReserveHot = quantity({
  id: "rodYieldReserveHot",
  name: "Reserve of the rod’s beam against yielding, hot",
  symbol: "S_rw",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "Yield strength of the rod when it is hot over the greater of the stresses in its thinnest section: compression at peak pressure or tension at overspeed.",
  inputs: { R_rw: "rodYieldHot", sigma_c: "rodBeamCompression", sigma_t: "rodBeamTension" },
  formula: "R_rw / max(sigma_c, sigma_t)",
  compute: ({ R_rw, sigma_c, sigma_t }) => R_rw / Math.max(sigma_c, sigma_t),
  shape: "guarded",
  valid: "the plain beam, as strong in compression as in tension; buckling has a reserve of its own",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_rw: "995 MPa", sigma_c: "387 MPa", sigma_t: "121 MPa" }, expect: "2.57" }],
  display: true,
});
