import { quantity } from "../../Quantity.ts";

export const vehicleMassSaved = quantity({
  id: "vehicleMassSaved",
  name: "Vehicle mass saved by a lighter crankshaft",
  symbol: "m_vs",
  unit: "kg",
  decimals: 1,
  system: "crankshaft",
  meaning:
    "Mass of the vehicle that the inertia taken off is worth in the gear looked at: what a lighter crankshaft changes, and in a high gear how little.",
  inputs: { Delta_J: "inertiaTakenOff", i_t: "driveline.totalRatio", R_w: "driveline.tyreRadius" },
  formula: "Delta_J * (i_t / R_w)^2",
  compute: ({ Delta_J, i_t, R_w }) => Delta_J * (i_t / R_w) ** 2,
  shape: "monotone",
  valid: "tyres that do not slip",
  sources: [{ id: "definition" }],
  examples: [{ given: { Delta_J: "0.00259 kg m2", i_t: "10", R_w: "300 mm" }, expect: "2.9 kg" }],
  display: true,
});
