import { quantity } from "../../Quantity.ts";

export const equivalentVehicleMass = quantity({
  id: "equivalentVehicleMass",
  name: "Vehicle mass that the inertia equals",
  symbol: "m_veq",
  unit: "kg",
  decimals: 1,
  system: "crankshaft",
  meaning:
    "Mass that the vehicle would have to carry to be as slow to gather speed, in the gear looked at, as the engine’s rotating inertia makes it.",
  inputs: { J: "rotatingInertia", i_t: "driveline.totalRatio", R_w: "driveline.tyreRadius" },
  formula: "J * (i_t / R_w)^2",
  compute: ({ J, i_t, R_w }) => J * (i_t / R_w) ** 2,
  shape: "monotone",
  valid: "tyres that do not slip",
  sources: [{ id: "definition" }],
  examples: [{ given: { J: "0.05 kg m2", i_t: "10", R_w: "0.30 m" }, expect: "55.6 kg" }],
  display: true,
});
