import { quantity } from "../../Quantity.ts";

export const rodBeamCompression = quantity({
  id: "rodBeamCompression",
  name: "Compressive stress of the rod’s beam",
  symbol: "sigma_c",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning: "Stress of the least section of the beam at peak pressure, without relief by inertia.",
  inputs: { F_g: "gasForce", A_r: "connectingRod.beamArea" },
  formula: "F_g / A_r",
  compute: ({ F_g, A_r }) => F_g / A_r,
  shape: "monotone",
  valid: "a straight beam, loaded along its middle",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_g: "92.8494 kN", A_r: "240 mm2" }, expect: "387 MPa" }],
  display: true,
});
