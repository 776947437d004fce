import { quantity } from "../../Quantity.ts";

export const skirtPressure = quantity({
  id: "skirtPressure",
  name: "Skirt pressure",
  symbol: "p_sk",
  unit: "MPa",
  decimals: 2,
  system: "pistons",
  meaning: "Greatest side thrust over the loaded face of the skirt.",
  inputs: { F_sd: "greatestSideThrust", L_s: "piston.skirtLength", b_s: "piston.skirtChord" },
  formula: "F_sd / (L_s * b_s)",
  compute: ({ F_sd, L_s, b_s }) => F_sd / (L_s * b_s),
  shape: "guarded",
  valid: "as the side thrust; even contact",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_sd: "9 kN", L_s: "34 mm", b_s: "62 mm" }, expect: "4.27 MPa" }],
  display: true,
});
