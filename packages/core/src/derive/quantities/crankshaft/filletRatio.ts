import { quantity } from "../../Quantity.ts";

export const filletRatio = quantity({
  id: "filletRatio",
  name: "Fillet radius over crankpin diameter",
  symbol: "rho_f",
  unit: "1",
  decimals: 4,
  system: "crankshaft",
  meaning:
    "Smallest fillet radius against the crankpin diameter. The smaller it is, the more the fillet raises the stress in the crankshaft’s corner.",
  inputs: { r_fl: "crankshaft.leastFilletRadius", D_p: "crankshaft.crankpinDiameter" },
  formula: "r_fl / D_p",
  compute: ({ r_fl, D_p }) => r_fl / D_p,
  shape: "monotone",
  valid: "rolled or nitrided fillets stand more at the same radius",
  sources: [{ id: "definition" }],
  examples: [{ given: { r_fl: "2.5 mm", D_p: "52 mm" }, expect: "0.0481" }],
});
