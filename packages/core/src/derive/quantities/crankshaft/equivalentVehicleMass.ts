import { vehicleMass } from "../../vehicleMass.ts";

export const equivalentVehicleMass = vehicleMass({
  id: "equivalentVehicleMass",
  name: "Vehicle mass that the inertia equals",
  symbol: "m_veq",
  meaning:
    "Mass that the vehicle would have to carry to be as slow to gather speed, in the gear looked at, as the engine’s rotating inertia makes it.",
  inertia: ["J", "rotatingInertia"],
  example: ["0.05 kg m2", "55.6 kg"],
});
